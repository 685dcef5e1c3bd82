import { spoken } from './language.ts';

const { parser } = spoken.commandLine;

type Titles = typeof parser.titles;

/** A title of the help, in the language of the run. The library that reads the command line has it in English. */
export function titleInWords(title: string): string {
  return Object.hasOwn(parser.titles, title) ? parser.titles[title as keyof Titles] : title;
}

/** "(Did you mean --site?)", which the library puts on a line of its own. */
const likely = String.raw`(?:\n\(Did you mean (?<likely>[^\n]+)\?\))?`;

const forms: readonly (readonly [form: RegExp, words: (found: Readonly<Record<string, string>>) => string])[] = [
  [
    new RegExp(`^error: unknown option '(?<name>.*)'${likely}\n$`),
    ({ name = '', likely: near }) => parser.unknownOption(name, near),
  ],
  [
    new RegExp(`^error: unknown command '(?<name>.*)'${likely}\n$`),
    ({ name = '', likely: near }) => parser.unknownCommand(name, near),
  ],
  [/^error: missing required argument '(?<name>.*)'\n$/, ({ name = '' }) => parser.argumentMissing(name)],
  [/^error: option '(?<name>.*)' argument missing\n$/, ({ name = '' }) => parser.valueMissing(name)],
  [
    /^error: option '(?<name>.*)' argument '(?<value>.*)' is invalid\. (?<why>.*)\n$/s,
    ({ name = '', value = '', why = '' }) => parser.valueWrong(name, value, why),
  ],
  [
    /^error: too many arguments for '(?<name>.*)'\. Expected (?<most>\d+) arguments? but got (?<given>\d+)\.\n$/,
    ({ name = '', most, given }) => parser.tooMany(name, Number(most), Number(given)),
  ],
];

/** What is wrong with a command line, in the language of the run; as the library says it where it is none of those it mostly says. */
export function errorInWords(text: string): string {
  for (const [form, words] of forms) {
    const found = form.exec(text);
    if (found) return `${words(found.groups ?? {})}\n`;
  }
  return text;
}
