import { queryOptions } from '@tanstack/react-query';
import type { paths } from './apiTypes.ts';
import { answerOf, api } from './client.ts';

/** What the pages ask, by name. Everything of one programme is under its id, so that a change of it makes them all ask anew. */
export const queries = {
  programmes: () => queryOptions({ queryKey: ['programmes'], queryFn: () => answerOf(api.GET('/api/programmes')) }),

  mapFiles: () => queryOptions({ queryKey: ['mapFiles'], queryFn: () => answerOf(api.GET('/api/maps')) }),

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

  table: (programmeId: string, table: TableName) =>
    queryOptions({
      queryKey: ['programme', programmeId, 'table', table],
      queryFn: () =>
        answerOf(api.GET('/api/programmes/{programmeId}/tables/{table}', { params: { path: { programmeId, table } } })),
    }),

  history: (programmeId: string, cell: { readonly table: string; readonly key: string; readonly column: string }) =>
    queryOptions({
      queryKey: ['programme', programmeId, 'history', cell],
      queryFn: () =>
        answerOf(api.GET('/api/programmes/{programmeId}/history', { params: { path: { programmeId }, query: cell } })),
    }),

  conflicts: (programmeId: string) =>
    queryOptions({
      queryKey: ['programme', programmeId, 'conflicts'],
      queryFn: () =>
        answerOf(api.GET('/api/programmes/{programmeId}/conflicts', { params: { path: { programmeId } } })),
    }),

  /** The newest records: the first page of them. */
  lastRecords: (programmeId: string) =>
    queryOptions({
      queryKey: ['programme', programmeId, 'records', 'last'],
      queryFn: () => recordsBefore(programmeId, null, 20),
    }),
};

/** A page of records, newest first: those before a place, or the last ones. */
export function recordsBefore(programmeId: string, before: number | null, most: number) {
  const query = before === null ? { most } : { most, before };
  return answerOf(api.GET('/api/programmes/{programmeId}/changes', { params: { path: { programmeId }, query } }));
}

/** A table as the program names it. */
export type TableName = paths['/api/programmes/{programmeId}/tables/{table}']['get']['parameters']['path']['table'];
