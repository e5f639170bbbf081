import { wallMinute } from "#lib/calendar/clock";
import { showWall } from "#lib/calendar/showDay";
import { cellKey, type Recast } from "#lib/casting/castCell";
import { type Doubling, doublings } from "#lib/casting/doublings";
import { recast } from "#lib/casting/recast";
import { DEFAULT_RULES } from "#lib/fittings/rules";
import type { Staging } from "#lib/staging/staging";
import { showHours } from "#lib/units/hours";
import { castingEffect, type RecastGarment } from "#lib/whatif/castingEffect";
import { type FittingMove, fittingMoves } from "#lib/whatif/fittingMoves";
import type { MaterialChange } from "#lib/whatif/materialChanges";
import { nameOfMaterial, nameOfPerformer } from "../../../_data/names";
import { listed, plural } from "../../../_data/plural";
import { showQuantity } from "../../../_data/quantity";
import type { ProductionView } from "../../../_data/stagingPlan";
import { begunGarments } from "./begun";
import { doublingSentence, recastWords } from "./cellWords";

/** What follows from a change of the casting, in words and figures that may cross to the browser. */
export interface EffectView {
  /** Who dances what, change by change. */
  readonly says: readonly string[];
  readonly garments: readonly { readonly number: string; readonly name: string; readonly follows: string; readonly hours: string }[];
  readonly work: string;
  readonly fitting: string;
  /** Net first, then what changes most; `others` counts the rest. */
  readonly materials: readonly { readonly name: string; readonly more: string }[];
  readonly others: number;
  readonly fittings: readonly { readonly code: "fit" | "cut" | "late"; readonly text: string }[];
  /** Two places of one body that were not so before. */
  readonly doubled: readonly { readonly isClash: boolean; readonly text: string }[];
  readonly notes: readonly string[];
}

const MOST_FITTINGS = 6;
const MOST_MATERIALS = 4;

export const effectView = (view: ProductionView, changes: readonly Recast[]): EffectView => {
  const before = view.prepared;
  const after = recast(before.staging, changes);
  const effect = castingEffect(before, after, begunGarments(view));
  const moves = fittingMoves(effect.fittings, view.plan?.fittings ?? [], after.calls, DEFAULT_RULES, wallMinute(view.today, 0));
  return {
    says: lastOfEach(changes).map((change) => recastWords(before.staging, change)),
    garments: effect.garments.map((one) => ({
      number: one.garment.number,
      name: one.garment.name,
      follows: follows(one, after),
      hours: one.minutes === 0 ? "" : signed(one.minutes),
    })),
    work: effect.minutes === 0 ? "no more and no less" : signed(effect.minutes),
    fitting: effect.fittingMinutes === 0 ? "" : signed(effect.fittingMinutes),
    ...materialLines(effect.materials, after),
    fittings: fittingLines(moves, after),
    doubled: newDoublings(before.staging, after).map((one) => ({ isClash: one.kind === "clash", text: doublingSentence(after, one) })),
    notes: [
      ...(effect.renumbered > 0 ? [`${effect.renumbered} other garments get another number: look to labels that are sewn in.`] : []),
      ...(effect.garments.some(({ kind }) => kind === "refit") && !view.plan
        ? ["Which garments are begun is not known before the first levelling."]
        : []),
    ],
  };
};

const materialLines = (changes: readonly MaterialChange[], staging: Staging): Pick<EffectView, "materials" | "others"> => {
  const isNet = (code: string) => staging.materials.find((material) => material.code === code)?.kind === "net";
  const cloth = changes.filter(({ measure }) => measure === "length");
  const told = cloth
    .toSorted(
      (a, b) => Number(isNet(b.material)) - Number(isNet(a.material)) || Math.abs(b.after - b.before) - Math.abs(a.after - a.before),
    )
    .slice(0, MOST_MATERIALS);
  return {
    materials: told.map(({ material, measure, before: was, after: is }) => ({
      name: nameOfMaterial(staging, material),
      more: `${is > was ? "+" : "−"}${showQuantity(Math.abs(is - was), measure, staging.production.lengths)}`,
    })),
    others: changes.length - told.length,
  };
};

