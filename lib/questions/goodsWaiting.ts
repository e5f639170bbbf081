import { dayNumber } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import type { MaterialKind } from "#lib/materials/material";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import { clothReady } from "#lib/purchasing/releases";
import type { Answer, Asked } from "./answer";
import type { Options } from "./options";
import { counted, dayOr, listed } from "./told";

/** One material that somebody waits for. */
export interface GoodsWaiting {
  readonly material: string;
  readonly name: string;
  readonly kind: MaterialKind | null;
  /** On order: somebody has promised a day. To order: nobody has. Nowhere: it cannot be had. */
  readonly from: "on order" | "to order" | "nowhere";
  /** Day an order was promised for; null when nothing is on order. */
  readonly promised: PlainDate | null;
  /** First day all of it may be cut; null when it cannot be had. */
  readonly ready: PlainDate | null;
  /** Latest day to order it for this plan. */
  readonly orderBy: PlainDate | null;
  /** First day the plan cuts it. */
  readonly neededBy: PlainDate | null;
  readonly garments: readonly string[];
  readonly why: string;
}

/** What is not on the shelf, by when it was promised, and which garments wait for it. */
export const goodsWaiting = (plan: StagingPlan, today: PlainDate, kind: MaterialKind | null): readonly GoodsWaiting[] => {
  const { staging, works, purchase } = plan;
  const materials = new Map(staging.materials.map((material) => [material.code, material]));
  const found = new Map<string, GoodsWaiting>();
  for (const [need, ready] of clothReady(staging, works, today)) {
    if (ready.from === "shelf") continue;
    const material = materials.get(need.material);
    if (kind !== null && material?.kind !== kind) continue;
    const key = JSON.stringify([need.material, ready.from]);
    const known = found.get(key);
    const line = ready.from === "to order" ? purchase.lines.find((one) => one.material === need.material) : undefined;
    const later = known === undefined || (known.ready !== null && (ready.day === null || ready.day > known.ready));
    found.set(key, {
      material: need.material,
      name: material?.name ?? need.material,
      kind: material?.kind ?? null,
      from: ready.from,
      promised: ready.from === "on order" ? promisedFor(staging.lots, need.material) : null,
      ready: later ? ready.day : known.ready,
      orderBy: line?.orderBy ?? null,
      neededBy: line?.neededBy ?? null,
      garments: [...new Set([...(known?.garments ?? []), need.garment])],
      why: later ? ready.why : known.why,
    });
  }
  return [...found.values()].sort((a, b) => latest(b) - latest(a) || (a.material < b.material ? -1 : 1));
};

const latest = ({ ready }: GoodsWaiting): number => (ready === null ? Number.POSITIVE_INFINITY : dayNumber(ready));

/** The last day promised for lots of the material. */
const promisedFor = (lots: StagingPlan["staging"]["lots"], material: string): PlainDate | null =>
  lots
    .flatMap((lot) => (lot.material === material && lot.arrives !== null ? [lot.arrives] : []))
    .sort()
    .at(-1) ?? null;

export const answerGoodsWaiting = ({ plan, today }: Asked, options: Options): Answer => {
  const data = goodsWaiting(plan, today, options.text("kind") as MaterialKind | null);
  const garments = new Set(data.flatMap((one) => one.garments));
  const onOrder = data.filter(({ from }) => from === "on order");
  const nowhere = data.filter(({ from }) => from === "nowhere");
  const [last] = data.filter(({ ready }) => ready !== null);
  const late = data.filter(({ orderBy }) => orderBy !== null && orderBy < today);
  return {
    says: [
      data.length === 0
        ? "Nothing: all of it is on the shelf."
        : `${counted(data.length, "material is", "materials are")} not on the shelf, and ${counted(garments.size, "garment waits", "garments wait")} for ` +
          `${data.length === 1 ? "it" : "them"}.`,
      ...(data.length === 0
        ? []
        : [
            onOrder.length === 0
              ? "None of it is on order, so nobody has promised a day: the days below hold if it is ordered today."
              : `On order: ${listed(onOrder.map(({ name, promised }) => `${name} (promised ${dayOr(promised)})`))}.`,
          ]),
      ...(last ? [`The last of it is ${last.name}, which may be cut ${dayOr(last.ready)}.`] : []),
      ...(nowhere.length > 0 ? [`Cannot be had as things stand: ${listed(nowhere.map(({ name }) => name))}.`] : []),
      ...(late.length > 0
        ? [`Ought to have been ordered already: ${listed(late.map(({ name, orderBy }) => `${name} by ${dayOr(orderBy)}`))}.`]
        : []),
    ],
    tables:
      data.length === 0
        ? []
        : [
            {
              title: "What is waited for, the latest first",
              headings: ["material", "state", "promised", "may be cut", "cut in the plan", "order by", "garments", "why"],
              rows: data.map((one) => [
                one.name,
                one.from,
                dayOr(one.promised, "nobody has"),
                dayOr(one.ready, "never"),
                dayOr(one.neededBy),
                dayOr(one.orderBy),
                listed(one.garments, 3),
                one.why,
              ]),
            },
          ],
    reasons: [
      "May be cut: for goods on order, the day they arrive and are inspected; else as the purchase list buys them, ordered today, with lead time and " +
        "inspection.",
      "Order by: the first day the plan cuts it, less lead time and inspection.",
    ],
    data,
  };
};
