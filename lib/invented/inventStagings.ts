import { breakDown } from "#lib/breakdown/breakDown";
import { addDays } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import { garmentsOf } from "#lib/casting/garments";
import type { Construction } from "#lib/constructions/construction";
import { Chance } from "#lib/levelling/random";
import type { Milestone, Staging } from "#lib/staging/staging";
import { inventCalls, inventDancers } from "./dancers";
import { inventGoods } from "./goods";
import { kindsOf } from "./kinds";
import { inventMachines, inventMakers, loadOfWorks } from "./makers";
import { type Order, USUAL_MINUTES, weeklyMinutes } from "./order";
import { inventWardrobe } from "./wardrobe";

/** A Monday. */
export const STARTS = "2027-01-11" as PlainDate;
/** Performers are called for so long after the last parade, since late work needs fittings too. */
const WEEKS_AFTER = 8;
/** Garments a dancer wears, about. */
const GARMENTS_EACH = 4;
const FEWEST_DANCERS = 8;

/**
 * Stagings of one workroom: the same makers, machines, dancers and goods in each, and the works of all of them together as tight as ordered.
 * @param constructions What garments may be of; every kind is used.
 */
export const inventStagings = (order: Order, constructions: readonly Construction[]): readonly [Staging, ...Staging[]] => {
  const chance = new Chance(order.seed);
  const kinds = kindsOf(constructions);
  const goods = inventGoods(constructions, chance);
  const dancers = Math.max(FEWEST_DANCERS, Math.ceil(order.garments / GARMENTS_EACH));
  const company = inventDancers(dancers, STARTS, chance);
  const average = order.weeks === null ? USUAL_MINUTES : (order.weeks * weeklyMinutes(order)) / order.garments;
  const wardrobes = shares(order.garments, order.productions).map((garments, index) =>
    inventWardrobe(production(index), garments, kinds, average, company.performers, "parade", chance),
  );
  const minutes = wardrobes.reduce((sum, one) => sum + one.minutes, 0);
  const weeks = order.weeks ?? Math.max(2, Math.ceil(minutes / weeklyMinutes(order)));
  const calls = inventCalls(company.performers, STARTS, weeks + WEEKS_AFTER);
  const without: Omit<Staging, "makers" | "machines">[] = wardrobes.map(({ wardrobe }, index) => ({
    production: {
      code: production(index),
      title: `Invented ballet ${index + 1}`,
      subtitle: "",
      workroom: "Main workroom",
      starts: STARTS,
      budget: null,
      currency: "GBP",
      zone: "Europe/London",
      words: "uk",
      lengths: "cm",
      prefix: production(index).toUpperCase(),
      visitsPerWeek: null,
    },
    milestones: [parade(Math.max(1, Math.round((weeks * (index + 1)) / order.productions)))],
    ...company,
    ...wardrobe,
    absences: [],
    calls,
    ...goods,
    lots: [],
    approvals: [],
    otherWork: [],
    constructions,
  }));
  const works = without.flatMap((each) => {
    const staging = { ...each, makers: [], machines: [] };
    return breakDown(staging, garmentsOf(staging));
  });
  const makers = inventMakers(order.makers, loadOfWorks(works), weeks, chance);
  const machines = inventMachines(works, order.makers);
  return without.map((each) => ({ ...each, makers, machines })) as [Staging, ...Staging[]];
};

const production = (index: number): string => `p${index + 1}`;

/** Garments of each production, as even as they go. */
const shares = (garments: number, productions: number): number[] =>
  Array.from(
    { length: productions },
    (_, at) => Math.floor((garments * (at + 1)) / productions) - Math.floor((garments * at) / productions),
  );

const parade = (weeks: number): Milestone => ({
  code: "parade",
  kind: "dress parade",
  name: "Dress parade",
  date: addDays(STARTS, 7 * weeks - 3),
  at: 1080,
});
