import { queryOptions } from '@tanstack/react-query';
import type { paths } from './apiTypes.ts';
import { answerOf, api } from './client.ts';

/** A table whose rows can be asked for. */
export type TableName = paths['/api/programmes/{programmeId}/tables/{table}']['get']['parameters']['path']['table'];

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

  rows: (programmeId: string, table: TableName) =>
    queryOptions({
      queryKey: ['programme', programmeId, 'rows', table],
      queryFn: () =>
        answerOf(api.GET('/api/programmes/{programmeId}/tables/{table}', { params: { path: { programmeId, table } } })),
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
