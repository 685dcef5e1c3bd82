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

/** Puts the pages up. Their scripts are read in pieces, each a task of its own: a slow computer answers in between. */
async function start(): Promise<void> {
  const read = languagesRead();
  const { StrictMode } = await import('react');
  const { createRoot } = await import('react-dom/client');
  await turn();
  await import('@tanstack/react-router');
  await turn();
  await read;
  await turn();
  await import('./language/LanguageProvider.tsx');
  await turn();
  const { App, pagesRouter } = await import('./App.tsx');
  await turn();
  const router = pagesRouter();
  await turn();
  createRoot(document.getElementById('app')!).render(
    <StrictMode>
      <App router={router} />
    </StrictMode>,
  );
}

followLight();
void start();
