import type { DemandPurpose, DiverterFacts, Place, RoofFacts, SiteFacts, TankFacts } from '@eavewell/engine';
import type { Doubts } from './findDoubts.ts';
import type { TablesRead } from './tablesRead.ts';

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

/** Everything about sites, by site. */
class SiteJoiner {
  private readonly roofs;
  private readonly tanks;
  private readonly demand;
  private readonly diverters;
  private readonly volumes: ReadonlyMap<string, number | null>;
  private readonly unlinked: ReadonlySet<string>;
  private readonly doubts: Doubts;

  constructor(tables: TablesRead, unlinked: ReadonlySet<string>, doubts: Doubts) {
    this.roofs = bySite('roofs', tables.roofs?.rows, unlinked);
    this.tanks = bySite('tanks', tables.tanks?.rows, unlinked);
    this.demand = bySite('demand', tables.demand?.rows, unlinked);
    this.diverters = bySite('diverters', tables.diverters?.rows, unlinked);
    this.volumes = new Map((tables.parts?.rows ?? []).map(({ values }) => [values.partId!, values.volume_L]));
    this.unlinked = unlinked;
    this.doubts = doubts;
  }

  diverterOf(siteId: string, roofId: string): DiverterFacts | null {
    const row = this.diverters.get(siteId)?.find(({ values }) => values.roofId === roofId);
    if (!row) return null;
    const { firstFlush_mm, chamber_L, drainHole } = row.values;
    return { firstFlush_mm, chamber_L, drainHole: drainHole ?? 'open' };
  }

  roofsOf(siteId: string): readonly RoofFacts[] {
    return (this.roofs.get(siteId) ?? []).map(({ values }) => ({
      roofId: values.roofId!,
      length_m: values.length_m,
      width_m: values.width_m,
      roofPlanArea_m2: values.roofPlanArea_m2,
      material: values.material,
      runoffFraction: values.runoffFraction,
      gutteredFraction: values.gutteredFraction,
      diverter: this.diverterOf(siteId, values.roofId!),
    }));
  }

  tanksOf(siteId: string): readonly TankFacts[] {
    return (this.tanks.get(siteId) ?? []).map(({ row, values }) => {
      const part = this.unlinked.has(`tanks ${row} partId`) ? null : values.partId;
      return {
        tankId: values.tankId!,
        nominal_L: values.nominal_L,
        partVolume_L: part === null ? null : (this.volumes.get(part) ?? null),
        outletHeight_m: values.outletHeight_m,
        overflowHeight_m: values.overflowHeight_m,
        diameter_m: values.diameter_m,
        joinedTo: this.unlinked.has(`tanks ${row} joinedTo`) ? null : values.joinedTo,
      };
    });
  }

  hasOwnDemand(siteId: string): boolean {
    return this.demand.has(siteId);
  }

  demandOf(siteId: string): readonly DemandPurpose[] {
    return (this.demand.get(this.hasOwnDemand(siteId) ? siteId : '') ?? []).map(({ values }) => ({
      purpose: values.purpose!,
      litres_per_person_per_day: values.litres_per_person_per_day!,
      judged: values.judged!,
    }));
  }

  /** Rain by distance may take any gauge: one whose row is in doubt puts such a site in doubt. */
  doubtsOf(siteId: string, gaugeId: string | null, byDistance: boolean): readonly Place[] {
    const { bySite: own, byPart, byGauge, ofAll, ofProgrammeDemand } = this.doubts;
    const parts = new Set((this.tanks.get(siteId) ?? []).map(({ values }) => values.partId ?? ''));
    return [
      ...(own.get(siteId) ?? []),
      ...[...parts].flatMap((partId) => byPart.get(partId) ?? []),
      ...(byDistance ? [...byGauge.values()].flat() : (byGauge.get(gaugeId ?? '') ?? [])),
      ...(this.hasOwnDemand(siteId) ? [] : ofProgrammeDemand),
      ...ofAll,
    ];
  }
}

/**
 * What is the engine told of each site? Its own row with its roofs, diverters, tanks and demand; the programme's demand where it
 * has none; and the places that put it in doubt. A site whose row could not be used still stands, with nothing known of it.
 *
 * @param tables - the tables as they were read
 * @param unlinked - rows and cells whose links lead nowhere
 * @param doubts - places by what they put in doubt
 * @returns the sites, in the order of their table
 * @law a site in the table is in the facts
 * @definition ours
 */
export function joinSites(tables: TablesRead, unlinked: ReadonlySet<string>, doubts: Doubts): readonly SiteFacts[] {
  const joiner = new SiteJoiner(tables, unlinked, doubts);
  const around = (siteId: string, gaugeId: string | null, byDistance: boolean) => ({
    roofs: joiner.roofsOf(siteId),
    tanks: joiner.tanksOf(siteId),
    demand: joiner.demandOf(siteId),
    doubts: joiner.doubtsOf(siteId, gaugeId, byDistance),
  });
  const known = (tables.sites?.rows ?? []).map(({ row, values }) => ({
    row,
    site: {
      siteId: values.siteId!,
      name: values.name ?? values.siteId!,
      latitude_deg: values.latitude_deg,
      longitude_deg: values.longitude_deg,
      people: values.people,
      gaugeId: unlinked.has(`sites ${row} gaugeId`) ? null : values.gaugeId,
      rainFactor: values.rainFactor ?? 1,
      handOverDay: values.handOverDay,
      ...around(
        values.siteId!,
        values.gaugeId,
        values.gaugeId === null && values.latitude_deg !== null && values.longitude_deg !== null,
      ),
    },
  }));
  const ids = new Set(known.map(({ site }) => site.siteId));
  const lost = (tables.sites?.lost ?? []).flatMap(({ row, keys }) => {
    const siteId = keys['siteId'];
    if (siteId === undefined || ids.has(siteId)) return [];
    ids.add(siteId);
    const nowhere = { latitude_deg: null, longitude_deg: null, gaugeId: null };
    const unknown = { ...nowhere, people: null, rainFactor: 1, handOverDay: null };
    return [{ row, site: { siteId, name: siteId, ...unknown, ...around(siteId, null, false) } }];
  });
  return [...known, ...lost].sort((a, b) => a.row - b.row).map(({ site }) => site);
}
