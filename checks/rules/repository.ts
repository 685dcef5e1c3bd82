import { fileURLToPath } from 'node:url';

/** The folder of the repository. */
export const repository = fileURLToPath(new URL('../..', import.meta.url));
