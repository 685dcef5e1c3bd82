import {
  buildingOf,
  levelShapes,
  type Picture,
  planOf,
  type Section,
  type SectionInput,
  sectionOf,
  svgOf,
} from '@eavewell/drawing';
import type { SiteFacts, Station } from '@eavewell/engine';
import { sectionFindings, sectionWords } from '@eavewell/words/app';
import { type ReactNode, type RefObject, useEffect, useMemo, useRef, useState } from 'react';
import { createPortal } from 'react-dom';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { elementOf, PictureView } from '../../../look/PictureView.tsx';
import { useWidth } from '../../../look/useWidth.ts';
import type { Judged } from '../../../water/index.ts';
import { stationsInOrder } from '../../sites/index.ts';
import type { SiteReport } from '../siteFigures.ts';
import { Handles } from './Handles.tsx';
import { markLetters } from './markLetters.ts';
import type { Measures } from './measures.ts';
import { usePointedDay } from './pointedDay.ts';

/** Under this width of the room the drawing shows the whole in small, without handles [px]. */
const narrow_px = 560;

/** The building, roof to cup, to scale: from the side or from above. What is tried is drawn in it, dashed. */
export function DrawnSite({
  name,
  site,
  tried,
  report,
  storages,
  measures,
  pressed,
  onPart,
}: {
  readonly name: string;
  readonly site: SiteFacts;
  /** With the draft; null where there is none. */
  readonly tried: SiteFacts | null;
  readonly report: SiteReport;
  readonly storages: Judged['storages'];
  readonly measures: Measures | null;
  /** The station whose working is open: its detail is drawn. */
  readonly pressed: Station | null;
  onPart(part: string): void;
}) {
  const { say } = useLanguage();
  const room = useRef<HTMLDivElement>(null);
  const { width, isPaper } = useWidth(room);
  const [view, setView] = useState<'section' | 'plan'>('section');
  return (
    <section className="drawn" aria-label={say('water.section')}>
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset is for fields; these are two presses */}
      <div className="drawn-views on-screen" role="group" aria-label={say('water.view')}>
        {(['section', 'plan'] as const).map((one) => (
          <button key={one} type="button" className="press" aria-pressed={view === one} onClick={() => setView(one)}>
            {say(`water.view_${one}`)}
          </button>
        ))}
      </div>
      <div ref={room} className="drawn-room">
        {width === null || width < 100 ? null : (
          <>
            {view === 'section' || isPaper ? (
              <Side
                {...{ name, site, tried, report, storages, width, onPart, pressed }}
                measures={isPaper || width < narrow_px ? null : measures}
              />
            ) : null}
            {view === 'section' && !isPaper && width < narrow_px ? (
              <CutOuts {...{ name, site, tried, report, storages, width, onPart, measures, pressed }} />
            ) : null}
            {view === 'plan' || isPaper ? (
              <Above {...{ name, site, tried, width, onPart }} measures={isPaper ? null : measures} />
            ) : null}
          </>
        )}
      </div>
      <LevelWords storages={storages} />
    </section>
  );
}

interface SideProps {
  readonly name: string;
  readonly site: SiteFacts;
  readonly tried: SiteFacts | null;
  readonly report: SiteReport;
  readonly storages: Judged['storages'];
  readonly measures: Measures | null;
  readonly width: number;
  onPart(part: string): void;
  /** The station whose working is open. */
  readonly pressed: Station | null;
  /** The whole, or a cut-out at one station. */
  readonly detail?: Station | 'whole';
}

function Side({ name, site, tried, report, storages, measures, width, onPart, pressed, detail = 'whole' }: SideProps) {
  const language = useLanguage();
  const picture = useMemo(() => {
    const input: SectionInput = {
      building: buildingOf(site),
      proposed: tried && buildingOf(tried),
      levels: null,
      stations: report.stations,
      letters: markLetters(report, language),
      words: sectionWords(language),
      width,
      detail,
      pressed: detail === 'whole' ? pressed : null,
      ...sectionFindings(report, tried ?? site, language),
    };
    return sectionOf(input);
  }, [site, tried, report, language, width, detail, pressed]);
  const frame = useRef<HTMLDivElement>(null);
  const station = detail === 'whole' ? null : language.say(`sites.station_${detail}`);
  return (
    <Framed frame={frame} picture={picture} measures={measures}>
      <PictureView
        picture={picture}
        name={
          station === null
            ? language.say('water.section_name', { name })
            : language.say('water.detail_name', { station, name })
        }
        onPress={({ part }) => part !== null && onPart(part)}
      />
      <Levels frame={frame} picture={picture} storages={storages} />
    </Framed>
  );
}

