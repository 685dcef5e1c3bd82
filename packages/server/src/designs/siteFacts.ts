import { gaugesOfSite } from '@eavewell/engine';
import type { OpenProgramme } from '../openProgramme.ts';
import { type DesignList, readLines } from './designFiles.ts';
import type { Designs } from './designs.ts';
import { exactJson, nameOfText, readReadings, readShared, type SharedFacts, type SiteKept } from './keptFacts.ts';

/** A text to be answered with, and a name that another text does not have. */
export interface NamedText {
  readonly text: string;
  readonly name: string;
}

/** What was found: the text; or nothing yet, as no design is there; or nothing at all. */
export type TextFound = NamedText | 'notYet' | 'unknown';

/** What the sites of a design share is read once. */
const sharedOf = new WeakMap<DesignList, Promise<SharedFacts | null>>();

function readOnce(folder: string, list: DesignList): Promise<SharedFacts | null> {
  const known = sharedOf.get(list) ?? readShared(folder, list.stamp);
  sharedOf.set(list, known);
  return known;
}

/** What is kept cannot be read: it is made anew, unless a newer design has just taken its place. */
async function gone(designs: Designs, programme: OpenProgramme, list: DesignList): Promise<'notYet'> {
  const now = await designs.keptList(programme);
  if (now?.list === list && programme.version === list.version) await designs.forget(programme);
  return 'notYet';
}

/**
 * All that the design and the remedies of one site follow from, as the last design has it.
 *
 * @param designs - the designs kept
 * @param programme - the programme
 * @param siteId - the site [text]
 * @returns the answer as JSON; `notYet` before there is a design of it, `unknown` where there is no such site
 */
export async function siteFactsText(designs: Designs, programme: OpenProgramme, siteId: string): Promise<TextFound> {
  const kept = await designs.keptList(programme);
  if (kept === null) return 'notYet';
  const { list, folder } = kept;
  const listed = list.sites.find(({ short }) => short.siteId === siteId);
  if (listed === undefined) return list.version === programme.version ? 'unknown' : unjudged(programme, siteId);
  const line = await readLines(folder, (lines) => lines.line(listed.facts));
  const shared = await readOnce(folder, list);
  if (line === null || shared === null) return gone(designs, programme, list);
  const { site, faults } = JSON.parse(line) as SiteKept;
  const { settings, parts, prices, kit } = shared;
  const { read, placed, wanted } = gaugesOfSite(site, shared);
  const { programmeId } = programme.entry;
  const gauges = shared.gauges
    .filter(({ gaugeId }) => read.has(gaugeId) || placed.has(gaugeId))
    .map(({ readings: of, ...head }) => {
      const address = `/api/programmes/${programmeId}/gauges/${encodeURIComponent(head.gaugeId)}/readings?of=${of}`;
      return { ...head, readings: read.has(head.gaugeId) ? { of, address } : null };
    });
  const facts = { site, faults, settings, parts, prices, kit, gauges, wantedGauges: [...wanted] };
  const text = exactJson({ version: programme.version, designVersion: list.version, ...facts });
  return { text, name: nameOfText(text) };
}

/** A site that the design does not have: it may be one that was added since. */
function unjudged({ facts }: OpenProgramme, siteId: string): TextFound {
  for (const [, cells] of facts.rowsAsEntered('sites')) if (cells['siteId'] === siteId) return 'notYet';
  return 'unknown';
}

/**
 * The readings of one gauge, as the last design has them.
 *
 * @param designs - the designs kept
 * @param programme - the programme
 * @param gaugeId - the gauge [text]
 * @param of - what they are called; null: whatever they are [text]
 * @returns the answer as JSON; `notYet` before there is a design, `unknown` where there are none of that gauge, or of that name
 */
export async function readingsText(
  designs: Designs,
  programme: OpenProgramme,
  gaugeId: string,
  of: string | null,
): Promise<TextFound> {
  const kept = await designs.keptList(programme);
  if (kept === null) return 'notYet';
  const shared = await readOnce(kept.folder, kept.list);
  if (shared === null) return gone(designs, programme, kept.list);
  const name = shared.gauges.find((gauge) => gauge.gaugeId === gaugeId)?.readings;
  if (name === undefined || (of !== null && of !== name)) return 'unknown';
  const text = await readReadings(kept.folder, name);
  return text === null ? gone(designs, programme, kept.list) : { text, name };
}
