import type { MapSites } from '../map/mapSites.ts';
import type { ListNumbers } from './listNumbers.ts';
import type { OverviewHead, SiteEntry } from './overview.ts';
import { type OverviewPacked, placeOfKey, readSite, wordAt } from './overviewPacked.ts';

/** So many sites that were looked at stay read: more than a page shows. Ours. */
const most_read = 200;

/**
 * All that is known of the sites, in the order of the server: worst first. A site is read when it is looked at. What goes over all of
 * them goes by `numbers`.
 */
export class Overview {
  /** The sites as the map takes them: its verdicts stand in the order of `standings`. */
  readonly map: MapSites;
  /** Sites that were read, the one looked at last at the end. */
  private readonly read = new Map<number, SiteEntry>();

  constructor(private readonly packed: OverviewPacked) {
    const { latitude_deg, longitude_deg, standing } = packed.numbers;
    this.map = {
      ...{ count: this.count, latitude_deg, longitude_deg, verdict: standing },
      keyAt: (place) => this.keyAt(place),
      nameAt: (place) => this.nameAt(place),
      placeOf: (key) => this.placeOf(key),
    };
  }

  get head(): OverviewHead {
    return this.packed.head;
  }

  get numbers(): ListNumbers {
    return this.packed.numbers;
  }
  /** Sites in all. */
  get count(): number {
    return this.packed.starts.length - 1;
  }

  /** The site at a place; undefined where there is none. It is the same thing as long as it is looked at. */
  siteAt(place: number): SiteEntry | undefined {
    if (!(place >= 0 && place < this.count)) return undefined;
    const site = this.read.get(place) ?? readSite(this.packed.bytes, this.packed.starts, place);
    this.read.delete(place);
    this.read.set(place, site);
    if (this.read.size > most_read) this.read.delete(this.read.keys().next().value!);
    return site;
  }

  /** The place of a site by the key of its row; -1 where there is none. */
  placeOf(key: string): number {
    return placeOfKey(this.packed, key);
  }

  keyAt(place: number): string {
    return wordAt(this.packed.keys, place);
  }

  siteIdAt(place: number): string {
    return wordAt(this.packed.siteIds, place);
  }

  /** What it is called: its name; where it has none its number, or its key. */
  nameAt(place: number): string {
    return wordAt(this.packed.names, place);
  }
}

const opened = new WeakMap<OverviewPacked, Overview>();

/** The list as it is looked at: one for each that was packed, whoever asks. */
export function overviewOf(packed: OverviewPacked): Overview {
  const known = opened.get(packed) ?? new Overview(packed);
  opened.set(packed, known);
  return known;
}
