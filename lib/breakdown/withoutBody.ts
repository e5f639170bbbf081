import type { Construction, NeedRule, NetLayer } from "#lib/constructions/construction";
import { FormulaReader, namesIn } from "./formulaReader";
import type { GarmentWork } from "./work";

/** What stands where arithmetic would name a body. */
export const WITHHELD = "Counted from the body it is made for: shown to those who cut, make and fit.";

/** Sums over the layer table that follow its parameters alone. */
const BODILESS_SUMS: ReadonlySet<string> = new Set(["net.layers", "net.top", "net.casings", "net.casing"]);

/**
 * The work as somebody sees it who may not see measurements: nothing is left from which a body can be read or worked back. Drivers that
 * follow the body fall away, and the layers that a section is drawn from to scale; arithmetic, pieces and notes that name it are
 * withheld. Minutes stay, and the quantities that are bought.
 */
export const withoutBody = (work: GarmentWork, construction: Construction | null): GarmentWork => {
  const { drivers, needs, operations } = construction ? bodily(construction) : { drivers: NONE, needs: NONE, operations: NONE };
  return {
    ...work,
    drivers: work.drivers.filter(({ code }) => !drivers.has(code)),
    layers: construction?.layers.some((row) => namesBody(row)) ? [] : work.layers,
    operations: work.operations.map((operation) => (operations.has(operation.code) ? { ...operation, arithmetic: WITHHELD } : operation)),
    needs: work.needs.map((need) => (needs.has(need.role) ? { ...need, cuts: [], arithmetic: WITHHELD } : need)),
    notes: work.notes.filter(({ kind }) => kind !== "measurement"),
  };
};

const NONE: ReadonlySet<string> = new Set();
const formulas = new FormulaReader();

/** Codes of drivers and operations, and roles of needs, that follow the body: directly, or by a driver or a sum that does. */
const bodily = (construction: Construction) => {
  const table = construction.layers.some(namesBody);
  const drivers = new Set<string>();
  const follows = (...texts: readonly string[]): boolean =>
    texts.some((text) =>
      names(text).some(
        (name) => name.startsWith("body.") || drivers.has(name) || (table && name.startsWith("net.") && !BODILESS_SUMS.has(name)),
      ),
    );
  for (const { code, formula } of construction.drivers) if (follows(formula)) drivers.add(code);
  const cutFrom = (need: NeedRule) => (need.cut === "net layers" ? table : follows(need.formula, need.count, need.breadth));
  return {
    drivers,
    operations: new Set(
      construction.operations.filter(({ rates }) => rates.some((rate) => drivers.has(rate.driver))).map(({ code }) => code),
    ),
    needs: new Set(construction.needs.filter(cutFrom).map(({ role }) => role)),
  };
};

const namesBody = (row: NetLayer): boolean =>
  [row.count, row.depth, row.fullness, row.seam, row.drop, row.dyed, row.casing].some((text) =>
    names(text).some((name) => name.startsWith("body.")),
  );

const names = (text: string): readonly string[] => {
  const tree = text === "" ? null : formulas.tree(text);
  return tree?.ok ? namesIn(tree.value) : [];
};
