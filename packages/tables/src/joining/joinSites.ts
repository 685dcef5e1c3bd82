import {
  type DemandPurpose,
  type DesignSettings,
  type DiverterFacts,
  type DownpipeFacts,
  type GutterFacts,
  noTreatment,
  type PipeFacts,
  type Place,
  type PresenceCalendar,
  type RoofFacts,
  type SecondSourceFacts,
  type SiteFacts,
  type SiteSafetyFacts,
  type TankFacts,
  type Target,
} from '@eavewell/engine';
import { downpipeOf, gutterOf, pipeOf, roofOf, tankOf } from './factsOfRows.ts';
import { type Doubts, noDoubtsBeside, together } from './findDoubts.ts';
import { calendarsById, sourcesById, targetsByClass } from './namedBySites.ts';
import { SafetyBySite } from './safetyBySite.ts';
import type { TablesRead } from './tablesRead.ts';
import { TreatmentBySite } from './treatmentBySite.ts';

/** Rows by the site they are about; the programme's own under ''. */
function bySite<R extends { readonly row: number; readonly values: { readonly siteId: string | null } }>(
  name: string,
  rows: readonly R[] | undefined,
  unlinked: ReadonlySet<string>,
): ReadonlyMap<string, readonly R[]> {
  const groups = new Map<string, R[]>();
  for (const row of rows ?? []) {
    if (unlinked.has(`${name} ${row.row}`)) continue;
    const siteId = row.values.siteId ?? '';
    const group = groups.get(siteId);
    if (group) group.push(row);
    else groups.set(siteId, [row]);
  }
  return groups;
}

/** What a site's row names in other tables. */
interface NamedBySite extends Pick<SiteFacts, 'siteId' | 'gaugeId' | 'siteClass'> {
  /** Its rain is that of the gauges within reach. */
  readonly isByDistance: boolean;
  readonly calendarId: string | null;
  readonly secondSourceId: string | null;
  readonly nearSecondSource: string | null;
  readonly ofRow: Pick<SiteSafetyFacts, 'skipping_fraction' | 'daysOff_per_year' | 'altitude_m'>;
}

/** Everything about sites, by site. */
class SiteJoiner {
  private readonly roofs;
  private readonly tanks;
  private readonly demand;
  private readonly diverters;
  private readonly gutters;
  private readonly downpipes;
  private readonly pipes;
  private readonly volumes: ReadonlyMap<string, number | null>;
  private readonly masses: ReadonlyMap<string, number | null>;
  private readonly sources: ReadonlyMap<string, SecondSourceFacts>;
  private readonly calendars: ReadonlyMap<string, PresenceCalendar>;
  private readonly targets: ReadonlyMap<string, Target>;
  readonly treatment: TreatmentBySite;
  readonly safety: SafetyBySite;
  private readonly unlinked: ReadonlySet<string>;
  private readonly doubts: Doubts;

  constructor(tables: TablesRead, unlinked: ReadonlySet<string>, doubts: Doubts, settings: DesignSettings) {
    this.roofs = bySite('roofs', tables.roofs?.rows, unlinked);
    this.tanks = bySite('tanks', tables.tanks?.rows, unlinked);
    this.demand = bySite('demand', tables.demand?.rows, unlinked);
    this.diverters = bySite('diverters', tables.diverters?.rows, unlinked);
    this.gutters = bySite('gutters', tables.gutters?.rows, unlinked);
    this.downpipes = bySite('downpipes', tables.downpipes?.rows, unlinked);
    this.pipes = bySite('pipes', tables.pipes?.rows, unlinked);
    this.masses = new Map((tables.parts?.rows ?? []).map(({ values }) => [values.partId!, values.mass_kg]));
    this.volumes = new Map((tables.parts?.rows ?? []).map(({ values }) => [values.partId!, values.volume_L]));
    this.sources = sourcesById(tables);
    this.calendars = calendarsById(tables);
    this.targets = targetsByClass(tables, settings.target);
    this.treatment = new TreatmentBySite(tables, unlinked);
    this.safety = new SafetyBySite(tables, unlinked);
    this.unlinked = unlinked;
    this.doubts = doubts;
  }

  diverterOf(siteId: string, roofId: string): DiverterFacts | null {
    const row = this.diverters.get(siteId)?.find(({ values }) => values.roofId === roofId);
    if (!row) return null;
    const { firstFlush_mm, chamber_L, drainHole, chamberBore_mm, drainHole_mm } = row.values;
    return { firstFlush_mm, chamber_L, drainHole: drainHole ?? 'open', chamberBore_mm, drainHole_mm };
  }

  roofsOf(siteId: string): readonly RoofFacts[] {
    return (this.roofs.get(siteId) ?? []).map(({ row, values }) => {
      const tankId = this.unlinked.has(`roofs ${row} tankId`) ? null : values.tankId;
      return roofOf(values, tankId, this.diverterOf(siteId, values.roofId!));
    });
  }

