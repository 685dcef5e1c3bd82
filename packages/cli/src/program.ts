import { Command, InvalidArgumentError } from 'commander';
import type { CheckOptions } from './commands/check.ts';
import type { ColumnsOptions } from './commands/columns.ts';
import type { Context } from './commands/context.ts';
import type { ConvertOptions } from './commands/convert.ts';
import type { DemoOptions } from './commands/demo.ts';
import type { DesignOptions } from './commands/design.ts';
import { type FromData, inFolder } from './commands/folderOrData.ts';
import type { MapOptions } from './commands/map.ts';
import type { PositionsOptions } from './commands/positions.ts';
import type { ProgrammesOptions } from './commands/programmes.ts';
import type { ServeOptions } from './commands/serve.ts';
import type { WordsExportOptions, WordsImportOptions } from './commands/words.ts';
import type { ExitCode } from './exitCodes.ts';
import { spoken } from './language.ts';
import {
  checkCommand,
  columnsCommand,
  convertCommand,
  demoCommand,
  designCommand,
  mapCommand,
  positionsCommand,
  programmesCommand,
  rainCommand,
  serveCommand,
  wordsExportCommand,
  wordsImportCommand,
} from './loadedCommands.ts';
import { errorInWords, titleInWords } from './parserWords.ts';
import { plainText } from './print/text.ts';
import { addKit, addPack, addRollout, addTreatment, fromData } from './siteCommands.ts';

const { help, demo: demoWords, maps, serve, translate, parser } = spoken.commandLine;

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

/** What commander gives an action of two arguments. */
type TwoGiven<T extends FromData> = [string | undefined, string | undefined, T, Command];

/** A folder and something else; with --data, the something else alone. */
function twoArguments<T extends FromData>(name: string, [first, second, options, command]: TwoGiven<T>) {
  const isOfData = options.data !== undefined && second === undefined;
  const [folder, other] = isOfData ? [undefined, first] : [first, second];
  if (folder === undefined && !isOfData) command.error(serve.argumentMissing('folder'));
  if (other === undefined) command.error(serve.argumentMissing(name));
  return { folder, other: other!, options };
}

/** The commands for maps. */
function mapCommands(root: Command, context: Context, ended: (code: ExitCode) => void): void {
  const positions = root
    .command('positions')
    .description(maps.help.positions)
    .argument('[folder]', help.folder)
    .argument('[file]', maps.help.file)
    .option('--accept', maps.help.accept)
    .option('--accept-likely', maps.help.acceptLikely)
    .option('--ways', maps.help.ways)
    .option('--far <km>', maps.help.far, kilometres)
    .option('--reach <km>', maps.help.reach, kilometres)
    .option('--all', maps.help.allRows)
    .addHelpText('after', maps.help.positionsExamples)
    .action(async (...given: TwoGiven<PositionsOptions>) => {
      const { folder, other, options } = twoArguments('file', given);
      ended(
        await inFolder(folder, options, context, (found) =>
          positionsCommand(found.path, other, options, found.context),
        ),
      );
    });
  fromData(positions);
  const map = root
    .command('map')
    .description(maps.help.map)
    .argument('[folder]', help.folder)
    .option('--out <file>', maps.help.outFile)
    .option('--replace', maps.help.replace)
    .addHelpText('after', maps.help.mapExamples)
    .action(async (folder: string | undefined, options: MapOptions) =>
      ended(await inFolder(folder, options, context, (found) => mapCommand(found.path, options, found.context))),
    );
  fromData(map);
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
    .helpCommand('help [command]', parser.helpOf)
    .addHelpText('after', help.examples.main)
    .exitOverride()
    .configureHelp({ styleTitle: titleInWords })
    .configureOutput({
      writeOut: (text) => void stdout.write(shown(text)),
      writeErr: (text) => void stderr.write(text),
      outputError: (text, write) => write(errorInWords(text)),
      getOutHelpWidth: () => look.width,
      getErrHelpWidth: () => look.width,
    });
}

/** The commands, their options and their help. `ended` is told how the chosen command ended. */
export function program(context: Context, ended: (code: ExitCode) => void): Command {
  const root = rootCommand(context);
  addCheck(root, context, ended);
  const design = root
    .command('design')
    .description(help.design)
    .argument('[folder]', help.folder)
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
    .action(async (folder: string | undefined, options: DesignOptions) =>
      ended(await inFolder(folder, options, context, (found) => designCommand(found, options, found.context))),
    );
  fromData(design);
  addTreatment(root, context, ended);
  addPack(root, context, ended);
  addKit(root, context, ended);
  addRollout(root, context, ended);
  const rain = root
    .command('rain')
    .description(help.rain)
    .argument('[folder]', help.folder)
    .argument('[gauge]', help.gauge)
    .addHelpText('after', help.examples.rain)
    .action(async (...given: TwoGiven<FromData>) => {
      const { folder, other, options } = twoArguments('gauge', given);
      ended(await inFolder(folder, options, context, (found) => rainCommand(found.path, other, found.context)));
    });
  fromData(rain);
  addColumns(root, context, ended);
  addDemo(root, context, ended);
  mapCommands(root, context, ended);
  addConvert(root, context, ended);
  addServe(root, context, ended);
  addWords(root, context, ended);
  return root;
}

function addDemo(root: Command, context: Context, ended: (code: ExitCode) => void): void {
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
  const columns = root
    .command('columns')
    .description(help.columns)
    .argument('[folder]', help.folder)
    .option('--accept', help.accept)
    .option('--set <match>', help.set, (text: string, before: readonly string[] = []) => [...before, text])
    .addHelpText('after', help.examples.columns)
    .action(async (folder: string | undefined, options: ColumnsOptions) =>
      ended(await inFolder(folder, options, context, (found) => columnsCommand(found, options, found.context))),
    );
  fromData(columns);
}

function addConvert(root: Command, context: Context, ended: (code: ExitCode) => void): void {
  const convert = root
    .command('convert')
    .description(help.convert)
    .argument('[from]', help.folder)
    .argument('[to]', help.to)
    .option('--overwrite', help.overwrite)
    .addHelpText('after', help.examples.convert)
    .action(async (...given: TwoGiven<ConvertOptions>) => {
      const { folder, other, options } = twoArguments('to', given);
      ended(
        await inFolder(folder, options, context, (found) => convertCommand(found.path, other, options, found.context)),
      );
    });
  fromData(convert);
}

function addServe(root: Command, context: Context, ended: (code: ExitCode) => void): void {
  root
    .command('programmes')
    .description(serve.help.programmes)
    .option('--data <dir>', serve.help.data)
    .action(async (options: ProgrammesOptions) => ended(await programmesCommand(options, context)));
  root
    .command('serve')
    .description(serve.help.serve)
    .option('--data <dir>', serve.help.data)
    .option('--from <path>', serve.help.from)
    .option('--port <n>', serve.help.port, (text) => wholeNumber(text, 0, 65_535, serve.portForm))
    .option('--open', serve.help.open)
    .addHelpText('after', serve.help.examples)
    .action(async (options: ServeOptions) => ended(await serveCommand(options, context)));
}

function addCheck(root: Command, context: Context, ended: (code: ExitCode) => void): void {
  const check = root
    .command('check')
    .description(help.check)
    .argument('[folder]', help.folder)
    .option('--out <dir>', help.out)
    .option('--all', help.all)
    .addHelpText('after', help.examples.check)
    .action(async (folder: string | undefined, options: CheckOptions) =>
      ended(await inFolder(folder, options, context, (found) => checkCommand(found.path, options, found.context))),
    );
  fromData(check);
}
