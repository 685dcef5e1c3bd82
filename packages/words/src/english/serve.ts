/** What is said of the program that runs for a browser. */
export const serve = {
  help: {
    serve: 'Open a data folder for a browser on this computer, and for nobody else.',
    data: 'the data folder (default: one of your own, see docs)',
    port: 'the port to listen on (default: 4783, or any that is free)',
    open: 'open the address in your browser',
    from: 'start a new data folder from an export: a .zip, or the folder "exports" of a data folder',
    programme: 'with --data: the id of the programme, where there are several',
    checkData: 'check a programme of a data folder instead of a folder of tables',
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
  page: {
    title: 'Eavewell',
    runs: 'The program runs on this computer. Only this browser was let in.',
    refused:
      'Eavewell does not know this page: it was ended and started again since. Open the address it shows where it was started.',
    list: 'The programmes of this data folder',
    api: 'What a page on this computer can ask of Eavewell. Names carry their unit last; shares go from 0 to 1; null is "not known", never 0.',
  },
};
