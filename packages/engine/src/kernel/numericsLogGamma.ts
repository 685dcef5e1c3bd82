/** Coefficients of Godfrey (2001), from memory; checked against SciPy. */
const lanczos = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059,
  12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
];

/**
 * What is the natural logarithm of the gamma function?
 *
 * @param z - where [number], above 0
 * @returns ln Γ(z) [number]
 * @law Γ(z + 1) = z Γ(z)
 * @source godfrey-2001, Lanczos's approximation with g = 7 and nine terms
 * @example
 * logGamma(5) // → 3.178
 */
export function logGamma(z: number): number {
  if (z < 0.5) return Math.log(Math.PI / Math.sin(Math.PI * z)) - logGamma(1 - z);
  let sum = lanczos[0]!;
  for (let i = 1; i < lanczos.length; i++) sum += lanczos[i]! / (z - 1 + i);
  const t = z + 6.5;
  return 0.5 * Math.log(2 * Math.PI) + (z - 0.5) * Math.log(t) - t + Math.log(sum);
}
