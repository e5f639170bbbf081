import { describe, expect, it } from "vitest";
import { staging } from "#lib/planning/fixtures";
import { readOptions } from "./options";
import { QUESTIONS, questionMeant } from "./registry";

const known = QUESTIONS.find(({ code }) => code === "hours-left")!.options;
const read = (given: Record<string, string>) => {
  const options = readOptions(known, new Map(Object.entries(given)), staging());
  return options.ok ? options.value.text("skill") : options.error;
};

describe("the options of a question", () => {
  it("are judged by the staging", () => {
    expect(read({ skill: "net", before: "parade" })).toBe("net");
    expect(read({ before: "parad" })).toBe(
      '--before: There is no milestone "parad". Did you mean "parade"? Otherwise: there are: parade, opening.',
    );
    expect(read({ skill: "knitting" })).toContain("There are: net, pattern");
  });

  it("that it does not have are refused, with those it has", () => {
    expect(read({ skil: "net" })).toBe('This question has no option --skil. Did you mean "skill"? Otherwise: it takes --skill, --before.');
  });
});

describe("a question", () => {
  it("is meant by its name or its number", () => {
    for (const written of ["net", "8"]) {
      const meant = questionMeant(written);
      expect(meant.ok && meant.value.number).toBe(8);
    }
    const meant = questionMeant("hour-left");
    expect(meant.ok ? "" : meant.error).toContain('Did you mean "hours-left"?');
  });
});
