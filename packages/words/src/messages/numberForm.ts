import type { LanguageHead } from './texts.ts';

/** How a language writes digits, days and times. */
export interface NumberForm {
  /** The tag its forms follow. */
  readonly tag: string;
  readonly decimalMark: string;
  readonly groupMark: string;
  /** A plain decimal, such as `-1234.50`, with the marks of the language. */
  marked(plain: string): string;
  /** A day of the calendar. Years are those of four figures. */
  day(year: number, month: number, day: number): string;
  /** The same without its year. */
  dayAndMonth(month: number, day: number): string;
  month(month: number): string;
  /** A moment, in the time of the one who reads. */
  moment(at: Date): string;
  /** `one`, `few`, `many` …: which form a count takes. */
  plural(count: number): string;
}

/** A space at which no line breaks: neither a point nor a comma, so nobody takes it for the decimal mark. */
const groupSpace = '\u00a0';

/** Figures are written 0 to 9 in every language: they are compared with tables, kits and gauges, which have these. */
const figures = { numberingSystem: 'latn' } as const;

function partOf(format: Intl.NumberFormat, value: number, type: 'decimal' | 'group', otherwise: string): string {
  return format.formatToParts(value).find((part) => part.type === type)?.value ?? otherwise;
}

/** What is made when it is first used: a form of dates takes a slow computer some milliseconds, and most pages write none. */
function whenUsed<T>(make: () => T): () => T {
  let made: T | undefined;
  return () => {
    made ??= make();
    return made;
  };
}

const any = { year: 2000, month: 1, day: 1 };

/** The date of a calendar day for the formatters, which know no days without a clock. */
const at = ({ year, month, day }: typeof any) => new Date(Date.UTC(year, month - 1, day));

/**
 * How numbers and days are written in a language.
 *
 * @param head - the language
 * @param region - tag of the language in one region, such as `es-PE`, whose forms are wanted instead
 */
export function numberForm(head: LanguageHead, region?: string): NumberForm {
  const tag = region ?? head.forms ?? head.code;
  const whole = whenUsed(() => new Intl.NumberFormat(tag, { ...figures, maximumFractionDigits: 0 }));
  const numbers = new Intl.NumberFormat(tag, figures);
  const groupMark = partOf(numbers, 1_234_567.5, 'group', '');
  const decimalMark = partOf(numbers, 1.5, 'decimal', '.');
  const written = head.groups === 'space' ? groupSpace : groupMark;
  const dates = (options: Intl.DateTimeFormatOptions) =>
    whenUsed(() => new Intl.DateTimeFormat(tag, { ...figures, ...options }));
  const utc = { timeZone: 'UTC' } as const;
  const full = dates({ day: 'numeric', month: 'long', year: 'numeric', ...utc });
  const short = dates({ day: 'numeric', month: 'long', ...utc });
  const months = dates({ month: 'long', ...utc });
  const moments = dates({ dateStyle: 'long', timeStyle: 'short' });
  const plurals = whenUsed(() => new Intl.PluralRules(head.code));
  return {
    tag,
    decimalMark,
    groupMark: written,
    marked: (plain) => {
      const [, sign = '', digits = '0', part] = /^(-?)(\d+)(?:\.(\d+))?$/.exec(plain) ?? [];
      // Under a thousand nothing is grouped in any language.
      const grouped = digits.length < 4 ? digits : whole().format(BigInt(digits));
      const body = written === groupMark ? grouped : grouped.split(groupMark).join(written);
      return `${sign}${body}${part === undefined ? '' : `${decimalMark}${part}`}`;
    },
    day: (year, month, day) => full().format(at({ year, month, day })),
    dayAndMonth: (month, day) => short().format(at({ ...any, month, day })),
    month: (month) => months().format(at({ ...any, month })),
    moment: (date) => moments().format(date),
    plural: (count) => plurals().select(count),
  };
}
