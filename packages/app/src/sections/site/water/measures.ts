import { type Building, buildingOf } from '@eavewell/drawing';
import {
  type DesignSettings,
  firstFlushDepth,
  purposesOf,
  roofPlanArea,
  type SiteFacts,
  usableVolume,
} from '@eavewell/engine';
import type { AppLanguage } from '@eavewell/words/app';
import { type DraftStep, limits } from '../../../water/index.ts';
import type { HandleMeasure } from './Handles.tsx';
import type { MeasureLimits } from './measureEntry.ts';

/** One measure that can be changed beside the drawing. */
export interface OneMeasure {
  readonly key: string;
  readonly label: string;
  readonly unit: string;
  readonly value: number | null;
  readonly saved: number | null;
  readonly limits: MeasureLimits;
  step(value: number): DraftStep;
}

/** All that can be changed: by fields beside the drawing, and by hand on it. */
export interface Measures {
  readonly fields: readonly OneMeasure[];
  readonly handles: ReadonlyMap<string, HandleMeasure>;
}

type Words = Pick<AppLanguage, 'say' | 'numbers'>;

const per = 100;

/** Limits of a figure as the tables take it, in the unit of its field. */
function limitsOf(name: keyof typeof limits, step: number, decimals: number, times = 1): MeasureLimits {
  const { low, high } = limits[name];
  return { least: low * times, most: high * times, step, decimals };
}

/**
 * What can be changed at a site, and where each stands?
 *
 * @param saved - the site as it is saved
 * @param now - with the draft
 * @param settings - the programme's settings
 * @param words - the language of the page
 * @returns fields: tanks [L], guttered share [%], people [person], litres a person a day [L/person/day], first flush [mm]
 */
export function fieldsOf(
  saved: SiteFacts,
  now: SiteFacts,
  settings: DesignSettings,
  words: Words,
): readonly OneMeasure[] {
  const { say } = words;
  const one = <T>(list: readonly T[]) => list.length === 1;
  const tanks = now.tanks.map((tank): OneMeasure => {
    const before = saved.tanks.find(({ tankId }) => tankId === tank.tankId);
    return {
      key: `tank:${tank.tankId}`,
      label: one(now.tanks) ? say('water.tank') : say('water.tank_of', { tank: tank.tankId }),
      unit: 'L',
      value: volumeOf(now.siteId, tank),
      saved: before === undefined ? null : volumeOf(saved.siteId, before),
      limits: limitsOf('volume_L', 500, 0),
      step: (volume_L) => ({ kind: 'tank', tankId: tank.tankId, volume_L }),
    };
  });
  const roofs = now.roofs.flatMap((roof): OneMeasure[] => {
    const { roofId } = roof;
    const before = saved.roofs.find((other) => other.roofId === roofId) ?? roof;
    const percent = (share: number | null) => (share === null ? null : Number((share * per).toFixed(2)));
    return [
      {
        key: `gutter:${roofId}`,
        label: one(now.roofs) ? say('water.roof_share') : say('water.roof_share_of', { roof: roofId }),
        unit: '%',
        value: percent(roof.gutteredFraction),
        saved: percent(before.gutteredFraction),
        limits: limitsOf('gutteredFraction', 5, 1, per),
        step: (value) => ({ kind: 'gutter', roofId, gutteredFraction: value / per }),
      },
      {
        key: `flush:${roofId}`,
        label: one(now.roofs) ? say('water.first_flush') : say('water.first_flush_of', { roof: roofId }),
        unit: 'mm',
        value: flushOf(roof, settings),
        saved: flushOf(before, settings),
        limits: limitsOf('firstFlush_mm', 0.1, 2),
        step: (firstFlush_mm) => ({ kind: 'firstFlush', roofId, firstFlush_mm }),
      },
    ];
  });
  const judged = (site: SiteFacts) => purposesOf(site, settings).find((purpose) => purpose.judged);
  const purpose = judged(now);
  return [
    ...tanks,
    ...roofs,
    {
      key: 'people',
      label: say('water.people'),
      unit: '',
      value: now.people,
      saved: saved.people,
      limits: limitsOf('people', 1, 0),
      step: (people) => ({ kind: 'people', people }),
    },
    ...(purpose === undefined
      ? []
      : [
          {
            key: 'litres',
            label: say('water.litres_person'),
            unit: 'L',
            value: purpose.litres_per_person_per_day,
            saved: judged(saved)?.litres_per_person_per_day ?? null,
            limits: limitsOf('litres_per_person_per_day', 0.5, 2),
            step: (value: number): DraftStep => ({
              kind: 'litres',
              purpose: purpose.purpose,
              litres_per_person_per_day: value,
            }),
          },
        ]),
  ];
}

