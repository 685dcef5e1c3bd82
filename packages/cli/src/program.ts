import { english } from '@eavewell/words';
import { Command, InvalidArgumentError } from 'commander';
import { type CheckOptions, checkCommand } from './commands/check.ts';
import type { Context } from './commands/context.ts';
import { type ConvertOptions, convertCommand } from './commands/convert.ts';
import { type DemoOptions, demoCommand } from './commands/demo.ts';
import { type DesignOptions, designCommand } from './commands/design.ts';
import { rainCommand } from './commands/rain.ts';
import type { ExitCode } from './exitCodes.ts';
import { plainText } from './print/text.ts';

const { help, demo: demoWords } = english.commandLine;

/** Most sites a demo is made of. */
const mostSites = 100_000;

function wholeNumber(text: string, least: number, most: number, otherwise: string): number {
  const value = Number(text);
  if (!/^-?\d+$/.test(text) || value < least || value > most) throw new InvalidArgumentError(otherwise);
  return value;
}

/** The command itself: what it says of itself, and how. */
function rootCommand({ around, look, version }: Context): Command {
  const { stdout, stderr } = around;
  const shown = (text: string) => (look.drawn ? text : plainText(text).replaceAll('?', ' '));
  return new Command('eavewell')
    .description(help.about)
    .version(version, '-v, --version', help.version)
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
  root
    .command('check')
    .description(help.check)
    .argument('<folder>', help.folder)
    .option('--out <dir>', help.out)
    .option('--all', help.all)
    .addHelpText('after', help.examples.check)
    .action(async (folder: string, options: CheckOptions) => ended(await checkCommand(folder, options, context)));
  root
    .command('design')
    .description(help.design)
    .argument('<folder>', help.folder)
    .option('--site <id>', help.site)
    .option('--out <dir>', help.out)
    .option('--json', help.json)
    .option('--series', help.series)
    .option('--prices-on <date>', help.pricesOn)
    .addHelpText('after', help.examples.design)
    .action(async (folder: string, options: DesignOptions) => ended(await designCommand(folder, options, context)));
  root
    .command('rain')
    .description(help.rain)
    .argument('<folder>', help.folder)
    .argument('<gauge>', help.gauge)
    .addHelpText('after', help.examples.rain)
    .action(async (folder: string, gauge: string) => ended(await rainCommand(folder, gauge, context)));
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
  addConvert(root, context, ended);
  return root;
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
