import './withoutEval.ts';
import { followLight } from './look/light.ts';
import './look/fonts.css';
import './look/tokens.css';
import './look/base.css';

/** Puts the pages up. Their scripts are read in pieces, each a task of its own: a slow computer answers in between. */
async function start(): Promise<void> {
  const { StrictMode } = await import('react');
  const { createRoot } = await import('react-dom/client');
  await import('@tanstack/react-router');
  const { App } = await import('./App.tsx');
  createRoot(document.getElementById('app')!).render(
    <StrictMode>
      <App />
    </StrictMode>,
  );
}

followLight();
void start();
