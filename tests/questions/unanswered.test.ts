import { readdirSync } from "node:fs";
import { expect, it } from "vitest";
import { QUESTIONS } from "#lib/questions/registry";

const unanswered = QUESTIONS.filter(({ answer }) => answer === null);
const numberOf = (number: number) => String(number).padStart(2, "0");

it("there are twenty-five questions, each with a name of its own, in both usages", () => {
  expect(QUESTIONS.map(({ number }) => number)).toEqual(Array.from({ length: 25 }, (_, at) => at + 1));
  expect(new Set(QUESTIONS.map(({ code }) => code)).size).toBe(25);
  for (const { asks } of QUESTIONS) for (const words of [asks.uk, asks.us]) expect(words).toMatch(/\?$/);
});

it("each that is answered has its test here, and those not answered yet are named", () => {
  const tested = readdirSync(new URL(".", import.meta.url)).filter((name) => /^\d\d\.test\.ts$/.test(name));
  expect(tested.sort()).toEqual(QUESTIONS.filter(({ answer }) => answer !== null).map(({ number }) => `${numberOf(number)}.test.ts`));
  console.log(["Questions not answered yet", ...unanswered.map(({ number, asks }) => `  ${numberOf(number)}. ${asks.uk}`)].join("\n"));
});
