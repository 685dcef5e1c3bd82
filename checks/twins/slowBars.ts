/** The least number of bars, in whole units, by trying every bar for every piece and every way to join what is longer than a bar. */
export function slowBars(runs: readonly number[], bar: number, cut: number): number {
  const ways = (run: number) => waysToJoin(run, Math.ceil(run / bar), bar);
  return slowBarsOf(runs.map(ways), bar, cut);
}

/** The same of lengths in m, joined from whole bars and one remainder alone: what the last bits may lack is no cut. */
export function slowBars_count(runs_m: readonly number[], bar_m: number): number {
  const hair = 1e-9;
  const ways = (run_m: number) => {
    const whole = Math.floor(run_m / bar_m + hair);
    const rest_m = run_m - whole * bar_m;
    return [[...Array.from({ length: whole }, () => bar_m), ...(rest_m > hair ? [rest_m] : [])]];
  };
  return slowBarsOf(runs_m.map(ways), bar_m + hair, 0);
}

function slowBarsOf(runs: readonly (readonly (readonly number[])[])[], bar: number, cut: number): number {
  let least = Number.POSITIVE_INFINITY;
  const room: number[] = [];
  const placeEach = (pieces: readonly number[], at: number) => {
    if (room.length >= least) return;
    const piece = pieces[at];
    if (piece === undefined) {
      least = room.length;
      return;
    }
    for (let one = 0; one < room.length; one++) {
      if (room[one]! < piece) continue;
      room[one]! -= piece + cut;
      placeEach(pieces, at + 1);
      room[one]! += piece + cut;
    }
    room.push(bar - piece - cut);
    placeEach(pieces, at + 1);
    room.pop();
  };
  const joinEach = (pieces: readonly number[], at: number) => {
    const ways = runs[at];
    if (ways === undefined) return placeEach(pieces, 0);
    for (const joined of ways) joinEach([...pieces, ...joined], at + 1);
  };
  joinEach([], 0);
  return least;
}

/** Every way to make a run of so many pieces, in whole units. */
function waysToJoin(run: number, pieces: number, bar: number): readonly (readonly number[])[] {
  if (pieces === 0) return [[]];
  if (pieces === 1) return run <= bar ? [[run]] : [];
  const ways: (readonly number[])[] = [];
  for (let first = 1; first <= Math.min(bar, run - 1); first++)
    for (const rest of waysToJoin(run - first, pieces - 1, bar)) if (rest[0]! <= first) ways.push([first, ...rest]);
  return ways;
}