/** On a phone: what is not well, each with its own cut-out of the same drawing, large enough to be measured on. */
function CutOuts({ report, ...props }: SideProps) {
  const exceptions = stationsInOrder.filter((station) => {
    const verdict = report.stations[station];
    // Of the cup there is nothing to be measured: what may be said of drinking stands over the drawing.
    return station !== 'cup' && (verdict === 'short' || verdict === 'tight');
  });
  return exceptions.map((station) => <Side key={station} {...props} report={report} detail={station} />);
}

function Above({ name, site, tried, width, measures, onPart }: Omit<SideProps, 'report' | 'storages' | 'pressed'>) {
  const language = useLanguage();
  const frame = useRef<HTMLDivElement>(null);
  const picture = useMemo(
    () =>
      planOf({
        building: buildingOf(site),
        proposed: tried && buildingOf(tried),
        words: sectionWords(language),
        width,
      }),
    [site, tried, language, width],
  );
  return (
    <Framed frame={frame} picture={picture} measures={measures}>
      <PictureView
        picture={picture}
        name={language.say('water.plan_name', { name })}
        onPress={({ part }) => part !== null && onPart(part)}
      />
    </Framed>
  );
}

function Framed({
  frame,
  picture,
  measures,
  children,
}: {
  readonly frame: RefObject<HTMLDivElement | null>;
  readonly picture: Picture;
  readonly measures: Measures | null;
  readonly children: ReactNode;
}) {
  return (
    <div ref={frame} className="drawn-frame" dir="ltr">
      {children}
      {measures === null ? null : <Handles picture={picture} measures={measures.handles} />}
    </div>
  );
}

/** The water in the tanks, drawn into their places in the section: it follows the day that is pointed at, and nothing else is drawn again. */
function Levels({
  frame,
  picture,
  storages,
}: {
  readonly frame: RefObject<HTMLDivElement | null>;
  readonly picture: Section;
  readonly storages: Judged['storages'];
}) {
  const [day] = usePointedDay();
  const [places, setPlaces] = useState<ReadonlyMap<string, Element>>(new Map());
  // biome-ignore lint/correctness/useExhaustiveDependencies: the places are looked for in each new picture
  useEffect(() => {
    const found = frame.current?.querySelectorAll('[data-part^="water:"]') ?? [];
    // Chromium lets Tab stop at what listens for the focus, and React listens at each place it draws into.
    for (const place of found) place.setAttribute('tabindex', '-1');
    setPlaces(new Map([...found].map((place) => [place.getAttribute('data-part') ?? '', place])));
  }, [frame, picture]);
  const levels = storages.map((one) => ({ tankIds: one.tankIds, content_L: contentOn(one, day) }));
  return levelShapes(picture, levels).map(({ part, shapes }) => {
    const place = places.get(part ?? '');
    return place === undefined ? null : createPortal(svgOf({ shapes }).map(elementOf), place, part);
  });
}

/** What is in the tank on a day; on the last of the record where none is pointed at [L]. */
function contentOn({ series }: Judged['storages'][number], day: number | null): number {
  const at = day === null ? series.content_L.length - 1 : day - series.firstDay;
  return series.content_L[at] ?? 0;
}

/** Which day the water is drawn of, in words. */
function LevelWords({ storages }: { readonly storages: Judged['storages'] }) {
  const { say, numbers } = useLanguage();
  const [day] = usePointedDay();
  const [first] = storages;
  if (first === undefined) return null;
  const litres = storages.map((one) => numbers.litres(contentOn(one, day))).join(' + ');
  return (
    <p className="small level-words">
      {day === null ? say('water.level_end', { litres }) : say('water.level_on', { day: numbers.date(day), litres })}
    </p>
  );
}
