import type { Speech } from '../problems.ts';
import { yes } from './telling.ts';

/** What is said of a command line that cannot be read, and the titles of its help. */
export const parserIn = ({ say }: Speech) => ({
  titles: {
    'Usage:': say('commandLine.parser.usage'),
    'Arguments:': say('commandLine.parser.arguments'),
    'Options:': say('commandLine.parser.options'),
    'Commands:': say('commandLine.parser.commands'),
  },
  unknownOption: (name: string, likely: string | undefined) =>
    say('commandLine.parser.unknownOption', { name, hasLikely: yes(likely), likely: likely ?? '' }),
  unknownCommand: (name: string, likely: string | undefined) =>
    say('commandLine.parser.unknownCommand', { name, hasLikely: yes(likely), likely: likely ?? '' }),
  helpOf: say('commandLine.parser.helpOf'),
  argumentMissing: (name: string) => say('commandLine.serve.argumentMissing', { name }),
  valueMissing: (name: string) => say('commandLine.parser.valueMissing', { name }),
  valueWrong: (name: string, value: string, why: string) => say('commandLine.parser.valueWrong', { name, value, why }),
  tooMany: (name: string, most: number, given: number) => say('commandLine.parser.tooMany', { name, most, given }),
});
