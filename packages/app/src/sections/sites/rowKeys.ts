import type { AriaGridListOptions } from 'react-aria/useGridList';
import type { SiteEntry } from './overview.ts';
import type { Key, SiteCollection } from './siteCollection.ts';

/** What the library asks where a key leads. */
type KeyboardDelegate = NonNullable<AriaGridListOptions<SiteEntry>['keyboardDelegate']>;

/** Rows that Page Up and Page Down go by: about what a screen shows. Ours. */
const page_rows = 10;

/** Where the keys lead in a list of which only a part is on the page. */
export class RowKeys implements KeyboardDelegate {
  constructor(private readonly collection: SiteCollection) {}

  getKeyBelow(key: Key): Key | null {
    return this.collection.getKeyAfter(key);
  }

  getKeyAbove(key: Key): Key | null {
    return this.collection.getKeyBefore(key);
  }

  getKeyPageBelow(key: Key): Key | null {
    return this.collection.keyAt(Math.min(this.collection.rowOfKey(key) + page_rows, this.collection.size - 1));
  }

  getKeyPageAbove(key: Key): Key | null {
    return this.collection.keyAt(Math.max(this.collection.rowOfKey(key) - page_rows, 0));
  }

  getFirstKey(): Key | null {
    return this.collection.getFirstKey();
  }

  getLastKey(): Key | null {
    return this.collection.getLastKey();
  }
}
