import { type Building, buildingOf } from '@eavewell/drawing';
import type { SiteFacts } from '@eavewell/engine';
import type { AppLanguage } from '@eavewell/words/app';
import { type DraftStep, limits } from '../../../water/index.ts';
import type { HandleMeasure } from './Handles.tsx';

type Words = Pick<AppLanguage, 'say' | 'numbers'>;
type Tank = Building['bodies'][number]['tanks'][number];
type Named = readonly [name: string, measure: HandleMeasure];

/** What a hand does with a step. */
interface Acts {
  /** Judged while it moves; null: back. */
  preview(step: DraftStep | null): void;
  /** Made when it is let go. */
  change(step: DraftStep): void;
}

/** What a handle moves by [m], and by a share of a roof; and the narrowest tank [m]. Ours. */
const [step_m, step_fraction, narrowest_m] = [0.05, 0.05, 0.5] as const;

/**
 * What the handles of the drawing change: the rim and the side of each tank, the gutter of each roof.
 *
 * @param now - the site with the draft
 * @param words - the language of the page
 * @param acts - what a hand does
 * @returns by name of the handle: height over the tank's floor and width [m], share of a roof [fraction]
 */
export function handlesOf(now: SiteFacts, words: Words, acts: Acts): ReadonlyMap<string, HandleMeasure> {
  const { bodies } = buildingOf(now);
  const tanks = bodies.flatMap((body) => body.tanks).flatMap((tank) => tankHandles(now, tank, words, acts));
  const known = new Set(now.roofs.map(({ roofId }) => roofId));
  const roofs = bodies
    .flatMap((body) => body.roofs)
    .filter(({ roofId }) => known.has(roofId))
    .map(({ roofId, gutteredFraction }): Named => {
      const made = (share: number): DraftStep => ({ kind: 'gutter', roofId, gutteredFraction: share });
      return [
        `roof:${roofId}:gutter`,
        {
          label: words.say('water.roof_share_of', { roof: roofId }),
          value: gutteredFraction.value,
          limits: { least: 0, most: 1, step: step_fraction, decimals: 4 },
          said: (value) => words.numbers.percent(value),
          ...acting(acts, made),
        },
      ];
    });
  return new Map([...tanks, ...roofs]);
}

function acting({ preview, change }: Acts, made: (value: number) => DraftStep) {
  return {
    onPreview: (value: number | null) => preview(value === null ? null : made(value)),
    onChange: (value: number) => change(made(value)),
  };
}

/** Where a tank was measured its measure is changed; else what is written on it, as much as the drawing of it grows. */
function tankHandles(now: SiteFacts, tank: Tank, { say, numbers }: Words, acts: Acts): readonly Named[] {
  const { tankId, overflowHeight_m, outletHeight_m, diameter_m, usable_L } = tank;
  const facts = now.tanks.find((one) => one.tankId === tankId);
  if (facts === undefined) return [];
  const said = (value: number) => say('drawn.metres', { value: numbers.fixed(value, 2) });
  const isMeasured = facts.diameter_m !== null && facts.overflowHeight_m !== null && facts.outletHeight_m !== null;
  const [outlet_m, depth_m] = [outletHeight_m.value, overflowHeight_m.value - outletHeight_m.value];
  const volume = (share: number): DraftStep => ({ kind: 'tank', tankId, volume_L: usable_L.value * share });
  const height = (value: number): DraftStep =>
    isMeasured ? { kind: 'overflow', tankId, overflowHeight_m: value } : volume((value - outlet_m) / depth_m);
  const width = (value: number): DraftStep =>
    isMeasured ? { kind: 'diameter', tankId, diameter_m: value } : volume((value / diameter_m.value) ** 2);
  return [
    [
      `tank:${tankId}:height`,
      {
        label: say('water.rim', { tank: tankId }),
        value: overflowHeight_m.value,
        limits: { least: outlet_m + step_m, most: limits.overflowHeight_m.high, step: step_m, decimals: 2 },
        said,
        ...acting(acts, height),
      },
    ],
    [
      `tank:${tankId}:diameter`,
      {
        label: say('water.side', { tank: tankId }),
        value: diameter_m.value,
        limits: { least: narrowest_m, most: limits.diameter_m.high, step: step_m, decimals: 2 },
        said,
        ...acting(acts, width),
      },
    ],
  ];
}
