import type { RolloutSheet } from '@eavewell/tables';
import { useQuery } from '@tanstack/react-query';
import { useMemo } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { type Overview, overviewQuery } from '../../sites/index.ts';
import { villageAt, villagesOf } from './villageFound.ts';

/** The list of all sites, kept in this browser since it was read last; undefined until it is there. */
export function useAllSites(programmeId: string): Overview | undefined {
  const { code } = useLanguage();
  return useQuery(overviewQuery(programmeId, code, false)).data;
}

/** Every village that may be asked for, and all that are known beside the plan. */
export function useVillages(sheet: RolloutSheet, programmeId: string) {
  const all = useAllSites(programmeId);
  return useMemo(() => {
    const known = { get: (siteId: string) => (all === undefined ? undefined : villageAt(all, all.placeOf(siteId))) };
    return { villages: villagesOf(sheet, all ?? null), known };
  }, [sheet, all]);
}
