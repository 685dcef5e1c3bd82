import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { queries } from '../../../api/queries.ts';
import { recordSentence } from '../../../history/recordSentence.ts';
import { useTelling } from '../../../history/useTelling.ts';
import type { Hand } from './hand.ts';

/** So many changes are told while something is in hand: the last ones. Ours. */
const told_most = 2;

/**
 * What others changed since something was taken up, in sentences, the oldest first.
 *
 * @param programmeId - the programme
 * @param version - of the sheet [count of records]
 * @param hand - the hand over it
 */
export function useNews(programmeId: string, version: number, hand: Hand): readonly string[] {
  const [since, setSince] = useState(version);
  if (hand.phase === 'empty' && since !== version) setSince(version);
  const isAnew = hand.phase !== 'empty' && hand.isAnew;
  const { data } = useQuery({ ...queries.lastRecords(programmeId), enabled: isAnew });
  const records = data?.records ?? [];
  const telling = useTelling(records);
  if (!isAnew) return [];
  const fresh = records.filter(({ place }) => place > since);
  return fresh
    .slice(0, told_most)
    .reverse()
    .map((record) => recordSentence(record, telling));
}
