import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { files, type Source, sources, texts } from "./sources";

/** Lines in which the pattern stands, as path:line: text. This folder spells out what it forbids, so it is left out. */
const found = (pattern: RegExp, where: readonly Source[]): string[] =>
  where
    .filter(({ path }) => !path.startsWith("tests/architecture/"))
    .flatMap(({ path, text }) =>
      text.split("\n").flatMap((line, at) => (pattern.test(line) ? [`${path}:${at + 1}: ${line.trim().slice(0, 120)}`] : [])),
    );

describe("what must not stand in a file", () => {
  it("no path of one machine", () => {
    expect(found(/(?<![\w.-])\/(work|root|home\/[a-z]|Users\/[A-Za-z])\/|(?<![\w.-])\/tmp\/\w|[A-Z]:\\Users/, texts)).toEqual([]);
  });

  it("no host of a package registry, and no address but of this machine, of examples and of sources", () => {
    expect(found(/registry\.(npmjs|yarnpkg)|deb\.debian|pypi\.org|proxy\.golang/, texts)).toEqual([]);
    expect(found(/\b(10|172\.(1[6-9]|2\d|3[01])|192\.168)\.\d{1,3}\.\d{1,3}(\.\d{1,3})?:\d/, texts)).toEqual([]);
  });

  it("the lock file names no host", () => {
    expect(files).toContain("package-lock.json");
    expect(readFileSync("package-lock.json", "utf8")).not.toMatch(/"resolved": "https?:/);
  });

  it("nothing is put off: do it, or write it into the list of what is not there yet", () => {
    expect(found(/\b(TODO|FIXME|XXX|HACK)\b/, sources)).toEqual([]);
  });

  it("no test is skipped or runs alone", () => {
    expect(found(/\b(it|test|describe)\.(skip|only|todo|fixme|skipIf|runIf|fails)\b|\b(xit|xdescribe|fit|fdescribe)\(/, sources)).toEqual(
      [],
    );
  });

  it("no lie to the type checker", () => {
    expect(found(/@ts-(ignore|nocheck)|\bas any\b|: any(?![\w.])/, sources)).toEqual([]);
  });
});

describe("names", () => {
  it("a file is named in one word of the field, with small letters, camel humps or a route's brackets", () => {
    const odd = files.filter((path) => /\.(ts|tsx|mjs)$/.test(path) && !/^[\w./[\]()@-]+$/.test(path));
    expect(odd).toEqual([]);
    const grabBags = files.filter((path) => /(^|\/)(utils?|helpers?|misc|common|stuff|manager)(\.|\/)/i.test(path));
    expect(grabBags).toEqual([]);
  });

  it("no file that a tool made is kept", () => {
    expect(files.filter((path) => /(^|\/)(\.next|\.build|\.tarlatan|node_modules|generated|test-results)\//.test(path))).toEqual([]);
  });
});
