import type { Shape } from '../sheet/shapes.ts';
import { figure, hand } from './figures.ts';
import { arrow, bar, fine, leaf, line, outline, specks, spots, through } from './signs.ts';
import { broomHead, ground, ladder, stream } from './things.ts';

/** Somebody on a ladder, one hand on it, sweeps leaves down a roof. */
export function sweepRoof(): readonly Shape[] {
  return [
    line(through(spots([14, 38, 14, 96]))),
    ground(4, 56),
    bar(spots([4, 30, 58, 60]), 2.1),
    outline('M56 62v3a5 5 0 0 0 10 0v-3Z'),
    ...leaf([33, 43], 10, 10),
    ...leaf([45, 49], 340, 10),
    ...leaf([34, 66], 100, 12),
    ...ladder([68, 95], [63, 33], 14),
    bar(spots([26, 35, 56, 39.7]), 1.2),
    ...figure({
      ...{
        size: 62,
        hip: [80, 58],
        shoulder: [74, 40],
        hands: spots([66.5, 49, 53, 39.2]),
      },
      ...{
        feet: spots([76, 85, 79, 93]),
        faces: -1,
        elbows: [-1, -1],
      },
    }),
    ...broomHead([26, 35], 118),
    ...arrow(spots([12, 12, 44, 29])),
  ];
}

/** A hand lifts leaves off the screen over a pipe. */
export function clearScreen(): readonly Shape[] {
  // Half as long as a wire is across the rim, so far from its middle.
  const half = (far: number, radius: number) => Math.sqrt(1 - (far / radius) ** 2);
  const columns = [-27, -18, -9, 0, 9, 18, 27].map((x) => {
    const high = 13 * half(x, 38);
    return through(spots([46 + x, 62 - high, 46 + x, 62 + high]));
  });
  const rows = [-5, 0, 5].map((y) => {
    const wide = 38 * half(y, 13);
    return through(spots([46 - wide, 62 + y, 46 + wide, 62 + y]));
  });
  return [
    outline('M8 62V72A38 13 0 0 0 33 84V97H59V84A38 13 0 0 0 84 72V62Z'),
    outline('M8 62A38 13 0 1 1 84 62A38 13 0 1 1 8 62Z'),
    fine([...columns, ...rows].join('')),
    ...leaf([24, 64], 330, 14),
    ...leaf([60, 70], 200, 14),
    ...leaf([44, 24], 60, 17),
    ...hand({ palm: [52, 18], from: [95, 8], deed: 'grips', turn_deg: 60, side: -1, size: 0.9 }),
    ...arrow(spots([24, 46, 24, 14])),
  ];
}

/** The cap is off the foot of the upright pipe; the first, dirty water runs out, and none of it into the tank. */
export function emptyFirstFlush(): readonly Shape[] {
  return [
    ground(4, 96),
    outline('M63 95V59Q78.5 49 94 59V95Z'),
    bar(spots([4, 4, 26, 11]), 2),
    outline('M25 9v4a8 8 0 0 0 8 8h14v-12Z'),
    line(through(spots([30, 53, 30, 21, 50, 21, 50, 27, 83, 34, 83, 53]))),
    line(through(spots([50, 53, 50, 37, 74, 41, 74, 53]))),
    specks(spots([35, 39, 43, 42, 36, 46, 44, 49, 40, 53, 40, 59, 40, 65, 40, 71]), 1.6),
    line('M31 33q4.5 -3 9 0q4.5 3 9 0'),
    bar(spots([28.5, 53, 31, 53]), 1.6),
    bar(spots([49, 53, 51.5, 53]), 1.6),
    ...stream([35, 55], 70),
    ...stream([45, 55], 70),
    ...stream([25.6, 78], 92),
    ...stream([54.4, 78], 92),
    outline('M30 76V85Q30 88 33 88H47Q50 88 50 85V76'),
    fine('M35 80V87M40 80V87M45 80V87'),
    ...arrow(spots([18, 58, 18, 82]), 1.7),
    specks(spots([21, 91, 32, 91.5, 40, 91.5, 48, 91.5, 58.6, 91]), 1.4),
  ];
}

/** One climbs a ladder, another holds its foot. */
export function ladderWithHelper(): readonly Shape[] {
  return [
    bar(spots([4, 8, 38, 22]), 2.1),
    outline('M36 22v3a4.6 4.6 0 0 0 9.2 0v-3Z'),
    line(through(spots([14, 14, 14, 95]))),
    ground(4, 96),
    ...ladder([68, 94], [44, 10], 11),
    ...figure({
      ...{
        size: 44,
        hip: [62, 42],
        shoulder: [57, 29],
        hands: spots([50, 24, 53, 34]),
        feet: spots([60, 57, 62, 65]),
      },
      ...{ faces: -1, elbows: [-1, -1] },
    }),
    ...figure({
      ...{
        size: 44,
        hip: [85, 70],
        shoulder: [81, 57.5],
        hands: spots([67, 66, 69, 74]),
        feet: spots([80, 92.5, 90, 92.5]),
      },
      ...{ faces: -1, elbows: [-1, -1] },
    }),
    ...arrow(spots([82, 36, 75, 12])),
  ];
}