function volumeOf(siteId: string, tank: SiteFacts['tanks'][number]): number | null {
  return usableVolume(siteId, [{ ...tank, joinedTo: null }]).tankVolume_L;
}

function flushOf(roof: SiteFacts['roofs'][number], settings: DesignSettings): number {
  const drained_m2 = (roofPlanArea(roof) ?? 0) * (roof.gutteredFraction ?? 1);
  return Number(firstFlushDepth(roof.diverter, drained_m2, settings.firstFlush_mm).firstFlush_mm.toFixed(3));
}

const step_m = 0.05;

/**
 * What the handles of the drawing change: the rim and the side of each tank, the gutter of each roof.
 *
 * @param now - the site with the draft
 * @param words - the language of the page
 * @param preview - judged while it moves; null: back
 * @param change - made when it is let go
 */
export function handlesOf(
  now: SiteFacts,
  { say, numbers }: Words,
  preview: (step: DraftStep | null) => void,
  change: (step: DraftStep) => void,
): ReadonlyMap<string, HandleMeasure> {
  const building: Building = buildingOf(now);
  const metres = (value: number) => say('water.metres', { value: numbers.fixed(value, 2) });
  const acts = (step: (value: number) => DraftStep) => ({
    onPreview: (value: number | null) => preview(value === null ? null : step(value)),
    onChange: (value: number) => change(step(value)),
  });
  const found: [string, HandleMeasure][] = [];
  for (const tank of building.bodies.flatMap((body) => body.tanks)) {
    const facts = now.tanks.find(({ tankId }) => tankId === tank.tankId);
    if (facts === undefined) continue;
    const { tankId, overflowHeight_m, outletHeight_m, diameter_m, usable_L } = tank;
    const isMeasured = facts.diameter_m !== null && facts.overflowHeight_m !== null && facts.outletHeight_m !== null;
    const depth_m = overflowHeight_m.value - outletHeight_m.value;
    found.push([
      `tank:${tankId}:height`,
      {
        label: say('water.rim', { tank: tankId }),
        value: overflowHeight_m.value,
        limits: { least: outletHeight_m.value + step_m, most: limits.overflowHeight_m.high, step: step_m, decimals: 2 },
        said: metres,
        ...acts((value) =>
          isMeasured
            ? { kind: 'overflow', tankId, overflowHeight_m: value }
            : { kind: 'tank', tankId, volume_L: (usable_L.value * (value - outletHeight_m.value)) / depth_m },
        ),
      },
    ]);
    found.push([
      `tank:${tankId}:diameter`,
      {
        label: say('water.side', { tank: tankId }),
        value: diameter_m.value,
        limits: { least: 0.5, most: limits.diameter_m.high, step: step_m, decimals: 2 },
        said: metres,
        ...acts((value) =>
          isMeasured
            ? { kind: 'diameter', tankId, diameter_m: value }
            : { kind: 'tank', tankId, volume_L: usable_L.value * (value / diameter_m.value) ** 2 },
        ),
      },
    ]);
  }
  for (const roof of building.bodies.flatMap((body) => body.roofs)) {
    if (!now.roofs.some(({ roofId }) => roofId === roof.roofId)) continue;
    found.push([
      `roof:${roof.roofId}:gutter`,
      {
        label: say('water.roof_share_of', { roof: roof.roofId }),
        value: roof.gutteredFraction.value,
        limits: { least: 0, most: 1, step: 0.05, decimals: 4 },
        said: (value) => numbers.percent(value),
        ...acts((value) => ({ kind: 'gutter', roofId: roof.roofId, gutteredFraction: value })),
      },
    ]);
  }
  return new Map(found);
}
