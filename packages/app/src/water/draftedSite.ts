import {
  changedSite,
  type DemandPurpose,
  type DesignSettings,
  type DiverterFacts,
  type GutterFacts,
  nextId,
  overflowFor_m,
  purposesOf,
  type RemedyChange,
  type RoofFacts,
  type SiteFacts,
  type TankChange,
  type TankFacts,
  tankGroups,
} from '@eavewell/engine';
import type { Draft, DraftStep, FittingStep } from './draft.ts';
import { within } from './limits.ts';

/** Parts of the catalogue by the tanks they are: facts say their volumes alone. */
export type BoughtParts = ReadonlyMap<string, string>;

/** A site as its draft has it. */
export interface Drafted {
  readonly site: SiteFacts;
  /** By tankId: the parts of tanks that remedies brought. */
  readonly bought: BoughtParts;
  /** People that remedies send to a site of their own, which is still to be made [person]. */
  readonly others_people: number;
}

/**
 * The facts as they would be, were the draft kept.
 *
 * @param site - the site as it is saved
 * @param draft - what was changed on the drawing
 * @param settings - of the programme
 * @returns the changed facts; the very same where there is no draft
 */
export function draftedSite(site: SiteFacts, draft: Pick<Draft, 'steps'>, settings: DesignSettings): SiteFacts {
  return drafted(site, draft, settings).site;
}

/** The same with what is to be known to keep it. */
export function drafted(site: SiteFacts, { steps }: Pick<Draft, 'steps'>, settings: DesignSettings): Drafted {
  let made: Drafted = { site, bought: new Map(), others_people: 0 };
  for (const step of steps)
    made = step.kind === 'remedy' ? remedied(made, step.changes, settings) : measured(made, site, step, settings);
  return made;
}

/** One measure changed; steps that name what is not there change nothing. */
function measured(
  made: Drafted,
  saved: SiteFacts,
  step: Exclude<DraftStep, { kind: 'remedy' }>,
  settings: DesignSettings,
): Drafted {
  const { site } = made;
  switch (step.kind) {
    case 'tank':
    case 'diameter':
    case 'overflow':
      return withTank(made, saved, step);
    case 'gutter':
      return {
        ...made,
        site: withRoof(site, step.roofId, (roof) => ({ ...roof, gutteredFraction: step.gutteredFraction })),
      };
    case 'firstFlush':
      return {
        ...made,
        site: withRoof(site, step.roofId, (roof) => ({ ...roof, diverter: flushing(roof, step.firstFlush_mm) })),
      };
    case 'litres':
      return { ...made, site: { ...site, demand: asked(site, step, settings) } };
    case 'fitting':
      return { ...made, site: fitted(site, step) };
    case 'people':
      return { ...made, site: { ...site, people: step.people } };
  }
}

const noDiverter: DiverterFacts = {
  firstFlush_mm: null,
  chamber_L: null,
  chamberBore_mm: null,
  drainHole: 'open',
  drainHole_mm: null,
};

function flushing({ diverter }: RoofFacts, firstFlush_mm: number): DiverterFacts {
  return { ...(diverter ?? noDiverter), firstFlush_mm };
}

/** One purpose asks for so many litres; the programme's purposes become the site's own. */
function asked(
  site: SiteFacts,
  step: Extract<DraftStep, { kind: 'litres' }>,
  settings: DesignSettings,
): SiteFacts['demand'] {
  const purposes = purposesOf(site, settings);
  const isMeant = ({ purpose }: DemandPurpose) => purpose === step.purpose || purpose === ownName(step.purpose);
  if (!purposes.some(isMeant)) return site.demand;
  const { litres_per_person_per_day } = step;
  return ownNames(purposes.map((one) => (isMeant(one) ? { ...one, litres_per_person_per_day } : one)));
}

const ownName = (purpose: string) => purpose.replaceAll(' ', '_');

