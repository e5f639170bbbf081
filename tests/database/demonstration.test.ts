import { verifyPassword } from "better-auth/crypto";
import { describe, expect, it } from "vitest";
import type { PlainDate } from "#lib/calendar/plainDate";
import { readStaging } from "#lib/staging/readStaging";
import { shiftDates } from "#lib/staging/shiftDates";
import { database } from "#prisma/client";
import { seedFiles } from "#prisma/demonstration/files";
import { loadDemonstration } from "#prisma/demonstration/load";
import { membershipsOf } from "#prisma/people/memberships";
import { loadStaging } from "#prisma/stagings/load";
import { saveStaging } from "#prisma/stagings/save";
import { newCompany } from "./support/company";
import { serveDatabase } from "./support/serve";

const given = serveDatabase();
const today = "2026-11-25" as PlainDate;

const seed = async (name: string) => {
  const read = readStaging(await seedFiles(name));
  if (!read.ok) throw new Error(JSON.stringify(read.error, null, 2));
  return read.value;
};

describe("the demonstration", () => {
  it("is loaded into an empty database, once, however many ask", async () => {
    const asked = await Promise.all([loadDemonstration(given.url, { today }), loadDemonstration(given.url, { today })]);
    expect(asked.map((one) => one.loaded).sort()).toEqual([false, true]);
    expect(await loadDemonstration(given.url, { today })).toEqual({ loaded: false, users: [] });
    expect(await database().production.count()).toBe(1);
    const { users } = asked.find((one) => one.loaded) ?? { users: [] };
    expect(users.map((user) => user.role)).toEqual(["supervisor", "cutter", "maker", "buyer", "reader"]);
    expect(new Set(users.map((user) => user.password)).size).toBe(5);
    for (const { email, password, role } of users) {
      const user = await database().user.findUniqueOrThrow({ where: { email }, include: { accounts: true } });
      expect(await verifyPassword({ hash: user.accounts[0].password ?? "", password })).toBe(true);
      expect(await membershipsOf(user.id)).toMatchObject([{ role }]);
    }
  });

  it("is the small seed, moved to the next Monday", async () => {
    const supervisor = await database().membership.findFirstOrThrow({ where: { role: "supervisor" } });
    const [{ company }] = await membershipsOf(supervisor.userId);
    const expected = shiftDates(await seed("small"), today);
    expect(expected.production.starts).toBe("2026-11-30");
    expect((await loadStaging(company, expected.production.code))?.staging).toEqual(expected);
  });
});

describe("the small seed", () => {
  it("comes back from the database exactly as its files say", async () => {
    const company = await newCompany("seed");
    const staging = await seed("small");
    expect((await saveStaging(company, null, staging)).ok).toBe(true);
    expect((await loadStaging(company, staging.production.code))?.staging).toEqual(staging);
  });
});
