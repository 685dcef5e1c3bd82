import './withoutEval.ts';
import { followLight } from './look/light.ts';
import './look/fonts.css';
import './look/tokens.css';
import './look/base.css';

/** The browser has its turn. */
const turn = () => new Promise((resolve) => setTimeout(resolve));

/** Waits so long for the thread that reads the languages [ms]: without it all works, with a longer task. Ours. */
const patience_ms = 1000;

/** What the browser knows of languages is read, in a thread of its own. */
function languagesRead(): Promise<void> {
  return new Promise((resolve) => {
    const thread = new Worker(new URL('./language/localesWorker.ts', import.meta.url), { type: 'module' });
    const end = () => {
      thread.terminate();
      resolve();
    };
    thread.addEventListener('message', end);
    thread.addEventListener('error', end);
    setTimeout(end, patience_ms);
  });
}

/** The letters of the pages are there, so that nothing is laid out twice; a page whose letters do not come goes on with others. */
function lettersRead(): Promise<unknown> {
  const faces = ['400 1em Andika', '700 1em Andika'].map((face) => document.fonts.load(face).catch(() => []));
  return Promise.race([Promise.all(faces), new Promise((resolve) => setTimeout(resolve, patience_ms))]);
}

/** What the pages are made of, piece by piece: each comes with what it alone needs, and is read in a task of its own. */
const pieces: readonly (() => Promise<unknown>)[] = [
  () => import('react-dom'),
  () => import('@tanstack/react-router'),
  () => import('./language/LanguageProvider.tsx'),
  () => import('./api/queries.ts'),
  () => import('./sheet/ProgrammeMenu.tsx'),
  () => import('./sections/sites/Rows.tsx'),
  () => import('./sections/sites/SiteList.tsx'),
];

/** Puts the pages up. Their scripts are read in pieces, each a task of its own: a slow computer answers in between. */
async function start(): Promise<void> {
  await turn();
  const read = languagesRead();
  await turn();
  const letters = lettersRead();
  await turn();
  const { StrictMode, startTransition } = await import('react');
  await turn();
  const { createRoot } = await import('react-dom/client');
  await turn();
  await read;
  for (const piece of pieces) {
    await piece();
    await turn();
  }
  const { App, pagesHistory, pagesRouter } = await import('./App.tsx');
  await turn();
  const history = pagesHistory();
  await turn();
  const router = pagesRouter(history);
  await letters;
  await turn();
  const root = createRoot(document.getElementById('app')!);
  await turn();
  // As a transition it is drawn in slices.
  startTransition(() =>
    root.render(
      <StrictMode>
        <App router={router} />
      </StrictMode>,
    ),
  );
}

followLight();
void start();
