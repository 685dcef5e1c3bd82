import type { RolloutSheet } from '@eavewell/tables';
import { crewForTests, sheetForTests, stopForTests, tripForTests } from '../sheetForTests.ts';

const stop = (siteId: string, arrives: string, handOver: string) => stopForTests(siteId, arrives, handOver);

/** A site that is in no trip. */
export function candidateForTests(siteId: string, reason: string | null): RolloutSheet['candidates'][number] {
  return {
    ...{ siteId, name: `Site ${siteId}`, area: null, people: 80, verdict: 'holds', priority_factor: 1 },
    ...{ priorityReason: null, agreedOn: null, readyFrom: null, finishBy: null, tripId: null, reason },
    isUntreated: false,
    said: reason === null ? 'It is in no trip.' : `Not planned: ${reason}.`,
  } as const;
}

/** Two crews: the first with a trip done, one under way and three planned, the last of them locked; the second with one. */
export function planForTests(): RolloutSheet {
  const past = tripForTests('P', '2026-05-04', '2026-05-10', [stop('Z', '2026-05-05', '2026-05-08')], {
    state: 'done',
  });
  const out = tripForTests('U', '2026-06-01', '2026-06-12', [stop('Y', '2026-06-02', '2026-06-08')], {
    state: 'underWay',
  });
  const one = tripForTests('A', '2026-06-15', '2026-06-26', [
    stop('A1', '2026-06-16', '2026-06-18'),
    stop('A2', '2026-06-19', '2026-06-24'),
  ]);
  const two = tripForTests('B', '2026-06-29', '2026-07-05', [stop('B1', '2026-06-30', '2026-07-03')]);
  const kept = tripForTests('L', '2026-07-13', '2026-07-20', [stop('L1', '2026-07-14', '2026-07-17')], {
    isLocked: true,
  });
  const other = tripForTests('C', '2026-06-29', '2026-07-09', [
    stop('C1', '2026-06-30', '2026-07-02'),
    stop('C2', '2026-07-03', '2026-07-07'),
  ]);
  const crews = [crewForTests('1', [past, out, one, two, kept]), crewForTests('2', [other])];
  return sheetForTests(crews, {
    planId: 'PL',
    candidates: [candidateForTests('F', null), candidateForTests('N', 'notAgreed')],
  });
}
