import { IntlMessageFormat } from 'intl-messageformat';
import { figuresIn } from './figures.ts';
import { type NumberForm, numberForm } from './numberForm.ts';
import type { LanguageTexts, MessageValues, Say, SayOf } from './texts.ts';

/** Marks that keep a text of the other direction together, so that an id or a path is not torn apart (Unicode FSI and PDI). */
const isolated = (text: string) => `\u2068${text}\u2069`;

type Elements = ReturnType<IntlMessageFormat['getAst']>;

/** Values a message chooses its words by: they are compared and not read, so that no mark may stand round them. */
function chosenBy(elements: Elements): readonly string[] {
  return elements.flatMap((element) =>
    'options' in element && typeof element.options === 'object' && element.options !== null
      ? [
          String('value' in element ? element.value : ''),
          ...Object.values(element.options as Readonly<Record<string, { readonly value: Elements }>>).flatMap(
            ({ value }) => chosenBy(value),
          ),
        ]
      : [],
  );
}

/** A message ready to be filled, and what it chooses by. */
interface Compiled {
  readonly message: IntlMessageFormat;
  readonly chosenBy: ReadonlySet<string>;
}

/** Only what holds a place to fill, or an apostrophe that may quote one, has to be formatted. */
const isPlain = (message: string) => !/[{}']/.test(message);

function messageOf(texts: LanguageTexts, key: string): string | undefined {
  const dot = key.indexOf('.');
  const section = texts.sections[key.slice(0, dot)];
  const name = key.slice(dot + 1);
  return section && Object.hasOwn(section, name) ? section[name] : undefined;
}

/** Fills messages of one language; null for a message it lacks or that cannot be filled. */
// long: what one language needs to fill a message, held together
function fillerOf(texts: LanguageTexts, form: NumberForm) {
  const { code, direction } = texts.language;
  const compiled = new Map<string, Compiled>();
  const notKnown = messageOf(texts, 'numbers.notKnown') ?? '?';
  const { figure } = figuresIn(form, notKnown, (amount) => amount);
  // Making rules anew for each count would be most of the work of a sentence.
  const rules: { cardinal?: Intl.PluralRules; ordinal?: Intl.PluralRules } = {};
  const formatters = {
    // A number in a message reads as every other number of the program does; one with a style of its own reads as asked.
    getNumberFormat: (_: string | string[] | undefined, options?: Intl.NumberFormatOptions) =>
      options && Object.keys(options).length > 0
        ? new Intl.NumberFormat(form.tag, options)
        : ({ format: figure } as Intl.NumberFormat),
    getDateTimeFormat: (...given: ConstructorParameters<typeof Intl.DateTimeFormat>) =>
      new Intl.DateTimeFormat(form.tag, given[1]),
    getPluralRules: (_?: string | string[], { type = 'cardinal' }: Intl.PluralRulesOptions = {}) =>
      (rules[type] ??= new Intl.PluralRules(code, { type })),
  };
  const values = (given: MessageValues, chosen: ReadonlySet<string>): MessageValues =>
    direction === 'ltr'
      ? given
      : Object.fromEntries(
          Object.entries(given).map(([name, value]) => [
            name,
            typeof value === 'string' && !chosen.has(name) ? isolated(value) : value,
          ]),
        );
  return (key: string, given: MessageValues): string | null => {
    const message = messageOf(texts, key);
    if (message === undefined) return null;
    if (isPlain(message)) return message;
    try {
      let one = compiled.get(key);
      if (!one) {
        const made = new IntlMessageFormat(message, code, undefined, {
          ...{ ignoreTag: true, formatters: formatters as never },
        });
        one = { message: made, chosenBy: new Set(direction === 'ltr' ? [] : chosenBy(made.getAst())) };
        compiled.set(key, one);
      }
      return String(one.message.format(values(given, one.chosenBy)));
    } catch {
      return null;
    }
  };
}

/**
 * The messages of a language, ready to be filled. What it lacks, or what cannot be filled in it, is said in English: a
 * sentence in another language is worth more than none. A key that English lacks as well is our own mistake and throws.
 *
 * @param texts - the language
 * @param english - where to turn for what it lacks; left out for English itself
 * @param region - tag of a region whose forms of numbers are wanted, such as `es-PE`
 */
export function sayIn(texts: LanguageTexts, english?: LanguageTexts, region?: string): Say {
  return sayOf(texts, english, numberForm(texts.language, region));
}

/** The same for the messages of the app alone; `lacks` is told what the language does not say itself. */
export function sayOf<Key extends string>(
  texts: LanguageTexts,
  english: LanguageTexts | undefined,
  form: NumberForm,
  lacks?: (key: string) => void,
): SayOf<Key> {
  const first = fillerOf(texts, form);
  const second = english && fillerOf(english, form);
  return (key, values = {}) => {
    const own = first(key, values);
    if (own === null) lacks?.(key);
    const text = own ?? second?.(key, values);
    if (text === undefined || text === null) throw new Error(`no message ${key} for ${Object.keys(values).join(', ')}`);
    return text;
  };
}
