import type { Station } from '@eavewell/engine';
import type { Frame } from './frame.ts';
import { extentOf } from './frame.ts';
import { domeOf, type Placed, stopTop_m, topOf } from './layout.ts';
import { type Balloon, isException } from './marks.ts';
import { tankOf } from './notes.ts';
import type { Box } from './placer.ts';
import { sheetAt } from './roofOutline.ts';
import type { SectionInput } from './sectionTypes.ts';
import { footOf } from './stand.ts';
import { unitLift_m } from './tapStand.ts';
import { isFine } from './view.ts';

/** The stations' marks, each at the first part of the building that stands for it. */
export function balloonsOf({ view, placed }: Frame, { stations, letters }: SectionInput): readonly Balloon[] {
  const { k, y0 } = view;
  const roofs = placed.filter((one) => one.kind === 'roof');
  const roof = roofs[0];
  const guttered = roofs.find(({ outline }) => outline.hasRight) ?? roof;
  const tank = placed.find((one) => one.kind === 'tank' && one.tank !== null);
  const balloons: Balloon[] = [];
  const add = (station: Balloon['station'], anchor: readonly [number, number], side: readonly [number, number]) =>
    balloons.push({ station, verdict: stations[station], words: letters[station], anchor, side });
  if (roof) {
    const x = roof.outline.width_m * 0.27;
    add('roof', [roof.x + x * k, y0 - sheetAt(roof.outline, x) * k], [-16, -22]);
  }
  if (guttered) {
    const { outline, x } = guttered;
    add('gutter', [x + outline.rightPipe_m * k, y0 - outline.eaveHeight_m * k], [18, -34]);
  }
  if (tank?.kind === 'tank' && tank.tank) {
    const top = tank.tank.standHeight_m.value + tank.tank.height_m.value + domeOf(tank.tank.diameter_m.value);
    add('storage', [tank.x, y0 - (top + 0.05) * k], [4, -16]);
  }
  // Where the building is small, what was not judged of it is left to the page.
  const isTold = (station: Station) => isFine(view) || stations[station] !== 'notJudged';
  const settling = tankOf(placed, 'settling');
  if (settling?.tank && isTold('settling') && (settling.tank.role === 'settling' || isException(stations.settling))) {
    const { standHeight_m, height_m, diameter_m } = settling.tank;
    const left = settling.x - diameter_m.value * 0.4 * k;
    add('settling', [left, y0 - (standHeight_m.value + height_m.value * 0.3) * k], [-26, -20]);
  }
  const stood = tankOf(placed, 'stand');
  if (stood?.tank && isTold('stand') && (stood.tank.standHeight_m.value > 0.03 || isException(stations.stand))) {
    const height = Math.max(0, stood.tank.standHeight_m.value);
    add('stand', [stood.x + (footOf(stood.tank) - 0.1) * k, y0 - height * 0.5 * k], [26, 30]);
  }
  for (const one of placed)
    if (one.kind === 'treatmentUnit')
      add('treatmentUnit', [one.x + 0.5 * k, y0 - (1.28 + unitLift_m(one.stops)) * k], [3, -22]);
    else if (one.kind === 'tap') {
      add('tap', [one.x + 0.9 * k, y0 - (one.stops.tapHeight_m.value + 0.19) * k], [3, -22]);
      // What is carried home. It stands at the edge, so it chooses its place first; where nobody judged it, the page says so.
      if (stations.cup !== 'notJudged') {
        add('cup', [one.x + 3.6 * k, y0 - 0.4 * k], [6, -34]);
        balloons.unshift(balloons.pop()!);
      }
    }
  return balloons;
}

/** What letters had better not be written over [px]. */
export function drawnBoxes({ view, placed, width, height }: Frame): readonly Box[] {
  const ground: Box = { x: 0, y: view.y0 - 2, width, height: height - view.y0 };
  return [...placed.flatMap((one) => boxesOf(one, view)), ground];
}

function boxesOf(one: Placed, { k, y0 }: Frame['view']): readonly Box[] {
  if (one.kind === 'roof') {
    const { outline, x } = one;
    const slices = 8;
    const wide = outline.width_m / slices;
    const roofs = Array.from({ length: slices }, (_, nth): Box => {
      const top = Math.max(sheetAt(outline, nth * wide), sheetAt(outline, (nth + 1) * wide));
      return { x: x + nth * wide * k, y: y0 - top * k, width: wide * k, height: top * k };
    });
    const pipes: Box = {
      x: x + outline.width_m * k,
      y: y0 - outline.eaveHeight_m * k,
      width: outline.rightOut_m * k,
      height: outline.eaveHeight_m * k,
    };
    return [...roofs, pipes];
  }
  const [left, right] = extentOf(one);
  const top =
    one.kind === 'tank'
      ? Math.max(...[one.tank, one.proposed].map((tank) => (tank ? topOf(tank) : 0)))
      : stopTop_m(one.kind, one.stops);
  return [{ x: one.x + left * k, y: y0 - top * k, width: (right - left) * k, height: top * k }];
}
