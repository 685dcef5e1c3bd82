import { queryOptions } from '@tanstack/react-query';
import type { paths } from '../../api/apiTypes.ts';
import { answerOf, api } from '../../api/client.ts';
import type { KitAsked } from './kitAsked.ts';

type Answer<P extends keyof paths> = paths[P] extends {
  get: { responses: { 200: { content: { 'application/json': infer A } } } };
}
  ? A
  : never;

export type ProgrammeKitAnswer = Answer<'/api/programmes/{programmeId}/kit'>;
export type SiteKitAnswer = Answer<'/api/programmes/{programmeId}/sites/{siteId}/kit'>;
export type Carried = SiteKitAnswer['carried'][number];
export type Cost = NonNullable<SiteKitAnswer['cost']>;
export type SiteOfKits = ProgrammeKitAnswer['sites'][number];

/** The kit of a programme, or of the trip that is asked for. */
export const programmeKitQuery = (programmeId: string, asked: KitAsked) =>
  queryOptions({
    queryKey: ['programme', programmeId, 'kit', asked.sites ?? '', asked.neededOn ?? ''],
    queryFn: () =>
      answerOf(
        api.GET('/api/programmes/{programmeId}/kit', {
          params: { path: { programmeId }, query: { ...asked } },
        }),
      ),
  });

/** The kit, the loads and the cost of one site. */
export const siteKitQuery = (programmeId: string, siteId: string) =>
  queryOptions({
    queryKey: ['programme', programmeId, 'kitOfSite', siteId],
    queryFn: () =>
      answerOf(
        api.GET('/api/programmes/{programmeId}/sites/{siteId}/kit', { params: { path: { programmeId, siteId } } }),
      ),
  });
