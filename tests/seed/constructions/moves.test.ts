import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { library, named } from "./library";
import { type Moved, moved } from "./moved";

type Move = Moved & { readonly to: string };
const FOLDER = "tests/seed/constructions/moves";
/** By construction, then parameter: what each value given moves. One file a construction. */
const expected: Readonly<Record<string, Readonly<Record<string, readonly Move[]>>>> = Object.fromEntries(
  readdirSync(FOLDER).map((file) => [file.replace(".json", ""), JSON.parse(readFileSync(`${FOLDER}/${file}`, "utf8"))]),
);

const parameters = Object.entries(expected).flatMap(([construction, byParameter]) =>
  Object.entries(byParameter).map(([parameter, each]) => ({ construction, parameter, each })),
);

describe("changing a parameter moves these minutes and this cloth, and no other", () => {
  it.each(parameters)("$construction, $parameter", ({ construction, parameter, each }) => {
    expect(each.map(({ to }) => ({ to, ...moved(named(construction), parameter, to) }))).toEqual(each);
  });
});

describe("every parameter of every construction", () => {
  it("is in the list of moves, and nothing else is", () => {
    const listed = parameters.map(({ construction, parameter }) => `${construction} ${parameter}`).sort();
    expect(listed).toEqual(library.flatMap(({ code, parameters }) => parameters.map((parameter) => `${code} ${parameter.code}`)).sort());
  });

  it.each(parameters)("moves something: $construction, $parameter", ({ each }) => {
    expect(each.some(({ minutes, cloth }) => minutes.length + cloth.length > 0)).toBe(true);
  });

  it("that is a choice has every other option in the list", () => {
    for (const { code, parameters } of library)
      for (const parameter of parameters)
        if (parameter.kind === "choice")
          expect(expected[code]?.[parameter.code]?.map(({ to }) => to)).toEqual(
            parameter.options.map((option) => option.code).filter((option) => option !== parameter.value),
          );
  });
});
