import { Link } from '@tanstack/react-router';
import { memo, type PointerEvent, type SyntheticEvent, useRef } from 'react';
import { useGridListItem } from 'react-aria/useGridList';
import type { ListState } from 'react-stately/useListState';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { GateMark } from '../../look/GateMark.tsx';
import { VerdictMark } from '../../look/VerdictMark.tsx';
import { type SiteEntry, standingOf } from './overview.ts';
import { leadWords, lineWords, mendWords, peopleWords } from './rowWords.ts';
import type { SiteCollection } from './siteCollection.ts';
import { markOf } from './Tally.tsx';
import { Thread } from './Thread.tsx';

/** What the rows are drawn with. */
export interface RowGiven {
  readonly programmeId: string;
  readonly collection: SiteCollection;
  readonly state: ListState<SiteEntry>;
  readonly isDone: boolean;
  /** Are boxes to tick shown? */
  readonly isChoosing: boolean;
  /** Told of the row's element, which is measured. */
  measure(element: HTMLElement | null): void;
}

/** One site of the list, at its place on the page. */
export const SiteRow = memo(function SiteRow({
  row,
  top,
  given,
}: {
  readonly row: number;
  readonly top: number;
  readonly given: RowGiven;
}) {
  const ref = useRef<HTMLDivElement | null>(null);
  const { collection, state, isChoosing, measure } = given;
  const node = collection.at(row)!;
  const { rowProps, gridCellProps } = useGridListItem({ node, isVirtualized: true }, state, ref);
  const site = node.value!;
  const isChosen = state.selectionManager.isSelected(node.key);
  return (
    <div
      {...rowProps}
      ref={(element) => {
        ref.current = element;
        measure(element);
      }}
      data-index={row}
      className={`site-row at-${standingOf(site)}`}
      style={{ transform: `translateY(${top}px)` }}
    >
      <div {...gridCellProps} className="cells">
        {isChoosing ? <Tick site={site} isChosen={isChosen} state={state} /> : null}
        <RowWords site={site} isDone={given.isDone} programmeId={given.programmeId} />
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
const RowWords = memo(function RowWords({
  site,
  isDone,
  programmeId,
}: {
  readonly site: SiteEntry;
  readonly isDone: boolean;
  readonly programmeId: string;
}) {
  const language = useLanguage();
  const { main, more, isKnown } = mendWords(site, language);
  const standing = standingOf(site);
  const lead = leadWords(site, language);
  return (
    <>
      <VerdictMark verdict={markOf(standing)} size={standing === 'holds' ? 16 : 26} />
      <span className="what">
        <span className="who">
          <Link
            to="/p/$programmeId/sites/$siteId"
            params={{ programmeId, siteId: site.siteId || site.key }}
            tabIndex={-1}
            onPointerDown={hold}
            onMouseDown={hold}
          >
            {site.name || site.key}
          </Link>{' '}
          <span className="small">
            {peopleWords(site, language)}
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
          {lineWords(site, isDone, language)}
        </span>
      </span>
      <Thread site={site} />
      <span className="mend">
        {main === '' ? null : <span className={isKnown ? 'sum' : ''}>{main}</span>}
        {more === '' ? null : <span className="small">{more}</span>}
      </span>
    </>
  );
});
