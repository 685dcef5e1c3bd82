import type { Handle } from '../sheet/shapes.ts';
import type { Frame } from './frame.ts';

const grip = 16;

/** What may be taken hold of in a section: the rim and the side of each tank, the gutter's eave of each roof. */
export function sectionHandles({ view, placed, width, height }: Frame): readonly Handle[] {
  const { k, y0 } = view;
  const handles = placed.flatMap((one): readonly Handle[] => {
    if (one.kind === 'roof' && one.roof.roofId !== '') {
      const { outline, x, roof } = one;
      const box = { x: x + outline.width_m * k - grip, y: y0 - outline.eaveHeight_m * k - grip };
      const perPx = 1 / (outline.width_m * k);
      return [{ name: `roof:${roof.roofId}:gutter`, ...box, width: 2 * grip, height: 2 * grip, along: 'x', perPx }];
    }
    if (one.kind !== 'tank' || !one.tank || one.tank.tankId === '') return [];
    const { tankId, diameter_m, height_m, standHeight_m } = one.tank;
    const half = (diameter_m.value / 2) * k;
    const foot = y0 - standHeight_m.value * k;
    const top = foot - height_m.value * k;
    return [
      {
        name: `tank:${tankId}:height`,
        x: one.x - half,
        y: top - grip / 2,
        width: 2 * half - grip / 2,
        height: grip,
        along: 'y',
        perPx: 1 / k,
      },
      {
        name: `tank:${tankId}:diameter`,
        x: one.x + half - grip / 2,
        y: top,
        width: grip,
        height: foot - top,
        along: 'x',
        perPx: 1 / k,
      },
    ];
  });
  return handles.flatMap((one) => within(one, width, height));
}

/** The part of it that the picture shows; nothing where it shows none. */
function within(handle: Handle, width: number, height: number): readonly Handle[] {
  const [x, y] = [Math.max(0, handle.x), Math.max(0, handle.y)];
  const [right, bottom] = [Math.min(width, handle.x + handle.width), Math.min(height, handle.y + handle.height)];
  return right - x > 3 && bottom - y > 3 ? [{ ...handle, x, y, width: right - x, height: bottom - y }] : [];
}
