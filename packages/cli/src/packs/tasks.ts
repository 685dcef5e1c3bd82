import { readProgramme } from '@eavewell/formats';
import type { JobAround, Tasks } from '@eavewell/work';
import { makePacks, type PacksWanted } from './makePacks.ts';

/** Packs of a programme, to be made in a thread that reads it itself. */
export interface PacksOfFolder extends PacksWanted {
  readonly folder: string;
}

/** What a thread of the command line does. */
export const tasks = {
  packs: async ({ folder, ...wanted }: PacksOfFolder, { report }: JobAround) => {
    const { facts } = await readProgramme(folder);
    await makePacks(facts, wanted, (made, nth) => report((nth + 1) / wanted.siteIds.length, made));
  },
} satisfies Tasks;
