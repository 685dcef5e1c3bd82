import type { Command } from 'commander';
import type { Context } from './commands/context.ts';
import { inFolder } from './commands/folderOrData.ts';
import type { KitOptions } from './commands/kit.ts';
import type { PackOptions } from './commands/pack.ts';
import type { RolloutOptions } from './commands/rollout.ts';
import type { OfSitesOptions } from './commands/wear.ts';
import type { ExitCode } from './exitCodes.ts';
import { spoken } from './language.ts';
import { kitCommand, packCommand, rolloutCommand, safetyCommand, wearCommand } from './loadedCommands.ts';

const { help, serve } = spoken.commandLine;

/** Lets a command take a programme of a data folder in place of a folder. */
export function fromData(command: Command): void {
  command.option('--data <dir>', serve.help.fromData).option('--programme <id>', serve.help.programme);
}

/** When cartridges are due, and whether water is fit to drink. */
export function addTreatment(root: Command, context: Context, ended: (code: ExitCode) => void): void {
  const { wear, safety } = spoken.commandLine;
  const each = [
    ['wear', wear, wearCommand],
    ['safety', safety, safetyCommand],
  ] as const;
  for (const [name, words, command] of each) {
    const added = root
      .command(name)
      .description(words.help)
      .argument('[folder]', help.folder)
      .option('--site <id>', help.site)
      .option('--json', words.jsonHelp)
      .addHelpText('after', words.examples)
      .action(async (folder: string | undefined, options: OfSitesOptions) =>
        ended(await inFolder(folder, options, context, (found) => command(found, options, found.context))),
      );
    fromData(added);
  }
}

/** Which parts sites need, what is bought, how it is carried, and what it costs. */
export function addKit(root: Command, context: Context, ended: (code: ExitCode) => void): void {
  const { kit } = spoken.commandLine;
  const added = root
    .command('kit')
    .description(kit.help)
    .argument('[folder]', help.folder)
    .option('--site <id>', kit.siteHelp, (id: string, before: readonly string[] = []) => [...before, id])
    .option('--needed-on <date>', kit.neededOnHelp)
    .option('--by <carrier>', kit.byHelp)
    .option('--workbook <file>', kit.workbookHelp)
    .option('--overwrite', kit.overwriteHelp)
    .option('--json', kit.jsonHelp)
    .addHelpText('after', kit.examples)
    .action(async (folder: string | undefined, options: KitOptions) =>
      ended(await inFolder(folder, options, context, (found) => kitCommand(found, options, found.context))),
    );
  fromData(added);
}

/** Who goes where, when, by which way. */
export function addRollout(root: Command, context: Context, ended: (code: ExitCode) => void): void {
  const { rollout } = spoken.commandLine;
  const added = root
    .command('rollout')
    .description(rollout.help)
    .argument('[folder]', help.folder)
    .option('--seconds <n>', rollout.secondsHelp)
    .option('--tries <n>', rollout.triesHelp)
    .option('--seed <n>', rollout.seedHelp)
    .option('--from <date>', rollout.fromHelp)
    .option('--today <date>', rollout.todayHelp)
    .option('--plan <id>', rollout.planHelp)
    .option('--anew', rollout.anewHelp)
    .option('--futures <n>', rollout.futuresHelp)
    .option('--strong-bound <seconds>', rollout.strongBoundHelp)
    .option('--compare', rollout.compareHelp)
    .option('--out <dir>', rollout.outHelp)
    .option('--pdf [language]', rollout.pdfHelp)
    .option('--keep <name>', rollout.keep.help)
    .option('--by <person>', rollout.keep.byHelp)
    .option('--plan-id <id>', rollout.keep.idHelp)
    .option('--in-force', rollout.keep.inForceHelp)
    .option('--overwrite', rollout.overwriteHelp)
    .option('--json', rollout.jsonHelp)
    .addHelpText('after', rollout.examples)
    .action(async (folder: string | undefined, options: RolloutOptions) =>
      ended(await inFolder(folder, options, context, (found) => rolloutCommand(found, options, found.context))),
    );
  fromData(added);
}

/** What is carried to a site, on paper. */
export function addPack(root: Command, context: Context, ended: (code: ExitCode) => void): void {
  const { pack } = spoken.commandLine;
  const added = root
    .command('pack')
    .description(pack.help)
    .argument('[folder]', help.folder)
    .option('--site <id>', help.site)
    .option('--out <dir>', pack.outHelp)
    .option('--by <carrier>', pack.byHelp)
    .option('--overwrite', pack.overwriteHelp)
    .addHelpText('after', pack.examples)
    .action(async (folder: string | undefined, options: PackOptions) => {
      const { language } = root.opts<{ language?: string }>();
      ended(
        await inFolder(folder, options, context, (found) =>
          packCommand(found, options, language ?? null, found.context),
        ),
      );
    });
  fromData(added);
}
