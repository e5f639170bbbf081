import { describe, expect, it } from "vitest";
import { FILES } from "#lib/staging/files";
import { ROLES } from "#prisma/people/memberships";
import { mayChange } from "./mayChange";

const changers = (file: string) => ROLES.filter((role) => mayChange(role, file));

describe("changing rows of a file", () => {
  it("is the supervisor's for every file, and no reader's for any", () => {
    for (const { name } of Object.values(FILES)) {
      expect(changers(name), name).toContain("supervisor");
      expect(changers(name), name).not.toContain("reader");
      expect(changers(name), name).not.toContain("stage management");
    }
  });

  it("follows from what somebody may do", () => {
    expect(changers("measurements.csv")).toEqual(["supervisor", "cutter", "maker"]);
    expect(changers("offers.csv")).toEqual(["supervisor", "buyer"]);
    expect(changers("casting.csv")).toEqual(["supervisor", "designer"]);
    expect(changers("production.csv")).toEqual(["supervisor"]);
  });

  it("of no file of a staging is a bug", () => {
    expect(() => mayChange("supervisor", "passwords.csv")).toThrow("is not a file of a staging");
  });
});
