import type { Station } from '@eavewell/engine';
import type { GroupShape, Shape } from '../sheet/shapes.ts';
import { type Carrier, carrierShapes, carriersOf } from './carrier.ts';
import { firstFlush, postOf } from './firstFlush.ts';
import type { Frame } from './frame.ts';
import { earth, groundLine, type Sunk } from './ground.ts';
import { groundHatch, hatched_m } from './groundHatch.ts';
import { gutterBrush, gutterSection, headAndPipe, hiddenCrossing } from './gutter.ts';
import type { Placed, PlacedRoof, PlacedStop, PlacedTank } from './layout.ts';
import { roofOutline } from './roofOutline.ts';
import { proposedRoof, roofSection } from './roofSection.ts';
import type { SludgeDepth, WaterPlace } from './sectionTypes.ts';
import { footOf, proposedStand, stand } from './stand.ts';
import { isTankDashed, proposedTank, tankSection } from './tank.ts';
import { joiningPipe } from './tankFittings.ts';
import { soakaway, tapStand } from './tapStand.ts';
import { treatmentUnit } from './treatmentUnit.ts';
import { at, proposed as blue, pipe, plain, unmeasured, type View } from './view.ts';
import { cutWalls, footings, houseOf, roomBeyond } from './wall.ts';

export const group = (part: string | null, station: Station | null, shapes: readonly Shape[]): GroupShape => ({
  kind: 'group',
  part,
  station,
  shapes,
});

/** Everything but letters and marks, in the order it is drawn. The groups of water come in, one for each tank. */
export function sectionParts(
  { view, width, placed, all }: Frame,
  waterOf: (tankId: string) => GroupShape,
  sludge: readonly SludgeDepth[] = [],
): readonly Shape[] {
  const roofs = placed.filter((one): one is PlacedRoof => one.kind === 'roof');
  const tanks = placed.filter((one): one is PlacedTank => one.kind === 'tank');
  const every = all.filter((one): one is PlacedRoof => one.kind === 'roof');
  const everyTank = all.filter((one): one is PlacedTank => one.kind === 'tank');
  const carriers = carriersOf({ k: view.k, placed: all });
  const seen = carriers.filter(({ axis }) => axis[0]![0] * view.k < width && axis[axis.length - 1]![0] > 0);
  const sunk = placed.flatMap((one) => sunkOf(one, view.k));
  return [
    group(null, null, earth(view, width, [...sunk, ...tanks.flatMap((one) => hatchedOf(one, view.k))])),
    ...roofs.map((one) => houseGroup(view, one)),
    ...seen.map((one) => group(`carrier:${one.roof.roof.roofId}`, 'gutter', carrierShapes(view, one, every))),
    ...roofs.flatMap((one) => gutterGroups(view, one)),
    ...feedPipe(view, all, width),
    ...tanks.flatMap((one) => tankGroups(view, one, everyTank, carriers, waterOf, sludge)),
    ...placed.flatMap((one) => {
      if (one.kind === 'treatmentUnit')
        return [group('treatmentUnit', 'treatmentUnit', treatmentUnit(at(view, one.x), one.stops))];
      return one.kind === 'tap' ? [group('tap', 'tap', tapStand(at(view, one.x), one.stops))] : [];
    }),
    groundLine(view, width, sunk),
  ];
}

function houseGroup(view: View, { roof, outline, x }: PlacedRoof): GroupShape {
  const local = at(view, x);
  const isFlat = roof.form === 'flat';
  const house = houseOf(outline, isFlat);
  return group(`roof:${roof.roofId}`, 'roof', [
    ...footings(local, house),
    ...roomBeyond(local, outline, house, roof.form === 'gable' || roof.form === 'oneSlope'),
    ...cutWalls(local, outline, house, isFlat),
    ...roofSection(local, roof, outline, house),
    ...(outline.hasLeft && outline.hasRight ? hiddenCrossing(local, roof, outline) : []),
  ]);
}

