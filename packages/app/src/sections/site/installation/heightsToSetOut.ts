import type { SiteFacts } from '@eavewell/engine';
import type { AppLanguage } from '@eavewell/words/app';

type Words = Pick<AppLanguage, 'say' | 'numbers'>;

/** One height to be marked before anything is fixed. */
export interface HeightLine {
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
    say('water.metres', { value: value === null ? blank : numbers.fixed(value, 2) });
  const falls = site.gutters.map((gutter): HeightLine => {
    const { gutterId, fall_mm_per_m } = gutter;
    const along_m = run_m(gutter);
    const drop = fall_mm_per_m === null || along_m === null ? blank : numbers.fixed(fall_mm_per_m * along_m, 0);
    return {
      what: say('installation.fall_of', { gutter: gutterId }),
      value: say('installation.fall_over', {
        drop,
        run: metres(along_m),
        fall: fall_mm_per_m === null ? blank : numbers.given(fall_mm_per_m, ''),
      }),
    };
  });
  const tanks = site.tanks.flatMap((tank): readonly HeightLine[] => {
    const { tankId, standHeight_m, inletHeight_m, outletHeight_m, overflowHeight_m } = tank;
    const at = (key: 'inlet_of' | 'drawOff_of' | 'overflow_of', height_m: number | null): HeightLine => ({
      what: say(`installation.${key}`, { tank: tankId }),
      value: say('installation.over_both', {
        foot: metres(height_m),
        ground: metres(height_m === null || standHeight_m === null ? null : height_m + standHeight_m),
      }),
    });
    return [
      { what: say('installation.stand_of', { tank: tankId }), value: metres(standHeight_m) },
      at('inlet_of', inletHeight_m),
      at('drawOff_of', outletHeight_m),
      at('overflow_of', overflowHeight_m),
    ];
  });
  return [
    ...falls,
    ...tanks,
    { what: say('installation.unit_height'), value: metres(site.unitHeight_m) },
    { what: say('installation.tap_height'), value: metres(site.tapHeight_m) },
  ];
}
