import { useNavigate, useSearch } from '@tanstack/react-router';
import { startTransition, useCallback, useDeferredValue, useMemo, useRef, useState } from 'react';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { useIsDrawn } from '../../look/useIsDrawn.ts';
import { useIsNarrow } from '../../look/useIsNarrow.ts';
import { useIsPrinting } from '../../look/useIsPrinting.ts';
import { BeforeList, Beside } from './Beside.tsx';
import { ChosenBar } from './ChosenBar.tsx';
import { chosenSites, shownStandings } from './chosenSites.ts';
import { Foot } from './Foot.tsx';
import { ListActs } from './ListActs.tsx';
import type { ListNumbers } from './listNumbers.ts';
import { type SiteEntry, standings } from './overview.ts';
import type { Overview } from './overviewOpened.ts';
import { PrintList } from './PrintList.tsx';
import type { Wanted } from './Rows.tsx';
import { rowTexts } from './rowWords.ts';
import { SiteList } from './SiteList.tsx';
import { SiteCollection } from './siteCollection.ts';
import { TallyCounts } from './Tally.tsx';
import { ThreadHead } from './ThreadHead.tsx';
import { OrderWords, Tools } from './Tools.tsx';
import { useFound } from './useFound.ts';

/** What the sheet is given. */
interface Given {
  readonly programmeId: string;
  readonly name: string;
  readonly overview: Overview;
  readonly isDone: boolean;
}

/** The rows that are shown, in their order. */
function useShownRows({ programmeId, overview, isDone }: Given) {
  const language = useLanguage();
  const asked = useSearch({ from: '/p/$programmeId/sites' });
  // What is asked shows at once in what was pressed; the list follows when it is ready, and nothing waits for it.
  const later = useDeferredValue(asked);
  const found = useFound(programmeId, overview, later.text);
  const label = useCallback(
    (site: SiteEntry) => {
      const { people, lead, line } = rowTexts(site, isDone, language);
      const gate = site.standGate === 'closed' ? [language.say('sites.gate_closed_full')] : [];
      return [site.name || site.key, people, ...gate, `${lead} ${line}`.trim()].join(', ');
    },
    [language, isDone],
  );
  const labels = useMemo(() => ({ label, kept: new WeakMap<SiteEntry, string>() }), [label]);
  const collection = useMemo(
    () => new SiteCollection(overview, chosenSites(overview.numbers, later, found), labels.label, labels.kept),
    [overview, later, found, labels],
  );
  return { asked, shown: shownStandings(asked, found !== null), collection: useDeferredValue(collection) };
}

/** The sites that are chosen: in the order of the whole list. What they come to together follows when it is ready. */
function useChosen(overview: Overview) {
  const [chosen, setChosen] = useState<ReadonlySet<string>>(new Set());
  const later = useDeferredValue(chosen);
  const places = useMemo(
    () =>
      Uint32Array.from(later, (key) => overview.placeOf(key))
        .filter((place) => place < overview.count)
        .sort(),
    [later, overview],
  );
  return { chosen, setChosen, places };
}

/** The site that was pressed on the map. */
function useMap(overview: Overview, collection: SiteCollection) {
  const navigate = useNavigate({ from: '/p/$programmeId/sites' });
  const [wanted, setWanted] = useState<Wanted | null>(null);
  const latest = useRef(collection);
  latest.current = collection;
  const select = useCallback(
    (key: string) => {
      setWanted((before) => ({ key, count: (before?.count ?? 0) + 1 }));
      const site = overview.siteAt(overview.placeOf(key));
      // A site that the list does not show now is looked for by its number.
      if (site !== undefined && latest.current.rowOfKey(key) < 0)
        void navigate({ to: '.', search: { text: site.siteId || site.name }, resetScroll: false });
    },
    [overview, navigate],
  );
  return { wanted, select };
}

/** The verdicts that some sites have, in the order they are met. */
const standingsAt = ({ standing }: ListNumbers, places: Uint32Array) =>
  Array.from(new Set(places.map((place) => standing[place]!)), (of) => standings[of]!);

