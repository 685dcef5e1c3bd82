import type { Speech } from '../problems.ts';
import { yes } from './telling.ts';

/** What is said of the program that runs for a browser. */
export const serveIn = ({ say }: Speech) => ({
  help: {
    serve: say('commandLine.serve.help.serve'),
    data: say('commandLine.serve.help.data'),
    from: say('commandLine.serve.help.from'),
    open: say('commandLine.serve.help.open'),
    port: say('commandLine.serve.help.port'),
    programme: say('commandLine.serve.help.programme'),
    fromData: say('commandLine.serve.help.fromData'),
    programmes: say('commandLine.serve.help.programmes'),
    examples: say('commandLine.serve.help.examples'),
  },
  demoName: say('commandLine.serve.demoName'),
  madeBy: say('commandLine.serve.madeBy'),
  opened: (folder: string, count: number) => say('commandLine.serve.opened', { folder, count }),
  broughtIn: (count: number, from: string) => say('commandLine.serve.broughtIn', { count, from }),
  ended: say('commandLine.serve.ended'),
  portForm: say('commandLine.serve.portForm'),
  programmesThere: (ids: readonly string[]) =>
    say('commandLine.serve.programmesThere', { isNone: yes(ids.length === 0), ids: ids.join(', ') }),
  folderOrData: say('commandLine.serve.folderOrData'),
  notWithData: (option: string) => say('commandLine.serve.notWithData', { option }),
  argumentMissing: (name: string) => say('commandLine.serve.argumentMissing', { name }),
  programmes: {
    none: say('commandLine.serve.programmes.none'),
    setAside: (name: string) => say('commandLine.serve.programmes.setAside', { name }),
    columns: (['id', 'name', 'sites', 'people', 'changes', 'lastChange'] as const).map((column) =>
      say(`commandLine.serve.programmes.${column}`),
    ),
  },
  page: {
    title: say('commandLine.serve.page.title'),
    runs: say('commandLine.serve.page.runs'),
    refused: say('commandLine.serve.page.refused'),
    list: say('commandLine.serve.page.list'),
    api: say('commandLine.serve.page.api'),
  },
});
