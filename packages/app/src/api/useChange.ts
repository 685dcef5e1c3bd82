import { useMutation, useQueryClient } from '@tanstack/react-query';
import { sayDone } from '../offline/lastSaved.ts';
import { useKeeping } from '../offline/useKept.ts';
import { type ApiProblem, answerOf, api, NotDone, type RowChange } from './client.ts';
import { useWho } from './useWho.ts';

/** Where a change stands. `noName`: nobody has said who makes it. */
export type ChangeState = 'none' | 'saving' | 'saved' | 'notSaved';

/** What came of a change: the program's own problems where it was not made. */
export interface ChangeOutcome {
  /** It is in the programme, or kept in this browser until the program answers: either way it is not lost. */
  readonly isSaved: boolean;
  /** It is kept in this browser, not yet saved in the programme. */
  readonly isKept: boolean;
  readonly reason: NotDone['reason'] | null;
  readonly problems: readonly ApiProblem[];
  /** The name of the record; null where nothing changed, or nothing was saved. */
  readonly record: string | null;
}

/** A change that is asked for. */
interface Asked {
  readonly changes: readonly RowChange[];
  /** What the sending is called, where what was typed may be sent once more: it is one entry. Left out: a name of its own. */
  readonly sendId?: string | undefined;
  /** Called once it is saved, or kept: before what follows from it has been asked for again. */
  readonly onEntered?: (outcome: ChangeOutcome) => void;
}

const notSaved = (error: unknown): ChangeOutcome => ({
  isSaved: false,
  isKept: false,
  reason: error instanceof NotDone ? error.reason : 'problems',
  problems: error instanceof NotDone ? (error.body?.problems ?? []) : [],
  record: null,
});

const saved = ({ problems, record }: Pick<ChangeOutcome, 'problems' | 'record'>): ChangeOutcome => {
  sayDone();
  return { isSaved: true, isKept: false, reason: null, problems, record };
};

/** Is it only that the program does not answer, or does not know this page any more? */
const isAway = (error: unknown) => error instanceof NotDone && error.reason !== 'problems';

/**
 * The one door through which a page changes a programme.
 *
 * @param programmeId - the programme
 * @returns `change` makes one record of all its changes, or nothing; while the program does not answer they are kept in this
 * browser and sent when it does. `state` and `outcome` say what came of the last one
 */
export function useChange(programmeId: string) {
  const by = useWho();
  const client = useQueryClient();
  const { outbox } = useKeeping();
  const send = async (changes: readonly RowChange[], sendId: string): Promise<ChangeOutcome> => {
    const keep = async (): Promise<ChangeOutcome> => {
      await outbox.keep({ sendId, programmeId, by, changes });
      void outbox.send();
      return { isSaved: true, isKept: true, reason: null, problems: [], record: null };
    };
    try {
      // What was kept before goes first.
      if (outbox.now().some((kept) => kept.programmeId === programmeId)) return await keep();
      const body = { by, changes: [...changes], sendId };
      const params = { path: { programmeId } };
      return saved(await answerOf(api.POST('/api/programmes/{programmeId}/changes', { params, body })));
    } catch (error) {
      if (!isAway(error)) return notSaved(error);
      return keep().catch(() => notSaved(error));
    }
  };
  const mutation = useMutation({
    mutationFn: async ({ changes, sendId = crypto.randomUUID(), onEntered }: Asked): Promise<ChangeOutcome> => {
      const outcome = await send(changes, sendId);
      if (outcome.isSaved) onEntered?.(outcome);
      return outcome;
    },
    // What is kept here changed nothing there: asking a program that does not answer would only hold up the word that it is kept.
    onSuccess: ({ isSaved, isKept }) => (isSaved && !isKept ? askAnew(client, programmeId) : undefined),
  });
  const { data, isPending } = mutation;
  const state: ChangeState = isPending ? 'saving' : data === undefined ? 'none' : data.isSaved ? 'saved' : 'notSaved';
  const change = (changes: readonly RowChange[], more: Omit<Asked, 'changes'> = {}) =>
    mutation.mutateAsync({ changes, ...more });
  return { change, forget: mutation.reset, state, outcome: data ?? null };
}

/** Everything of a programme is asked for again. */
export async function askAnew(client: ReturnType<typeof useQueryClient>, programmeId: string): Promise<void> {
  await client.invalidateQueries({ queryKey: ['programme', programmeId] });
  void client.invalidateQueries({ queryKey: ['programmes'] });
}

/** Takes the last change back, or the last taking back. */
export function useStep(programmeId: string, step: 'undo' | 'redo') {
  const by = useWho();
  const client = useQueryClient();
  const mutation = useMutation({
    mutationFn: async (who: string = by): Promise<ChangeOutcome> => {
      const asked = { params: { path: { programmeId } }, body: { by: who } };
      try {
        const made = await answerOf(
          step === 'undo'
            ? api.POST('/api/programmes/{programmeId}/undo', asked)
            : api.POST('/api/programmes/{programmeId}/redo', asked),
        );
        return saved(made);
      } catch (error) {
        return notSaved(error);
      }
    },
    onSuccess: () => askAnew(client, programmeId),
  });
  return mutation;
}
