import type { RolloutSheet } from '@eavewell/tables';
import { Link } from '@tanstack/react-router';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { haulValues, type SheetHaul } from './tripWords.ts';

/** Leads to the list of what a run between stores loads, on the page of the trip it is for. */
export function HaulLink(props: {
  readonly haul: SheetHaul;
  readonly sheet: RolloutSheet;
  readonly programmeId: string;
  readonly className?: string;
}) {
  const { haul, sheet, programmeId, className } = props;
  const language = useLanguage();
  const { say } = language;
  return (
    <Link
      {...(className === undefined ? {} : { className })}
      to="/p/$programmeId/rollout/trips/$tripId"
      params={{ programmeId, tripId: haul.forTrip }}
      search={sheet.planId === null ? {} : { plan: sheet.planId }}
      hash="trip-hauls"
      aria-label={say('rolloutBands.haul_list_of', haulValues(haul, sheet, language))}
    >
      {say('rolloutBands.haul_list')}
    </Link>
  );
}
