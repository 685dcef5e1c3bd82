import {
  type DesignSettings,
  type DrainageFinding,
  type HeadFinding,
  type SafetyFinding,
  type SiteFacts,
  type SourceDaysOfBody,
  type StandGate,
  type StationVerdict,
  tankGroups,
} from '../kernel/index.ts';
import {
  askedByPeople_L_per_day,
  cupOf,
  gravityHead_m,
  gutteredAreas_m2,
  safetyOf,
  standGateOf,
  verdictWithDoubts,
  withTestsRead,
  withUnitHead,
  worstOf,
} from '../siteStations.ts';
import { siteUntilToday } from '../siteUntilToday.ts';
import { drainageFinding, stormFlows_L_per_s } from '../water/drainage/index.ts';
import { headVerdicts } from '../water/head/index.ts';
import { isSafetyJudged } from '../water/safety/index.ts';
import { settlingFindings } from '../water/settling/index.ts';
import { standFindings } from '../water/stand/index.ts';
import { treatmentFindings } from '../water/treatment/index.ts';
import type { RemedyCase } from './remedyCase.ts';
import type { StationBeside } from './stationsBeside.ts';

/** What gutters and pipes of a site come to with this and that changed. */
export type DrainageTried = Pick<DrainageFinding, 'verdict' | 'parts' | 'cappedBy'>;
export type HeadTried = Pick<HeadFinding, 'tankIds' | 'verdict' | 'cappedBy'>;

/** The other stations of a changed site, each judged when it is asked for. */
export interface OthersTried {
  readonly drainage: DrainageTried | null;
  readonly head: readonly HeadTried[];
  readonly standGate: StandGate;
  readonly verdicts: Readonly<Record<StationBeside, StationVerdict>>;
}

/** How a site judges its other stations. */
export type JudgeOthers = (
  site: SiteFacts,
  demandHighest_L_per_day: ReadonlyMap<string, number>,
  sourceDays: SourceDaysAsked,
) => OthersTried;

/** On how many days each body of water of a changed site leaves people to the second source; asked only where that bears on what is drunk. Null: not known. */
export type SourceDaysAsked = () => readonly SourceDaysOfBody[] | null;

/**
 * A judge of the other stations of one site, whatever is changed there: without working, without looking for parts, and once for all
 * changes that leave a station the same facts.
 */
