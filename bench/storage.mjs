import { criticalVolumes, dayByDay, judgedRules } from '@eavewell/engine';
import { leanDryDays, madeBalance, median, timed } from './plainRun.mjs';

const sizes = Array.from({ length: 200 }, (_, i) => 500 * (i + 1));
const rounds = 41;

/** Every size at once against 200 plain runs, in turn, in one process; the answers are compared first. */
export function storageBench() {
  const lines = [];
  for (const passes of [1, 2]) {
    const balance = madeBalance(20261125);
    const rules = { ...judgedRules, passes };
    const curve = () => criticalVolumes(balance, rules, 0).critical_L.sort();
    assertExact(balance, rules, passes);
    const ratios = { lean: [], own: [], one: [], unsorted: [] };
    for (let round = 0; round < rounds; round++) {
      const all = timed(curve);
      const unsorted = timed(() => criticalVolumes(balance, rules, 0).critical_L);
      const lean = timed(() => sizes.map((size) => leanDryDays(balance, size, passes)));
      const own = round % 8 === 0 ? timed(() => sizes.map((size) => dayByDay(balance, size, rules))) : null;
      ratios.lean.push(lean / all);
      ratios.unsorted.push(lean / unsorted);
      ratios.one.push(all / (lean / sizes.length));
      if (own !== null) ratios.own.push(own / all);
    }
    lines.push(
      `${passes} pass${passes > 1 ? 'es' : ''}: every size at once with its sorted curve is ${median(ratios.lean).toFixed(1)} × faster than 200 lean plain runs ` +
        `(${median(ratios.unsorted).toFixed(1)} × without the sort, ${median(ratios.own).toFixed(1)} × against 200 runs of dayByDay); ` +
        `it costs ${median(ratios.one).toFixed(1)} lean plain runs (the lower bound)`,
    );
  }
  return lines;
}

function assertExact(balance, rules, passes) {
  const critical_L = criticalVolumes(balance, rules, 0).critical_L;
  for (const size of sizes) {
    const counted = critical_L.reduce((dry, critical) => dry + (critical > size ? 1 : 0), 0);
    if (counted !== leanDryDays(balance, size, passes)) throw new Error(`dry days differ at ${size} L`);
  }
}
