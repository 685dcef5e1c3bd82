import { type QueryClient, useQuery, useQueryClient } from '@tanstack/react-query';
import { useBlocker } from '@tanstack/react-router';
import { useEffect, useMemo, useState, useSyncExternalStore } from 'react';
import { NotDone } from '../api/client.ts';
import { queries } from '../api/queries.ts';
import { type ChangeOutcome, useChange } from '../api/useChange.ts';
import { draftName, unsaved } from '../forms/unsaved.ts';
import { useLanguage } from '../language/LanguageProvider.tsx';
import { withKept } from '../offline/outbox.ts';
import { useKeeping } from '../offline/useKept.ts';
import type { KeptSaid } from './keptRows.ts';
import { WaterDesk, type WaterState } from './waterDesk.ts';

/** What came of keeping a draft. */
export interface KeepOutcome extends ChangeOutcome {
  /** Why it was not kept, where the draft itself is in the way. */
  readonly refused: readonly KeptSaid[];
  /** What is still to be done beside it. */
  readonly told: readonly KeptSaid[];
}

/** One site's water on a page, judged in this browser. */
export interface SiteWater
  extends WaterState,
    Pick<WaterDesk, 'change' | 'preview' | 'undo' | 'redo' | 'discard' | 'ask'> {
  /** Writes the draft into the programme's tables; it works without the program, by what is kept in this browser. */
  keep(): Promise<KeepOutcome>;
  readonly isKeeping: boolean;
  readonly hasDraft: boolean;
  /** The page is about to be left with a draft on it: she is asked; null where it is not. */
  readonly leaving: { leave(): void; stay(): void } | null;
}

/** The rows of the site as they are; while the program does not answer, as they were read last. */
async function rowsThere(client: QueryClient, programmeId: string, siteId: string) {
  const asked = queries.site(programmeId, siteId);
  try {
    return await client.fetchQuery({ ...asked, staleTime: 0 });
  } catch (error) {
    const known = client.getQueryData(asked.queryKey);
    if (known === undefined || !(error instanceof NotDone) || error.reason === 'problems') throw error;
    return known;
  }
}

const nothingDone = { isSaved: false, isKept: false, reason: null, problems: [], record: null } as const;

/**
 * One site's water: judged as saved, as drafted and under a question, each time something is changed.
 *
 * @param programmeId - the programme [text]
 * @param siteId - the site [text]
 * @returns what is judged so far, the draft with what changes it, and `keep`. While there is a draft the page asks before it is left
 */
// long: all that a page needs of one site, in the order it is made ready
export function useSiteWater(programmeId: string, siteId: string): SiteWater {
  const { code } = useLanguage();
  const client = useQueryClient();
  const { outbox } = useKeeping();
  const { change, state: changing } = useChange(programmeId);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another site is another desk
  const desk = useMemo(() => new WaterDesk(), [programmeId, siteId]);
  const state = useSyncExternalStore(desk.subscribe, desk.now);
  const [isReading, setReading] = useState(false);
  // A change of the programme, and a design of it that is done, may bring other facts.
  const { data: programme } = useQuery(queries.programme(programmeId));
  const { version, designVersion } = programme ?? {};
  useEffect(() => () => desk.close(), [desk]);
  // What keeps a draft is there before it is wanted: by then the program may be stopped.
  useEffect(() => void import('./keptRows.ts').catch(() => undefined), []);
  useEffect(() => desk.speak(code), [desk, code]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: read anew with each version; the language is told by itself
  useEffect(() => {
    void desk.load({ programmeId, siteId, form: ANSWERS_FORM, language: code });
  }, [desk, version, designVersion]);
  const hasDraft = state.draft.steps.length > 0;
  const steps = state.draft.steps.length;
  const drawing = draftName(programmeId, `drawing-${siteId}`);
  useEffect(() => {
    unsaved.note(drawing, steps);
    return () => unsaved.note(drawing, 0);
  }, [drawing, steps]);
  const leaving = useBlocker({
    shouldBlockFn: ({ current, next }) => hasDraft && current.pathname !== next.pathname,
    enableBeforeUnload: () => hasDraft,
    withResolver: true,
  });

  const keep = async (): Promise<KeepOutcome> => {
    setReading(true);
    try {
      const [{ keptRows }, asked, answer] = await Promise.all([
        import('./keptRows.ts'),
        desk.toKeep(),
        rowsThere(client, programmeId, siteId),
      ]);
      if (asked === null) return { ...nothingDone, refused: [], told: [] };
      const own = outbox.now().filter((one) => one.programmeId === programmeId);
      const rows = withKept(answer.rows, own, ({ cells }) => cells['siteId'] === siteId);
      const { changes, refused, told } = keptRows(asked.before, asked.after, rows);
      if (refused.length > 0) return { ...nothingDone, refused, told: [] };
      const outcome = changes.length === 0 ? { ...nothingDone, isSaved: true } : await change(changes);
      if (outcome.isSaved) desk.kept(asked.after.site);
      return { ...outcome, refused: [], told: outcome.isSaved ? told : [] };
    } catch (error) {
      const reason = error instanceof NotDone ? error.reason : 'problems';
      const problems = error instanceof NotDone ? (error.body?.problems ?? []) : [];
      return { ...nothingDone, reason, problems, refused: [], told: [] };
    } finally {
      setReading(false);
    }
  };
  const { change: changeDraft, preview, undo, redo, discard, ask } = desk;
  return {
    ...state,
    change: changeDraft,
    preview,
    undo,
    redo,
    discard,
    ask,
    keep,
    isKeeping: isReading || changing === 'saving',
    hasDraft,
    leaving: leaving.status === 'blocked' ? { leave: leaving.proceed, stay: leaving.reset } : null,
  };
}
