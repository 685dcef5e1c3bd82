const number = /^-?\d+(\.\d+)?([eE][+-]?\d+)?$/;
const trigger = /^'*[=+\-@\t\r]/;
const guarded = /^'+[=+\-@\t\r]/;

/**
 * How is a text written so that no spreadsheet takes it for a formula? One apostrophe goes before it where it begins with
 * = + - @ TAB or CR (behind any apostrophes of its own) and is not a number.
 *
 * @param value - the text [text]
 * @returns the text as it stands in the file [text]
 * @law readGuarded gives back what guardText was given
 * @definition ours: the apostrophe rule of docs/tables.md
 * @example
 * guardText('=1+1') // → "'=1+1"
 * guardText('-3.25') // → '-3.25'
 */
export function guardText(value: string): string {
  return trigger.test(value) && !number.test(value) ? `'${value}` : value;
}

/**
 * What text was meant by a guarded cell? Takes off exactly one apostrophe where the rule may have put one.
 *
 * @param written - the text as it stands in the file [text]
 * @returns the text [text]
 * @definition ours: the apostrophe rule of docs/tables.md
 * @example
 * readGuarded("'=1+1") // → '=1+1'
 * readGuarded("'Uta") // → "'Uta"
 */
export function readGuarded(written: string): string {
  return guarded.test(written) ? written.slice(1) : written;
}
