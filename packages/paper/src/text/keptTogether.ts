/** Units as they are written after a figure, the longer first. */
const units =
  'mm/h|mm/m|mm|cm|km|m³|m²|m/s|m|mL|L/s|L/h|L/min|L|kPa/min|kPa|Pa|mg/L|g/L|kg/m³|kg|g|t|NTU|°C|°F|min|h|d|%|log|W|N|µm|nm|°';

/** A figure, and a unit of the list; or any word of a script other than Latin, whose units are words of its own. */
const gap = new RegExp(`(\\p{Nd}) (?=(?:${units})(?![\\p{L}\\p{N}])|(?!\\p{Script=Latin})\\p{L})`, 'gu');
const ratio = /(\d) : (?=\d)/g;
const several = /(\d) × (?=\d)/g;

/**
 * A text in which no line breaks between a figure and its unit, nor within `1 : 150` and `12 × 3`.
 *
 * @param text - any text
 * @returns the same with spaces that do not break
 */
export const keptTogether = (text: string): string =>
  text.replace(gap, '$1\u00a0').replace(ratio, '$1\u00a0:\u00a0').replace(several, '$1\u00a0×\u00a0');
