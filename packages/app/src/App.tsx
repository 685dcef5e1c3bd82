import { QueryClient, QueryClientProvider } from '@tanstack/react-query';
import { createBrowserHistory, type RouterHistory, RouterProvider } from '@tanstack/react-router';
import { useEffect } from 'react';
import { NotDone } from './api/client.ts';
import { Heard } from './api/events.ts';
import { HeardContext } from './api/useReach.ts';
import { LanguageProvider } from './language/LanguageProvider.tsx';
import { KeptAnswers } from './offline/keptAnswers.ts';
import { Outbox } from './offline/outboxSender.ts';
import { browserOutbox } from './offline/outboxStore.ts';
import { pages } from './offline/pagesWorker.ts';
import { postOf } from './offline/post.ts';
import { KeepingContext } from './offline/useKept.ts';
import { makeRouter } from './routes.tsx';

const answers = new KeptAnswers(ANSWERS_FORM);

/** The server tells what changed, so that nothing is asked twice; what is our own or a person's fault is not tried again. */
const client = new QueryClient({
  defaultOptions: {
    queries: {
      staleTime: Number.POSITIVE_INFINITY,
      retry: (count, error) => count < 1 && error instanceof NotDone && error.reason === 'unreachable',
      // It is on this computer: without a network it answers as ever.
      networkMode: 'always',
      // Where it does not answer, what it answered last.
      persister: answers.persister,
      gcTime: Number.POSITIVE_INFINITY,
    },
    mutations: { networkMode: 'always' },
  },
});
const outbox = new Outbox(browserOutbox(), postOf(client));
const heard = new Heard(client, () => void outbox.send());
const keeping = { outbox, answers };

/** Where one is and was. */
export const pagesHistory = (): RouterHistory => createBrowserHistory();

/** The addresses of the pages, with what they ask of. */
export const pagesRouter = (history: RouterHistory) => makeRouter(client, history);

/** The whole page. */
export function App({ router }: { readonly router: ReturnType<typeof makeRouter> }) {
  useEffect(() => heard.open(), []);
  useEffect(() => outbox.open(), []);
  useEffect(() => {
    // Nothing waits for either, and each is long enough to be a task of its own.
    setTimeout(() => void pages.keep());
    setTimeout(() => void answers.tidy());
  }, []);
  return (
    <QueryClientProvider client={client}>
      <LanguageProvider>
        <HeardContext value={heard}>
          <KeepingContext value={keeping}>
            <RouterProvider router={router} />
          </KeepingContext>
        </HeardContext>
      </LanguageProvider>
    </QueryClientProvider>
  );
}
