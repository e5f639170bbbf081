import { readdirSync, readFileSync } from "node:fs";
import { join, relative } from "node:path";
import { describe, expect, it } from "vitest";

const APP = new URL("..", import.meta.url).pathname;
const files = readdirSync(APP, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name) && !/\.test\.tsx?$/.test(entry.name))
  .map((entry) => join(entry.parentPath, entry.name))
  .map((path) => ({ path: relative(APP, path), text: readFileSync(path, "utf8") }));

const isActionFile = (text: string) => /^\s*["']use server["']/.test(text);

/** Who need not be signed in: the door, and the page that asks for the first supervisor. */
const OPEN = ["sign-in/actions.ts", "first-supervisor/actions.ts"];
const OPEN_PAGES = ["sign-in/page.tsx", "first-supervisor/page.tsx"];

describe("the gate", () => {
  it("is passed by every server action", () => {
    const actions = files.filter(({ text }) => isActionFile(text));
    expect(actions.length).toBeGreaterThanOrEqual(4);
    for (const { path, text } of actions) {
      const exported = text.match(/^export .*/gm) ?? [];
      expect(exported.length, path).toBeGreaterThan(0);
      for (const line of exported) {
        const made = /^export const \w+ = (memberAction|editAction|rowAction|registerAction|takeBackAction|openAction)\(/.exec(line)?.[1];
        expect(made, `${path}: ${line}`).toBeDefined();
        if (made === "openAction") expect(OPEN).toContain(path);
      }
    }
  });

  it("is not slipped past by an action written inside a component", () => {
    const inside = files.filter(({ text }) => !isActionFile(text) && /["']use server["'];/.test(text));
    expect(inside.map(({ path }) => path)).toEqual([]);
  });

  it("is passed by every page and every address that answers", () => {
    const answering = files.filter(({ path }) => /(^|\/)(page\.tsx|route\.ts)$/.test(path));
    expect(answering.length).toBeGreaterThanOrEqual(10);
    const unguarded = answering.filter(({ text }) => !/await require(Member|Production)\(/.test(text)).map(({ path }) => path);
    expect(unguarded.sort()).toEqual(OPEN_PAGES.toSorted());
  });
});
