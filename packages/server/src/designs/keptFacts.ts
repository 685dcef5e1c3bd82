import { createHash } from 'node:crypto';
import { readdir, readFile, rm } from 'node:fs/promises';
import { join } from 'node:path';
import type { GaugeFacts, Place, Problem, ProgrammeFacts, SiteFacts } from '@eavewell/engine';
import { writeFileWhole } from '@eavewell/formats';

/**
 * What a design followed from, kept beside it: the facts of each site in a line of its own, what all sites share in `shared-….json`,
 * and the readings of each gauge in a file that is called by its content.
 *
 * @definition ours: docs/decisions/0146-facts-of-one-site.md
 */

/** A gauge without its readings, daily and short, and what those are called. */
export interface GaugeHead extends Omit<GaugeFacts, 'readings' | 'shortRain'> {
  readonly readings: string;
}

/** What the sites of a programme share. */
export interface SharedFacts extends Pick<ProgrammeFacts, 'settings' | 'parts' | 'prices' | 'kit'> {
  readonly gauges: readonly GaugeHead[];
}

/** A site as it was read, and the faults behind its doubts. */
export interface SiteKept {
  readonly site: SiteFacts;
  readonly faults: readonly Problem[];
}

type ReadingsOf = Pick<GaugeFacts, 'gaugeId' | 'readings' | 'shortRain'>;

/** 24 hours of 60 minutes. */
const minutes_per_day = 1440;

/** Numbers in a row with one step between them: the first, how many, and the step. */
type Stretch = readonly [first: number, count: number, step: number];

const sharedFile = (stamp: string) => `shared-${stamp}.json`;
const readingsFile = (name: string) => `readings-${name}.json`;
const oursForm = /^(?:shared|readings)-[0-9a-f]+\.json$/;

/** A short name for a text, which another text does not have. */
export const nameOfText = (text: string): string => createHash('sha256').update(text).digest('hex').slice(0, 32);

/**
 * A value as JSON that gives every number back as it was: what JSON has no word for (NaN, Infinity, -Infinity, -0) stands as
 * `{"figure":"NaN"}`.
 *
 * @param value - plain data
 * @returns the text
 * @law what it is read back to is the value, number by number
 * @definition ours: docs/decisions/0146-facts-of-one-site.md
 */
export function exactJson(value: unknown): string {
  return JSON.stringify(value, (_, one: unknown) => {
    if (typeof one !== 'number' || (Number.isFinite(one) && !Object.is(one, -0))) return one;
    return { figure: Object.is(one, -0) ? '-0' : String(one) };
  });
}

/** Numbers as stretches: days that follow on each other take one. */
function stretchesOf(numbers: readonly number[]): Stretch[] {
  const stretches: Stretch[] = [];
  let from = 0;
  while (from < numbers.length) {
    const first = numbers[from]!;
    const step = from + 1 < numbers.length ? numbers[from + 1]! - first : 1;
    let to = from + 1;
    while (to < numbers.length && numbers[to]! - numbers[to - 1]! === step) to++;
    stretches.push([first, to - from, step]);
    from = to;
  }
  return stretches;
}

/** The readings of a gauge, compact: days, rows and short intervals by stretches, rain one by one. */
export function readingsText({ gaugeId, readings, shortRain }: ReadingsOf): string {
  const days = stretchesOf(readings.map(({ day }) => day));
  const rows = stretchesOf(readings.map(({ row }) => row));
  const short = {
    minutes: stretchesOf(shortRain.map(({ day, minuteOfDay }) => day * minutes_per_day + minuteOfDay)),
    intervals: stretchesOf(shortRain.map(({ interval_min }) => interval_min)),
    rain_mm: shortRain.map(({ rain_mm }) => rain_mm),
  };
  return exactJson({ gaugeId, days, rows, rain_mm: readings.map(({ rain_mm }) => rain_mm), short });
}

/** The facts of a site in one line. A fault is named where a doubt of the site stands. */
export function siteText(site: SiteFacts, faultAt: (place: Place) => Problem | null): string {
  const doubts = [site.doubts, ...Object.values(site.doubtsBeside)].flat();
  const faults = new Set(doubts.flatMap((place) => faultAt(place) ?? []));
  return exactJson({ site, faults: [...faults] } satisfies SiteKept);
}

/** Keeps what the sites share, under the stamp of their design, and gives the names of all files it needs. */
export async function keepShared(folder: string, stamp: string, facts: ProgrammeFacts): Promise<readonly string[]> {
  const { settings, parts, prices, kit } = facts;
  const there = new Set(await readdir(folder));
  const gauges: GaugeHead[] = [];
  for (const { readings, shortRain, ...head } of facts.gauges) {
    const text = readingsText({ gaugeId: head.gaugeId, readings, shortRain });
    const name = nameOfText(text);
    if (!there.has(readingsFile(name))) await writeFileWhole(join(folder, readingsFile(name)), text);
    gauges.push({ ...head, readings: name });
  }
  const shared: SharedFacts = { settings, parts, prices, kit, gauges };
  await writeFileWhole(join(folder, sharedFile(stamp)), exactJson(shared));
  return [sharedFile(stamp), ...gauges.map(({ readings }) => readingsFile(readings))];
}

/** Takes away what an earlier design shared. */
export async function clearShared(folder: string, wanted: readonly string[]): Promise<void> {
  for (const name of await readdir(folder))
    if (oursForm.test(name) && !wanted.includes(name)) await rm(join(folder, name), { force: true });
}

/** What the sites of a design share; null where it does not stand as it was written. */
export async function readShared(folder: string, stamp: string): Promise<SharedFacts | null> {
  try {
    return JSON.parse(await readFile(join(folder, sharedFile(stamp)), 'utf8')) as SharedFacts;
  } catch {
    return null;
  }
}

/** Readings by their name; null where they do not stand as they were written. */
export async function readReadings(folder: string, name: string): Promise<string | null> {
  const text = await readFile(join(folder, readingsFile(name)), 'utf8').catch(() => null);
  return text !== null && nameOfText(text) === name ? text : null;
}
