import { dayNumber, plainDate } from "#lib/calendar/days";
import { MINUTES_PER_DAY, type PlainDate } from "#lib/calendar/plainDate";
import { versionMeant } from "#lib/constructions/versions";
import type { Skill } from "#lib/labour/skills";
import type { Link } from "#lib/levelling/problem";
import { toWall } from "#lib/planning/axis";
import { axisOf } from "#lib/planning/axisOf";
import { FITTING_ROOM } from "#lib/planning/people";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import { clothReady } from "#lib/purchasing/releases";
import type { Minutes } from "#lib/units/quantities";
import { OVERTIME_A_DAY, type Remedy } from "./remedy";

/** A handful: each takes a plan of its own. */
const MOST_SKILLS = 2;
const MOST_MATERIALS = 2;
const MOST_PIECES = 2;
/** More hands come for a week at least, and for four at most; overtime is asked for ten evenings at most (common practice, no source). */
const DAYS = { least: 5, most: 20 };
const MOST_EVENINGS = 10;

/** Decoration that goes on last, the dearest in hours first (common practice, no source). */
const DECORATION: readonly string[] = ["motifs", "sewnStones", "gluedStones", "stones", "beads", "braidRows"];

/** Remedies worth trying for a plan, from the causes of what is late in it; none when nothing is. */
export const candidates = (plan: StagingPlan, today: PlainDate): readonly Remedy[] => {
  const waits = plan.answer.late.flatMap(({ links }) => links);
  return [...deliveries(plan, waits, today), ...hands(plan, waits, today), ...rooms(plan, waits), ...simpler(plan)];
};

/** Goods waited for: so many days sooner as the latest garment that waits for them is late, and one to work in. */
const deliveries = (plan: StagingPlan, links: readonly Link[], today: PlainDate): Remedy[] => {
  const waiting = new Set(links.filter(({ cause }) => cause === "delivery").map(({ node }) => node));
  if (waiting.size === 0) return [];
  const late = new Map(plan.garmentStates.map(({ garment, minutesLate }) => [garment, minutesLate]));
  const days = new Map<string, number>();
  const latest = new Map<string, { readonly day: PlainDate; readonly material: string }>();
  for (const [{ garment, operation, material }, { day }] of clothReady(plan.staging, plan.works, today)) {
    const key = JSON.stringify([garment, operation]);
    if (day !== null && day > today && day > (latest.get(key)?.day ?? "")) latest.set(key, { day, material });
  }
  for (const node of waiting) {
    const of = plan.nodes[node]!;
    if (of.kind !== "operation") continue;
    for (const garment of of.garments) {
      const found = latest.get(JSON.stringify([garment, of.operation]));
      if (!found) continue;
      const wanted = Math.ceil((late.get(garment) ?? 0) / MINUTES_PER_DAY) + 1;
      const possible = dayNumber(found.day) - dayNumber(today);
      days.set(found.material, Math.max(days.get(found.material) ?? 0, Math.min(wanted, possible)));
    }
  }
  return most(days, MOST_MATERIALS).map(([material, sooner]) => ({ kind: "deliver", material, days: sooner }));
};

/** Skills whose makers are waited for, busy or not there: more hands from the first such wait on, or overtime of those there are. */
const hands = (plan: StagingPlan, links: readonly Link[], today: PlainDate): Remedy[] => {
  const { problem } = plan;
  const axis = axisOf(plan);
  const waited = new Map<Skill, Minutes>();
  const first = new Map<Skill, number>();
  for (const { cause, node, start, end, on } of links) {
    if (cause !== "maker busy" && cause !== "calendar" && !(cause === "fitting" && on?.maker !== undefined)) continue;
    const engine = problem.nodes[node]!;
    const index = engine.kind === "fitting" ? engine.fitterSkill : engine.crew[0]?.skill;
    if (index === undefined) continue;
    const skill = problem.skills[index] as Skill;
    waited.set(skill, (waited.get(skill) ?? 0) + Math.min(end - start, workedIn(plan, start, end)));
    first.set(skill, Math.min(first.get(skill) ?? start, start));
  }
  return most(waited, MOST_SKILLS).flatMap(([skill, minutes]): Remedy[] => {
    const day = plainDate(Math.floor(toWall(axis, first.get(skill)!) / MINUTES_PER_DAY));
    const from = day > today ? day : today;
    const hours = Math.ceil(minutes / 60);
    const days = Math.min(DAYS.most, Math.max(DAYS.least, Math.ceil(hours / 8)));
    const evenings = Math.min(MOST_EVENINGS, Math.max(1, Math.ceil(minutes / OVERTIME_A_DAY)));
    return [
      { kind: "maker", skill, count: 1, days, from },
      { kind: "overtime", of: { skill }, minutes: evenings * OVERTIME_A_DAY, from },
    ];
  });
};

/** Minutes of the workroom's hours in a wait: nights and closed days are nobody's fault. */
const workedIn = ({ problem }: StagingPlan, start: number, end: number): Minutes =>
  (problem.open ?? []).reduce((sum, one) => sum + Math.max(0, Math.min(one.end, end) - Math.max(one.start, start)), 0);

/** The fitting room when performers wait to be fitted, and machines that are waited for. */
const rooms = ({ staging, problem, answer }: StagingPlan, links: readonly Link[]): Remedy[] => {
  const waiting = links.flatMap(({ cause, on, node, start }) => {
    if (cause === "machine" && on?.machine !== undefined) return [problem.machines[on.machine]!.id];
    const waits = start < (answer.plan.placed[node]?.start ?? 0);
    return cause === "fitting" && on?.maker === undefined && waits ? [FITTING_ROOM] : [];
  });
  const there = new Set(staging.machines.map(({ kind }) => kind));
  return [...new Set(waiting)].filter((machine) => there.has(machine)).map((machine) => ({ kind: "machine", machine }));
};

/** The last decoration left off the pieces that are late, those late the longest first. */
const simpler = ({ staging, garments, garmentStates }: StagingPlan): Remedy[] => {
  const late = new Map<string, Minutes>();
  for (const { garment, minutesLate } of garmentStates) {
    const piece = garments.find(({ number }) => number === garment)!.piece;
    if (minutesLate > 0) late.set(piece, (late.get(piece) ?? 0) + minutesLate);
  }
  return most(late, late.size)
    .flatMap(([code]): Remedy[] => {
      const { construction, version, parameters } = staging.pieces.find((piece) => piece.code === code)!;
      const known = construction === null ? [] : (versionMeant(staging.constructions, construction, version)?.parameters ?? []);
      const found = DECORATION.find((name) =>
        known.some((one) => one.kind === "count" && one.min === 0 && one.code === name && Number(parameters[name] ?? one.value) > 0),
      );
      return found === undefined ? [] : [{ kind: "simplify", piece: code, parameter: found, value: "0" }];
    })
    .slice(0, MOST_PIECES);
};

/** The greatest first, of equals the first by name. */
const most = <K extends string>(counts: ReadonlyMap<K, number>, count: number): (readonly [K, number])[] =>
  [...counts]
    .filter(([, amount]) => amount > 0)
    .sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1))
    .slice(0, count);