function gutterGroups(view: View, { roof, outline, proposed, x }: PlacedRoof): readonly GroupShape[] {
  const local = at(view, x);
  const { hasLeft, hasRight, leftPipe_m, rightPipe_m, eaveHeight_m, chamber } = outline;
  const { roofId, diverter } = roof;
  const eaves = [...(hasLeft ? [leftPipe_m] : []), ...(hasRight ? [rightPipe_m] : [])];
  const rim = eaveHeight_m;
  const groups = [
    group(`downpipe:${roofId}`, 'gutter', [
      ...(hasRight ? [postOf(local, outline)] : []),
      ...eaves.flatMap((middle) => headAndPipe(local, roof, outline, middle)),
    ]),
    group(
      `gutter:${roofId}`,
      'gutter',
      eaves.map((middle) => gutterSection(local, roof.gutter, middle, rim, gutterBrush(roof))),
    ),
  ];
  if (diverter && chamber && hasRight)
    groups.push(group(`diverter:${roofId}`, 'gutter', firstFlush(local, diverter, chamber, outline)));
  if (proposed)
    groups.push(group(`proposed:roof:${roofId}`, 'roof', proposedParts(local, { roof, outline, proposed })));
  return groups;
}

/** What would be other about a roof: its line, the gutter of an eave, a first flush. */
function proposedParts(
  local: View,
  { roof, outline, proposed }: Pick<PlacedRoof, 'roof' | 'outline'> & { proposed: PlacedRoof['proposed'] },
): readonly Shape[] {
  if (!proposed) return [];
  const would = roofOutline(proposed);
  const shapes: Shape[] = [];
  if (JSON.stringify(would.top) !== JSON.stringify(outline.top)) shapes.push(proposedRoof(local, would, blue));
  const gutter = (middle: number) => gutterSection(local, proposed.gutter, middle, would.eaveHeight_m, blue);
  if (would.hasLeft && !outline.hasLeft) shapes.push(gutter(would.leftPipe_m));
  if (would.hasRight && !outline.hasRight) shapes.push(gutter(would.rightPipe_m));
  const isOther = JSON.stringify(would.chamber) !== JSON.stringify(outline.chamber) || roof.diverter === null;
  if (proposed.diverter && would.chamber && isOther) {
    const { chamber, rightPipe_m, branchHeight_m } = would;
    const top = branchHeight_m - 0.05;
    for (let nth = 0; nth < chamber.count; nth++) {
      const x = rightPipe_m + nth * chamber.bore_m * 1.25;
      shapes.push(
        ...pipe(
          local,
          [
            [x, top],
            [x, top - chamber.length_m],
          ],
          chamber.bore_m,
          blue,
          { weight: 'edge', inside: 'none' },
        ),
      );
    }
  }
  return shapes;
}

function tankGroups(
  view: View,
  placed: PlacedTank,
  tanks: readonly PlacedTank[],
  carriers: readonly Carrier[],
  waterOf: (tankId: string) => GroupShape,
  sludge: readonly SludgeDepth[],
): readonly GroupShape[] {
  const { tank, proposed, body, isLastOfBody, x } = placed;
  const local = at(view, x);
  const groups: GroupShape[] = [];
  const holder = holding(placed);
  const water = holder === null ? null : waterOf(holder.tankId);
  if (tank) {
    const coming = carriers.filter((one) => one.tank.tank === tank);
    const inletAt = coming.length === 0 ? null : Math.max(...coming.map((one) => one.inletAt));
    const own = tanks.filter((one) => one.body === body && one.tank !== null);
    const before = own[own.findIndex((one) => one.tank === tank) - 1];
    const isLast = isLastOfBody || own[own.length - 1]?.tank === tank;
    const sludge_m = sludge.find(({ tankId }) => tankId === tank.tankId)?.height_m ?? null;
    groups.push(
      group(`ground:${tank.tankId}`, 'stand', groundHatch(local, tank, 0)),
      group(`stand:${tank.tankId}`, 'stand', stand(local, tank, 0)),
      group(`tank:${tank.tankId}`, 'storage', [
        ...tankSection(local, tank, 0, water, { inletAt, hasOutlet: isLast, sludge_m }),
        ...(before?.tank ? joiningPipe(local, before.tank, (before.x - x) / view.k, tank, 0) : []),
      ]),
    );
  }
  if (tank === null && water) groups.push(water);
  if (proposed)
    groups.push(
      group(`proposed:tank:${proposed.tankId}`, 'storage', [
        ...(isSameStand(tank, proposed) ? [] : [proposedStand(local, proposed, 0, blue)]),
        ...proposedTank(local, proposed, 0, blue),
      ]),
    );
  return groups;
}

