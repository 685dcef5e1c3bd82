import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';

/** Workspace packages are taken from their sources, so that the page is built without waiting for theirs. */
const conditions = ['eavewell-source', 'module', 'browser', 'development|production'];

/** What the answers of the server look like, and how a long list is packed: what a browser kept of another form is not shown. */
const formOfAnswers = [
  '../../docs/openapi.json',
  'src/sections/sites/overviewPacked.ts',
  'src/sections/sites/listNumbers.ts',
];
const answersForm = formOfAnswers
  .reduce((hash, file) => hash.update(readFileSync(new URL(file, import.meta.url))), createHash('sha256'))
  .digest('hex')
  .slice(0, 16);

export default defineConfig({
  define: { ANSWERS_FORM: JSON.stringify(answersForm) },
  resolve: { conditions },
  plugins: [
    react(),
    VitePWA({
      registerType: 'prompt',
      injectRegister: false,
      // The manifest is behind the same door as all else.
      useCredentials: true,
      manifest: {
        name: 'Eavewell',
        short_name: 'Eavewell',
        start_url: '/',
        display: 'standalone',
        background_color: '#fcfcfa',
        theme_color: '#0a4a72',
        icons: [{ src: '/emblem.svg', sizes: 'any', type: 'image/svg+xml' }],
      },
      workbox: {
        globPatterns: ['**/*.{js,css,html,svg,woff2,json}'],
        // A map file is given by the program alone, so what draws it need not be there without it.
        globIgnores: ['**/TileSheet-*', '**/maplibre-gl*'],
        navigateFallback: '/index.html',
        navigateFallbackDenylist: [/^\/api\//, /^\/open/, /^\/maps\//],
      },
    }),
  ],
  // A thread's words are loaded in the language in use, which takes chunks.
  worker: { format: 'es' },
  build: { target: 'es2022', sourcemap: false, modulePreload: { polyfill: false } },
});
