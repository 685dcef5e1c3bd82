import { type DesignSettings, purposesOf, type SiteFacts, siteRoofs, usableVolume } from '@eavewell/engine';
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
  /** Of gutters, pipes, overflows, stands and taps: they stand in a group of their own. */
  readonly fittings: readonly OneMeasure[];
  readonly handles: ReadonlyMap<string, HandleMeasure>;
}

type Say = Pick<AppLanguage, 'say'>;

const per = 100;

/** Limits of a figure as the tables take it, in the unit of its field. */
export function limitsOf(name: keyof typeof limits, step: number, decimals: number, times = 1): MeasureLimits {
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
 * @returns fields: tanks [L], guttered share [%], first flush [mm], people [person], litres a person a day [L/person/day]
 */
export function fieldsOf(
  saved: SiteFacts,
  now: SiteFacts,
  settings: DesignSettings,
  words: Say,
): readonly OneMeasure[] {
  return [
    ...now.tanks.map((tank) => tankField(saved, now, tank, words)),
    ...now.roofs.flatMap((roof) => roofFields(saved, now, roof, settings, words)),
    peopleField(saved, now, words),
    ...litresField(saved, now, settings, words),
  ];
}

type Tank = SiteFacts['tanks'][number];
type Roof = SiteFacts['roofs'][number];

function tankField(saved: SiteFacts, now: SiteFacts, tank: Tank, { say }: Say): OneMeasure {
  const { tankId } = tank;
  const before = saved.tanks.find((other) => other.tankId === tankId);
  return {
    key: `tank:${tankId}`,
    label: now.tanks.length === 1 ? say('water.tank') : say('water.tank_of', { tank: tankId }),
    unit: 'L',
    value: volumeOf(now.siteId, tank),
    saved: before === undefined ? null : volumeOf(saved.siteId, before),
    limits: limitsOf('volume_L', 500, 0),
    step: (volume_L) => ({ kind: 'tank', tankId, volume_L }),
  };
}

function roofFields(
  saved: SiteFacts,
  now: SiteFacts,
  roof: Roof,
  settings: DesignSettings,
  { say }: Say,
): readonly OneMeasure[] {
  const { roofId } = roof;
  const isOnly = now.roofs.length === 1;
  const before = saved.roofs.find((other) => other.roofId === roofId) ?? roof;
  const percent = (share: number | null) => (share === null ? null : Number((share * per).toFixed(2)));
  return [
    {
      key: `gutter:${roofId}`,
      label: isOnly ? say('water.roof_share') : say('water.roof_share_of', { roof: roofId }),
      unit: '%',
      value: percent(roof.gutteredFraction),
      saved: percent(before.gutteredFraction),
      limits: limitsOf('gutteredFraction', 5, 1, per),
      step: (value) => ({ kind: 'gutter', roofId, gutteredFraction: value / per }),
    },
    {
      key: `flush:${roofId}`,
      label: isOnly ? say('water.first_flush') : say('water.first_flush_of', { roof: roofId }),
      unit: 'mm',
      value: flushOf(now, roof, settings),
      saved: flushOf(saved, before, settings),
      limits: limitsOf('firstFlush_mm', 0.1, 2),
      step: (firstFlush_mm) => ({ kind: 'firstFlush', roofId, firstFlush_mm }),
    },
  ];
}

function peopleField(saved: SiteFacts, now: SiteFacts, { say }: Say): OneMeasure {
  return {
    key: 'people',
    label: say('water.people'),
    unit: '',
    value: now.people,
    saved: saved.people,
    limits: { ...limitsOf('people', 1, 0), isWhole: true },
    step: (people) => ({ kind: 'people', people }),
  };
}

/** The first of the judged purposes: what is promised for drinking and cooking. */
function litresField(saved: SiteFacts, now: SiteFacts, settings: DesignSettings, { say }: Say): readonly OneMeasure[] {
  const judged = (site: SiteFacts) => purposesOf(site, settings).find((purpose) => purpose.judged);
  const purpose = judged(now);
  if (purpose === undefined) return [];
  return [
    {
      key: 'litres',
      label: say('water.litres_person'),
      unit: 'L',
      value: purpose.litres_per_person_per_day,
      saved: judged(saved)?.litres_per_person_per_day ?? null,
      limits: limitsOf('litres_per_person_per_day', 0.5, 2),
      step: (value) => ({ kind: 'litres', purpose: purpose.purpose, litres_per_person_per_day: value }),
    },
  ];
}

function volumeOf(siteId: string, tank: Tank): number | null {
  return usableVolume(siteId, [{ ...tank, joinedTo: null }]).tankVolume_L;
}

/** The first flush a roof is judged with; where it cannot be judged, what was measured. */
function flushOf(site: SiteFacts, roof: Roof, settings: DesignSettings): number | null {
  const caught = siteRoofs({ ...site, roofs: [roof] }, settings.firstFlush_mm, []);
  const depth_mm = caught.ok ? caught.value[0]!.firstFlush_mm : (roof.diverter?.firstFlush_mm ?? null);
  return depth_mm === null ? null : Number(depth_mm.toFixed(3));
}
