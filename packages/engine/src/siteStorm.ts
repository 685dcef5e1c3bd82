import {
  type DesignSettings,
  type DesignStorm,
  engineProblem,
  type GaugeFacts,
  type GaugeFinding,
  type GeoPosition,
  greatCircle_km,
  type Place,
  type Problem,
  type RainByIntensity,
  type RainRecord,
  type StormTold,
} from './kernel/index.ts';
import { dailyMaxima } from './water/rain/index.ts';
import { designStorm, rainByIntensity } from './water/storm/index.ts';

/** The storm of a gauge, and what is said of it. */
export interface GaugeStorm extends StormTold {
  readonly storm: DesignStorm | null;
  readonly rainByIntensity: RainByIntensity | null;
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
      const ofRows = problems.filter((one) => !isOfSites(one));
      return [
        gauge.gaugeId,
        { storm, problems: told, working, ofRows, rainByIntensity: rainByIntensity(gauge.shortRain) },
      ];
    }),
  );
}

/** Where a storm is wanted: a gauge, or a site without one. */
type Here = Pick<GaugeFacts, 'latitude_deg' | 'longitude_deg'> & {
  readonly gaugeId: string | null;
  readonly siteId?: string;
};

/** The storm of a place, and what bears on the sites that use it. */
type StormHere = Pick<GaugeFinding, 'storm' | 'stormTold' | 'rainByIntensity'>;

/**
 * Which storm falls here? That of the gauge itself; where nothing is said of storms there, or the site has no gauge, that of the nearest gauge within
 * reach that has one. A gauge whose own storm cannot be believed takes no other's: it is to be mended.
 */
export function stormHere(
  here: Here,
  gauges: readonly GaugeFacts[],
  storms: ReadonlyMap<string, GaugeStorm>,
  settings: DesignSettings,
): StormHere {
  const { gaugeId, siteId } = here;
  const place = { ...(gaugeId === null ? {} : { gaugeId }), ...(siteId === undefined ? {} : { siteId }) };
  const own = gaugeId === null ? noStormKnown(place, settings) : (storms.get(gaugeId) ?? noStormKnown(place, settings));
  const isSilent = own.problems.some(({ code }) => code === 'storm.no_intensity');
  const nearest = isSilent ? nearestStorm(here, gauges, storms, settings.gaugeReach_km) : undefined;
  if (!nearest) return stormOf(own);
  const { gaugeId: other, found, distance_km } = nearest;
  const problems = [engineProblem('storm.other_gauge', place, { other, distance_km }), ...found.problems];
  return stormOf({ ...found, problems, rainByIntensity: own.rainByIntensity ?? found.rainByIntensity });
}

function nearestStorm(
  here: Here,
  gauges: readonly GaugeFacts[],
  storms: ReadonlyMap<string, GaugeStorm>,
  reach_km: number,
) {
  const at = positionOf(here);
  const near = gauges.flatMap((gauge) => {
    const there = gauge.gaugeId === here.gaugeId ? null : positionOf(gauge);
    const found = storms.get(gauge.gaugeId);
    if (!at || !there || !found?.storm) return [];
    return [{ gaugeId: gauge.gaugeId, found, distance_km: greatCircle_km(at, there) }];
  });
  return near
    .filter(({ distance_km }) => distance_km <= reach_km)
    .sort((a, b) => a.distance_km - b.distance_km || (a.gaugeId < b.gaugeId ? -1 : 1))[0];
}

type Known = Omit<GaugeStorm, 'ofRows'>;

function noStormKnown(place: Place, { stormReturnPeriod_years: returnPeriod_years }: DesignSettings): Known {
  const problems = [engineProblem('storm.no_intensity', place, { returnPeriod_years })];
  return { storm: null, problems, working: [], rainByIntensity: null };
}

const stormOf = ({ storm, problems, working, rainByIntensity: rain }: Known): StormHere => ({
  storm,
  stormTold: { problems, working },
  rainByIntensity: rain,
});

function positionOf({ latitude_deg, longitude_deg }: Pick<Here, 'latitude_deg' | 'longitude_deg'>): GeoPosition | null {
  return latitude_deg === null || longitude_deg === null ? null : { latitude_deg, longitude_deg };
}