/** The purpose a programme without purposes has is a sentence of words: as a row of the site it needs a name without spaces. */
function ownNames(purposes: SiteFacts['demand']): SiteFacts['demand'] {
  if (purposes.every(({ purpose }) => !purpose.includes(' '))) return purposes;
  return purposes.map((one) => ({ ...one, purpose: ownName(one.purpose) }));
}

/** A gutter, a pipe, an overflow, a stand or the taps of another measure. */
function fitted(site: SiteFacts, { of, id, measure, value }: FittingStep): SiteFacts {
  const with_ = { [measure]: value };
  switch (of) {
    case 'gutter':
      return {
        ...site,
        gutters: site.gutters.map((one) => (one.gutterId === id ? guttered(one, measure, value) : one)),
      };
    case 'downpipe':
      return { ...site, downpipes: site.downpipes.map((one) => (one.downpipeId === id ? { ...one, ...with_ } : one)) };
    case 'tank':
      return { ...site, tanks: site.tanks.map((one) => (one.tankId === id ? { ...one, ...with_ } : one)) };
    case 'site':
      return { ...site, ...with_ };
  }
}

/** A wider gutter is one of the same shape: its depth and its sole grow with it. */
function guttered(gutter: GutterFacts, measure: FittingStep['measure'], value: number): GutterFacts {
  const changed = { ...gutter, [measure]: value };
  if (measure !== 'width_mm' || gutter.width_mm === null) return changed;
  const times = value / gutter.width_mm;
  const grown = (name: 'depth_mm' | 'baseWidth_mm') => {
    const before = gutter[name];
    return before === null ? null : within(name, before * times);
  };
  return { ...changed, depth_mm: grown('depth_mm'), baseWidth_mm: grown('baseWidth_mm') };
}

function withRoof(site: SiteFacts, roofId: string, change: (roof: RoofFacts) => RoofFacts): SiteFacts {
  return { ...site, roofs: site.roofs.map((roof) => (roof.roofId === roofId ? change(roof) : roof)) };
}

type TankStep = Extract<DraftStep, { kind: 'tank' | 'diameter' | 'overflow' }>;

function withTank(made: Drafted, saved: SiteFacts, step: TankStep): Drafted {
  const { site } = made;
  const before = site.tanks.find(({ tankId }) => tankId === step.tankId);
  if (before === undefined) return made;
  const resized = sized(before, step);
  // Back at the size it is saved with, it is the tank that is saved: its part and what is written on it are true again.
  const there = made.bought.has(step.tankId) ? undefined : saved.tanks.find(({ tankId }) => tankId === step.tankId);
  const tank = there !== undefined && isSameSize(resized, sizedAs(there)) ? { ...resized, ...sizeOf(there) } : resized;
  const bought = new Map(made.bought);
  if (tank.partVolume_L === null) bought.delete(step.tankId);
  return { ...made, bought, site: { ...site, tanks: site.tanks.map((one) => (one === before ? tank : one)) } };
}

/**
 * A tank of another size: where its heights are measured its rim moves, else the volume that is written on it. A volume that is neither
 * measured nor of the part any more is not told.
 */
function sized(tank: TankFacts, step: TankStep): TankFacts {
  const untold = { partId: null, partVolume_L: null, partMass_kg: null, nominal_L: null };
  if (step.kind === 'tank') {
    const wanted_m = overflowFor_m(tank, step.volume_L);
    if (wanted_m === null) return { ...tank, ...untold, nominal_L: step.volume_L };
    return { ...tank, ...untold, ...rimAt(tank, within('overflowHeight_m', wanted_m)) };
  }
  const measure = step.kind === 'diameter' ? { diameter_m: step.diameter_m } : rimAt(tank, step.overflowHeight_m);
  const measured = { ...tank, ...measure };
  // With a measure still missing it is judged by what is written on it, as before.
  return overflowFor_m(measured, 0) === null ? measured : { ...measured, ...untold };
}

