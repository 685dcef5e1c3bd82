import { promisify } from 'node:util';
import { gzip } from 'node:zlib';
import type { Cells } from '@eavewell/records';
import { exceptionsFirst, remediesInWords, shortIn } from '@eavewell/report';
import { folderTables, readCell, type SiteShort } from '@eavewell/tables';
import { english, type Language } from '@eavewell/words';
import type { z } from 'zod';
import type { DesignState } from './designs/designs.ts';
import type { overview } from './http/schemas.ts';
import type { OpenProgramme } from './openProgramme.ts';

/** What the list of sites is answered with: the same bytes for all that ask while nothing changes. */
export interface OverviewText {
  readonly text: Buffer;
  readonly packed: Buffer;
}

/** Which of the sites are wanted: so many from a place on; null: all that follow. */
export interface OverviewPart {
  readonly from: number;
  readonly most: number | null;
}

/** A list put together: what stands before the sites, and each site as JSON. */
interface Made {
  readonly head: string;
  readonly sites: readonly string[];
  readonly parts: Map<string, Promise<OverviewText>>;
}

type Overview = z.infer<typeof overview>;
type Entry = Overview['sites'][number];

const pack = promisify(gzip);
const turn = () => new Promise(setImmediate);

/** Sites that are put together before others get their turn. */
const turn_sites = 250;

/** Parts of a list that are kept ready. Ours. */
const mostParts = 100;

const { columns } = folderTables.sites;
const plain = { decimalComma: false };

/** What the list tells of a row of the table of sites, before it is judged. */
export function ofRow(key: string, cells: Cells) {
  const number = (column: typeof columns.latitude_deg, name: string) =>
    readCell(column, cells[name] ?? '', plain).value;
  return {
    key,
    siteId: cells['siteId'] ?? '',
    name: cells['name'] ?? '',
    area: cells['area'] ?? null,
    latitude_deg: number(columns.latitude_deg, 'latitude_deg'),
    longitude_deg: number(columns.longitude_deg, 'longitude_deg'),
    siteClass: cells['siteClass'] ?? null,
    people: readCell(columns.people, cells['people'] ?? '', plain).value,
  };
}

/** The targets of the sites, each told once. */
class Targets {
  readonly list: SiteShort['target'][] = [];
  private readonly known = new Map<string, number>();

  at(target: SiteShort['target']): number {
    const text = JSON.stringify(target);
    const at = this.known.get(text) ?? this.list.push(target) - 1;
    this.known.set(text, at);
    return at;
  }
}

const notJudged = {
  ...{
    design_people: null,
    verdict: null,
    stations: null,
    finding: null,
    withheldBy: null,
    decides: null,
    isNotToDrink: null,
    standGate: null,
    hasStorm: null,
    remedy: null,
    notMended: null,
  },
  ...{ figures: null, target: null },
};

/** A site with what its design says, where there is one. */
function entryOf(
  row: ReturnType<typeof ofRow>,
  short: SiteShort | undefined,
  targets: Targets,
  isPresent: boolean,
): Entry {
  if (short === undefined) return { ...row, ...notJudged };
  const { target, weight: _, name, latitude_deg, longitude_deg, siteClass, people, ...rest } = short;
  const { key, siteId, area } = row;
  // Only the design of these very facts knows better than the row what stands in it, such as people made from households.
  const read = isPresent ? { name, latitude_deg, longitude_deg, siteClass, people } : {};
  return { ...rest, ...row, ...read, key, siteId, area, target: targets.at(target) };
}

const none = () => ({ sites: 0, people: 0, withoutPeople_count: 0 });

function tallyOf(entries: readonly Entry[]): Overview['tally'] {
  const tally = { short: none(), unknown: none(), tight: none(), holds: none(), notYet: none() };
  for (const { verdict, people } of entries) {
    const one = tally[verdict ?? 'notYet'];
    one.sites++;
    one.people += people ?? 0;
    if (people === null) one.withoutPeople_count++;
  }
  return tally;
}

