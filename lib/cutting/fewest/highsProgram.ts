import type { CoverProgram, CoverSolution, OpenProgram } from "./coverProgram";

/** What is used of the solver HiGHS, as its package `highs` offers it (persistent models, sparse matrices). */
export interface Highs {
  readonly infinity: number;
  readonly constants: { readonly modelStatus: { readonly optimal: number } };
  readonly createModel: () => HighsModel;
}

interface HighsModel {
  readonly options: { readonly set: (options: Readonly<Record<string, string | number | boolean>>) => void };
  readonly addRows: (rows: { readonly lower: Float64Array; readonly upper: Float64Array; readonly matrix: Matrix }) => unknown;
  readonly addCols: (columns: {
    readonly cost: Float64Array;
    readonly lower: Float64Array;
    readonly upper: Float64Array;
    readonly matrix: Matrix;
  }) => unknown;
  readonly changeColsBounds: (
    selection: { readonly kind: "set"; readonly indices: Int32Array },
    lower: Float64Array,
    upper: Float64Array,
  ) => unknown;
  readonly run: () => unknown;
  readonly getModelStatus: () => number;
  readonly getObjectiveValue: () => number;
  readonly getSolution: () => { readonly colValue: Float64Array; readonly rowDual: Float64Array };
  readonly dispose: () => void;
}

interface Matrix {
  readonly format: "csc" | "csr";
  readonly numRows: number;
  readonly numCols: number;
  readonly starts: Int32Array;
  readonly indices: Int32Array;
  readonly values: Float64Array;
}

/** The programme on HiGHS, which blocks its thread while it solves. Whoever starts the thread loads HiGHS once and passes it in. */
export const highsProgram =
  (highs: Highs): OpenProgram =>
  (counts) => {
    const model = highs.createModel();
    model.options.set({
      output_flag: false,
      presolve: "off",
      random_seed: 0,
      simplex_strategy: 4,
      primal_feasibility_tolerance: 1e-9,
      dual_feasibility_tolerance: 1e-9,
    });
    const none = { starts: new Int32Array(counts.length + 1), indices: new Int32Array(0), values: new Float64Array(0) };
    model.addRows({
      lower: Float64Array.from(counts),
      upper: new Float64Array(counts.length).fill(highs.infinity),
      matrix: { format: "csr", numRows: counts.length, numCols: 0, ...none },
    });
    let held: ReadonlyMap<number, number> = new Map();
    const program: CoverProgram = {
      add: (ways) => {
        if (ways.length === 0) return;
        const starts = new Int32Array(ways.length + 1);
        for (const [at, cuts] of ways.entries()) starts[at + 1] = starts[at]! + cuts.length;
        model.addCols({
          cost: new Float64Array(ways.length).fill(1),
          lower: new Float64Array(ways.length),
          upper: new Float64Array(ways.length).fill(highs.infinity),
          matrix: {
            format: "csc",
            numRows: counts.length,
            numCols: ways.length,
            starts,
            indices: Int32Array.from(ways.flatMap((cuts) => cuts.map(([place]) => place))),
            values: Float64Array.from(ways.flatMap((cuts) => cuts.map(([, times]) => times))),
          },
        });
      },
      atLeast: (fixed) => {
        const changed = [...new Set([...held.keys(), ...fixed.keys()])]
          .filter((way) => held.get(way) !== fixed.get(way))
          .sort((a, b) => a - b);
        held = fixed;
        if (changed.length === 0) return;
        const lower = Float64Array.from(changed, (way) => fixed.get(way) ?? 0);
        const upper = new Float64Array(changed.length).fill(highs.infinity);
        model.changeColsBounds({ kind: "set", indices: Int32Array.from(changed) }, lower, upper);
      },
      solve: (): CoverSolution => {
        model.run();
        if (model.getModelStatus() !== highs.constants.modelStatus.optimal) throw new Error(`HiGHS ended with ${model.getModelStatus()}.`);
        const { colValue, rowDual } = model.getSolution();
        return { value: model.getObjectiveValue(), times: colValue, worth: rowDual };
      },
      dispose: () => model.dispose(),
    };
    return program;
  };
