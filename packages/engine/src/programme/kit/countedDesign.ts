import {
  type CountedBy,
  type DayIndex,
  type DownpipeFacts,
  downpipeRun,
  eaveRuns,
  type GutterFacts,
  gutterRun,
  isOfUnit,
  type RoofFacts,
  type RunLength,
  type SiteFacts,
  type TankFacts,
} from '../../kernel/index.ts';
import { mostOutlets_count } from './constants.ts';
import type { Choices, CountedDesign, CountedOne } from './kitFacts.ts';

/**
 * What is there to be counted at a site? What was surveyed and is not built yet; where no gutter or downpipe was, gutters along the eaves for the share that is
 * guttered, and a downpipe under each outlet, marked as assumed. What nobody knows stays unknown.
 *
 * @param site - the site's facts
 * @param today - units installed by then are there [day]; null: every unit with a day is
 * @returns things [count] and runs [m], the parts they are said to be, and what conditions of rules may look at
 * @definition ours: docs/decisions/0243-lengths-of-runs.md
 */
export function countedDesign(site: SiteFacts, today: DayIndex | null): CountedDesign {
  const choices: Choices = {
    siteClass: site.siteClass,
    people: site.people,
    handPump: yesNo(site.hasHandPump),
  };
  const counted = [
    things('site', null, 1),
    things('person', null, site.people),
    things('household', null, site.households_count),
    ...site.roofs.flatMap((roof) => ofRoof(site, roof)),
    ...site.tanks.flatMap(ofTank),
    ...ofPipes(site),
    things('tap', null, site.taps_count),
    ...ofUnits(site, today),
  ];
  return { siteId: site.siteId, counted, choices };
}

interface OneGiven {
  readonly partId?: string | null;
  readonly isAssumed?: boolean;
  readonly choices?: Choices;
}

function things(
  countedBy: CountedBy,
  ofId: string | null,
  things_count: number | null,
  given: OneGiven = {},
): CountedOne {
  return {
    countedBy,
    ofId,
    things_count,
    run: null,
    partId: given.partId ?? null,
    isAssumed: given.isAssumed ?? false,
    choices: given.choices ?? {},
  };
}

function length(countedBy: CountedBy, ofId: string | null, run: RunLength | null, given: OneGiven = {}): CountedOne {
  return { ...things(countedBy, ofId, 1, given), run };
}

/** Not built yet. */
const isWanted = ({ isBuilt }: { readonly isBuilt?: boolean }): boolean => isBuilt !== true;

const yesNo = (is: boolean | null): string | null => (is === null ? null : is ? 'yes' : 'no');

/** A roof with its gutters, downpipes and first flush. */
function ofRoof(site: SiteFacts, roof: RoofFacts): readonly CountedOne[] {
  const choices: Choices = { roofMaterial: roof.material };
  const own = site.gutters.filter(({ roofId }) => roofId === roof.roofId);
  const wanted = own.filter(isWanted);
  const gutters =
    own.length > 0 ? wanted.flatMap((gutter) => ofGutter(gutter, roof, choices)) : assumedGutters(roof, choices);
  const outlets = gutters.filter(({ countedBy }) => countedBy === 'gutterOutlet');
  const downpipes = site.downpipes.filter(({ roofId }) => roofId === roof.roofId);
  return [
    things('roof', roof.roofId, 1, { choices }),
    ...gutters,
    ...ofDownpipes(downpipes, outlets, roof, choices),
    ...(roof.diverter === null ? [] : [things('diverter', roof.roofId, 1, { choices })]),
  ];
}

function ofGutter(gutter: GutterFacts, roof: RoofFacts, ofRoofs: Choices): readonly CountedOne[] {
  const { gutterId: id } = gutter;
  const choices: Choices = {
    ...ofRoofs,
    gutterShape: gutter.shape,
    gutterWidth_mm: gutter.width_mm,
  };
  const eave_m = eaveRuns(roof)?.[0]?.length_m ?? null;
  const isAssumed = gutter.outlets_count === null;
  return [
    things('gutter', id, 1, { choices }),
    length('gutterMetre', id, gutterRun(gutter, eave_m), { choices }),
    things('gutterOutlet', id, gutter.outlets_count ?? 1, { choices, isAssumed }),
    things('gutterBend', id, gutter.bends_count, { choices }),
  ];
}

