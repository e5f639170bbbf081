import { verifyPassword } from "better-auth/crypto";
import { describe, expect, it } from "vitest";
import { database } from "#prisma/client";
import { findMembership, membershipsOf } from "#prisma/people/memberships";
import { anybodyHere, createFirstSupervisor, createUser } from "#prisma/people/users";
import { newCompany } from "./support/company";
import { serveDatabase } from "./support/serve";

serveDatabase();

const first = { companyName: "Reed Ballet", name: "Wren", email: " Wren@Example.org ", password: "a long password" };

describe("an empty database", () => {
  it("has nobody, and takes one first supervisor however many ask at once", async () => {
    expect(await anybodyHere()).toBe(false);
    const asked = await Promise.all([createFirstSupervisor(first), createFirstSupervisor({ ...first, email: "other@example.org" })]);
    expect(asked.map((one) => one.ok).sort()).toEqual([false, true]);
    expect(await anybodyHere()).toBe(true);
    expect(await database().user.count()).toBe(1);
    expect(await createFirstSupervisor(first)).toEqual({ ok: false, error: "somebody is here" });
    expect(await database().company.count()).toBe(1);
  });
});

describe("a user", () => {
  it("has a password of which only the hash is kept", async () => {
    const company = await newCompany("hashed");
    const person = { name: "Lark", email: "Lark@Example.org", password: "quite long enough", role: "buyer" } as const;
    const userId = await database().$transaction((tx) => createUser(tx, company, person));
    const account = await database().account.findFirstOrThrow({ where: { userId } });
    expect(account.password).not.toContain(person.password);
    expect(await verifyPassword({ hash: account.password ?? "", password: person.password })).toBe(true);
    expect((await database().user.findUniqueOrThrow({ where: { id: userId } })).email).toBe("lark@example.org");
    expect(await findMembership(userId)).toEqual({ company, companyName: "hashed", role: "buyer" });
  });

  it("belongs to the companies whose membership has not ended", async () => {
    const [one, other] = [await newCompany("b company"), await newCompany("a company")];
    const person = { name: "Finch", email: "finch@example.org", password: "quite long enough", role: "maker" } as const;
    const userId = await database().$transaction((tx) => createUser(tx, one, person));
    await database().membership.create({ data: { companyId: other, userId, role: "reader" } });
    expect((await membershipsOf(userId)).map((found) => found.companyName)).toEqual(["a company", "b company"]);
    await database().membership.updateMany({ where: { companyId: other, userId }, data: { endedAt: new Date() } });
    expect(await findMembership(userId)).toMatchObject({ company: one, role: "maker" });
    expect(await findMembership("nobody")).toBeNull();
  });
});
