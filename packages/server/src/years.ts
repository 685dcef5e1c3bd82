import { promisify } from 'node:util';
import { gzip } from 'node:zlib';
import type { z } from 'zod';
import type { DesignState } from './designs/designs.ts';
import type { years } from './http/yearsSchemas.ts';
import type { OpenProgramme } from './openProgramme.ts';
import { ofRow } from './overview.ts';

type Years = z.infer<typeof years>;

/** What the years of a programme are answered with: the same bytes while nothing changes. */
interface YearsText {
  readonly text: Buffer;
  readonly packed: Buffer;
}

const pack = promisify(gzip);
const turn = () => new Promise(setImmediate);

/** Sites that are put together before others get their turn. */
const turn_sites = 250;

async function made({ facts, version }: OpenProgramme, state: DesignState): Promise<YearsText> {
  const isPresent = state.version === version && state.done_fraction === 1;
  const sites: string[] = [];
  for (const [rowKey, cells] of facts.rowsAsEntered('sites')) {
    const { key, siteId, name, area, people } = ofRow(rowKey, cells);
    // A second row of one id is not used, so it has no years of its own.
    const told = key === siteId ? state.sites.get(key) : undefined;
    const entry: Years['sites'][number] = {
      ...{ key, siteId, name, area },
      // Only the design of these very facts knows people made from households.
      people: told && isPresent ? told.short.people : people,
      verdict: told?.short.verdict ?? null,
      years: told?.years ?? null,
    };
    sites.push(JSON.stringify(entry));
    if (sites.length % turn_sites === 0) await turn();
  }
  const head = JSON.stringify({ version, designVersion: state.version });
  const text = Buffer.from(`${head.slice(0, -1)},"sites":[${sites.join(',')}]}`);
  return { text, packed: await pack(text) };
}

/** The years of programmes, put together once for each state of facts and design. */
export class YearsTexts {
  private readonly kept = new Map<string, { readonly name: string; readonly made: Promise<YearsText> }>();

  /** Names what the answer would hold, before it is put together. */
  nameOf({ version }: OpenProgramme, state: DesignState): string {
    return `years-${version}-${state.version ?? 'none'}-${state.name}-${state.done_fraction === 1 ? 'whole' : 'part'}`;
  }

  text(programme: OpenProgramme, state: DesignState): Promise<YearsText> {
    const { programmeId } = programme.entry;
    const name = this.nameOf(programme, state);
    const known = this.kept.get(programmeId);
    if (known?.name === name) return known.made;
    const text = made(programme, state);
    this.kept.set(programmeId, { name, made: text });
    void text.catch(() => this.kept.delete(programmeId));
    return text;
  }
}