/** Along each eave, for the share that is guttered; a share that nobody knows is the whole, as everywhere. */
function assumedGutters(roof: RoofFacts, choices: Choices): readonly CountedOne[] {
  const share = roof.gutteredFraction ?? 1;
  if (share <= 0) return [];
  const eaves = eaveRuns(roof) ?? [null];
  return eaves.flatMap((eave, nth) => {
    const id = eaves.length === 1 ? roof.roofId : `${roof.roofId}-${nth + 1}`;
    const run: RunLength | null = eave && { length_m: share * eave.length_m, from: 'assumed' };
    const given = { choices, isAssumed: true };
    return [
      things('gutter', id, 1, given),
      length('gutterMetre', id, run, given),
      things('gutterOutlet', id, 1, given),
    ];
  });
}

function ofDownpipes(
  surveyed: readonly DownpipeFacts[],
  outlets: readonly CountedOne[],
  roof: RoofFacts,
  ofRoofs: Choices,
): readonly CountedOne[] {
  if (surveyed.length > 0)
    return surveyed.filter(isWanted).flatMap((pipe) => {
      const choices = { ...ofRoofs, downpipeBore_mm: pipe.bore_mm };
      const run = downpipeRun(pipe, surveyed, roof.eaveHeight_m);
      return [
        things('downpipe', pipe.downpipeId, 1, { choices }),
        length('downpipeMetre', pipe.downpipeId, run, { choices }),
      ];
    });
  const given = { choices: { ...ofRoofs, downpipeBore_mm: null }, isAssumed: true };
  return outlets.flatMap(({ ofId, things_count }) => {
    const ids = Array.from({ length: outletsOf(things_count) }, (_, nth) => (nth === 0 ? ofId : `${ofId}-${nth + 1}`));
    return ids.flatMap((id) => [
      things('downpipe', id, 1, given),
      length('downpipeMetre', id, downpipeRun(null, [], roof.eaveHeight_m), given),
    ]);
  });
}

/** A gutter of more outlets than this was mistyped. */
function outletsOf(things_count: number | null): number {
  return things_count !== null && things_count >= 0 && things_count <= mostOutlets_count ? Math.round(things_count) : 1;
}

function ofTank(tank: TankFacts): readonly CountedOne[] {
  if (!isWanted(tank)) return [];
  const { tankId: id, partId, role, standHeight_m } = tank;
  const choices: Choices = {
    tankVolume_L: tank.nominal_L ?? tank.partVolume_L,
    tankPart: partId,
    standHeight_m,
  };
  const isAssumed = tank.overflows_count === null;
  const overflows = tank.overflows_count ?? 1;
  const stands = standHeight_m === null ? null : Number(standHeight_m > 0);
  return [
    things(role === 'settling' ? 'settlingTank' : 'tank', id, 1, { choices, partId }),
    things('overflow', id, overflows, { choices, isAssumed }),
    things('stand', id, stands, { choices }),
    things('standPad', id, stands === 0 ? 0 : tank.pads_count, { choices }),
  ];
}

function ofPipes({ pipes }: SiteFacts): readonly CountedOne[] {
  return pipes.filter(isWanted).flatMap((pipe) => {
    const { pipeId: id, length_m } = pipe;
    const choices: Choices = { pipeLeg: pipe.leg, pipeBore_mm: pipe.bore_mm };
    return [
      things('pipe', id, 1, { choices }),
      length('pipeMetre', id, length_m === null ? null : { length_m, from: 'measured' }, { choices }),
      things('elbow', id, pipe.elbows_count, { choices }),
      things('tee', id, pipe.tees_count, { choices }),
      things('valve', id, pipe.valves_count, { choices }),
      things('meter', id, pipe.meters_count, { choices }),
    ];
  });
}

function isThere(installedOn: DayIndex | null, today: DayIndex | null): boolean {
  return installedOn !== null && (today === null || installedOn <= today);
}

/** Units to be installed, each with its set of cartridges, and the parts those are said to be: a part that is named for cartridges is a set of them. */
function ofUnits({ treatment }: SiteFacts, today: DayIndex | null): readonly CountedOne[] {
  return treatment.units.flatMap((unit) => {
    if (unit.removedOn !== null || isThere(unit.installedOn, today)) return [];
    const { serial: id, partId, figures } = unit;
    const choices: Choices = { unitPart: partId };
    const inIt = treatment.cartridges.filter(
      ({ unitSerial, removedOn }) => removedOn === null && isOfUnit(treatment, unit, unitSerial),
    );
    const setParts = new Set(inIt.map((one) => one.partId));
    const setPart = setParts.size === 1 ? inIt[0]!.partId : null;
    const cartridges_count = figures?.cartridges_count ?? (inIt.length > 0 ? inIt.length : null);
    return [
      things('unit', id, 1, { choices, partId }),
      things('cartridgeSet', id, 1, { choices, partId: setPart }),
      things('cartridge', id, cartridges_count, { choices }),
    ];
  });
}
