import { describe, expect, it } from "vitest";
import { ROLES } from "#prisma/people/memberships";
import { may } from "./may";

describe("may", () => {
  it("keeps measurements from readers, buyers, designers and stage management", () => {
    expect(ROLES.filter((role) => may(role, "measurements"))).toEqual(["supervisor", "cutter", "maker"]);
  });

  it("shows sheets whole and over time to who leads and who cuts", () => {
    expect(ROLES.filter((role) => may(role, "sheets"))).toEqual(["supervisor", "cutter"]);
  });

  it("lets everybody read and only the supervisor bring files in", () => {
    expect(ROLES.every((role) => may(role, "read"))).toBe(true);
    expect(ROLES.filter((role) => may(role, "import"))).toEqual(["supervisor"]);
  });
});
