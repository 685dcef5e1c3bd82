import { useNavigate, useSearch } from '@tanstack/react-router';
import { startTransition, useCallback, useDeferredValue, useMemo, useRef, useState } from 'react';
import { SetForManyPress } from '../../forms/SetForManyPress.tsx';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { useIsDrawn } from '../../look/useIsDrawn.ts';
import { useIsNarrow } from '../../look/useIsNarrow.ts';
import { useIsPrinting } from '../../look/useIsPrinting.ts';
import { BeforeList, Beside } from './Beside.tsx';
import { ChosenBar } from './ChosenBar.tsx';
import { chosenSites, shownStandings } from './chosenSites.ts';
import { Foot } from './Foot.tsx';
import { ListActs } from './ListActs.tsx';
import { type Overview, type SiteEntry, standingOf } from './overview.ts';
import { PrintList } from './PrintList.tsx';
import type { Wanted } from './Rows.tsx';
import { leadWords, lineWords, peopleWords } from './rowWords.ts';
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
  const compare = useMemo(() => new Intl.Collator(language.code, { numeric: true }).compare, [language.code]);
  const label = useCallback(
    (site: SiteEntry) =>
      [
        site.name || site.key,
        peopleWords(site, language),
        ...(site.standGate === 'closed' ? [language.say('sites.gate_closed_full')] : []),
        `${leadWords(site, language)} ${lineWords(site, isDone, language)}`.trim(),
      ].join(', '),
    [language, isDone],
  );
  const labels = useMemo(() => ({ label, kept: new WeakMap<SiteEntry, string>() }), [label]);
  const collection = useMemo(
    () => new SiteCollection(overview, chosenSites(overview, later, found, compare), labels.label, labels.kept),
    [overview, later, found, compare, labels],
  );
  return { asked, shown: shownStandings(asked, found !== null), collection: useDeferredValue(collection) };
}

/** Areas there are, with how many sites lie in each, by name. */
function areasOf(sites: readonly SiteEntry[], code: string) {
  const counts = new Map<string, number>();
  for (const { area } of sites) if (area !== null) counts.set(area, (counts.get(area) ?? 0) + 1);
  const { compare } = new Intl.Collator(code, { numeric: true });
  return [...counts].sort((a, b) => compare(a[0], b[0]));
}

/** The sites that are chosen: in the order of the whole list. What they come to together follows when it is ready. */
function useChosen(overview: Overview) {
  const [chosen, setChosen] = useState<ReadonlySet<string>>(new Set());
  const later = useDeferredValue(chosen);
  const sites = useMemo(
    () => (later.size === 0 ? [] : overview.sites.filter(({ key }) => later.has(key))),
    [later, overview],
  );
  return { chosen, setChosen, sites };
}

/** The sites as the map takes them, and the one that was pressed on it. */
function useMap(overview: Overview, collection: SiteCollection) {
  const navigate = useNavigate({ from: '/p/$programmeId/sites' });
  const [wanted, setWanted] = useState<Wanted | null>(null);
  const mapped = useMemo(
    () =>
      overview.sites.map((site) => ({
        ...{ key: site.key, latitude_deg: site.latitude_deg, longitude_deg: site.longitude_deg },
        name: site.name || site.siteId || site.key,
        verdict: site.verdict ?? ('notJudged' as const),
      })),
    [overview],
  );
  const latest = useRef(collection);
  latest.current = collection;
  const select = useCallback(
    (key: string) => {
      setWanted((before) => ({ key, count: (before?.count ?? 0) + 1 }));
      const site = overview.sites[overview.places.get(key) ?? -1];
      // A site that the list does not show now is looked for by its number.
      if (site !== undefined && latest.current.rowOfKey(key) < 0)
        void navigate({ to: '.', search: { text: site.siteId || site.name }, resetScroll: false });
    },
    [overview, navigate],
  );
  return { mapped, wanted, select };
}

/** The list of sites with what filters it, the map beside it, and what would mend them all. */
// long: the sheet as it is read, part after part
export function SitesSheet(given: Given) {
  const { programmeId, name, overview, isDone } = given;
  const { say, code } = useLanguage();
  const { asked, shown, collection } = useShownRows(given);
  const { chosen, setChosen, sites: chosenOnes } = useChosen(overview);
  const [isChoosing, setChoosing] = useState(false);
  const [isChosenPrinted, setChosenPrinted] = useState(false);
  const { mapped, wanted, select } = useMap(overview, collection);
  const [onScreen, setOnScreen] = useState<readonly string[]>([]);
  const tellShown = useCallback((keys: readonly string[]) => startTransition(() => setOnScreen(keys)), []);
  const isPrinting = useIsPrinting();
  const isNarrow = useIsNarrow();
  const isDrawn = useIsDrawn('list of sites');
  const areas = useMemo(() => areasOf(overview.sites, code), [overview, code]);
  const closed_count = useMemo(
    () => overview.sites.reduce((count, { standGate }) => count + Number(standGate === 'closed'), 0),
    [overview],
  );
  const { head } = overview;
  const isTicking = isChoosing || chosen.size > 0;
  const print = (isOfChosen: boolean) => {
    setChosenPrinted(isOfChosen);
    setTimeout(() => {
      window.print();
      setChosenPrinted(false);
    });
  };
  const printed = isPrinting
    ? isChosenPrinted
      ? chosenOnes
      : Array.from(collection.places, (at) => overview.sites[at]!)
    : [];
  return (
    <>
      <TallyCounts tally={head.tally} asked={asked} shown={shown} isDone={isDone} closed_count={closed_count} />
      <div className="sites-sheet on-screen">
        <div className="sites-left">
          {isNarrow ? <BeforeList programmeId={programmeId} remedies={head.remedies} /> : null}
          <div className="tools-row on-screen">
            <Tools asked={asked} areas={areas} isFull={Object.keys(asked).length === 0} />
            <ListActs
              count={collection.size}
              isChoosing={isTicking}
              onChoose={() => {
                if (isTicking) setChosen(new Set());
                setChoosing(!isTicking);
              }}
              onChooseAll={() => setChosen(new Set(collection.getKeys() as Iterable<string>))}
              onPrint={() => print(false)}
            />
          </div>
          {chosenOnes.length === 0 ? null : (
            <ChosenBar
              sites={chosenOnes}
              hidden_count={chosenOnes.filter(({ key }) => collection.rowOfKey(key) < 0).length}
              onPrint={() => print(true)}
              onClear={() => setChosen(new Set())}
            >
              <SetForManyPress programmeId={programmeId} siteIds={chosenOnes.map(({ key }) => key)} />
            </ChosenBar>
          )}
          <div className="list-head">
            <OrderWords asked={asked} />
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
          <Foot asked={asked} shown={shown} holds={head.tally.holds.sites} />
        </div>
        {isNarrow ? null : isDrawn ? (
          <Beside
            programmeId={programmeId}
            sites={mapped}
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
          sites={printed}
          shown={isChosenPrinted ? [...new Set(printed.map(standingOf))] : shown}
          isDone={isDone}
        />
      ) : null}
    </>
  );
}
