import type { Balance } from '@eavewell/engine';

/** A small linear congruential source, so that a record depends on its number alone. Numerical Recipes' constants. */
export function numbersFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 4294967296;
  };
}

/** A record of whole litres, exact in doubles: dry and wet stretches, days without demand, sometimes without other purposes. */
export function wholeRecord(seed: number): Balance {
  const next = numbersFrom(seed * 7919 + 17);
  for (let i = 0; i < 8; i++) next();
  const days = 1 + Math.floor(next() * 60);
  const most = 1 + Math.floor(next() * 12);
  const rainChance = next();
  const idleChance = next() < 0.3 ? 0.3 : 0;
  const constant = next() < 0.4 ? 1 + Math.floor(next() * most) : 0;
  const withOther = next() < 0.5;
  const whole = () => Math.floor(next() * (most + 1));
  const demand = () => (next() < idleChance ? 0 : constant || whole());
  return {
    inflow_L: Float64Array.from({ length: days }, () => (next() < rainChance ? Math.floor(next() * 4 * most) : 0)),
    judged_L: Float64Array.from({ length: days }, demand),
    other_L: Float64Array.from({ length: days }, () => (withOther ? whole() : 0)),
  };
}

/** A record of litres with all their bits, as rain on a roof gives. */
export function realRecord(seed: number, days: number): Balance {
  const next = numbersFrom(seed * 104729 + 3);
  for (let i = 0; i < 8; i++) next();
  const judged = 50 + next() * 3000;
  const other = next() < 0.5 ? 0 : next() * 2000;
  const area = 20 + next() * 500;
  const chance = 0.1 + 0.5 * next();
  return {
    inflow_L: Float64Array.from({ length: days }, () =>
      next() < chance ? -Math.log(1 - next()) * 14 * area * 0.8 : 0,
    ),
    judged_L: new Float64Array(days).fill(judged),
    other_L: new Float64Array(days).fill(other),
  };
}
