// What several runs of the same steps come to: the longest task of each run, its median and the worst of them.

const median = (values) => {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
};

/**
 * A table for results.
 *
 * @param runs - tasks and most rows of each step by its name, run after run
 * @param long_ms - a task over this is long
 * @returns lines of Markdown: longest task by CPU and by the clock, median and worst [ms]; runs with a long one by either; most rows
 */
export function runsTable(runs, long_ms) {
  const figure = (value) => value.toFixed(0);
  const rows = [...runs[0].keys()].map((name) => {
    const of = runs.map((run) => run.get(name));
    const cpu = of.map(({ tasks }) => Math.max(0, ...tasks.map(({ cpu_ms }) => cpu_ms)));
    const wall = of.map(({ tasks }) => Math.max(0, ...tasks.map(({ wall_ms }) => wall_ms)));
    const over = (values) => `${values.filter((value) => value > long_ms).length} of ${runs.length}`;
    const told = (values) => `${figure(median(values))} (${figure(Math.max(...values))})`;
    return `| ${name} | ${told(cpu)} | ${over(cpu)} | ${told(wall)} | ${over(wall)} | ${Math.max(...of.map(({ rows }) => rows))} |`;
  });
  return [
    `| ${runs.length} runs: longest task [ms], median (worst) | CPU | runs over ${long_ms} | by the clock | runs over ${long_ms} | most rows |`,
    '| --- | --- | --- | --- | --- | --- |',
    ...rows,
  ].join('\n');
}
