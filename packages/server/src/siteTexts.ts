import { promisify } from 'node:util';
import { gzip } from 'node:zlib';
import type { SiteTold } from './designs/designFiles.ts';
import type { DesignState } from './designs/designs.ts';
import type { OpenProgramme } from './openProgramme.ts';
import { ofRow } from './overview.ts';

/** What all sites of a programme are answered with: the same bytes while nothing changes. */
interface SitesText {
  readonly text: Buffer;
  readonly packed: Buffer;
}

/** What is told of every site, beside its name, area and people. */
type RowOfSite = Pick<ReturnType<typeof ofRow>, 'key' | 'siteId' | 'name' | 'area' | 'people'>;
/** What an answer is made of. */
interface TextOf {
  /** Sites alone, as the command line counts them; else every row, a second row of one id among them. */
  readonly isOfSites: boolean;
  entryOf(row: RowOfSite, told: SiteTold | undefined): object;
}

const pack = promisify(gzip);
const turn = () => new Promise(setImmediate);

/** Sites that are put together before others get their turn. */
const turn_sites = 250;

async function made({ facts, version }: OpenProgramme, state: DesignState, of: TextOf): Promise<SitesText> {
  const isPresent = state.version === version && state.done_fraction === 1;
  const sites: string[] = [];
  const rows = [...facts.rowsAsEntered('sites')];
  const keys = new Set(rows.map(([key]) => key));
  for (const [rowKey, cells] of rows) {
    const { key, siteId, name, area, people } = ofRow(rowKey, cells);
    // A second row of one id is no site of its own: the list of sites tells of it, and where sites are counted it is none.
    if (of.isOfSites && key !== siteId && keys.has(siteId)) continue;
    const told = key === siteId ? state.sites.get(key) : undefined;
    // Only the design of these very facts knows people made from households.
    const row = { key, siteId, name, area, people: told && isPresent ? told.short.people : people };
    sites.push(JSON.stringify(of.entryOf(row, told)));
    if (sites.length % turn_sites === 0) await turn();
  }
  const head = JSON.stringify({ version, designVersion: state.version });
  const text = Buffer.from(`${head.slice(0, -1)},"sites":[${sites.join(',')}]}`);
  return { text, packed: await pack(text) };
}

/** One thing told of every site of a programme, put together once for each state of facts and design. */
export class SiteTexts {
  private readonly kept = new Map<string, { readonly name: string; readonly made: Promise<SitesText> }>();

  constructor(
    private readonly what: string,
    private readonly of: TextOf,
  ) {}

  /** Names what the answer would hold, before it is put together. */
  nameOf({ version }: OpenProgramme, state: DesignState): string {
    const whole = state.done_fraction === 1 ? 'whole' : 'part';
    return `${this.what}-${version}-${state.version ?? 'none'}-${state.name}-${whole}`;
  }

  text(programme: OpenProgramme, state: DesignState): Promise<SitesText> {
    const { programmeId } = programme.entry;
    const name = this.nameOf(programme, state);
    const known = this.kept.get(programmeId);
    if (known?.name === name) return known.made;
    const text = made(programme, state, this.of);
    this.kept.set(programmeId, { name, made: text });
    void text.catch(() => this.kept.delete(programmeId));
    return text;
  }
}
