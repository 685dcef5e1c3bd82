import { laminarUpTo_factor } from './constants.ts';

/**
 * How much does the wall of a pipe hold back a stirred flow? Colebrook's law, solved to the last digits by Newton's method.
 *
 * @param reynolds - Reynolds number [number], above 0
 * @param roughness - roughness of the wall ÷ bore [ratio], 0 or more
 * @returns Darcy's friction factor [number]
 * @source colebrook-1939, 1/√f = −2 log₁₀(k/3.7 + 2.51/(Re √f))
 * @example
 * colebrookFactor(100000, 0.0001) // → 0.018513866077
 */
export function colebrookFactor(reynolds: number, roughness: number): number {
  let root = 1 / Math.sqrt(swameeJainFactor(Math.max(reynolds, laminarUpTo_factor), roughness));
  const rough = roughness / 3.7;
  const smooth = 2.51 / reynolds;
  for (let step = 0; step < 30; step++) {
    const inside = rough + smooth * root;
    const miss = root + 2 * Math.log10(inside);
    const next = root - miss / (1 + (2 * smooth) / (Math.LN10 * inside));
    if (Math.abs(next - root) <= 1e-15 * Math.abs(next)) break;
    root = next;
  }
  return 1 / (root * root);
}

/**
 * How much does the wall of a pipe hold back a stirred flow? Swamee and Jain's formula, near Colebrook's law without solving it.
 *
 * @param reynolds - Reynolds number [number], above 0
 * @param roughness - roughness of the wall ÷ bore [ratio], 0 or more
 * @returns Darcy's friction factor [number]
 * @source swamee-jain-1976, 0.25 ÷ log₁₀(k/3.7 + 5.74/Re^0.9)²
 * @example
 * swameeJainFactor(100000, 0.0001) // → 0.0184524
 */
export function swameeJainFactor(reynolds: number, roughness: number): number {
  return 0.25 / Math.log10(roughness / 3.7 + 5.74 / reynolds ** 0.9) ** 2;
}

/**
 * How much does the wall of a pipe hold back the flow, smooth or stirred? Smooth up to a Reynolds number of 2,000, Colebrook's law over it.
 *
 * @param reynolds - Reynolds number [number], above 0
 * @param roughness - roughness of the wall ÷ bore [ratio], 0 or more
 * @returns Darcy's friction factor [number]
 * @source poiseuille-1840, 64 ÷ Re (from memory); colebrook-1939, 1/√f = −2 log₁₀(k/3.7 + 2.51/(Re √f))
 * @example
 * frictionFactor(1000, 0) // → 0.064
 */
export function frictionFactor(reynolds: number, roughness: number): number {
  return reynolds <= laminarUpTo_factor ? 64 / reynolds : colebrookFactor(reynolds, roughness);
}