const isSameStand = (tank: PlacedTank['tank'], other: NonNullable<PlacedTank['proposed']>): boolean =>
  tank !== null &&
  tank.standHeight_m.value === other.standHeight_m.value &&
  tank.stand.base_m.value === other.stand.base_m.value;

/** From the last tank of each body of water down to a pipe along the ground, to the treatment unit. */
function feedPipe(view: View, placed: readonly Placed[], width: number): readonly GroupShape[] {
  const unit = placed.find((one): one is PlacedStop => one.kind === 'treatmentUnit');
  if (!unit) return [];
  // A cut-out far from it shows none of it.
  if (placed.every((one) => one.kind !== 'tank' || one.x > width)) return [];
  const lasts = placed.filter((one): one is PlacedTank => one.kind === 'tank' && one.tank !== null);
  const byBody = new Map(lasts.map((one) => [one.body, one]));
  const shapes = [...byBody.values()].flatMap(({ tank, x }) => {
    const out = x / view.k + tank!.diameter_m.value / 2;
    const from = tank!.standHeight_m.value + tank!.outletHeight_m.value;
    const down = out + 0.3;
    const to = unit.stops.unitHeight_m.value;
    const along = Math.min(0.14, to, from);
    const { value, how } = unit.stops.legs.tankToUnit.bore_m;
    return pipe(
      view,
      [
        [out + 0.1, from],
        [down, from],
        [down, along],
        [unit.x / view.k - 0.1, along],
        [unit.x / view.k - 0.1, to],
        [unit.x / view.k, to],
      ],
      value,
      how === 'usual' ? unmeasured : plain,
    );
  });
  return [group('feed', 'treatmentUnit', shapes)];
}

/** Where the line of the ground is broken [m of the picture]. */
function sunkOf(one: Placed, k: number): Sunk {
  const x = one.x / k;
  if (one.kind === 'roof') {
    const house = houseOf(one.outline, one.roof.form === 'flat');
    return house.isRaised
      ? house.posts_m.map((post) => [x + post - 0.06, x + post + 0.06] as const)
      : [[x + house.left_m - 0.1, x + house.right_m + 0.1]];
  }
  if (one.kind === 'tap')
    return [
      [x + 0.1, x + 2.4],
      [x + soakaway.from_m, x + soakaway.to_m],
    ];
  if (one.kind === 'treatmentUnit') return [[x, x + 2.2]];
  if (one.kind !== 'tank' || one.tank === null) return [];
  const { pads } = one.tank.stand;
  const half = footOf(one.tank);
  return pads !== null && half > pads.side_m
    ? [
        [x - half, x - half + pads.side_m],
        [x + half - pads.side_m, x + half],
      ]
    : [[x - half, x + half]];
}

/** Where its own hatch tells what the ground is [m of the picture]. */
function hatchedOf({ tank, x }: PlacedTank, k: number): Sunk {
  const half = tank && hatched_m(tank);
  return half === null ? [] : [[x / k - half, x / k + half]];
}

/** The tank that holds the water: as it would be, where anything is proposed for it; null for one that would go. */
const holding = ({ tank, proposed, isGoing }: PlacedTank) => (isGoing ? null : (proposed ?? tank));

/**
 * Where the water of every tank stands, by body of water: in what is proposed, where anything is. Also of tanks that a cut-out does not show,
 * since they share a level.
 */
export function watersOf({ view, all }: Frame): readonly (readonly WaterPlace[])[] {
  const bodies = new Map<number, WaterPlace[]>();
  for (const one of all) {
    const tank = one.kind === 'tank' ? holding(one) : null;
    if (one.kind !== 'tank' || tank === null) continue;
    const x = one.x - (tank.diameter_m.value / 2) * view.k;
    const foot = view.y0 - tank.standHeight_m.value * view.k;
    const place = { tank, x, foot, isDashed: isTankDashed(tank) };
    bodies.set(one.body, [...(bodies.get(one.body) ?? []), place]);
  }
  return [...bodies.values()];
}
