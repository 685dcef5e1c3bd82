/**
 * The baseline of every ratio here: the least a day-by-day run can do, written as one would in C. Draw, rain, spill; count
 * the days whose judged litres are not met. It keeps no series and no litres.
 */
export function leanDryDays(balance, tankVolume_L, passes) {
  const { inflow_L, judged_L, other_L } = balance;
  const days = inflow_L.length;
  let content = 0;
  let dry = 0;
  for (let pass = 0; pass < passes; pass++) {
    dry = 0;
    for (let day = 0; day < days; day++) {
      const judged = judged_L[day];
      if (content < judged) dry++;
      content = Math.min(tankVolume_L, Math.max(0, content - judged - other_L[day]) + inflow_L[day]);
    }
  }
  return dry;
}

/** 30 years of made rain on a roof, from a seed: a wet and a dry season, wet days that follow wet days. */
export function madeBalance(seed, days = 10_957) {
  let state = seed >>> 0;
  const next = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 4294967296;
  };
  const inflow_L = new Float64Array(days);
  let wet = false;
  for (let day = 0; day < days; day++) {
    const season = 0.5 + 0.45 * Math.sin((2 * Math.PI * day) / 365.25);
    wet = next() < (wet ? 0.3 + 0.45 * season : 0.55 * season);
    if (wet) inflow_L[day] = -Math.log(1 - next()) * 12 * 300 * 0.8;
  }
  return { inflow_L, judged_L: new Float64Array(days).fill(1500), other_L: new Float64Array(days).fill(900) };
}

export function median(values) {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[sorted.length >> 1];
}

/** Milliseconds of one call. */
export function timed(work) {
  const start = performance.now();
  work();
  return performance.now() - start;
}
