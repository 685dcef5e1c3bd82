import { Command, InvalidArgumentError } from 'commander';
import { type CheckOptions, checkCommand } from './commands/check.ts';
import { type ColumnsOptions, columnsCommand } from './commands/columns.ts';
import type { Context } from './commands/context.ts';
import { type ConvertOptions, convertCommand } from './commands/convert.ts';
import { type DemoOptions, demoCommand } from './commands/demo.ts';
import { type DesignOptions, designCommand } from './commands/design.ts';
import { type MapOptions, mapCommand } from './commands/map.ts';
import { type PositionsOptions, positionsCommand } from './commands/positions.ts';
import { rainCommand } from './commands/rain.ts';
import { type ServeOptions, serveCommand } from './commands/serve.ts';
import {
  type WordsExportOptions,
  type WordsImportOptions,
  wordsExportCommand,
  wordsImportCommand,
} from './commands/words.ts';
import type { ExitCode } from './exitCodes.ts';
import { spoken } from './language.ts';
import { plainText } from './print/text.ts';

const { help, demo: demoWords, maps, serve, translate } = spoken.commandLine;

/** Most sites a demo is made of. */
const mostSites = 100_000;

function wholeNumber(text: string, least: number, most: number, otherwise: string): number {
  const value = Number(text);
  if (!/^-?\d+$/.test(text) || value < least || value > most) throw new InvalidArgumentError(otherwise);
  return value;
}

/** Further than half way round the earth nothing is. */
const farthest_km = 20_000;

function kilometres(text: string): number {
  const value = Number(text);
  if (text.trim() === '' || !(value > 0 && value <= farthest_km))
    throw new InvalidArgumentError(maps.trouble.kilometres);
  return value;
}

/** The commands for maps. */
function mapCommands(root: Command, context: Context, ended: (code: ExitCode) => void): void {
  root
    .command('positions')
    .description(maps.help.positions)
    .argument('<folder>', help.folder)
    .argument('<file>', maps.help.file)
    .option('--accept', maps.help.accept)
    .option('--accept-likely', maps.help.acceptLikely)
    .option('--ways', maps.help.ways)
    .option('--far <km>', maps.help.far, kilometres)
    .option('--reach <km>', maps.help.reach, kilometres)
    .option('--all', maps.help.allRows)
    .addHelpText('after', maps.help.positionsExamples)
    .action(async (folder: string, file: string, options: PositionsOptions) =>
      ended(await positionsCommand(folder, file, options, context)),
    );
  root
    .command('map')
    .description(maps.help.map)
    .argument('<folder>', help.folder)
    .option('--out <file>', maps.help.outFile)
    .option('--replace', maps.help.replace)
    .addHelpText('after', maps.help.mapExamples)
    .action(async (folder: string, options: MapOptions) => ended(await mapCommand(folder, options, context)));
}

/** The command itself: what it says of itself, and how. */
function rootCommand({ around, look, version }: Context): Command {
  const { stdout, stderr } = around;
  const shown = (text: string) => (look.drawn ? text : plainText(text).replaceAll('?', ' '));
  return new Command('eavewell')
    .description(help.about)
    .version(version, '-v, --version', help.version)
    .option('--language <tag>', help.language)
    .helpOption('-h, --help', help.help)
    .addHelpText('after', help.examples.main)
    .exitOverride()
    .configureOutput({
      writeOut: (text) => void stdout.write(shown(text)),
      writeErr: (text) => void stderr.write(text),
      getOutHelpWidth: () => look.width,
      getErrHelpWidth: () => look.width,
    });
}

