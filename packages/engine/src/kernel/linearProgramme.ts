/**
 * Least `cost` · x with `low` ≤ x ≤ `high` and, row by row, `rowLow` ≤ Ax ≤ `rowHigh`. A is kept column by column: the entries of
 * column j stand from `starts[j]` to before `starts[j + 1]`. ±Infinity: no limit.
 */
export interface LinearProgramme {
  readonly cost: Float64Array;
  readonly low: Float64Array;
  readonly high: Float64Array;
  readonly rowLow: Float64Array;
  readonly rowHigh: Float64Array;
  readonly starts: Int32Array;
  readonly rows: Int32Array;
  readonly values: Float64Array;
}

/** What a solver says: `duals` are the prices of the rows, of the sign that a higher `rowLow` costs more. Nothing is taken on trust: see dualBound. */
export interface LinearAnswer {
  readonly status: 'optimal' | 'infeasible' | 'unbounded' | 'stopped';
  readonly value: number;
  readonly columns: Float64Array;
  readonly duals: Float64Array;
}

/** Solves a linear programme; handed in, as the engine has no solver of its own. */
export type SolveLinear = (programme: LinearProgramme) => LinearAnswer;

/**
 * What can a linear programme not be cheaper than, whatever the solver says? From any prices of its rows: prices that pay for a limit
 * that is not there are taken as 0, and what is left of each column's cost is paid at its cheaper end.
 *
 * @param programme - costs, limits and rows [unit of its rows]
 * @param duals - a price for each row; those of a solver give the best bound, any others a weaker one [cost per unit of the row]
 * @returns a value no solution is below (in exact arithmetic) [cost]; -Infinity where a column without an end has something left to gain
 * @source neumaier-shcherbina-2004, section 3 (from memory): the bound from approximate duals
 */
export function dualBound(programme: LinearProgramme, duals: ArrayLike<number>): number {
  const { cost, low, high, rowLow, rowHigh, starts, rows, values } = programme;
  const price = Float64Array.from(duals, (dual, row) =>
    (dual > 0 ? rowLow : rowHigh)[row] === (dual > 0 ? -Infinity : Infinity) ? 0 : dual,
  );
  let bound = 0;
  for (let row = 0; row < price.length; row++) {
    const dual = price[row]!;
    if (dual !== 0) bound += dual * (dual > 0 ? rowLow : rowHigh)[row]!;
  }
  for (let column = 0; column < cost.length; column++) {
    let left = cost[column]!;
    for (let entry = starts[column]!; entry < starts[column + 1]!; entry++)
      left -= price[rows[entry]!]! * values[entry]!;
    if (left !== 0) bound += left * (left > 0 ? low : high)[column]!;
  }
  return bound;
}
