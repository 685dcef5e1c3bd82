import type { RolloutSheet } from '@eavewell/tables';
import { useQuery } from '@tanstack/react-query';
import { createContext, type ReactNode, useContext, useMemo, useState } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { Working } from '../../site/Working.tsx';
import { type FigureAsked, workingQuery } from './workingQuery.ts';
import '../../site/site.css';
import './working.css';

type OfSheet = Pick<RolloutSheet, 'planId' | 'stamp' | 'futures' | 'crews'>;

interface Opening {
  readonly sheet: OfSheet;
  readonly programmeId: string;
  /** First days of service of the plan as it is kept, by site. */
  readonly servedOf: ReadonlyMap<string, string | null>;
  /** The figure that is opened, and in which part of the page; null: none is. */
  readonly opened: { readonly key: string; readonly asked: FigureAsked; readonly part: string } | null;
  open(asked: FigureAsked, part: string): void;
  close(): void;
}

const OpeningContext = createContext<Opening | null>(null);

/** Lets figures of the rollout open to their workings. */
export function WithWorkings({
  sheet,
  programmeId,
  children,
}: {
  readonly sheet: OfSheet;
  readonly programmeId: string;
  readonly children: ReactNode;
}) {
  const [opened, setOpened] = useState<Opening['opened']>(null);
  const servedOf = useMemo(() => {
    const stops = sheet.crews.flatMap(({ trips }) => trips.flatMap((trip) => trip.stops));
    return new Map(stops.map(({ siteId, served }) => [siteId, served]));
  }, [sheet]);
  const value = useMemo<Opening>(
    () => ({
      ...{ sheet, programmeId, servedOf, opened },
      open: (asked, part) =>
        setOpened((before) => {
          const key = JSON.stringify(asked);
          return before?.key === key && before.part === part ? null : { key, asked, part };
        }),
      close: () => setOpened(null),
    }),
    [sheet, programmeId, servedOf, opened],
  );
  return <OpeningContext value={value}>{children}</OpeningContext>;
}

/** A figure that opens to its working in a part of the page; plain where no workings are at hand, as of a day that was moved by hand and not kept. */
export function OpensWorking({
  asked,
  part,
  served,
  children,
}: {
  readonly asked: FigureAsked;
  readonly part: string;
  /** The day that is shown, of a site. */
  readonly served?: string;
  readonly children: string;
}) {
  const { say } = useLanguage();
  const opening = useContext(OpeningContext);
  if (opening === null || opening.sheet.planId === null) return children;
  if (asked.figure === 'drinks' && asked.plan === undefined && served !== opening.servedOf.get(asked.site))
    return children;
  const { opened } = opening;
  return (
    <button
      type="button"
      className="opens"
      aria-expanded={opened?.part === part && opened.key === JSON.stringify(asked)}
      aria-label={say('site.open_working', { figure: children })}
      onClick={() => opening.open(asked, part)}
    >
      {children}
    </button>
  );
}

/** Where the working of a figure of this part opens. */
export function WorkingOfPart({ part }: { readonly part: string }) {
  const opening = useContext(OpeningContext);
  return opening?.opened?.part !== part ? null : <Opened opening={opening} asked={opening.opened.asked} />;
}

function Opened({ opening, asked }: { readonly opening: Opening; readonly asked: FigureAsked }) {
  const { say } = useLanguage();
  const { sheet, programmeId, close } = opening;
  const { data, isError } = useQuery(workingQuery(programmeId, sheet.planId, `${sheet.stamp} ${sheet.futures}`, asked));
  if (data !== undefined) return <Working lines={data.working} opened={data.opens} onClose={close} />;
  return (
    <p role="status" className={isError ? 'w-short' : 'small'}>
      {say(isError ? 'rolloutBands.working_none' : 'rolloutBands.working_read')}
    </p>
  );
}
