import { skipToken, useQuery } from '@tanstack/react-query';
import { queries } from '../../../api/queries.ts';
import { useLanguage } from '../../../language/LanguageProvider.tsx';

/** How far what a plan waits for is, in words: the design of its sites, then the plan itself; null: not known, or at its end. */
export function useMakingShare(programmeId: string): string | null {
  const { numbers } = useLanguage();
  const { data: state } = useQuery(queries.programme(programmeId));
  const { data: making } = useQuery<number>({
    queryKey: ['programme', programmeId, 'rolloutMaking'],
    queryFn: skipToken,
  });
  const isDesigning = state !== undefined && state.done_fraction < 1 && !state.isFailed && !state.isCalledOff;
  const done_fraction = isDesigning ? state.done_fraction : (making ?? 1);
  return done_fraction >= 1 ? null : numbers.percent(Math.floor(done_fraction * 100) / 100);
}
