import type * as appEnglish from '../languages/en/app.ts';
import type * as laterEnglish from '../languages/en/later.ts';
import type * as restEnglish from '../languages/en/rest.ts';

/** What a language is called, and how it is written. */
export interface LanguageHead {
  /** The language by its tag, such as `es` or `pt-BR` (BCP 47). */
  readonly code: string;
  /** What the language calls itself. */
  readonly name: string;
  /** From left to right, or from right to left. */
  readonly direction: 'ltr' | 'rtl';
  /** The tag whose forms of numbers and dates are used where it is not the code. */
  readonly forms?: string;
  /** Digits in threes with a space between them, where the mark of the language could be read as a decimal point. */
  readonly groups?: 'space';
  /** Of a language that only what is printed is said in; its pages are not there. */
  readonly for?: 'paper';
}

/** The messages of one language: a head, and sections of messages by their keys. */
export interface LanguageTexts {
  readonly language: LanguageHead;
  readonly sections: Readonly<Record<string, Readonly<Record<string, string>>>>;
}

type KeysOf<Sections> = {
  [Name in keyof Sections & string]: `${Name}.${keyof Sections[Name] & string}`;
}[keyof Sections & string];

/** A message that the pages in a browser may ask for: `section.key`. */
export type AppMessageKey =
  | KeysOf<Omit<typeof appEnglish, 'language' | 'missing'>>
  | KeysOf<Omit<typeof laterEnglish, 'missing'>>;

/** Any message: `section.key`. What English does not have does not compile. */
export type MessageKey = AppMessageKey | KeysOf<Omit<typeof restEnglish, 'missing'>>;

/** What fills the places of a message: texts as they stand, numbers for plurals and choices. */
export type MessageValues = Readonly<Record<string, string | number>>;

/** A message in words. */
export type SayOf<Key extends string> = (key: Key, values?: MessageValues) => string;

/** Any message in words. */
export type Say = SayOf<MessageKey>;
