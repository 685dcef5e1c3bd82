import type { ListState } from 'react-stately/useListState';
import type { SiteEntry } from './overview.ts';
import type { Overview } from './overviewOpened.ts';

/** The rows of a list and one of them, as the library knows them. */
type Collection = ListState<SiteEntry>['collection'];
type Node = NonNullable<ReturnType<Collection['getItem']>>;
/** What names a row. */
export type Key = Node['key'];

/**
 * The rows of the list as the keyboard and the choosing of rows see them. A row is made when it is looked at, so that ten
 * thousand cost no more than those on the screen.
 */
export class SiteCollection implements Collection {
  private readonly rowOf: Int32Array;

  constructor(
    private readonly overview: Overview,
    /** Places of the rows in the list of all sites, in the order shown. */
    readonly places: Uint32Array,
    private readonly label: (site: SiteEntry) => string,
    /** Labels that were made already: they are looked at each time a row is drawn. */
    private readonly labels: WeakMap<SiteEntry, string> = new WeakMap(),
  ) {
    this.rowOf = new Int32Array(overview.count).fill(-1);
    places.forEach((place, row) => {
      this.rowOf[place] = row;
    });
  }

  get size(): number {
    return this.places.length;
  }

  /** The site in a row; rows count from 0. */
  siteAt(row: number): SiteEntry | undefined {
    const place = this.places[row];
    return place === undefined ? undefined : this.overview.siteAt(place);
  }

  /** The row of a site; -1 where it is not shown. */
  rowOfKey(key: Key | null): number {
    return key === null ? -1 : this.rowOfPlace(this.overview.placeOf(String(key)));
  }

  /** The row of a site by its place in the list of all; -1 where it is not shown. */
  rowOfPlace(place: number): number {
    return this.rowOf[place] ?? -1;
  }

  getKeys(): Iterable<Key> {
    return this.keys();
  }

  /** What names the rows, all of them. */
  allKeys(): ReadonlySet<string> {
    const keys = new Set<string>();
    for (const place of this.places) keys.add(this.overview.keyAt(place));
    return keys;
  }

  getItem(key: Key): Node | null {
    const row = this.rowOfKey(key);
    return row < 0 ? null : this.at(row);
  }

  at(row: number): Node | null {
    const key = this.keyAt(row);
    if (key === null) return null;
    const { label, labels } = this;
    const siteOf = () => this.siteAt(row)!;
    return {
      ...{ type: 'item', key, level: 0, hasChildNodes: false, childNodes: [], rendered: null },
      ...{ index: row, parentKey: null, prevKey: this.keyAt(row - 1), nextKey: this.keyAt(row + 1), props: {} },
      get value() {
        return siteOf();
      },
      get textValue() {
        const site = siteOf();
        const text = labels.get(site) ?? label(site);
        labels.set(site, text);
        return text;
      },
    } as Node;
  }

  keyAt(row: number): Key | null {
    const place = this.places[row];
    return place === undefined ? null : this.overview.keyAt(place);
  }

  getKeyBefore(key: Key): Key | null {
    return this.keyAt(this.rowOfKey(key) - 1);
  }

  getKeyAfter(key: Key): Key | null {
    const row = this.rowOfKey(key);
    return row < 0 ? null : this.keyAt(row + 1);
  }

  getFirstKey(): Key | null {
    return this.keyAt(0);
  }

  getLastKey(): Key | null {
    return this.keyAt(this.size - 1);
  }

  getChildren(): Iterable<Node> {
    return [];
  }

  /** Every row asks for all rows, to count those that are sections: there is none, and ten thousand need not be made for it. */
  [Symbol.iterator](): Iterator<Node> {
    return [][Symbol.iterator]();
  }

  private *keys(): Generator<Key> {
    for (let row = 0; row < this.size; row++) yield this.keyAt(row)!;
  }
}
