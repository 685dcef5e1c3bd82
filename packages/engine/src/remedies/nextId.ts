/**
 * What is the next thing of a kind called? The letters its fellows begin with, and the first number that is free.
 *
 * @param ids - ids there are [text]
 * @param letters - the letters where no fellow has any [text]
 * @returns an id that is not among them [text]
 * @definition ours
 * @example
 * nextId(['G1', 'G2'], 'X') // → 'G3'
 * nextId([], 'G') // → 'G1'
 */
export function nextId(ids: readonly string[], letters: string): string {
  const known = new Set(ids);
  const first = ids.map((id) => /^(.*?)\d+$/.exec(id)?.[1]).find((found) => found !== undefined) ?? letters;
  let number = 1;
  while (known.has(`${first}${number}`)) number++;
  return `${first}${number}`;
}
