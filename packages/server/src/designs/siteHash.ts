import { createHash, type Hash } from 'node:crypto';
import type { Place, Problem, ProgrammeFacts, ReadyProgramme, SiteFacts } from '@eavewell/engine';
import { settingsBeside } from '@eavewell/tables';

function isNumbers(value: object): value is Float64Array | Uint8Array {
  return ArrayBuffer.isView(value) && !(value instanceof DataView);
}

/** Feeds a value to a hash, so that two values of different content never feed the same. */
function feed(hash: Hash, value: unknown): void {
  if (typeof value !== 'object' || value === null) hash.update(`${JSON.stringify(value) ?? 'none'};`);
  else if (isNumbers(value)) {
    hash.update(`n${value.byteLength};`);
    hash.update(new Uint8Array(value.buffer, value.byteOffset, value.byteLength));
  } else if (Array.isArray(value)) {
    hash.update(`[${value.length};`);
    for (const one of value) feed(hash, one);
  } else {
    const entries = value instanceof Map ? [...value] : Object.entries(value);
    hash.update(`{${entries.length};`);
    for (const [key, one] of entries) {
      hash.update(`${JSON.stringify(key)}:`);
      feed(hash, one);
    }
  }
}

/**
 * One short text for a value: the same for the same content.
 *
 * @param value - plain data, typed arrays and maps among it
 * @returns its SHA-256 [text]
 * @definition ours
 */
export function contentHash(value: unknown): string {
  const hash = createHash('sha256');
  feed(hash, value);
  return hash.digest('base64url');
}

/** What the rain of a site without a gauge of its own may rest on: every gauge, as it was measured and as it was judged. */
function everyGauge({ gauges, records, allGauges }: ReadyProgramme): string {
  const places = allGauges.map(({ readings: _, ...rest }) => rest);
  return contentHash([gauges, records.map(({ record }) => record), places]);
}

/**
 * Says of each site what its design follows from, as one short text: its own facts, the rain it rests on, settings, parts and
 * prices, and the faults that its doubts are named by. Where that is the same, so is the design.
 *
 * @param facts - the programme
 * @param ready - the same, ready: its gauges as they were judged
 * @param faultAt - the fault at a place
 * @returns a function that gives the hash of a site [text]
 * @law a change of anything the design of a site shows changes its hash
 * @definition ours: docs/decisions/0115-designs-carried-over.md
 */
export function siteHasher(
  facts: ProgrammeFacts,
  ready: ReadyProgramme,
  faultAt: (place: Place) => Problem | null,
): (site: SiteFacts) => string {
  // The programme's name stands in no site's design, and what the rollout is planned by does not either.
  const settings = Object.fromEntries(Object.entries(facts.settings).filter(([key]) => !settingsBeside.has(key)));
  const all = contentHash([
    settings,
    facts.parts,
    facts.prices,
    facts.kit.rates,
    facts.kit.redenominations,
    ready.market.day,
  ]);
  const rain = new Map<string | null, string>();
  const rainOf = (gaugeId: string | null): string => {
    const known =
      rain.get(gaugeId) ?? (gaugeId === null ? everyGauge(ready) : contentHash(ready.gauges.get(gaugeId) ?? null));
    rain.set(gaugeId, known);
    return known;
  };
  return (site) => {
    const doubts = [site.doubts, ...Object.values(site.doubtsBeside)].flat();
    // Cartridges are due so many days from the day it is asked on, and a sample is so many days old.
    const { tests, unusableTests, inspections } = site.safety;
    const isDated = [tests, unusableTests, inspections].some(({ length }) => length > 0);
    const isInUse = isDated || site.treatment.units.some(({ removedOn }) => removedOn === null);
    return contentHash([all, rainOf(site.gaugeId), site, doubts.map(faultAt), isInUse ? ready.today : null]);
  };
}
