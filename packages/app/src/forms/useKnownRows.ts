import { useQueries } from '@tanstack/react-query';
import { useMemo } from 'react';
import { queries, type TableName } from '../api/queries.ts';
import type { RowNow } from './draft.ts';

/**
 * Rows of tables of the programme, for what cells may name and for forms.
 *
 * @param programmeId - the programme
 * @param tables - the tables wanted; a constant of the caller
 * @returns the rows; null until all are read
 */
export function useKnownRows(programmeId: string, tables: readonly TableName[]): readonly RowNow[] | null {
  const asked = useQueries({
    queries: tables.map((table) => queries.table(programmeId, table)),
    combine: (results) => results.map(({ data }) => data),
  });
  return useMemo(() => {
    if (asked.some((data) => data === undefined)) return null;
    return asked.flatMap((data, i) => (data?.rows ?? []).map((row) => ({ table: tables[i]!, ...row })));
  }, [asked, tables]);
}
