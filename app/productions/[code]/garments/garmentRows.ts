import { splitWall } from "#lib/calendar/clock";
import type { Garment, Piece } from "#lib/casting/wardrobe";
import { versionMeant, versionsOf } from "#lib/constructions/versions";
import type { GarmentState, StagingPlan } from "#lib/planning/stagingPlan";
import type { Staging } from "#lib/staging/staging";
import { words as wordsOf } from "#lib/words/words";
import { garmentHref } from "../../../_data/address";
import { lateWords } from "../../../_data/lateWords";
import { dayOfFinish } from "../../../_data/showDates";
import type { ProductionView } from "../../../_data/stagingPlan";
import { wearerNames } from "../../../_data/wearers";
import type { GarmentRow } from "./garmentRow";

/** How it comes about: built as its construction says, pulled, altered, hired, bought. */
export const madeWords = (garment: Garment, staging: Staging): string => {
  const { words } = staging.production;
  const construction = constructionWords(garment, staging);
  if (garment.source === "build" && construction) return construction;
  return [wordsOf(words).sources[garment.source], construction].filter(Boolean).join(": ");
};

/** Name of its construction, with the version where the production knows several. */
const constructionWords = ({ construction, version }: Garment, { constructions, production }: Staging): string | null => {
  const meant = construction === null ? undefined : versionMeant(constructions, construction, version);
  if (!meant) return null;
  const name = meant.name[production.words];
  return versionsOf(constructions, meant.code).length > 1 ? `${name}, version ${meant.version}` : name;
};

/** For whom there is one garment, as a list says it. */
export const SHARED: Readonly<Record<Piece["each"], string>> = {
  performer: "each performer",
  place: "each place, shared across casts",
  role: "the role",
};

type Standing = Pick<GarmentRow, "ready" | "due" | "state" | "minutesLate" | "said">;

const standing = (state: GarmentState | undefined, due: Standing["due"], plan: StagingPlan | null, staging: Staging): Standing => {
  if (!plan || !state) return { ready: null, due, state: "unlevelled", minutesLate: 0, said: plan ? "nothing to do" : "not levelled" };
  const ready = state.finish === null ? null : dayOfFinish(state.finish);
  const planned = { ready, due: splitWall(state.due).date };
  if (state.minutesLate > 0) return { ...planned, state: "late", minutesLate: state.minutesLate, said: lateWords(state, staging) };
  if (ready === null) return { ...planned, state: "unplaced", minutesLate: 0, said: "no place in the plan" };
  return { ...planned, state: "ready", minutesLate: 0, said: "in time" };
};

const byKey = <T>(all: readonly T[], key: (one: T) => string): ReadonlyMap<string, T> => new Map(all.map((one) => [key(one), one]));

/** Every garment of the production as a line of the list, with days when there is a plan. */
export const garmentRows = ({ prepared, plan }: Pick<ProductionView, "prepared" | "plan">): GarmentRow[] => {
  const { staging, garments } = prepared;
  const works = byKey(prepared.works, (work) => work.garment);
  const states = byKey(plan?.garmentStates ?? [], (state) => state.garment);
  const roles = byKey(staging.roles, (role) => role.code);
  const sets = byKey(staging.sets, (set) => set.code);
  const pieces = byKey(staging.pieces, (piece) => piece.code);
  const milestones = byKey(staging.milestones, (milestone) => milestone.code);
  const sources = wordsOf(staging.production.words).sources;
  return garments.map((garment) => {
    const work = works.get(garment.number);
    const state = states.get(garment.number);
    const due = milestones.get(garment.due);
    return {
      number: garment.number,
      href: garmentHref(staging.production.code, garment.number),
      name: garment.name,
      role: roles.get(garment.role)?.name ?? garment.role,
      made: madeWords(garment, staging),
      as: constructionWords(garment, staging) ?? "",
      source: sources[garment.source],
      set: sets.get(garment.set ?? "")?.name ?? "",
      wearers: wearerNames(garment, staging),
      shared: SHARED[pieces.get(garment.piece)?.each ?? "performer"],
      weight: garment.weight,
      minutes: state?.minutes ?? work?.operations.reduce((total, operation) => total + operation.minutes[1], 0) ?? 0,
      fittings: work?.fittings.length ?? 0,
      wantedFor: due?.name ?? "",
      ...standing(state, due?.date ?? null, plan, staging),
    };
  });
};
