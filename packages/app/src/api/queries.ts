import { queryOptions } from '@tanstack/react-query';
import { answerOf, api } from './client.ts';

/** What the pages ask, by name. Everything of one programme is under its id, so that a change of it makes them all ask anew. */
export const queries = {
  programmes: () => queryOptions({ queryKey: ['programmes'], queryFn: () => answerOf(api.GET('/api/programmes')) }),

  programme: (programmeId: string) =>
    queryOptions({
      queryKey: ['programme', programmeId, 'state'],
      queryFn: () => answerOf(api.GET('/api/programmes/{programmeId}', { params: { path: { programmeId } } })),
    }),

  sites: (programmeId: string) =>
    queryOptions({
      queryKey: ['programme', programmeId, 'sites'],
      queryFn: () => answerOf(api.GET('/api/programmes/{programmeId}/sites', { params: { path: { programmeId } } })),
    }),

  site: (programmeId: string, siteId: string) =>
    queryOptions({
      queryKey: ['programme', programmeId, 'site', siteId],
      queryFn: () =>
        answerOf(
          api.GET('/api/programmes/{programmeId}/sites/{siteId}', { params: { path: { programmeId, siteId } } }),
        ),
    }),
};