/** Of changes of one cell the last, since it is what is kept. */
const lastOfEach = (changes: readonly Recast[]): readonly Recast[] => [...new Map(changes.map((one) => [cellKey(one), one])).values()];

const signed = (minutes: number): string => (minutes > 0 ? `+${showHours(minutes)}` : `−${showHours(-minutes)}`);

const follows = ({ kind, garment, from, begun }: RecastGarment, staging: Staging): string => {
  const [first, ...others] = garment.wearers;
  const who = first?.performer ? nameOfPerformer(staging, first.performer) : "size group";
  switch (kind) {
    case "added":
      return garment.source === "build" ? "one more to make" : "one more";
    case "dropped":
      return begun ? "begun, and nobody wears it" : "not needed";
    case "recut":
      return from === null ? `made for ${who}` : `made for ${who} instead`;
    case "refit":
      if (garment.source === "buy") return `for ${who} instead`;
      return `${begun ? "begun: " : ""}refitted to ${who}`;
    case "wearers":
      return others.length === 0 ? "fitted to nobody else" : `fitted to ${others.length} more`;
    case "turn":
      return "another turn in its set";
  }
};

/** Appointments that must move one by one; those that keep their time, are given back, or have none yet are counted. */
const fittingLines = (moves: readonly FittingMove[], staging: Staging): EffectView["fittings"] => {
  const name = (code: string | null) => (code === null ? "" : nameOfPerformer(staging, code));
  const timed = moves.filter(({ at }) => at !== null);
  const kept = timed.filter(({ keepsTime }) => keepsTime === true);
  const back = timed.filter(({ after }) => after === null);
  const moved = timed.filter(({ keepsTime }) => keepsTime === false);
  const more = moves.filter(({ at, after, change }) => at === null && after !== null && change === "added");
  const minutes = more.reduce((sum, one) => sum + one.minutesAfter, 0);
  const next = more[0]?.next ? `. ${name(more[0].after)} is free ${showWall(more[0].next)}` : "";
  const whose = (some: readonly FittingMove[], of: "before" | "after") =>
    listed([...new Set(some.map((one) => name(one[of])))].slice(0, 4));
  const line = (code: "fit" | "cut" | "late", text: string) => ({ code, text });
  return [
    ...(more.length > 0 ? [line("fit", `${plural(more.length, "fitting")} more, ${showHours(minutes)}${next}`)] : []),
    ...(kept.length > 0
      ? [
          line(
            "fit",
            `${plural(kept.length, "appointment keeps its", "appointments keep their")} time: ${whose(kept, "after")} is free then`,
          ),
        ]
      : []),
    ...moved
      .slice(0, MOST_FITTINGS)
      .map(({ after, at, name: fitting, next: free }) =>
        line(
          "late",
          `${fitting}, ${showWall(at!)}: ${name(after)} is not free${free === null ? ", then or later" : ` before ${showWall(free)}`}`,
        ),
      ),
    ...(moved.length > MOST_FITTINGS ? [line("late", `${moved.length - MOST_FITTINGS} more appointments must move`)] : []),
    ...(back.length > 0
      ? [
          line(
            "cut",
            `${plural(back.length, "appointment")} given back: ${whose(back, "before")}, from ${showWall(Math.min(...back.map(({ at }) => at!)))}`,
          ),
        ]
      : []),
  ];
};

const newDoublings = (before: Staging, after: Staging): readonly Doubling[] => {
  const known = new Set(doublings(before).map((one) => JSON.stringify(one)));
  return doublings(after).filter((one) => one.kind !== "apart" && !known.has(JSON.stringify(one)));
};