  guttersOf(siteId: string): readonly GutterFacts[] {
    return (this.gutters.get(siteId) ?? []).map(({ values }) => gutterOf(values));
  }

  downpipesOf(siteId: string): readonly DownpipeFacts[] {
    return (this.downpipes.get(siteId) ?? []).map(({ values }) => downpipeOf(values));
  }

  tanksOf(siteId: string): readonly TankFacts[] {
    return (this.tanks.get(siteId) ?? []).map(({ row, values }) => {
      const partId = this.unlinked.has(`tanks ${row} partId`) ? null : values.partId;
      const part = {
        partId,
        partVolume_L: partId === null ? null : (this.volumes.get(partId) ?? null),
        partMass_kg: partId === null ? null : (this.masses.get(partId) ?? null),
      };
      return tankOf(values, this.unlinked.has(`tanks ${row} joinedTo`) ? null : values.joinedTo, part);
    });
  }

  pipesOf(siteId: string): readonly PipeFacts[] {
    return (this.pipes.get(siteId) ?? []).map(({ row, values }) =>
      pipeOf(values, this.unlinked.has(`pipes ${row} tankId`) ? null : values.tankId),
    );
  }

  hasOwnDemand(siteId: string): boolean {
    return this.demand.has(siteId);
  }

  demandOf(siteId: string): readonly DemandPurpose[] {
    return (this.demand.get(this.hasOwnDemand(siteId) ? siteId : '') ?? []).map(({ values }) => ({
      purpose: values.purpose!,
      litres_per_person_per_day: values.litres_per_person_per_day!,
      judged: values.judged!,
      ...(values.months === null ? {} : { months: values.months }),
    }));
  }

  /** What puts a station in doubt, and the rest of the site not. */
  doubtsBeside({ siteId, gaugeId, isByDistance }: NamedBySite): SiteFacts['doubtsBeside'] {
    const { beside, besideOfAll, stormsByGauge } = this.doubts;
    const own = together(beside.get(siteId) ?? noDoubtsBeside, besideOfAll);
    // A storm by distance may be that of any gauge, as its rain may.
    const ofGauges = isByDistance
      ? [...stormsByGauge].flatMap(([of, places]) => (of === '' ? [] : places))
      : gaugeId === null
        ? []
        : (stormsByGauge.get(gaugeId) ?? []);
    const storms = [...ofGauges, ...(stormsByGauge.get('') ?? [])];
    const hasGutters = this.gutters.has(siteId) || this.downpipes.has(siteId);
    const parts = this.treatment.partsOf(siteId).flatMap((partId) => this.doubts.byPart.get(partId) ?? []);
    return {
      ...own,
      drainage: hasGutters && storms.length > 0 ? [...own.drainage, ...storms] : own.drainage,
      treatment: [...own.treatment, ...parts],
    };
  }

  targetOf(siteClass: string | null): Target | null {
    return siteClass === null ? null : (this.targets.get(siteClass) ?? null);
  }

  sourceOf(secondSourceId: string | null): SecondSourceFacts | null {
    return secondSourceId === null ? null : (this.sources.get(secondSourceId) ?? null);
  }

  presenceOf(calendarId: string | null): PresenceCalendar | null {
    return calendarId === null ? null : (this.calendars.get(calendarId) ?? null);
  }

  /** Rain by distance may take any gauge: one whose row is in doubt puts such a site in doubt. */
  doubtsOf({ siteId, gaugeId, isByDistance, siteClass, calendarId, secondSourceId }: NamedBySite): readonly Place[] {
    const { bySite: own, byPart, byGauge, byClass, byCalendar, bySource, ofAll, ofProgrammeDemand } = this.doubts;
    const parts = new Set((this.tanks.get(siteId) ?? []).map(({ values }) => values.partId ?? ''));
    return [
      ...(own.get(siteId) ?? []),
      ...[...parts].flatMap((partId) => byPart.get(partId) ?? []),
      ...(isByDistance ? [...byGauge.values()].flat() : (byGauge.get(gaugeId ?? '') ?? [])),
      ...(byClass.get(siteClass ?? '') ?? []),
      ...(byCalendar.get(calendarId ?? '') ?? []),
      ...(bySource.get(secondSourceId ?? '') ?? []),
      ...(this.hasOwnDemand(siteId) ? [] : ofProgrammeDemand),
      ...ofAll,
    ];
  }
}

/** What is said of rationing; null where all three cells are empty. */
function rationFacts(values: {
  readonly rationBelow_fraction: number | null;
  readonly rationedJudged_fraction: number | null;
  readonly rationedOther_fraction: number | null;
}): SiteFacts['ration'] {
  const ration = {
    below_fraction: values.rationBelow_fraction,
    judged_fraction: values.rationedJudged_fraction,
    other_fraction: values.rationedOther_fraction,
  };
  return Object.values(ration).every((share) => share === null) ? null : ration;
}

