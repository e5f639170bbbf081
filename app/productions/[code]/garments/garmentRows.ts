import { splitWall } from "#lib/calendar/clock";
import type { Garment } from "#lib/casting/wardrobe";
import { versionMeant, versionsOf } from "#lib/constructions/versions";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import type { Staging } from "#lib/staging/staging";
import { words as wordsOf } from "#lib/words/words";
import { garmentHref } from "../../../_data/address";
import { lateWords } from "../../../_data/lateWords";
import { nameOfRole } from "../../../_data/names";
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

type Standing = Pick<GarmentRow, "ready" | "due" | "state" | "minutesLate" | "said">;

const standing = (garment: Garment, plan: StagingPlan | null, staging: Staging): Standing => {
  const state = plan?.garmentStates.find((each) => each.garment === garment.number);
  const due = staging.milestones.find((milestone) => milestone.code === garment.due)?.date ?? null;
  if (!plan || !state) return { ready: null, due, state: "unlevelled", minutesLate: 0, said: plan ? "nothing to do" : "not levelled" };
  const dueDay = splitWall(state.due).date;
  if (state.minutesLate > 0)
    return {
      ready: state.finish === null ? null : dayOfFinish(state.finish),
      due: dueDay,
      state: "late",
      minutesLate: state.minutesLate,
      said: lateWords(state, staging),
    };
  if (state.finish === null) return { ready: null, due: dueDay, state: "unplaced", minutesLate: 0, said: "no place in the plan" };
  return { ready: dayOfFinish(state.finish), due: dueDay, state: "ready", minutesLate: 0, said: "in time" };
};

/** Every garment of the production as a line of the list, with days when there is a plan. */
export const garmentRows = ({ prepared, plan }: Pick<ProductionView, "prepared" | "plan">): GarmentRow[] => {
  const { staging, garments, works } = prepared;
  return garments.map((garment) => {
    const work = works.find((each) => each.garment === garment.number);
    const planned = plan?.garmentStates.find((each) => each.garment === garment.number)?.minutes;
    return {
      number: garment.number,
      href: garmentHref(staging.production.code, garment.number),
      name: garment.name,
      role: nameOfRole(staging, garment.role),
      made: madeWords(garment, staging),
      set: staging.sets.find((set) => set.code === garment.set)?.name ?? "",
      wearers: wearerNames(garment, staging),
      minutes: planned ?? work?.operations.reduce((total, operation) => total + operation.minutes[1], 0) ?? 0,
      ...standing(garment, plan, staging),
    };
  });
};
