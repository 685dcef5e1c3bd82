import type { LinearAnswer, LinearProgramme, SolveLinear } from '@eavewell/engine';
import highsModule, { type Highs } from 'highs';

/** Its types are those of CommonJS, where a default stands in a field; what is imported is the function itself. */
const loadHighs = highsModule as unknown as typeof highsModule.default;

/**
 * Loads the solver of linear programmes (HiGHS in WebAssembly): once, some 3.5 MB.
 *
 * @returns a function that solves one programme after the other, each in memory of its own that is given back
 * @definition ours: docs/decisions/0340-linear-programmes-are-solved-by-highs.md
 */
export async function loadSolveLinear(): Promise<SolveLinear> {
  const highs = await loadHighs();
  return (programme) => solve(highs, programme);
}

function solve(highs: Highs, programme: LinearProgramme): LinearAnswer {
  const { cost, low, high, rowLow, rowHigh, starts, rows, values } = programme;
  const model = highs.createModel();
  try {
    model.options.set('output_flag', false);
    model.passModel({
      numCols: cost.length,
      numRows: rowLow.length,
      colCost: cost,
      colLower: low,
      colUpper: high,
      rowLower: rowLow,
      rowUpper: rowHigh,
      matrix: { format: 'csc', numRows: rowLow.length, numCols: cost.length, starts, indices: rows, values },
    });
    model.run();
    const { optimal, infeasible, unbounded, unboundedOrInfeasible } = highs.constants.modelStatus;
    const status = model.getModelStatus();
    const { colValue, rowDual } = model.getSolution();
    const isWithout = status === infeasible || status === unboundedOrInfeasible;
    return {
      status:
        status === optimal ? 'optimal' : isWithout ? 'infeasible' : status === unbounded ? 'unbounded' : 'stopped',
      value: cost.reduce((sum, each, column) => sum + each * (colValue[column] ?? 0), 0),
      columns: colValue,
      duals: rowDual,
    };
  } finally {
    model.dispose();
  }
}
