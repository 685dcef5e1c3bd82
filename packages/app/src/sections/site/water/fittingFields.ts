import type { SiteFacts } from '@eavewell/engine';
import type { AppLanguage } from '@eavewell/words/app';
import { type FittingStep, fittingMeasures } from '../../../water/index.ts';
import { fittingName, fittingUnit } from './fittingWords.ts';
import type { MeasureLimits } from './measureEntry.ts';
import { limitsOf, type OneMeasure } from './measures.ts';

/** Where each field begins, what a key of an arrow moves it by, and to how many decimals it is shown. Ours. */
const steps: Readonly<Record<FittingStep['measure'], readonly [step: number, decimals: number]>> = {
  width_mm: [5, 1],
  fall_mm_per_m: [0.5, 2],
  outlets_count: [1, 0],
  bore_mm: [5, 1],
  overflowBore_mm: [5, 1],
  standHeight_m: [0.1, 2],
  tapHeight_m: [0.1, 2],
};

function fittingLimits(measure: FittingStep['measure']): MeasureLimits {
  const [step, decimals] = steps[measure];
  return { ...limitsOf(measure, step, decimals), ...(measure === 'outlets_count' ? { isWhole: true } : {}) };
}

/**
 * What can be tried of gutters, pipes, overflows, stands and taps: of each that the site has a row of.
 *
 * @param saved - the site as it is saved
 * @param now - with the draft
 * @param words - the language of the page
 * @returns fields: widths and bores [mm], falls [mm/m], outlets [count], heights [m]
 */
export function fittingFieldsOf(
  saved: SiteFacts,
  now: SiteFacts,
  words: Pick<AppLanguage, 'say'>,
): readonly OneMeasure[] {
  const field = (
    given: Omit<FittingStep, 'kind' | 'value'>,
    value: number | null,
    before: number | null,
  ): OneMeasure => {
    const step = { kind: 'fitting', ...given } as Omit<FittingStep, 'value'>;
    return {
      key: `${given.of}:${given.id}:${given.measure}`,
      label: fittingName(given, words),
      unit: fittingUnit[given.measure],
      value,
      saved: before,
      limits: fittingLimits(given.measure),
      step: (next) => ({ ...step, value: next }) as FittingStep,
    };
  };
  const each = <Row, Of extends 'gutter' | 'downpipe' | 'tank'>(
    of: Of,
    [rows, known]: readonly [readonly Row[], readonly Row[]],
    idOf: (row: Row) => string,
  ) =>
    rows.flatMap((row) => {
      const before = known.find((one) => idOf(one) === idOf(row));
      const figureOf = (one: Row | undefined, measure: string) =>
        (one as Readonly<Record<string, number | null>> | undefined)?.[measure] ?? null;
      return fittingMeasures[of].map((measure) =>
        field(
          { of, id: idOf(row), measure } as Omit<FittingStep, 'kind' | 'value'>,
          figureOf(row, measure),
          figureOf(before, measure),
        ),
      );
    });
  return [
    ...each('gutter', [now.gutters, saved.gutters], ({ gutterId }) => gutterId),
    ...each('downpipe', [now.downpipes, saved.downpipes], ({ downpipeId }) => downpipeId),
    ...each('tank', [now.tanks, saved.tanks], ({ tankId }) => tankId),
    field({ of: 'site', id: now.siteId, measure: 'tapHeight_m' }, now.tapHeight_m, saved.tapHeight_m),
  ];
}
