import { createHash } from 'node:crypto';
import { open, readFile, rename } from 'node:fs/promises';
import { join } from 'node:path';
import type {
  CarrierLoads,
  DayIndex,
  KitsCarried,
  ProgrammeCost,
  ProgrammeFacts,
  SiteCost,
  SiteKit,
} from '@eavewell/engine';
import { exactJson } from '../designs/keptFacts.ts';

/** What a site costs, without its throws: those stay in the thread that made them. */
export type CostKept = Omit<SiteCost, 'cost'> & { readonly cost: WholeCostKept | null };
export type WholeCostKept = Omit<NonNullable<SiteCost['cost']>, 'throws'>;

/** How a kit goes in one carrier. */
export interface CarriedKept {
  readonly carrierId: string;
  readonly name: string;
  readonly loads: CarrierLoads;
}

/** All that is said of the kit of one site, as it is kept: data, no sentences. */
export interface SiteKitKept {
  readonly siteId: string;
  readonly name: string;
  /** Those counted, or those of the design where nobody is said to be counted. */
  readonly people: number | null;
  readonly handOverDay: DayIndex | null;
  readonly kit: SiteKit;
  readonly mass_kg: number;
  /** Pieces whose mass nobody states: the mass is at least so much. */
  readonly noMass_count: number;
  readonly carried: readonly CarriedKept[];
  readonly kitsIn: readonly KitsCarried[];
  readonly cost: CostKept;
}

/** A site among all of them. */
export interface SiteOfKits
  extends Pick<SiteKitKept, 'siteId' | 'name' | 'people' | 'handOverDay' | 'mass_kg' | 'noMass_count'> {
  readonly isBuilt: boolean;
  readonly parts_count: number;
  /** Problems that may change the kit, and that need someone. */
  readonly problems_count: number;
  readonly loads: readonly {
    readonly carrierId: string;
    readonly loads_count: number | null;
    readonly left_count: number;
  }[];
  readonly kitsIn: readonly { readonly carrierId: string; readonly kits_count: number | null }[];
  readonly cost: {
    readonly perPersonYear_amount: number | null;
    readonly spread_amount: { readonly p10: number; readonly p90: number } | null;
    readonly perYear_amount: number;
    readonly isAtLeast: boolean;
  } | null;
  /** Where its line stands. */
  readonly from_bytes: number;
  readonly length_bytes: number;
}

/** What the kits of a programme come to, as it is kept. */
export interface KitsKept {
  readonly version: number;
  readonly designVersion: number | null;
  readonly today: DayIndex;
  readonly market: Pick<ProgrammeFacts, 'settings' | 'parts' | 'prices' | 'kit'>;
  readonly pricesOn: DayIndex | null;
  readonly currency: string | null;
  readonly problems: SiteKit['problems'];
  readonly cost: Omit<ProgrammeCost, 'cost' | 'ofServed'> & {
    readonly cost: WholeCostKept | null;
    readonly ofServed: WholeCostKept | null;
  };
  readonly sites: readonly SiteOfKits[];
}

/** Reads a number back that JSON has no word for, as exactJson wrote it. */
export function revived(_: string, value: unknown): unknown {
  const isOne = typeof value === 'object' && value !== null && 'figure' in value && Object.keys(value).length === 1;
  return isOne ? Number((value as { readonly figure: unknown }).figure) : value;
}

const headFile = 'head.json';
const linesFile = 'sites.jsonl';

/** A short name for what kits are made of. */
export const nameOfKits = (parts: readonly (string | number | null)[]): string =>
  createHash('sha256').update(JSON.stringify(parts)).digest('hex').slice(0, 20);

/** Writes kits one site after the other; the head comes last, so that half of them is none. */
export class KitsWriter {
  private at_bytes = 0;

  private constructor(
    private readonly folder: string,
    private readonly file: Awaited<ReturnType<typeof open>>,
  ) {}

  static async open(folder: string): Promise<KitsWriter> {
    return new KitsWriter(folder, await open(join(folder, linesFile), 'w'));
  }

  async add(site: SiteKitKept): Promise<{ readonly from_bytes: number; readonly length_bytes: number }> {
    const bytes = Buffer.from(`${exactJson(site)}\n`);
    const from_bytes = this.at_bytes;
    await this.file.write(bytes);
    this.at_bytes += bytes.length;
    return { from_bytes, length_bytes: bytes.length - 1 };
  }

  async finish(head: KitsKept): Promise<void> {
    await this.file.sync();
    await this.file.close();
    const passing = await open(join(this.folder, `${headFile}.new`), 'w');
    await passing.writeFile(JSON.stringify(head));
    await passing.close();
    await rename(join(this.folder, `${headFile}.new`), join(this.folder, headFile));
  }
}

/** What all kits come to; null where they are not there, or not whole. */
export async function readKits(folder: string): Promise<KitsKept | null> {
  try {
    return JSON.parse(await readFile(join(folder, headFile), 'utf8')) as KitsKept;
  } catch {
    return null;
  }
}

/** The kits of some sites, in their order; null where one cannot be read. */
export async function readSiteKits(
  folder: string,
  places: readonly SiteOfKits[],
): Promise<readonly SiteKitKept[] | null> {
  const file = await open(join(folder, linesFile), 'r').catch(() => null);
  if (file === null) return null;
  try {
    const found: SiteKitKept[] = [];
    for (const { from_bytes, length_bytes } of places) {
      const bytes = Buffer.alloc(length_bytes);
      await file.read(bytes, 0, length_bytes, from_bytes);
      found.push(JSON.parse(bytes.toString('utf8'), revived) as SiteKitKept);
    }
    return found;
  } catch {
    return null;
  } finally {
    await file.close();
  }
}
