import { elementKinds as kinds, parsedMessage } from './printMessage.ts';

/** What may be wrong with a message of a language, beside the English one. */
export type MessageFault =
  | { readonly kind: 'broken'; readonly reason: string }
  | { readonly kind: 'placesLost'; readonly names: readonly string[] }
  | { readonly kind: 'placesUnknown'; readonly names: readonly string[] }
  | { readonly kind: 'formsMissing'; readonly name: string; readonly forms: readonly string[] }
  | { readonly kind: 'formsUnknown'; readonly name: string; readonly forms: readonly string[] }
  | { readonly kind: 'tooLong'; readonly length: number; readonly most: number };

/** What a message asks for: the names of its places, the counts with their forms, and its choices with theirs. */
export interface MessageParts {
  readonly names: ReadonlySet<string>;
  readonly plurals: readonly { readonly name: string; readonly forms: readonly string[]; readonly ordinal: boolean }[];
  readonly choices: ReadonlyMap<string, ReadonlySet<string>>;
}

type Elements = ReturnType<typeof parsedMessage>;

/** The parts of a message. A message that is none throws what is wrong with it. */
export function messageParts(message: string): MessageParts {
  const names = new Set<string>();
  const plurals: { name: string; forms: readonly string[]; ordinal: boolean }[] = [];
  const choices = new Map<string, Set<string>>();
  const visit = (elements: Elements): void => {
    for (const element of elements) {
      if (element.type === kinds.literal || element.type === kinds.pound) continue;
      if ('value' in element) names.add(String(element.value));
      if (!('options' in element) || element.options === null || element.options === undefined) continue;
      const forms = Object.keys(element.options);
      if (element.type === kinds.plural)
        plurals.push({
          name: String(element.value),
          forms,
          ordinal: 'pluralType' in element && element.pluralType === 'ordinal',
        });
      else choices.set(String(element.value), new Set([...(choices.get(String(element.value)) ?? []), ...forms]));
      for (const option of Object.values(element.options)) visit(option.value);
    }
  };
  visit(parsedMessage(message));
  return { names, plurals, choices };
}

/** Counts up to this one must each have the form that the language asks for; the forms of millions may be left out. */
const countsTried = Array.from({ length: 201 }, (_, count) => count);

function formsOf(
  code: string,
  ordinal: boolean,
  explicit: readonly string[],
): { readonly needed: readonly string[]; readonly all: readonly string[] } {
  const rules = new Intl.PluralRules(code, { type: ordinal ? 'ordinal' : 'cardinal' });
  const needed = new Set(
    countsTried.filter((count) => !explicit.includes(`=${count}`)).map((count) => rules.select(count)),
  );
  return { needed: [...needed], all: [...new Set([...rules.resolvedOptions().pluralCategories, 'other'])] };
}

function formFaults(code: string, { name, forms, ordinal }: MessageParts['plurals'][number]): readonly MessageFault[] {
  const { needed, all } = formsOf(code, ordinal, forms);
  const missing = needed.filter((form) => !forms.includes(form));
  const unknown = forms.filter((form) => !form.startsWith('=') && !all.includes(form));
  return [
    ...(missing.length > 0 ? [{ kind: 'formsMissing', name, forms: missing } as const] : []),
    ...(unknown.length > 0 ? [{ kind: 'formsUnknown', name, forms: unknown } as const] : []),
  ];
}

/** What the library says of a broken message, without its capitals: `EXPECT_ARGUMENT_CLOSING_BRACE`. */
const plainReason = (message: string) => (message.split('\n')[0] ?? '').toLowerCase().replaceAll('_', ' ');

/** How long a message is where it is longest to read: of a count or a choice one form alone is seen, however many there are. */
function longestRead(elements: Elements): number {
  return elements.reduce((sum, element) => {
    if (element.type === kinds.pound) return sum + 1;
    if (element.type === kinds.literal) return sum + String('value' in element ? element.value : '').length;
    if ('options' in element && typeof element.options === 'object' && element.options !== null)
      return sum + Math.max(...Object.values(element.options).map(({ value }) => longestRead(value)));
    return sum + ('value' in element ? String(element.value).length : 0) + 2;
  }, 0);
}

/** How long a message may be before it is likely to break a page: what English takes, more than half as much again. */
export const mostLength = (english: string): number => Math.floor(longestRead(parsedMessage(english)) * 1.6) + 10;

/**
 * Everything wrong with a message in a language: broken, places lost or made up, forms of a count that the language has
 * or has not, choices that English does not offer, and a length that may not fit.
 *
 * @param message - the message
 * @param english - the English one
 * @param code - tag of the language
 */
export function messageFaults(message: string, english: string, code: string): readonly MessageFault[] {
  let parts: MessageParts;
  try {
    parts = messageParts(message);
  } catch (error) {
    return [{ kind: 'broken', reason: error instanceof Error ? plainReason(error.message) : String(error) }];
  }
  const wanted = messageParts(english);
  const lost = [...wanted.names].filter((name) => !parts.names.has(name));
  const unknown = [...parts.names].filter((name) => !wanted.names.has(name));
  const choices = [...parts.choices].flatMap(([name, forms]) => {
    const offered = wanted.choices.get(name) ?? new Set(['other']);
    const made = [...forms].filter((form) => !offered.has(form));
    const missing = [...offered].filter((form) => !forms.has(form));
    return [
      ...(made.length > 0 ? [{ kind: 'formsUnknown', name, forms: made } as const] : []),
      ...(missing.length > 0 ? [{ kind: 'formsMissing', name, forms: missing } as const] : []),
    ];
  });
  const [length, most] = [longestRead(parsedMessage(message)), mostLength(english)];
  return [
    ...(lost.length > 0 ? [{ kind: 'placesLost', names: lost } as const] : []),
    ...(unknown.length > 0 ? [{ kind: 'placesUnknown', names: unknown } as const] : []),
    ...parts.plurals.flatMap((plural) => formFaults(code, plural)),
    ...choices,
    ...(length > most ? [{ kind: 'tooLong', length, most } as const] : []),
  ];
}
