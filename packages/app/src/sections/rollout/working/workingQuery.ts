import { queryOptions } from '@tanstack/react-query';
import { answerOf, api } from '../../../api/client.ts';

/** A figure of the rollout that opens to its working: of the plan of the sheet, or of one that is set beside another. */
export type FigureAsked = Figure & { readonly plan?: string; readonly beside?: string };

type Figure =
  | { readonly figure: 'finish' | 'waiting' | 'bound' | 'cost' }
  | { readonly figure: 'drinks' | 'why'; readonly site: string }
  | { readonly figure: 'area'; readonly area?: string }
  | { readonly figure: 'differs'; readonly differs: 'finish' | 'waiting' | 'cost' | 'fuel' | 'trips' }
  | { readonly figure: 'stock'; readonly store: string; readonly part: string; readonly day: string };

/** How a figure was reached; of one state of the programme, so that it goes with the sheet it is opened from. */
export const workingQuery = (programmeId: string, plan: string | null, stamp: string, asked: FigureAsked) =>
  queryOptions({
    queryKey: ['programme', programmeId, 'rollout', 'working', plan, stamp, JSON.stringify(asked)],
    queryFn: () =>
      answerOf(
        api.GET('/api/programmes/{programmeId}/rollout/working', {
          params: { path: { programmeId }, query: { ...(plan === null ? {} : { plan }), ...asked } },
        }),
      ),
  });
