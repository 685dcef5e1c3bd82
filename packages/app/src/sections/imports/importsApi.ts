import { queryOptions } from '@tanstack/react-query';
import type { components, paths } from '../../api/apiTypes.ts';
import { answerOf, api, NotDone, type ProblemBody } from '../../api/client.ts';

/** Files that wait, compared with what stands. */
export type Review = components['schemas']['review'];
export type Step = NonNullable<paths['/api/imports/{importId}']['patch']['requestBody']>['content']['application/json'];

/** Which files: those for a programme, or those that are to become one. */
export interface ImportName {
  readonly programmeId: string | null;
  readonly importId: string;
}

const one = '/api/programmes/{programmeId}/imports/{importId}';
const alone = '/api/imports/{importId}';
/** The description of the API names a programme for imports that have none; its address does not hold it. */
const none = '';

/** A file a person chose, with the folders above it where she chose a folder. */
export interface Chosen {
  readonly name: string;
  readonly file: File;
}

/**
 * Sends files to be looked at. Nothing of the programme changes.
 *
 * @param programmeId - the programme; null: they are to become one
 * @param files - the files
 * @param absent - what becomes of rows that are not in them
 */
export async function sendFiles(
  programmeId: string | null,
  files: readonly Chosen[],
  absent: Review['absent'],
): Promise<Review> {
  const form = new FormData();
  for (const { name, file } of files) form.append('files', file, name);
  const at = programmeId === null ? '/api/imports' : `/api/programmes/${encodeURIComponent(programmeId)}/imports`;
  let response: Response;
  try {
    response = await fetch(`${at}?absent=${absent}&wait=no`, { method: 'POST', body: form });
  } catch {
    throw new NotDone('unreachable');
  }
  const body: unknown = await response.json().catch(() => null);
  if (response.ok) return body as Review;
  throw new NotDone(response.status === 403 ? 'refused' : 'problems', body as ProblemBody | null);
}

/** Asks how far the reading is, this often [ms]. Ours. */
const asking_ms = 500;

/** A review, asked for again while its files are read. */
export const reviewQuery = ({ programmeId, importId }: ImportName) =>
  queryOptions({
    queryKey: [...reviewsKey(programmeId), importId],
    queryFn: (): Promise<Review> =>
      programmeId === null
        ? answerOf(api.GET(alone, { params: { path: { importId } } }))
        : answerOf(api.GET(one, { params: { path: { programmeId, importId } } })),
    // Where reading failed the first answer says why; asked again, it would only say that nothing waits any more.
    refetchInterval: ({ state }) => (state.data?.isReading === true && state.error === null ? asking_ms : false),
    retry: false,
    // It waits for an hour only, and another page may have mended it.
    staleTime: 0,
  });

/** All that waits, such as after the page was loaded again. */
export const reviewsQuery = (programmeId: string | null) =>
  queryOptions({
    queryKey: [...reviewsKey(programmeId), 'all'],
    queryFn: () =>
      programmeId === null
        ? answerOf(api.GET('/api/imports'))
        : answerOf(api.GET('/api/programmes/{programmeId}/imports', { params: { path: { programmeId } } })),
    staleTime: 0,
  });

/** Under what reviews are kept in the page: not under their programme, as taking one in changes that and ends this. */
export const reviewsKey = (programmeId: string | null) => ['imports', programmeId];

/** Mends a cell, says what a header or a sheet stands for, or which table a file is. */
export function stepOf({ programmeId, importId }: ImportName, body: Step): Promise<Review> {
  return programmeId === null
    ? answerOf(api.PATCH(alone, { params: { path: { importId, programmeId: none } }, body }))
    : answerOf(api.PATCH(one, { params: { path: { programmeId, importId } }, body }));
}

/** Takes the last mend back, or makes it again. */
export function mendBack({ programmeId, importId }: ImportName, step: 'undo' | 'redo'): Promise<Review> {
  if (programmeId === null) {
    const asked = { params: { path: { importId } } };
    return answerOf(step === 'undo' ? api.POST(`${alone}/undo`, asked) : api.POST(`${alone}/redo`, asked));
  }
  const asked = { params: { path: { programmeId, importId } } };
  return answerOf(step === 'undo' ? api.POST(`${one}/undo`, asked) : api.POST(`${one}/redo`, asked));
}

/** Lets the files go. */
export async function letGo({ programmeId, importId }: ImportName): Promise<void> {
  const { response } =
    programmeId === null
      ? await api.DELETE(alone, { params: { path: { importId } } })
      : await api.DELETE(one, { params: { path: { programmeId, importId } } });
  if (!response.ok && response.status !== 404) throw new NotDone(response.status === 403 ? 'refused' : 'problems');
}

/** How files are taken in: by whom, what a programme made of them is called, and whether it may be a second one beside its like. */
export interface TakenAs {
  readonly by: string;
  readonly name: string | null;
  readonly isBeside: boolean;
}

/** Takes the files in, as one record; or makes a programme of them. */
export function takeIn({ programmeId, importId }: ImportName, asked: TakenAs) {
  const { by, name, isBeside: beside } = asked;
  const body = name === null ? { by, beside } : { by, name, beside };
  return programmeId === null
    ? answerOf(api.POST(`${alone}/accept`, { params: { path: { importId, programmeId: none } }, body }))
    : answerOf(api.POST(`${one}/accept`, { params: { path: { programmeId, importId } }, body }));
}
