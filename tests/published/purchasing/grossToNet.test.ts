import { describe, expect, it } from "vitest";
import { grossToNet, type LotRule } from "#lib/purchasing/lotSizing/grossToNet";
import published from "./mrp.json";

const { gross, sched: scheduled, onHand, lead } = published;
const rules: readonly { readonly name: string; readonly rule: LotRule; readonly record: typeof published.L4L }[] = [
  { name: "lot for lot", rule: { kind: "lot for lot" }, record: published.L4L },
  { name: "lots of 230", rule: { kind: "fixed", quantity: 230 }, record: published.FOQ230 },
  { name: "three periods a lot", rule: { kind: "periods", periods: 3 }, record: published.POQ3 },
];

describe("gross to net over time: the seat subassembly of Krajewski, Ritzman & Malhotra (source in mrp.json)", () => {
  it.each(rules)("is the printed record, $name", ({ rule, record }) => {
    const { projected, receipts, releases, overdue } = grossToNet({ gross, scheduled, onHand, safety: 0, lead }, rule);
    expect({ projected, receipts, releases }).toEqual(record);
    expect(overdue).toEqual([]);
  });
});
