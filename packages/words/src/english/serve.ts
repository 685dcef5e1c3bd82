/** What is said of the program that runs for a browser. */
export const serve = {
  help: {
    serve: 'Open a data folder for a browser on this computer, and for nobody else.',
    data: 'the data folder (default: one of your own, see docs)',
    from: 'start a new data folder from an export: a .zip, or the folder "exports" of a data folder',
    port: 'the port to listen on (default: any that is free)',
    programme: 'with --data: the id of the programme, where there are several',
    fromData: 'a programme of this data folder instead of a folder of tables',
    programmes: 'List the programmes of a data folder: their ids, names and what they hold.',
    examples: `
Examples:
  $ eavewell serve                    your own data folder; the first time with
                                      an invented programme in it
  $ eavewell serve --data water       the data folder water
  $ eavewell serve --data water2 --from water/exports
                                      what the program kept of water, in a new
                                      folder

The address that is shown lets in whoever opens it on this computer. It changes
at each start. Ctrl+C ends the program; nothing that was entered is lost.`,
  },
  demoName: 'Demo programme',
  madeBy: 'Eavewell',
  opened: (folder: string, count: number) =>
    `${folder}: ${count} ${count === 1 ? 'programme' : 'programmes'}. Open this address in a browser on this computer:`,
  broughtIn: (count: number, from: string) =>
    `Brought in from ${from}: ${count} ${count === 1 ? 'programme' : 'programmes'}.`,
  ended: 'Ended. Everything that was entered is kept.',
  portForm: '--port is a whole number from 0 to 65535.',
  programmesThere: (ids: readonly string[]) =>
    ids.length === 0
      ? 'There is no programme in this data folder yet: eavewell serve makes one.'
      : `Name the programme with --programme: ${ids.join(', ')}.`,
  folderOrData: 'Name either a folder of tables or --data DIR.',
  notWithData: (option: string) =>
    `${option} writes into a folder of tables and cannot be used with --data. Export the programme and use it there, or send the file to the program. Nothing was written.`,
  argumentMissing: (name: string) => `error: missing required argument '${name}'`,
  programmes: {
    none: 'There is no programme in this data folder yet: eavewell serve makes one.',
    setAside: (name: string) => `${name} (set aside)`,
    columns: ['id', 'name', 'sites', 'people', 'changes', 'last change'],
  },
  page: {
    title: 'Eavewell',
    runs: 'The program runs on this computer. Only this browser was let in.',
    list: 'The programmes of this data folder',
    api: 'What a page on this computer can ask of Eavewell. Names carry their unit last; shares go from 0 to 1; null is "not known", never 0.',
  },
};