/** The commands, their options and their help. `ended` is told how the chosen command ended. */
export function program(context: Context, ended: (code: ExitCode) => void): Command {
  const root = rootCommand(context);
  addCheck(root, context, ended);
  root
    .command('design')
    .description(help.design)
    .argument('<folder>', help.folder)
    .option('--site <id>', help.site)
    .option('--out <dir>', help.out)
    .option('--json', help.json)
    .option('--series', help.series)
    .option('--prices-on <date>', help.pricesOn)
    .option('--order <order>', help.order)
    .option('--wet-days <share>', help.wetDays)
    .option('--wet-day-rain <share>', help.wetDayRain)
    .option('--last-years <n>', help.lastYears)
    .addHelpText('after', help.examples.design)
    .action(async (folder: string, options: DesignOptions) => ended(await designCommand(folder, options, context)));
  root
    .command('rain')
    .description(help.rain)
    .argument('<folder>', help.folder)
    .argument('<gauge>', help.gauge)
    .addHelpText('after', help.examples.rain)
    .action(async (folder: string, gauge: string) => ended(await rainCommand(folder, gauge, context)));
  addColumns(root, context, ended);
  root
    .command('demo')
    .description(help.demo)
    .argument('<folder>', help.newFolder)
    .option('--sites <n>', help.sites, (text) => wholeNumber(text, 1, mostSites, demoWords.wholeSites))
    .option('--seed <s>', help.seed, (text) =>
      wholeNumber(text, Number.MIN_SAFE_INTEGER, Number.MAX_SAFE_INTEGER, demoWords.wholeSeed),
    )
    .option('--clean', help.clean)
    .addHelpText('after', help.examples.demo)
    .action(async (folder: string, options: DemoOptions) => ended(await demoCommand(folder, options, context)));
  mapCommands(root, context, ended);
  addConvert(root, context, ended);
  addServe(root, context, ended);
  addWords(root, context, ended);
  return root;
}

function addWords(root: Command, context: Context, ended: (code: ExitCode) => void): void {
  const command = root.command('words').description(translate.help.words).addHelpText('after', translate.help.examples);
  command
    .command('export')
    .description(translate.help.export)
    .argument('<language>', translate.help.language)
    .argument('<file>', translate.help.file)
    .option('--missing', translate.help.missing)
    .option('--from <file>', translate.help.from)
    .option('--overwrite', translate.help.overwrite)
    .action(async (language: string, file: string, options: WordsExportOptions) =>
      ended(await wordsExportCommand(language, file, options, context)),
    );
  command
    .command('import')
    .description(translate.help.import)
    .argument('<language>', translate.help.language)
    .argument('<file>', translate.help.file)
    .option('--into <file>', translate.help.into)
    .option('--name <name>', translate.help.name)
    .option('--direction <way>', translate.help.direction)
    .action(async (language: string, file: string, options: WordsImportOptions) =>
      ended(await wordsImportCommand(language, file, options, context)),
    );
}

function addColumns(root: Command, context: Context, ended: (code: ExitCode) => void): void {
  root
    .command('columns')
    .description(help.columns)
    .argument('<folder>', help.folder)
    .option('--accept', help.accept)
    .option('--set <match>', help.set, (text: string, before: readonly string[] = []) => [...before, text])
    .addHelpText('after', help.examples.columns)
    .action(async (folder: string, options: ColumnsOptions) => ended(await columnsCommand(folder, options, context)));
}

function addConvert(root: Command, context: Context, ended: (code: ExitCode) => void): void {
  root
    .command('convert')
    .description(help.convert)
    .argument('<from>', help.folder)
    .argument('<to>', help.to)
    .option('--overwrite', help.overwrite)
    .addHelpText('after', help.examples.convert)
    .action(async (from: string, to: string, options: ConvertOptions) =>
      ended(await convertCommand(from, to, options, context)),
    );
}

function addServe(root: Command, context: Context, ended: (code: ExitCode) => void): void {
  root
    .command('serve')
    .description(serve.help.serve)
    .option('--data <dir>', serve.help.data)
    .option('--port <n>', serve.help.port, (text) => wholeNumber(text, 0, 65_535, serve.portForm))
    .addHelpText('after', serve.help.examples)
    .action(async (options: ServeOptions) => ended(await serveCommand(options, context)));
}

function addCheck(root: Command, context: Context, ended: (code: ExitCode) => void): void {
  root
    .command('check')
    .description(help.check)
    .argument('[folder]', help.folder)
    .option('--data <dir>', serve.help.checkData)
    .option('--programme <id>', serve.help.programme)
    .option('--out <dir>', help.out)
    .option('--all', help.all)
    .addHelpText('after', help.examples.check)
    .action(async (folder: string | undefined, options: CheckOptions) =>
      ended(await checkCommand(folder, options, context)),
    );
}
