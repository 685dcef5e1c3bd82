import { useMutation, useQueryClient } from '@tanstack/react-query';
import { type ImportName, mendBack, type Review, reviewQuery, type Step, stepOf } from './importsApi.ts';

/** Does something to files that wait; the page then shows the review that came of it. */
export function useReviewStep(name: ImportName) {
  const client = useQueryClient();
  return useMutation({
    mutationFn: (step: Step | 'undo' | 'redo'): Promise<Review> =>
      typeof step === 'string' ? mendBack(name, step) : stepOf(name, step),
    onSuccess: (review) => client.setQueryData(reviewQuery(name).queryKey, review),
  });
}

export type ReviewStep = ReturnType<typeof useReviewStep>;
