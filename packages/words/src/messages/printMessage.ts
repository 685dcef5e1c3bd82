import { IntlMessageFormat } from 'intl-messageformat';

type Elements = ReturnType<IntlMessageFormat['getAst']>;

/** Kinds of element of a parsed message, as the library numbers them. */
export const elementKinds = { literal: 0, argument: 1, number: 2, select: 5, plural: 6, pound: 7 } as const;

/** The elements of a message. A message that is none throws what is wrong with it. */
export const parsedMessage = (message: string): Elements =>
  new IntlMessageFormat(message, 'en', undefined, { ignoreTag: true }).getAst();

/** A text as it must be written in a message: braces in quotes, and apostrophes doubled where they would quote. */
function quoted(text: string, isCounted: boolean): string {
  const marks = isCounted ? /[{}#]+/g : /[{}]+/g;
  return text.replace(/'/g, "''").replace(marks, (some) => `'${some}'`);
}

/** A message written anew with its texts changed; places, counts and choices stay. */
export function messageWith(message: string, change: (text: string) => string): string {
  return printed(parsedMessage(message), change, false);
}

function printed(elements: Elements, change: (text: string) => string, isCounted: boolean): string {
  return elements
    .map((element) => {
      const name = 'value' in element ? String(element.value) : '';
      if (element.type === elementKinds.literal) return quoted(change(name), isCounted);
      if (element.type === elementKinds.pound) return '#';
      if (element.type === elementKinds.argument) return `{${name}}`;
      if (element.type === elementKinds.number) return `{${name}, number}`;
      if (!('options' in element) || typeof element.options !== 'object' || element.options === null)
        throw new Error(`a kind of place that no message here has: ${name}`);
      const counted = element.type === elementKinds.plural;
      const kind = !counted
        ? 'select'
        : 'pluralType' in element && element.pluralType === 'ordinal'
          ? 'selectordinal'
          : 'plural';
      const options = Object.entries(element.options as Readonly<Record<string, { readonly value: Elements }>>).map(
        ([form, option]) => `${form} {${printed(option.value, change, counted || isCounted)}}`,
      );
      return `{${name}, ${kind}, ${options.join(' ')}}`;
    })
    .join('');
}