/** The list of sites with what filters it, the map beside it, and what would mend them all. */
// long: the sheet as it is read, part after part
export function SitesSheet(given: Given) {
  const { programmeId, name, overview, isDone } = given;
  const { say } = useLanguage();
  const { asked, shown, collection } = useShownRows(given);
  const { chosen, setChosen, places: chosenPlaces } = useChosen(overview);
  const [isChoosing, setChoosing] = useState(false);
  const [isChosenPrinted, setChosenPrinted] = useState(false);
  const { wanted, select } = useMap(overview, collection);
  const [onScreen, setOnScreen] = useState<readonly string[]>([]);
  const tellShown = useCallback((keys: readonly string[]) => startTransition(() => setOnScreen(keys)), []);
  const isPrinting = useIsPrinting();
  const isNarrow = useIsNarrow();
  const isUnderDrawn = useIsDrawn('tools of sites');
  const isDrawn = useIsDrawn(isUnderDrawn ? 'list of sites' : null);
  const { head, numbers } = overview;
  const isTicking = isChoosing || chosen.size > 0;
  const turnChoosing = useCallback(() => {
    if (isTicking) setChosen(new Set());
    setChoosing(!isTicking);
  }, [isTicking, setChosen]);
  const chooseAll = useCallback(() => startTransition(() => setChosen(collection.allKeys())), [collection, setChosen]);
  const print = useCallback((isOfChosen: boolean) => {
    setChosenPrinted(isOfChosen);
    setTimeout(() => {
      window.print();
      setChosenPrinted(false);
    });
  }, []);
  const printList = useCallback(() => print(false), [print]);
  const printChosen = useCallback(() => print(true), [print]);
  const clearChosen = useCallback(() => setChosen(new Set()), [setChosen]);
  const printed = isChosenPrinted ? chosenPlaces : collection.places;
  return (
    <>
      <TallyCounts
        programmeId={programmeId}
        tally={head.tally}
        asked={asked}
        isDone={isDone}
        closed_count={numbers.closed_count}
      />
      <div className="sites-sheet on-screen">
        <div className="sites-left">
          {isNarrow ? <BeforeList programmeId={programmeId} remedies={head.remedies} /> : null}
          <div className="tools-row on-screen">
            <Tools programmeId={programmeId} asked={asked} areas={numbers.areas} />
            <ListActs
              count={collection.size}
              isChoosing={isTicking}
              onChoose={turnChoosing}
              onChooseAll={chooseAll}
              onPrint={printList}
            />
          </div>
          {chosenPlaces.length === 0 ? null : (
            <ChosenBar
              programmeId={programmeId}
              overview={overview}
              places={chosenPlaces}
              collection={collection}
              onPrint={printChosen}
              onClear={clearChosen}
            />
          )}
          {isUnderDrawn ? (
            <>
              <div className="list-head">
                <OrderWords programmeId={programmeId} asked={asked} />
                <ThreadHead />
                <p className="small mend-head">{say('sites.mend_head')}</p>
              </div>
              {collection.size === 0 ? (
                <p className="none-fit" role="status">
                  {say(asked.text === undefined ? 'sites.none_need' : 'sites.none_fit')}
                </p>
              ) : (
                <SiteList
                  programmeId={programmeId}
                  collection={collection}
                  chosen={chosen}
                  onChosen={setChosen}
                  isChoosing={isTicking}
                  isDone={isDone}
                  wanted={wanted}
                  onShown={tellShown}
                />
              )}
              <Foot
                programmeId={programmeId}
                asked={asked}
                areHoldsShown={shown.includes('holds')}
                holds={head.tally.holds.sites}
              />
            </>
          ) : null}
        </div>
        {isNarrow ? null : isDrawn ? (
          <Beside
            programmeId={programmeId}
            sites={overview.map}
            listed={onScreen}
            selected={wanted?.key ?? null}
            onSelect={select}
            remedies={head.remedies}
          />
        ) : (
          <aside className="sites-right" />
        )}
      </div>
      {isPrinting ? (
        <PrintList
          name={name}
          overview={overview}
          places={printed}
          shown={isChosenPrinted ? standingsAt(numbers, printed) : shown}
          isDone={isDone}
        />
      ) : null}
    </>
  );
}
