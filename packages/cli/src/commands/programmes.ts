import { listKept } from '@eavewell/server';
import { type ExitCode, exitCodes } from '../exitCodes.ts';
import { spoken } from '../language.ts';
import { Sheet } from '../print/sheet.ts';
import { write } from '../print/terminal.ts';
import type { Context } from './context.ts';
import { dataFolderOf } from './dataFolder.ts';
import { tellProblems } from './tellProblems.ts';

const { numbers } = spoken;
const { programmes: words } = spoken.commandLine.serve;

export interface ProgrammesOptions {
  readonly data?: string;
}

const told = (value: number | null) => (value === null ? '?' : numbers.quantity(value, 'number'));

/** Lists the programmes of a data folder: their ids, for --programme, and what they hold. */
export async function programmesCommand({ data }: ProgrammesOptions, { around, look }: Context): Promise<ExitCode> {
  const found = await listKept(data ?? dataFolderOf(around));
  if (!found.ok) {
    tellProblems(found.problems, around);
    return exitCodes.blocker;
  }
  const sheet = new Sheet(look);
  const [id, name, sites, people, changes, last] = words.columns;
  if (found.value.length === 0) sheet.line(words.none);
  else
    sheet.table(
      [
        { head: id!, align: 'left' },
        { head: name!, align: 'left' },
        { head: sites!, align: 'right' },
        { head: people!, align: 'right' },
        { head: changes!, align: 'right' },
        { head: last!, align: 'left' },
      ],
      found.value.map((one) => [
        one.programmeId,
        one.isSetAside ? words.setAside(one.name) : one.name,
        ...[told(one.sites), told(one.people), told(one.version)],
        one.lastChange?.at.slice(0, 10) ?? '-',
      ]),
      0,
    );
  await write(around.stdout, sheet.text());
  return exitCodes.done;
}
