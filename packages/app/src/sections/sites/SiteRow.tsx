import { type MouseEvent, memo, type PointerEvent, type SyntheticEvent, useRef } from 'react';
import { useGridListItem } from 'react-aria/useGridList';
import type { ListState } from 'react-stately/useListState';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { GateMark } from '../../look/GateMark.tsx';
import { VerdictMark } from '../../look/VerdictMark.tsx';
import { isPlainPress } from './AskedLink.tsx';
import { type SiteEntry, standingOf } from './overview.ts';
import { mendWords, rowTexts } from './rowWords.ts';
import type { SiteCollection } from './siteCollection.ts';
import { markOf } from './Tally.tsx';
import { Thread } from './Thread.tsx';

/** What the rows are drawn with: the same from one drawing to the next, so that a row is drawn anew only where its own state is another. */
export interface RowGiven {
  readonly programmeId: string;
  readonly collection: SiteCollection;
  readonly state: ListState<SiteEntry>;
  readonly isDone: boolean;
  /** Are boxes to tick shown? */
  readonly isChoosing: boolean;
  /** Told of the row's element, which is measured. */
  measure(element: HTMLElement | null): void;
  /** Opens a site. */
  open(key: string): void;
}

/** What a row has of its own. */
export interface RowOwn {
  readonly row: number;
  /** What stays free over it [px]: the rows that are not drawn. */
  readonly gap: number;
  /** Is it the row the keys are at, and has the list the focus? */
  readonly at: 'elsewhere' | 'here' | 'focused';
  readonly isChosen: boolean;
  /** Is no row chosen? Then a press opens the site. */
  readonly isNoneChosen: boolean;
  readonly given: RowGiven;
}

/** One site of the list, at its place on the page. */
export const SiteRow = memo(function SiteRow({ row, gap, isChosen, given }: RowOwn) {
  const ref = useRef<HTMLDivElement | null>(null);
  const { collection, state, isChoosing, measure } = given;
  const node = collection.at(row)!;
  const { rowProps, gridCellProps } = useGridListItem({ node, isVirtualized: true }, state, ref);
  const site = node.value!;
  return (
    <div
      {...rowProps}
      ref={(element) => {
        ref.current = element;
        measure(element);
      }}
      data-index={row}
      className={`site-row at-${standingOf(site)}`}
      style={gap === 0 ? undefined : { marginBlockStart: gap }}
    >
      <div {...gridCellProps} className="cells">
        {isChoosing ? <Tick site={site} isChosen={isChosen} state={state} /> : null}
        <RowWords site={site} given={given} />
      </div>
    </div>
  );
});

/** What is pressed inside a row is not also a press of the row. */
const hold = (event: SyntheticEvent) => event.stopPropagation();

/** The box that chooses a row; with Shift all rows up to it. */
function Tick({
  site,
  isChosen,
  state,
}: {
  readonly site: SiteEntry;
  readonly isChosen: boolean;
  readonly state: ListState<SiteEntry>;
}) {
  const { say } = useLanguage();
  const shift = useRef(false);
  const choose = () => {
    const { selectionManager } = state;
    if (shift.current) selectionManager.extendSelection(site.key);
    else selectionManager.toggleSelection(site.key);
  };
  const note = (event: PointerEvent) => {
    shift.current = event.shiftKey;
    event.stopPropagation();
  };
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: it only keeps a press of the box from being one of the row; Space chooses the row
    <label className="tick" onPointerDown={note} onPointerUp={hold} onMouseDown={hold} onClick={hold}>
      <input
        type="checkbox"
        tabIndex={-1}
        checked={isChosen}
        onChange={choose}
        aria-label={say('sites.choose_one', { name: site.name || site.key })}
      />
    </label>
  );
}

/** The words and marks of a row. */
const RowWords = memo(
  function RowWords({ site, given }: { readonly site: SiteEntry; readonly given: RowGiven }) {
    const language = useLanguage();
    const { main, more, isKnown } = mendWords(site, language);
    const standing = standingOf(site);
    const { people, lead, line } = rowTexts(site, given.isDone, language);
    return (
      <>
        <VerdictMark verdict={markOf(standing)} size={standing === 'holds' ? 16 : 26} />
        <span className="what">
          <span className="who">
            <SiteLink site={site} given={given} />{' '}
            <span className="small">
              {people}
              {site.area === null ? '' : `, ${site.area}`}
            </span>
            {site.standGate === 'closed' ? (
              <span className="gate">
                {' '}
                <GateMark size={15} /> {language.say('sites.gate_closed')}
              </span>
            ) : null}
          </span>
          <span className="line">
            {lead === '' ? null : <b className={`w-${standing}`}>{lead} </b>}
            {line}
          </span>
        </span>
        <Thread site={site} />
        <span className="mend">
          {main === '' ? null : <span className={isKnown ? 'sum' : ''}>{main}</span>}
          {more === '' ? null : <span className="small">{more}</span>}
        </span>
      </>
    );
  },
  // Which rows are chosen, and where they stand, is not told in words.
  (before, now) => before.site === now.site && before.given.isDone === now.given.isDone,
);

/** The way to a site: a plain one, as a link of the router would reckon each row anew at each change of the address. */
function SiteLink({ site, given }: { readonly site: SiteEntry; readonly given: RowGiven }) {
  const go = (event: MouseEvent) => {
    if (!isPlainPress(event)) return;
    event.preventDefault();
    given.open(site.key);
  };
  return (
    <a
      href={`/p/${encodeURIComponent(given.programmeId)}/sites/${encodeURIComponent(site.siteId || site.key)}`}
      tabIndex={-1}
      onPointerDown={hold}
      onMouseDown={hold}
      onClick={go}
    >
      {site.name || site.key}
    </a>
  );
}
