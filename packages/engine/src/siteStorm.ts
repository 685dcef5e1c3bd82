import {
  type DesignSettings,
  type DesignStorm,
  engineProblem,
  type GaugeFacts,
  type GeoPosition,
  greatCircle_km,
  type Problem,
  type RainRecord,
  type StormTold,
} from './kernel/index.ts';
import { dailyMaxima } from './water/rain/index.ts';
import { designStorm } from './water/storm/index.ts';

/** The storm of a gauge, and what is said of it. */
export interface GaugeStorm extends StormTold {
  readonly storm: DesignStorm | null;
  /** What is wrong with the rows that were given: it is told at the gauge, once. */
  readonly ofRows: readonly Problem[];
}

/** What bears on the sites that use a storm, and is told at each of them; the rest is told at the gauge. */
const toldAtSites: readonly string[] = ['storm.no_intensity', 'storm.from_daily'] satisfies Problem['code'][];

/** How hard does it rain at each gauge? Once a gauge, by its own rows, readings and position alone. */
export function gaugeStorms(
  gauges: readonly GaugeFacts[],
  recordOf: ReadonlyMap<string, RainRecord>,
  settings: DesignSettings,
): ReadonlyMap<string, GaugeStorm> {
  return new Map(
    gauges.map((gauge) => {
      const record = recordOf.get(gauge.gaugeId);
      const maxima = record ? dailyMaxima(record, settings.missingDays_fraction) : [];
      const { storm, problems, working } = designStorm({ gauge, dailyMaxima: maxima, settings });
      const isOfSites = ({ code }: Problem) => toldAtSites.includes(code);
      const told = problems.filter(isOfSites);
      return [gauge.gaugeId, { storm, problems: told, working, ofRows: problems.filter((one) => !isOfSites(one)) }];
    }),
  );
}

/** Where a storm is wanted: a gauge, or a site without one. */
type Here = Pick<GaugeFacts, 'latitude_deg' | 'longitude_deg'> & {
  readonly gaugeId: string | null;
  readonly siteId?: string;
};

/**
 * Which storm falls here? That of the gauge itself; where it has none, or the site has no gauge, that of the nearest gauge within reach that has one.
 */
export function stormHere(
  here: Here,
  gauges: readonly GaugeFacts[],
  storms: ReadonlyMap<string, GaugeStorm>,
  { gaugeReach_km, stormReturnPeriod_years }: DesignSettings,
): { readonly storm: DesignStorm | null; readonly stormTold: StormTold } {
  const own = here.gaugeId === null ? undefined : storms.get(here.gaugeId);
  if (own?.storm) return stormOf(own);
  const at = positionOf(here);
  const near = gauges.flatMap((gauge) => {
    const there = gauge.gaugeId === here.gaugeId ? null : positionOf(gauge);
    const found = storms.get(gauge.gaugeId);
    if (!at || !there || !found?.storm) return [];
    return [{ gaugeId: gauge.gaugeId, found, distance_km: greatCircle_km(at, there) }];
  });
  const [nearest] = near
    .filter(({ distance_km }) => distance_km <= gaugeReach_km)
    .sort((a, b) => a.distance_km - b.distance_km || (a.gaugeId < b.gaugeId ? -1 : 1));
  const { gaugeId, siteId } = here;
  const place = { ...(gaugeId === null ? {} : { gaugeId }), ...(siteId === undefined ? {} : { siteId }) };
  if (!nearest)
    return stormOf(
      own ?? {
        storm: null,
        problems: [engineProblem('storm.no_intensity', place, { returnPeriod_years: stormReturnPeriod_years })],
        working: [],
      },
    );
  const { found, distance_km } = nearest;
  const facts = { other: nearest.gaugeId, distance_km };
  return stormOf({ ...found, problems: [engineProblem('storm.other_gauge', place, facts), ...found.problems] });
}

const stormOf = ({ storm, problems, working }: Omit<GaugeStorm, 'ofRows'>) => ({
  storm,
  stormTold: { problems, working },
});

function positionOf({ latitude_deg, longitude_deg }: Pick<Here, 'latitude_deg' | 'longitude_deg'>): GeoPosition | null {
  return latitude_deg === null || longitude_deg === null ? null : { latitude_deg, longitude_deg };
}
