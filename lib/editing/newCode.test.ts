import { describe, expect, it } from "vitest";
import { smallStaging } from "#lib/staging/fixtures";
import { newCode } from "./newCode";

describe("a new code", () => {
  it("is made of the name, and is nobody else's", () => {
    const staging = smallStaging();
    expect(newCode(staging, "makers.csv", "Élodie  O'Reed")).toBe("elodie-o-reed");
    expect(newCode(staging, "makers.csv", "Orla")).toBe("orla-2");
    expect(newCode(staging, "makers.csv", "!?")).toBe("new");
  });
});
