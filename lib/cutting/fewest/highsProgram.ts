import type { Highs } from "highs";
import type { CoverProgram, CoverSolution, OpenProgram } from "./coverProgram";
import type { Cuts } from "./job";

/** The programme on HiGHS, which blocks its thread while it solves. Whoever starts the thread loads HiGHS once and passes it in. */
export const highsProgram =
  (highs: Highs): OpenProgram =>
  (counts) => {
    const model = highs.createModel();
    model.options.set({ output_flag: false, presolve: "off", random_seed: 0 });
    const none = { starts: new Int32Array(counts.length + 1), indices: new Int32Array(0), values: new Float64Array(0) };
    model.addRows({ lower: Float64Array.from(counts), upper: new Float64Array(counts.length).fill(highs.infinity), matrix: {format:"csr",numRows:counts.length,numCols:0,...none} } as never);
    const program: CoverProgram = {
      add: (ways) => {
        for (const cuts of ways) model.addCol(1, 0, highs.infinity, entriesOf(cuts));
      },
      atLeast: (ways, times) => {
        for (const [at, way] of ways.entries()) model.changeColBounds(way, times[at]!, highs.infinity);
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

const entriesOf = (cuts: Cuts) => ({ indices: cuts.map(([place]) => place), values: cuts.map(([, times]) => times) });