function countsOf(
  problems: readonly { readonly severity: 'blocker' | 'warning' | 'note' }[],
): Overview['problemCounts'] {
  const counts = { blocker: 0, warning: 0, note: 0 };
  for (const { severity } of problems) counts[severity]++;
  return counts;
}

/** The rows of the sites, each with what its design says, the exceptions first. */
async function entriesOf(
  { facts, version }: OpenProgramme,
  state: DesignState,
  targets: Targets,
  language: Language,
): Promise<Entry[]> {
  const isPresent = state.version === version && state.done_fraction === 1;
  const placed: { readonly entry: Entry; readonly short: SiteShort | undefined }[] = [];
  for (const [key, cells] of facts.rowsAsEntered('sites')) {
    const row = ofRow(key, cells);
    // A second row of one id is not used, so it has no verdict of its own.
    const told = key === row.siteId ? state.sites.get(key) : undefined;
    const short = told && (language === english ? told.short : shortIn(told.short, told.said, language));
    placed.push({ entry: entryOf(row, short, targets, isPresent), short });
    if (placed.length % turn_sites === 0) await turn();
  }
  placed.sort((a, b) => {
    if (a.short && b.short) return exceptionsFirst(a.short, b.short);
    return Number(a.short === undefined) - Number(b.short === undefined);
  });
  return placed.map(({ entry }) => entry);
}

async function made(programme: OpenProgramme, state: DesignState, language: Language): Promise<Made> {
  const { version } = programme;
  const targets = new Targets();
  const entries = await entriesOf(programme, state, targets, language);
  const head: Omit<Overview, 'sites'> = {
    version,
    designVersion: state.version,
    name: state.rest?.programme.name ?? programme.entry.name,
    count: entries.length,
    tally: tallyOf(entries),
    targets: targets.list,
    remedies: state.rest && remediesInWords(state.rest.remedies, language),
    problemCounts: state.rest && countsOf(state.rest.problems),
  };
  const sites: string[] = [];
  for (const entry of entries) {
    sites.push(JSON.stringify(entry));
    if (sites.length % turn_sites === 0) await turn();
  }
  return { head: JSON.stringify(head).slice(0, -1), sites, parts: new Map() };
}

async function partOf({ head, sites }: Made, { from, most }: OverviewPart): Promise<OverviewText> {
  const wanted = sites.slice(from, most === null ? undefined : from + most);
  const text = Buffer.from(`${head},"sites":[${wanted.join(',')}]}`);
  return { text, packed: await pack(text) };
}

/** In how many languages a list is kept at once. Ours. */
const mostLanguages = 4;

/** The lists of sites, put together once for each state of facts and design, and each language. */
export class Overviews {
  private readonly kept = new Map<string, Map<string, { readonly name: string; readonly made: Promise<Made> }>>();

  /** Names what the list would hold, before it is put together. */
  nameOf({ version }: OpenProgramme, state: DesignState, language: Language, { from, most }: OverviewPart): string {
    const whole = state.done_fraction === 1 ? 'whole' : 'part';
    return `${language.code}-${version}-${state.version ?? 'none'}-${state.name}-${whole}-${from}-${most ?? 'all'}`;
  }

  async text(
    programme: OpenProgramme,
    state: DesignState,
    language: Language,
    part: OverviewPart,
  ): Promise<OverviewText> {
    const { parts, ...list } = await this.list(programme, state, language);
    const key = `${part.from}-${part.most}`;
    const found = parts.get(key) ?? partOf({ parts, ...list }, part);
    if (parts.size < mostParts) parts.set(key, found);
    return found;
  }

  private list(programme: OpenProgramme, state: DesignState, language: Language): Promise<Made> {
    const { programmeId } = programme.entry;
    const name = this.nameOf(programme, state, language, { from: 0, most: null });
    const kept = this.kept.get(programmeId) ?? new Map();
    this.kept.set(programmeId, kept);
    const known = kept.get(language.code);
    if (known?.name === name) return known.made;
    const list = made(programme, state, language);
    if (kept.size >= mostLanguages) kept.clear();
    kept.set(language.code, { name, made: list });
    void list.catch(() => kept.delete(language.code));
    return list;
  }
}
