import { QueryClient, QueryClientProvider } from '@tanstack/react-query';
import { RouterProvider } from '@tanstack/react-router';
import { useEffect } from 'react';
import { NotDone } from './api/client.ts';
import { Heard } from './api/events.ts';
import { HeardContext } from './api/useReach.ts';
import { LanguageProvider } from './language/LanguageProvider.tsx';
import { makeRouter } from './routes.tsx';

/** The server tells what changed, so that nothing is asked twice; what is our own or a person's fault is not tried again. */
const client = new QueryClient({
  defaultOptions: {
    queries: {
      staleTime: Number.POSITIVE_INFINITY,
      retry: (count, error) => count < 1 && error instanceof NotDone && error.reason === 'unreachable',
      // It is on this computer: without a network it answers as ever.
      networkMode: 'always',
    },
    mutations: { networkMode: 'always' },
  },
});
const router = makeRouter(client);
const heard = new Heard(client);

/** The whole page. */
export function App() {
  useEffect(() => heard.open(), []);
  return (
    <QueryClientProvider client={client}>
      <LanguageProvider>
        <HeardContext value={heard}>
          <RouterProvider router={router} />
        </HeardContext>
      </LanguageProvider>
    </QueryClientProvider>
  );
}
