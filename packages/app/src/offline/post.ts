import type { QueryClient } from '@tanstack/react-query';
import { answerOf, api } from '../api/client.ts';
import type { TableName } from '../api/queries.ts';
import { sayDone } from './lastSaved.ts';
import type { Post } from './outboxSender.ts';

/** Sends kept changes to the program on this computer, and has the pages ask anew. */
export function postOf(client: QueryClient): Post {
  return {
    send: async ({ programmeId, by, changes, sendId }) => {
      const params = { path: { programmeId } };
      const body = { by, changes: [...changes], sendId };
      await answerOf(api.POST('/api/programmes/{programmeId}/changes', { params, body }));
      sayDone();
      void client.invalidateQueries({ queryKey: ['programme', programmeId] });
    },
    rows: async (programmeId, tables) => {
      const read = await Promise.all(
        tables.map(async (table) => {
          const asked = { params: { path: { programmeId, table: table as TableName } } };
          // Not what this browser kept of it: what stands there now.
          const { rows } = await answerOf(api.GET('/api/programmes/{programmeId}/tables/{table}', asked));
          return [table, new Map(rows.map(({ key, cells }) => [key, cells]))] as const;
        }),
      );
      const known = new Map(read);
      return (table, key) => known.get(table)?.get(key) ?? null;
    },
  };
}
