import AxeBuilder from "@axe-core/playwright";
import { type BrowserContext, test as base, expect, type Page } from "@playwright/test";
import { signIn } from "./signIn";
import type { Person } from "./startApp";

export { expect };

/** The demonstration's users. */
const people = (): readonly Person[] => JSON.parse(process.env.TARLATAN_TEST_PEOPLE ?? "[]");

/** The first of the demonstration's users with a role ("supervisor", "maker", ...). */
export function personWith(role: string): Person {
  const found = people().find((person) => person.role === role);
  if (!found)
    throw new Error(
      `The demonstration has no ${role}: ${people()
        .map((person) => person.role)
        .join(", ")}`,
    );
  return found;
}

interface Options {
  /** Role of the person who is signed in before the test begins; null for nobody: test.use({ as: "maker" }) */
  as: string | null;
}

type Session = { cookies: Awaited<ReturnType<BrowserContext["cookies"]>>; origins: [] };

interface Shared {
  /** Signs in once for each role and worker, and remembers the cookies. */
  sessionOf: (role: string) => Promise<Session>;
}

export const test = base.extend<Options, Shared>({
  as: [null, { option: true }],
  sessionOf: [
    async ({ browser }, use) => {
      const kept = new Map<string, Session>();
      await use(async (role) => {
        const known = kept.get(role);
        if (known) return known;
        const page = await browser.newPage();
        await signIn(page, process.env.TARLATAN_TEST_ADDRESS ?? "", personWith(role));
        const state: Session = { cookies: await page.context().cookies(), origins: [] };
        await page.close();
        kept.set(role, state);
        return state;
      });
    },
    { scope: "worker" },
  ],
  storageState: async ({ as, sessionOf }, use) => use(as ? await sessionOf(as) : undefined),
});

/** Expects that axe finds nothing against WCAG 2.2 A and AA on the page as it is now. */
export async function expectAccessible(page: Page): Promise<void> {
  const { violations } = await new AxeBuilder({ page }).withTags(["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"]).analyze();
  const found = violations.map(({ id, help, nodes }) => `${id}: ${help} at ${nodes.map(({ target }) => target.join(" ")).join("; ")}`);
  expect(found).toEqual([]);
}
