import { describe, expect, it } from "vitest";
import { meant, nearest, suggestFor } from "./nearest";

describe("nearest", () => {
  it("finds the word a slip of the pen meant", () => {
    expect(nearest("bodcie", ["skirt", "bodice"])).toBe("bodice");
    expect(nearest("Snow", ["swan", "snow"])).toBe("snow");
    expect(nearest("bild", ["build", "buy", "pull"])).toBe("build");
  });

  it("keeps silent when nothing is near", () => {
    expect(nearest("tiara", ["skirt", "bodice"])).toBeNull();
    expect(nearest("x".repeat(1000), ["x"])).toBeNull();
    expect(meant("tiara", ["skirt"], "Add a row.")).toBe("Add a row.");
  });

  it("stops suggesting after as many as it was told", () => {
    const suggest = suggestFor(1);
    expect(suggest("skrit", ["skirt"], "Add a row.")).toContain("skirt");
    expect(suggest("skrit", ["skirt"], "Add a row.")).toBe("Add a row.");
  });
});
