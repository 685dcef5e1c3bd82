import type { RolloutSheet } from '@eavewell/tables';
import type { RefObject } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { HaulLink } from './HaulLink.tsx';
import { OpenedNear } from './OpenedNear.tsx';
import { haulMass, haulValues, nightsOut, type SheetHaul, tripOfHaul } from './tripWords.ts';

interface Of {
  readonly haul: SheetHaul;
  readonly sheet: RolloutSheet;
  readonly programmeId: string;
}

/** A run between stores that was pressed. */
export function HaulOpened({
  near,
  onClose,
  ...of
}: Of & { readonly near: RefObject<HTMLElement | null>; readonly onClose: () => void }) {
  const language = useLanguage();
  const title = language.say('rolloutBands.haul_name', haulValues(of.haul, of.sheet, language));
  return (
    <OpenedNear title={title} near={near} onClose={onClose}>
      <HaulKnown {...of} />
    </OpenedNear>
  );
}

/** What is known of a run between stores: from where to where and when, run by run, its load, for which trip, and its papers. */
export function HaulKnown({ haul, sheet, programmeId }: Of) {
  const language = useLanguage();
  const { say, numbers } = language;
  const nights = nightsOut(haul);
  const of = tripOfHaul(sheet, haul);
  return (
    <>
      <p>{say('rolloutBands.haul', haulValues(haul, sheet, language))}</p>
      {haul.runs.length < 2 ? null : (
        <ol className="haul-runs">
          {haul.runs.map(({ leaves, arrives, back }) => (
            <li key={leaves}>
              {say('rolloutBands.haul_run', {
                ...{ leaves: numbers.date(leaves), arrives: numbers.date(arrives) },
                ...{ back: back === null ? '' : numbers.date(back), hasBack: back === null ? 'no' : 'yes' },
              })}
            </li>
          ))}
        </ol>
      )}
      <p className="small">
        {haulMass(haul, language)}
        {nights === null ? '' : `; ${say('rolloutBands.nights', { count: nights })}`}
      </p>
      {of === null ? null : (
        <p>
          {say('rolloutBands.haul_for', {
            trip: say('rolloutBands.trip_at', { crew: of.crew.name, leaves: numbers.date(of.trip.leaves) }),
          })}
        </p>
      )}
      <p className="trip-papers on-screen">
        <HaulLink haul={haul} sheet={sheet} programmeId={programmeId} />
      </p>
    </>
  );
}
