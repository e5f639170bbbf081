import type { GarmentWork } from "#lib/breakdown/work";
import { SKILLS, type Skill } from "#lib/labour/skills";
import type { Machine, Maker } from "#lib/labour/workroom";
import type { Chance } from "#lib/levelling/random";
import type { Minutes, PerMille } from "#lib/units/quantities";
import { inventedName } from "./names";
import { PRODUCTIVE, WEEK_MINUTES } from "./order";

type Skills = Readonly<Partial<Record<Skill, PerMille>>>;

/** Trades and what each can do, the leading skills first (skills matrix: common practice, no source). */
const TRADES: readonly { readonly trade: string; readonly skills: Skills }[] = [
  { trade: "cutter", skills: { pattern: 1000, fit: 1000, boned: 1000, net: 600, stretch: 600, hand: 600 } },
  { trade: "tutu maker", skills: { net: 1000, boned: 1000, hand: 1000, stretch: 600 } },
  { trade: "tailor", skills: { tailoring: 1000, pattern: 1000, fit: 1000, boned: 600, hand: 600 } },
  { trade: "stitcher", skills: { stretch: 1000, hand: 1000, boned: 600, net: 600 } },
  { trade: "milliner", skills: { millinery: 1000, dye: 1000, hand: 600 } },
];

/** Standard minutes of each skill that the works ask for. */
export const loadOfWorks = (works: readonly GarmentWork[]): ReadonlyMap<Skill, Minutes> => {
  const load = new Map<Skill, Minutes>();
  const add = (skill: Skill, minutes: Minutes) => load.set(skill, (load.get(skill) ?? 0) + minutes);
  for (const { operations, fittings } of works) {
    for (const { skill, minutes } of operations) add(skill, minutes[1]);
    for (const { minutes } of fittings) add("fit", minutes);
  }
  return load;
};

/** So many makers of the trades the work needs most; skills that nobody of them leads in go to the last ones, at a slower pace. */
export const inventMakers = (count: number, load: ReadonlyMap<Skill, Minutes>, weeks: number, chance: Chance): readonly Maker[] => {
  const left = new Map(load);
  const names = new Set<string>();
  const makers = Array.from({ length: count }, (_, index): Maker => {
    const { trade, skills } = TRADES.find((one) => one.skills[mostLeft(left)] === 1000)!;
    takeOff(left, skills, (weeks * WEEK_MINUTES * PRODUCTIVE) / 1000);
    const pace = 0.9 + 0.05 * chance.below(5);
    return {
      code: `maker-${index + 1}`,
      name: inventedName(chance, names),
      trade,
      employment: "staff",
      skills: Object.fromEntries(Object.entries(skills).map(([skill, own]) => [skill, Math.round(own * pace)])),
      hours: [1, 2, 3, 4, 5].flatMap((weekday) => [
        { weekday, from: 540, to: 780 },
        { weekday, from: 840, to: 1080 },
      ]),
      overtime: [1, 2, 3, 4].map((weekday) => ({ weekday, from: 1080, to: 1200 })),
      productive: PRODUCTIVE,
      reservedMinutesPerWeek: 0,
      paceFrom: [],
      costPerHour: 2000,
      overtimeCostPerHour: 3000,
      starts: null,
      ends: null,
    };
  });
  const missing = SKILLS.filter((skill) => load.has(skill) && makers.every((maker) => maker.skills[skill] === undefined));
  return makers.map((maker, index) => {
    const further = missing.filter((_, at) => at % count === count - 1 - index);
    return { ...maker, skills: { ...maker.skills, ...Object.fromEntries(further.map((skill) => [skill, 800])) } };
  });
};

const mostLeft = (left: ReadonlyMap<Skill, Minutes>): Skill =>
  SKILLS.reduce((most, skill) => ((left.get(skill) ?? 0) > (left.get(most) ?? 0) ? skill : most));

/** What one maker can do comes off her leading skills, the fullest first. */
const takeOff = (left: Map<Skill, Minutes>, skills: Skills, minutes: Minutes): void => {
  const leading = SKILLS.filter((skill) => skills[skill] === 1000).sort((a, b) => (left.get(b) ?? 0) - (left.get(a) ?? 0));
  let free = minutes;
  for (const skill of leading) {
    const taken = Math.min(free, left.get(skill) ?? 0);
    left.set(skill, (left.get(skill) ?? 0) - taken);
    free -= taken;
  }
};

/** Machines of the kinds the works ask for, one for every few makers, and the fitting rooms. */
export const inventMachines = (works: readonly GarmentWork[], makers: number): readonly Machine[] => {
  const kinds = new Set(works.flatMap(({ operations }) => operations.flatMap(({ machine }) => machine ?? [])));
  const each = (kind: string) => (kind === "lockstitch" ? 2 : 5);
  return [
    ...[...kinds].sort().map((kind) => ({ code: kind.replaceAll(" ", "-"), name: kind, kind, count: Math.ceil(makers / each(kind)) })),
    { code: "fitting-room", name: "Fitting room", kind: "fitting room", count: Math.ceil(makers / 10) },
  ];
};
