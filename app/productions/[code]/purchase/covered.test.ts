import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import { Covered } from "./Covered";

const plan = { staging: { production: { code: "larks", lengths: "in" } } } as unknown as StagingPlan;
const reason = (garment: string) => ({ garment, role: "bar", quantity: 12, arithmetic: "12" });
const need = {
  material: "bar-flat",
  name: "Flat bars",
  measure: "count",
  oneLotSet: null,
  gross: 24,
  fromShelf: [{ lot: "B-1", quantity: 24 }],
  reasons: [reason("WL 001"), reason("WL 001"), reason("WL 002")],
} as const;

describe("what the shelf meets whole", () => {
  it("is listed with its lots and each of its garments once", () => {
    const text = renderToStaticMarkup(Covered({ plan, covered: [need] }));
    expect(text).toContain("lot B-1, 24");
    expect(text.match(/href="\/productions\/larks\/garments\/WL-00\d"/g)).toHaveLength(2);
  });

  it("is not mentioned when there is none", () => expect(Covered({ plan, covered: [] })).toBe(false));
});
