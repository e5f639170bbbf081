import { medianWork } from "#lib/breakdown/medianWork";
import type { GarmentWork } from "#lib/breakdown/work";
import type { Construction } from "#lib/constructions/construction";
import type { Staging } from "#lib/staging/staging";
import { showHours } from "#lib/units/hours";
import { showMoney } from "#lib/units/money";
import { standardLabour } from "#lib/whatif/labourRate";
import { versionEffect } from "#lib/whatif/versionEffect";
import { nameOfMaterial } from "../../../../../_data/names";
import { showQuantity } from "../../../../../_data/quantity";
import type { DraftEffect } from "./draftState";

const likely = (work: GarmentWork): string =>
  showHours(
    work.operations.reduce((sum, { minutes }) => sum + minutes[1], 0) + work.fittings.reduce((sum, { minutes }) => sum + minutes, 0),
  );

/** What making by the draft instead would do to one garment, and to those of the production. */
export const draftEffect = (staging: Staging, from: Construction, draft: Construction, money: boolean): DraftEffect => {
  const { production, makers } = staging;
  const works = [medianWork(from, {}, undefined, production), medianWork(draft, {}, undefined, production)] as const;
  const effect = versionEffect(staging, from, { ...draft, code: from.code });
  const labour = works.map((work) => standardLabour(makers, [work]));
  const cost = (at: 0 | 1) => showMoney(labour[at]!.cost, production.currency);
  return {
    one: [likely(works[0]), likely(works[1])],
    cost: money && labour.every(({ nobody }) => nobody.length === 0) ? [cost(0), cost(1)] : null,
    all: [showHours(effect.before[1]), showHours(effect.after[1])],
    changed: effect.garments.length,
    unchanged: effect.unchanged,
    materials: effect.materials
      .filter(({ before, after }) => before !== after)
      .map(({ material, measure, before, after }) => ({
        name: nameOfMaterial(staging, material),
        before: showQuantity(before, measure, production.lengths),
        after: showQuantity(after, measure, production.lengths),
      })),
  };
};
