import { ascending } from "d3-array";
import type { GarmentWork, Need } from "#lib/breakdown/work";
import { addDays, dayNumber } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import { readyFrom } from "./choice";
import { type GoodsOf, supplyOf } from "./supply";

/** A garment whose goods come after the day they are cut in the plan. */
export interface HeldUp {
  readonly garment: string;
  readonly role: string;
  readonly cutOn: PlainDate;
  /** So many days later than planned it can be cut. */
  readonly days: number;
  /** Days between its finish in the plan and its due day; null when it has no place there. */
  readonly slack: number | null;
  /** It waits longer than it has to spare: late, unless the plan is made again. */
  readonly late: boolean;
}

/** What one order, or one lot on order, holds up when it comes so many days later than promised. */
export interface Slip {
  readonly material: string;
  /** The lot on order, or null for what is ordered on `orderedOn`. */
  readonly lot: string | null;
  readonly supplier: string | null;
  /** First day it may be cut as promised, and when it slips. */
  readonly ready: PlainDate;
  readonly slipped: PlainDate;
  /** Latest first, then by garment. */
  readonly heldUp: readonly HeldUp[];
}

interface SlipPlan {
  readonly days: number;
  /** Day that what is still to buy is ordered. */
  readonly orderedOn: PlainDate;
  readonly cutOn: (need: Need) => PlainDate | null;
  readonly slackOf: (garment: string) => number | null;
}

/** What becomes late if deliveries slip: one answer for each order and each lot on order that anything is cut from. By material. */
export const ifSlips = (staging: GoodsOf, works: readonly GarmentWork[], plan: SlipPlan): readonly Slip[] =>
  supplyOf(staging, works).supplies.flatMap(({ material, supplied, choices, offers }) => {
    const inspection = Math.max(0, ...offers.map((offer) => offer.inspectionDays));
    const toBuy = supplied.flatMap((one) => one.toBuy.map(({ need }) => need));
    const offer = choices[0]?.offer;
    const order =
      offer && toBuy.length > 0 ? [{ lot: null, supplier: offer.supplier, ready: readyFrom(offer, plan.orderedOn), needs: toBuy }] : [];
    const promised = supplied.flatMap((one) => one.promised);
    const lots = [...new Set(promised.map(({ lot }) => lot))]
      .flatMap((lot) => (lot.arrives === null ? [] : [{ lot, arrives: lot.arrives }]))
      .sort((a, b) => ascending(a.arrives, b.arrives) || ascending(a.lot.code, b.lot.code))
      .map(({ lot, arrives }) => ({
        ...{ lot: lot.code, supplier: null, ready: addDays(arrives, inspection) },
        needs: promised.filter((one) => one.lot === lot).map(({ need }) => need),
      }));
    return [...order, ...lots].map(({ needs, ...from }) => {
      const slipped = addDays(from.ready, plan.days);
      return { material: material.code, ...from, slipped, heldUp: heldUpBy(needs, slipped, plan) };
    });
  });

const heldUpBy = (needs: readonly Need[], slipped: PlainDate, { cutOn, slackOf }: SlipPlan): readonly HeldUp[] =>
  needs
    .flatMap((need): readonly HeldUp[] => {
      const day = cutOn(need);
      if (day === null || day >= slipped) return [];
      const days = dayNumber(slipped) - dayNumber(day);
      const slack = slackOf(need.garment);
      return [{ garment: need.garment, role: need.role, cutOn: day, days, slack, late: slack !== null && days > slack }];
    })
    .sort((a, b) => b.days - a.days || ascending(a.garment, b.garment) || ascending(a.role, b.role));
