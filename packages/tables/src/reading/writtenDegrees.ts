const number = String.raw`\d{1,2}(?:\.\d+)?`;
/** Degrees, minutes and perhaps seconds, with their marks, spaces or colons between; a letter before or behind. */
const parts = new RegExp(
  String.raw`^([NSEW])?\s*(-?\d{1,3})(?:\s*[°º:]\s*|\s+)(${number})(?:\s*['’′:]\s*|\s+)?(${number})?\s*(?:["”″]|''|’’)?\s*([NSEW])?$`,
  'iu',
);
/** The same with points between, all three whole. */
const dotted = /^([NSEW])?\s*(-?\d{1,3})\.(\d{1,2})\.(\d{1,2})\s*([NSEW])?$/iu;
const decimal = /^([NSEW])?\s*(-?\d{1,3}(?:\.\d+)?)\s*°?\s*([NSEW])?$/iu;
const minutes_per_degree = 60;
const seconds_per_degree = 3600;
/** Decimals kept in a proposal: a tenth of a metre. Ours. */
const decimals = 6;

function signOf(before: string | undefined, behind: string | undefined, degrees: string): number | null {
  if (before !== undefined && behind !== undefined) return null;
  const side = (before ?? behind)?.toUpperCase();
  const isMinus = degrees.startsWith('-');
  if (side === undefined) return isMinus ? -1 : 1;
  return isMinus ? null : side === 'S' || side === 'W' ? -1 : 1;
}

/**
 * Which decimal degrees are meant by degrees written with minutes and seconds, or with a letter for the side of the world?
 *
 * @param text - a cell that is no plain number, without spaces round it [text]
 * @returns decimal degrees [deg], south and west negative; null where it is not such a text, or minutes or seconds reach 60
 * @definition a degree has 60 minutes of 60 seconds
 * @example
 * writtenDegrees("7°45'") // → 7.75
 * writtenDegrees('7.45.30') // → 7.758333
 * writtenDegrees('8.5 S') // → -8.5
 * writtenDegrees('heavy') // → null
 */
export function writtenDegrees(text: string): number | null {
  const found = parts.exec(text) ?? dotted.exec(text);
  const plain = found === null ? decimal.exec(text) : null;
  const [, before, degrees, behind] = plain ?? [];
  const [minutes, seconds] = [Number(found?.[3] ?? 0), Number(found?.[4] ?? 0)];
  const whole = found?.[2] ?? degrees;
  if (whole === undefined || minutes >= minutes_per_degree || seconds >= minutes_per_degree) return null;
  const sign = found ? signOf(found[1], found[5], whole) : signOf(before, behind, whole);
  if (sign === null) return null;
  const size = Math.abs(Number(whole)) + minutes / minutes_per_degree + seconds / seconds_per_degree;
  return sign * Number(size.toFixed(decimals));
}