/** The overflow at another height; the wall above it goes with it. */
function rimAt({ overflowHeight_m, height_m }: TankFacts, moved_m: number | null): Partial<TankFacts> {
  const isKnown = height_m !== null && overflowHeight_m !== null && moved_m !== null;
  const wall = isKnown ? { height_m: within('height_m', height_m + moved_m - overflowHeight_m) } : {};
  return { overflowHeight_m: moved_m, ...wall };
}

/** A saved tank as the steps would write its size. */
function sizedAs(tank: TankFacts): TankFacts {
  if (overflowFor_m(tank, 0) !== null) return tank;
  return { ...tank, nominal_L: tank.nominal_L ?? tank.partVolume_L };
}

const sizeOf = ({
  nominal_L,
  partId,
  partVolume_L,
  partMass_kg,
  diameter_m,
  overflowHeight_m,
  height_m,
}: TankFacts) => ({
  height_m,
  nominal_L,
  partId,
  partVolume_L,
  partMass_kg,
  diameter_m,
  overflowHeight_m,
});

function isSameSize(one: TankFacts, other: TankFacts): boolean {
  if (one.diameter_m !== other.diameter_m) return false;
  const isMeasured = overflowFor_m(one, 0) !== null;
  if (!isMeasured) return one.nominal_L === other.nominal_L && one.overflowHeight_m === other.overflowHeight_m;
  const rounded_m = other.overflowHeight_m === null ? null : within('overflowHeight_m', other.overflowHeight_m);
  return one.overflowHeight_m === other.overflowHeight_m || one.overflowHeight_m === rounded_m;
}

/** The changes of a remedy, made one after the other as the engine makes them. One that has nothing to change changes nothing. */
function remedied(before: Drafted, changes: readonly RemedyChange[], settings: DesignSettings): Drafted {
  let made = before;
  for (const change of changes) {
    const found = changedSite(made.site, [change], settings);
    if (found === null) continue;
    const standing = made.site;
    const others_people = made.others_people + (change.kind === 'people' ? change.others_people : 0);
    made = { ...made, site: { ...found.site, demand: ownNames(found.site.demand) }, others_people };
    if (change.kind === 'secondTank' || change.kind === 'largerTank') made = tankNamed(made, standing, change);
  }
  return made;
}

/**
 * Gives a bought tank the name it is kept under: one in the place of others that of the first of these, so that its row stays where it is;
 * one beside them the next number.
 */
function tankNamed(made: Drafted, before: SiteFacts, change: TankChange): Drafted {
  const known = new Set(before.tanks.map(({ tankId }) => tankId));
  const bought = new Map(made.bought);
  let { site } = made;
  for (const { tankId } of site.tanks) {
    if (known.has(tankId)) continue;
    const name = change.kind === 'largerTank' ? (replaced(before, change) ?? nextTankId(before)) : nextTankId(site);
    site = renamed(site, tankId, name);
    bought.set(name, change.partId);
  }
  for (const tankId of bought.keys()) if (!site.tanks.some((tank) => tank.tankId === tankId)) bought.delete(tankId);
  return { ...made, site, bought };
}

/** The first of the tanks a larger one stands for. */
function replaced({ tanks }: SiteFacts, { tankId }: { readonly tankId: string | null }): string | undefined {
  if (tankId === null) return tanks[0]?.tankId;
  return tankGroups(tanks).find((group) => group.tankIds.includes(tankId))?.tanks[0]?.tankId;
}

function renamed(site: SiteFacts, tankId: string, name: string): SiteFacts {
  const to = <T extends string | null>(id: T) => (id === tankId ? name : id);
  return {
    ...site,
    tanks: site.tanks.map((tank) => ({ ...tank, tankId: to(tank.tankId), joinedTo: to(tank.joinedTo) })),
    roofs: site.roofs.map((roof) => ({ ...roof, tankId: to(roof.tankId) })),
    pipes: site.pipes.map((pipe) => ({ ...pipe, tankId: to(pipe.tankId) })),
  };
}

/** The next number behind the letters that tanks begin with. */
function nextTankId({ tanks }: SiteFacts): string {
  return nextId(
    tanks.map(({ tankId }) => tankId),
    'T',
  );
}
