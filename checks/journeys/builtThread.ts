import { join } from 'node:path';
import { build } from 'vite';
import { repository } from '../rules/repository.ts';

/**
 * Builds the thread that judges a site as the pages are built: `waterWorker.js` and its chunks.
 *
 * @param folder - where it is laid [text]
 */
export async function builtThread(folder: string): Promise<void> {
  await build({
    configFile: false,
    logLevel: 'error',
    root: join(repository, 'packages/app'),
    resolve: { conditions: ['eavewell-source', 'module', 'browser', 'development|production'] },
    build: {
      target: 'es2022',
      outDir: folder,
      modulePreload: false,
      chunkSizeWarningLimit: 1000,
      rolldownOptions: {
        input: join(repository, 'packages/app/src/water/waterWorker.ts'),
        output: { entryFileNames: '[name].js' },
      },
    },
  });
}
