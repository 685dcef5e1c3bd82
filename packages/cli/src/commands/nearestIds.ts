/** Letters to change, add or drop to get from one text to the other. */
function changes(a: string, b: string): number {
  let last = Array.from({ length: b.length + 1 }, (_, index) => index);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++)
      row.push(Math.min(last[j]! + 1, row[j - 1]! + 1, last[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1)));
    last = row;
  }
  return last[b.length]!;
}

/** The few ids nearest to one that is not known, nearest first. */
export function nearestIds(wanted: string, ids: readonly string[], most = 3): readonly string[] {
  const sought = wanted.slice(0, 64).toLowerCase();
  return ids
    .map((id) => ({ id, distance: changes(sought, id.toLowerCase()) }))
    .sort((a, b) => a.distance - b.distance || (a.id < b.id ? -1 : 1))
    .slice(0, most)
    .map(({ id }) => id);
}