/** All about a site that stands in other tables than its own row. */
function aroundSite(joiner: SiteJoiner, named: NamedBySite) {
  const { siteId, siteClass } = named;
  return {
    secondSource: joiner.sourceOf(named.secondSourceId),
    nearSecondSource: joiner.sourceOf(named.nearSecondSource),
    presence: joiner.presenceOf(named.calendarId),
    siteClass,
    target: joiner.targetOf(siteClass),
    roofs: joiner.roofsOf(siteId),
    gutters: joiner.guttersOf(siteId),
    downpipes: joiner.downpipesOf(siteId),
    tanks: joiner.tanksOf(siteId),
    pipes: joiner.pipesOf(siteId),
    demand: joiner.demandOf(siteId),
    safety: { ...joiner.safety.of(siteId), ...named.ofRow },
    treatment: joiner.treatment.of(siteId) ?? noTreatment,
    doubts: joiner.doubtsOf(named),
    doubtsBeside: joiner.doubtsBeside(named),
  };
}

/** What the row of a site would name that could not be used. */
const nothingNamed = {
  gaugeId: null,
  isByDistance: false,
  siteClass: null,
  calendarId: null,
  secondSourceId: null,
  nearSecondSource: null,
  ofRow: { skipping_fraction: null, daysOff_per_year: null, altitude_m: null },
} as const;

/** Of a site whose row could not be used, all that a row would say. */
const unknown = {
  people: null,
  peopleCountedOn: null,
  households_count: null,
  growthFraction_per_year: null,
  designYear: null,
  latitude_deg: null,
  longitude_deg: null,
  gaugeId: null,
  rainFactor: 1,
  handOverDay: null,
  ration: null,
  taps_count: null,
  tapHeight_m: null,
  unitHeight_m: null,
  hasHandPump: null,
  windSpeed_m_per_s: null,
  windExposure: null,
} as const;

/**
 * What is the engine told of each site? Its own row with its roofs, gutters, downpipes, diverters, tanks and demand; the programme's demand where it
 * has none; and the places that put it in doubt. A site whose row could not be used still stands, with nothing known of it.
 *
 * @param tables - the tables as they were read
 * @param unlinked - rows and cells whose links lead nowhere
 * @param doubts - places by what they put in doubt
 * @param settings - the programme's settings
 * @returns the sites, in the order of their table
 * @law a site in the table is in the facts
 * @definition ours
 */
// long: one site, column by column
export function joinSites(
  tables: TablesRead,
  unlinked: ReadonlySet<string>,
  doubts: Doubts,
  settings: DesignSettings,
): readonly SiteFacts[] {
  const joiner = new SiteJoiner(tables, unlinked, doubts, settings);
  const around = (named: NamedBySite) => aroundSite(joiner, named);
  const known = (tables.sites?.rows ?? []).map(({ row, values }) => ({
    row,
    site: {
      siteId: values.siteId!,
      name: values.name ?? values.siteId!,
      latitude_deg: values.latitude_deg,
      longitude_deg: values.longitude_deg,
      people: values.people,
      peopleCountedOn: values.peopleCountedOn,
      households_count: values.households,
      growthFraction_per_year: values.growthFraction_per_year,
      designYear: values.designYear,
      gaugeId: unlinked.has(`sites ${row} gaugeId`) ? null : values.gaugeId,
      rainFactor: values.rainFactor ?? 1,
      handOverDay: values.handOverDay,
      ration: rationFacts(values),
      taps_count: values.taps,
      tapHeight_m: values.tapHeight_m,
      unitHeight_m: values.unitHeight_m,
      hasHandPump: values.handPump,
      windSpeed_m_per_s: values.windSpeed_m_per_s,
      windExposure: values.windExposure,
      ...around({
        siteId: values.siteId!,
        gaugeId: values.gaugeId,
        isByDistance: values.gaugeId === null && values.latitude_deg !== null && values.longitude_deg !== null,
        ofRow: {
          skipping_fraction: values.skipping_fraction,
          daysOff_per_year: values.daysOff_per_year,
          altitude_m: values.altitude_m,
        },
        siteClass: values.siteClass,
        calendarId: values.presenceCalendar,
        secondSourceId: values.secondSourceId,
        nearSecondSource: values.nearSecondSource,
      }),
    },
  }));
  const ids = new Set(known.map(({ site }) => site.siteId));
  const lost = (tables.sites?.lost ?? []).flatMap(({ row, keys }) => {
    const siteId = keys['siteId'];
    if (siteId === undefined || ids.has(siteId)) return [];
    ids.add(siteId);
    return [{ row, site: { siteId, name: siteId, ...unknown, ...around({ siteId, ...nothingNamed }) } }];
  });
  return [...known, ...lost].sort((a, b) => a.row - b.row).map(({ site }) => site);
}
