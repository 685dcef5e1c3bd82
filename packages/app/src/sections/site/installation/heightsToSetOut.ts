import type { SiteFacts } from '@eavewell/engine';
import type { AppLanguage } from '@eavewell/words/app';

type Words = Pick<AppLanguage, 'say' | 'numbers'>;

/** One height to be marked before anything is fixed; alike ones stand in one line, with the ids of all. */
export interface HeightLine {
  readonly ids: readonly string[];
  readonly what: string;
  readonly value: string;
}

const blank = '……';

/** How far water runs along a gutter to its outlet [m]; null where it was not measured. */
function run_m({ runToOutlet_m, length_m, outlets_count }: SiteFacts['gutters'][number]): number | null {
  if (runToOutlet_m !== null) return runToOutlet_m;
  return length_m === null ? null : length_m / (outlets_count ?? 1);
}

/**
 * What is marked out before a gutter or a pipe is fixed.
 *
 * @param site - the site's facts
 * @param words - the language of the sheet
 * @returns lines in the order of the water: falls of gutters over their run [mm], inlets, draw-offs and overflows over the tank's foot and over
 *   the ground [m], unit and taps over the ground [m]; what was not measured is left to be written in
 */
export function heightsToSetOut(site: SiteFacts, { say, numbers }: Words): readonly HeightLine[] {
  const metres = (value: number | null) =>
    say('drawn.metres', { value: value === null ? blank : numbers.fixed(value, 2) });
  const falls = site.gutters.map((gutter): HeightLine => {
    const { gutterId, fall_mm_per_m } = gutter;
    const along_m = run_m(gutter);
    const drop = fall_mm_per_m === null || along_m === null ? blank : numbers.fixed(fall_mm_per_m * along_m, 0);
    const fall = fall_mm_per_m === null ? blank : numbers.given(fall_mm_per_m, '');
    return {
      ids: [gutterId],
      what: say('installation.fall'),
      value: say('installation.fall_over', { drop, run: metres(along_m), fall }),
    };
  });
  const tanks = (['stand', 'inlet', 'drawOff', 'overflow'] as const).flatMap((what) =>
    site.tanks.map((tank): HeightLine => {
      const { tankId, standHeight_m } = tank;
      if (what === 'stand') return { ids: [tankId], what: say('installation.stand'), value: metres(standHeight_m) };
      const over_m = { inlet: tank.inletHeight_m, drawOff: tank.outletHeight_m, overflow: tank.overflowHeight_m }[what];
      const ground_m = over_m === null || standHeight_m === null ? null : over_m + standHeight_m;
      const value = say('installation.over_both', { foot: metres(over_m), ground: metres(ground_m) });
      return { ids: [tankId], what: say(`installation.${what}`), value };
    }),
  );
  return alike([
    ...falls,
    ...tanks,
    { ids: [], what: say('installation.unit_height'), value: metres(site.unitHeight_m) },
    { ids: [], what: say('installation.tap_height'), value: metres(site.tapHeight_m) },
  ]);
}

function alike(lines: readonly HeightLine[]): readonly HeightLine[] {
  const known = new Map<string, HeightLine>();
  for (const line of lines) {
    const key = `${line.what}|${line.value}`;
    const before = known.get(key);
    known.set(key, before === undefined ? line : { ...line, ids: [...before.ids, ...line.ids] });
  }
  return [...known.values()];
}
