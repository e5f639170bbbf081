import { describe, expect, it } from "vitest";
import { medianWork } from "#lib/breakdown/medianWork";
import type { Parameter } from "#lib/constructions/construction";
import { library, named } from "./library";

/** The more of these, the less work or cloth: hems higher off the floor, tacks farther apart. */
const LESSENING = ["fromFloor", "tackSpacing"];
/** A deeper basque leaves less to the panels of net; of many tiers all but the lowest are narrower than a single one. */
const SAVES_NET = ["romantic-tutu basqueDepth", "petticoat tiers"];

type Measured = Parameter & { readonly kind: "count" | "length" | "ratio" };
const cases = library.flatMap(({ code, parameters }) =>
  parameters.flatMap((parameter) =>
    parameter.kind === "choice" || parameter.kind === "yes-no" ? [] : [{ construction: code, parameter: parameter as Measured }],
  ),
);

describe("more of a parameter never takes fewer minutes of an operation, nor less of a material", () => {
  it.each(cases)("$construction, $parameter.code", ({ construction, parameter }) => {
    const made = [parameter.min, parameter.max].map((end) => medianWork(named(construction), { [parameter.code]: String(end) }));
    const [less, more] = LESSENING.includes(parameter.code) ? made.reverse() : made;
    for (const { code, minutes } of less!.operations)
      expect(more!.operations.find((operation) => operation.code === code)?.minutes[1], code).toBeGreaterThanOrEqual(minutes[1]);
    const saves = SAVES_NET.includes(`${construction} ${parameter.code}`);
    for (const { role, quantity } of less!.needs.filter((need) => !(saves && need.role === "net")))
      expect(more!.needs.find((need) => need.role === role)?.quantity, role).toBeGreaterThanOrEqual(quantity);
  });
});
