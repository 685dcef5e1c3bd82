import './withoutEval.ts';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './App.tsx';
import { putLight } from './look/light.ts';
import './look/fonts.css';
import './look/tokens.css';
import './look/base.css';

putLight();
createRoot(document.getElementById('app')!).render(
  <StrictMode>
    <App />
  </StrictMode>,
);
