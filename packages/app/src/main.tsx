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

/** The letters of the pages, by weight, as a style of text names them. */
const faces = ['400 17px Andika', '700 17px Andika'] as const;

/**
 * The letters of the pages are there, so that nothing is laid out twice. Each weight is tried once, in a task of its own: the first
 * words in it take a slow computer long. A page whose letters do not come goes on with others.
 */
async function lettersRead(): Promise<void> {
  const pen = document.createElement('canvas').getContext('2d');
  await Promise.all(faces.map((face) => document.fonts.load(face).catch(() => [])));
  for (const face of faces) {
    await turn();
    if (pen === null) return;
    pen.font = face;
    pen.measureText('No quick zebra vexes my 12,345.67 jolly dwarf girls, hacks & ponies.');
  }
}

/** What the pages are made of, piece by piece: each comes with what it alone needs, and is read in a task of its own. */
const pieces: readonly (() => Promise<unknown>)[] = [
  () => import('react-dom'),
  () => import('@tanstack/react-router'),
  () => import('./language/LanguageProvider.tsx'),
  () => import('./api/queries.ts'),
  () => import('./api/useChange.ts'),
  () => import('./offline/useKept.ts'),
  () => import('./sheet/Main.tsx'),
  () => import('./sheet/ProgrammeMenu.tsx'),
  () => import('./sections/sites/Rows.tsx'),
  () => import('./sections/sites/SiteList.tsx'),
];

/** Puts the pages up. Their scripts are read in pieces, each a task of its own: a slow computer answers in between. */
async function start(): Promise<void> {
  await turn();
  const read = languagesRead();
  await turn();
  const letters = Promise.race([lettersRead(), new Promise((resolve) => setTimeout(resolve, patience_ms))]);
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
  await turn();
  // What is done for the first time takes longest: where one is is looked up here, so that it is quick when the pages are drawn.
  router.buildLocation({ to: '.', search: true });
  await turn();
  router.matchRoutes(router.latestLocation);
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
