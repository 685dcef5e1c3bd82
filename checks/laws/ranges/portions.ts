import fc from 'fast-check';
import type { Portion } from '../../../packages/engine/src/water/waterTests/index.ts';

const volume_mL = fc.double({ min: -3, max: 2.5, noNaN: true }).map((power) => 10 ** power);

const wells = fc.tuple(volume_mL, fc.integer({ min: 1, max: 60 }), fc.double({ min: 0, max: 1, noNaN: true })).map(
  ([volume, wells_count, share]): Portion => ({
    kind: 'wells',
    volume_mL: volume,
    wells_count,
    positive_count: Math.round(share * wells_count),
  }),
);
const plate = fc
  .tuple(volume_mL, fc.integer({ min: 0, max: 300 }))
  .map(([volume, colonies_count]): Portion => ({ kind: 'plate', volume_mL: volume, colonies_count }));
const uncountable = fc
  .tuple(volume_mL, fc.integer({ min: 1, max: 300 }))
  .map(([volume, limit_count]): Portion => ({ kind: 'uncountable', volume_mL: volume, limit_count }));

/** Samples as laboratories might have them: sound portions of every kind, also such that contradict each other. */
export const somePortions = fc.array(fc.oneof({ weight: 3, arbitrary: wells }, plate, uncountable), {
  minLength: 1,
  maxLength: 6,
});

const anything = fc.oneof(
  fc.constantFrom(0, -1, 0.5, 1, 2, 3, Number.NaN, Infinity, -Infinity, 1e-300, 1e300),
  fc.double(),
);

/** Portions with anything in them. */
export const anyPortion: fc.Arbitrary<Portion> = fc.oneof(
  fc.record({
    kind: fc.constant('wells' as const),
    volume_mL: anything,
    wells_count: anything,
    positive_count: anything,
  }),
  fc.record({ kind: fc.constant('plate' as const), volume_mL: anything, colonies_count: anything }),
  fc.record({ kind: fc.constant('uncountable' as const), volume_mL: anything, limit_count: anything }),
);
