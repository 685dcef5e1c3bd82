import './withoutEval.ts';
import { followLight } from './look/light.ts';
import './look/fonts.css';
import './look/tokens.css';
import './look/base.css';

/** The browser has its turn. */
const turn = () => new Promise((resolve) => setTimeout(resolve));

/** Puts the pages up. Their scripts are read in pieces, each a task of its own: a slow computer answers in between. */
async function start(): Promise<void> {
  const { StrictMode } = await import('react');
  const { createRoot } = await import('react-dom/client');
  await turn();
  await import('@tanstack/react-router');
  await turn();
  // What the browser knows of languages is read when it is first asked for, which is long enough to be a task of its own.
  Intl.DateTimeFormat.supportedLocalesOf('en');
  await turn();
  await import('./language/LanguageProvider.tsx');
  await turn();
  const { App } = await import('./App.tsx');
  await turn();
  createRoot(document.getElementById('app')!).render(
    <StrictMode>
      <App />
    </StrictMode>,
  );
}

followLight();
void start();
