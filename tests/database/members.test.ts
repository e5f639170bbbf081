import { verifyPassword } from "better-auth/crypto";
import { beforeAll, describe, expect, it } from "vitest";
import type { AuthorizedCompany } from "#prisma/authorized";
import { database } from "#prisma/client";
import { addMember, changeMember, type ListedMember, listMembers, readAccessAudit } from "#prisma/people/members";
import { findMembership } from "#prisma/people/memberships";
import { newCompany, newSupervisor } from "./support/company";
import { serveDatabase } from "./support/serve";

serveDatabase();

let company: AuthorizedCompany;
let wren: string;
beforeAll(async () => {
  company = await newCompany("members");
  wren = await newSupervisor(company, "Wren");
});

const person = { name: "Lark", email: "Lark@Example.org", password: "quite long enough", role: "buyer" } as const;
const lark = async (): Promise<ListedMember> => {
  const found = (await listMembers(company)).find(({ name }) => name === "Lark");
  if (!found) throw new Error("not there");
  return found;
};

describe("a member", () => {
  it("is added with a part and a password, once an address, and it is written down", async () => {
    const both = await Promise.all([addMember(company, wren, person), addMember(company, wren, person)]);
    expect(both.map(({ ok }) => ok).sort()).toEqual([false, true]);
    expect(await lark()).toMatchObject({ email: "lark@example.org", role: "buyer", ended: null, version: 1 });
    expect(await readAccessAudit(company, 9)).toMatchObject([{ who: "Wren", action: "access given", detail: "Lark, as buyer" }]);
  });

  it("gets another part, unless somebody was faster", async () => {
    const { user, version } = await lark();
    expect((await changeMember(company, wren, { user, version, to: { role: "cutter" } })).ok).toBe(true);
    expect(await lark()).toMatchObject({ role: "cutter", version: 2 });
    expect(await changeMember(company, wren, { user, version, to: { role: "reader" } })).toEqual({ ok: false, error: "changed" });
  });

  it("whose access ends is signed out and comes in no more, until it is given again", async () => {
    const { user, version } = await lark();
    await database().session.create({ data: { id: "s", token: "t", userId: user, expiresAt: new Date(Date.now() + 1e6) } });
    expect((await changeMember(company, wren, { user, version, to: { ended: true } })).ok).toBe(true);
    expect(await database().session.count({ where: { userId: user } })).toBe(0);
    expect(await findMembership(user)).toBeNull();
    expect((await changeMember(company, wren, { user, version: version + 1, to: { ended: false } })).ok).toBe(true);
    expect(await findMembership(user)).toMatchObject({ company, role: "cutter" });
  });

  it("is given a new password, of which only the hash is kept", async () => {
    const { user, version } = await lark();
    await changeMember(company, wren, { user, version, to: { password: "another long one" } });
    const { password } = await database().account.findFirstOrThrow({ where: { userId: user } });
    expect(await verifyPassword({ hash: password ?? "", password: "another long one" })).toBe(true);
    expect((await readAccessAudit(company, 1))[0]?.detail).toBe("Lark");
  });

  it("of two companies keeps their password", async () => {
    const other = await newCompany("other house");
    const { user, version } = await lark();
    await database().membership.create({ data: { companyId: other, userId: user, role: "reader" } });
    const to = { password: "stolen, stolen" };
    expect(await changeMember(company, wren, { user, version, to })).toEqual({ ok: false, error: "elsewhere too" });
  });

  it("who is the last supervisor stays one", async () => {
    const last = (await listMembers(company)).find(({ user }) => user === wren)!;
    const { version } = last;
    expect(await changeMember(company, wren, { user: wren, version, to: { role: "reader" } })).toEqual({
      ok: false,
      error: "last supervisor",
    });
    expect(await changeMember(company, wren, { user: wren, version, to: { ended: true } })).toEqual({
      ok: false,
      error: "last supervisor",
    });
  });

  it("of another company is not found", async () => {
    const strangers = await newCompany("strangers");
    const magpie = await newSupervisor(strangers, "Magpie");
    const { user, version } = await lark();
    expect(await changeMember(strangers, magpie, { user, version, to: { role: "reader" } })).toEqual({ ok: false, error: "changed" });
    expect((await listMembers(strangers)).map(({ name }) => name)).toEqual(["Magpie"]);
    expect(await readAccessAudit(strangers, 9)).toEqual([]);
  });
});