// long: a judge for each station beside, one after another, with what each hangs on
export function judgeOthers({ programme, gauge }: RemedyCase): JudgeOthers {
  const { settings, today = null } = programme;
  const storm = gauge?.storm ?? null;
  const drainage = keptBy((site: SiteFacts) => drainageFinding({ site, storm, parts: [], settings }).finding);
  const head = keptBy((site: SiteFacts) => headVerdicts({ site, parts: [], settings: withUnitHead(site, settings) }));
  const stand = keptBy((site: SiteFacts) => worstOf(standFindings({ site, settings, today }).finding));
  const settling = keptBy((site: SiteFacts, demandHighest_L_per_day: ReadonlyMap<string, number>) => {
    const stormFlow_L_per_s = stormFlows_L_per_s({ site, storm, settings });
    const beside = { demandHighest_L_per_day, gutteredArea_m2: gutteredAreas_m2(site) };
    return worstOf(settlingFindings({ site, stormFlow_L_per_s, ...beside, settings }).finding);
  });
  const treatmentBy = (by: DesignSettings) =>
    keptBy((site: SiteFacts, demand_L_per_day: ReadonlyMap<string, number>) => {
      const beside = {
        demandHighest_L_per_day: askedByPeople_L_per_day(site, byBody(site, demand_L_per_day)),
        gravityHead_m: gravityHead_m(headOf(site)),
      };
      return treatmentFindings({ site: siteUntilToday(site, today).site, ...beside, settings: by }).finding ?? [];
    });
  const treatment = treatmentBy(settings);
  const tests = treatmentBy(withTestsRead(settings));
  const treated = (site: SiteFacts, demand_L_per_day: ReadonlyMap<string, number>) =>
    treatment(treatedKey(site, demand_L_per_day), site, demand_L_per_day);
  const tested = (site: SiteFacts, demand_L_per_day: ReadonlyMap<string, number>) =>
    settings.judgeTreatment === 'never'
      ? tests(treatedKey(site, demand_L_per_day), site, demand_L_per_day)
      : treated(site, demand_L_per_day);
  const treatedKey = ({ tanks, pipes }: SiteFacts, demand_L_per_day: ReadonlyMap<string, number>) =>
    `${textOf([tanks, pipes], withoutUnlooked)}${JSON.stringify([...demand_L_per_day])}`;
  // Of all that is changed, a second source, the days it is drunk on, and what the units pass alone have a say in what people drink.
  const known = new Map<string, Pick<SafetyFinding, 'verdict' | 'reasons'> | null>();
  const safety = (site: SiteFacts, demand_L_per_day: ReadonlyMap<string, number>, sourceDays: SourceDaysAsked) => {
    const isOfSource = site.secondSource !== null && isSafetyJudged(site, settings);
    const days = isOfSource ? sourceDays() : null;
    const key = `${JSON.stringify([site.secondSource, days])}${treatedKey(site, demand_L_per_day)}`;
    const found = known.get(key);
    if (found !== undefined) return found;
    const until = siteUntilToday(site, today).site;
    const { finding } = safetyOf(until, settings, tested(site, demand_L_per_day), days, today);
    known.set(key, finding);
    return finding;
  };
  const headOf = (site: SiteFacts) =>
    head(textOf([site.tanks, site.pipes], withoutUnlooked), site, new Map<string, number>());
  return (site, demandHighest_L_per_day, sourceDays) => {
    const { roofs, gutters, downpipes, tanks } = site;
    const drainageTried = () =>
      drainage(textOf([roofs, gutters, downpipes, tanks], withoutUnlooked), site, demandHighest_L_per_day);
    const headTried = () => headOf(site);
    const demandKey = () => JSON.stringify([...demandHighest_L_per_day]);
    const settled = () => settling(`${textOf([roofs, tanks], whole)}${demandKey()}`, site, demandHighest_L_per_day);
    return {
      get drainage() {
        return drainageTried();
      },
      get head() {
        return headTried() ?? [];
      },
      get standGate() {
        return standGateOf(site, today);
      },
      verdicts: {
        get gutter() {
          return verdictWithDoubts('drainage', drainageTried()?.verdict ?? 'notJudged', site, settings);
        },
        get settling() {
          return verdictWithDoubts('settling', settled(), site, settings);
        },
        get stand() {
          const found = stand(textOf([tanks], whole), site, demandHighest_L_per_day);
          return verdictWithDoubts('stand', found, site, settings);
        },
        get treatmentUnit() {
          return verdictWithDoubts('treatment', worstOf(treated(site, demandHighest_L_per_day)), site, settings);
        },
        get cup() {
          return cupOf(site, settings, safety(site, demandHighest_L_per_day, sourceDays));
        },
        get tap() {
          return verdictWithDoubts('head', worstOf(headTried()), site, settings);
        },
      },
    };
  };
}

/** What is asked of each body of water, once: tanks joined at the foot are named each with all of it. */
function byBody({ tanks }: SiteFacts, byTank_L_per_day: ReadonlyMap<string, number>): ReadonlyMap<string, number> {
  return new Map(
    tankGroups(tanks).flatMap(({ tankIds }) => {
      const id = tankIds.find((one) => byTank_L_per_day.has(one));
      return id === undefined ? [] : [[id, byTank_L_per_day.get(id)!] as const];
    }),
  );
}

type Judge<F> = (site: SiteFacts, demandHighest_L_per_day: ReadonlyMap<string, number>) => F;

/** The same judge, asked once for each key. */
function keptBy<F>(judge: Judge<F>): (key: string, ...asked: Parameters<Judge<F>>) => F {
  const known = new Map<string, F>();
  return (key, ...asked) => {
    const found = known.get(key);
    if (found !== undefined) return found;
    const made = judge(...asked);
    known.set(key, made);
    return made;
  };
}

/** Which facts of a row a station is judged by, and their text by row, since most rows stay as they are. */
export interface RowTexts {
  readonly kept: WeakMap<object, string>;
  textOf(row: object): string;
}

/** Facts of a roof or a tank that no gutter, overflow or pipe is judged by. */
const unlooked: ReadonlySet<string> = new Set([
  'diverter',
  'partId',
  'partVolume_L',
  'nominal_L',
  'emptyMass_kg',
  'partMass_kg',
]);

/** All that gutters, overflows and pipes are judged by. */
export const withoutUnlooked: RowTexts = {
  kept: new WeakMap(),
  textOf: (row) => JSON.stringify(row, (key, value: unknown) => (unlooked.has(key) ? undefined : value)),
};

const whole: RowTexts = { kept: new WeakMap(), textOf: (row) => JSON.stringify(row) };

/** These tables of a site as a text. */
export function textOf(tables: readonly (readonly object[])[], { kept, textOf: write }: RowTexts): string {
  return tables
    .map((rows) =>
      rows
        .map((row) => {
          const known = kept.get(row);
          if (known !== undefined) return known;
          const made = write(row);
          kept.set(row, made);
          return made;
        })
        .join(),
    )
    .join('|');
}
