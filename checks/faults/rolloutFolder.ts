import { readIsoDay } from '@eavewell/engine';
import type { ProgrammeRead } from '@eavewell/formats';
import { expect } from 'vitest';
import { type Files, good } from './folder.ts';

export const lines = (...rows: readonly string[]) => `${rows.join('\n')}\n`;
export const day = (text: string) => readIsoDay(text)!;
export const tenDays = Array.from(
  { length: 10 },
  (_, i) => `R-tarn,2020-03-${String(i + 1).padStart(2, '0')},${1 + i / 10}`,
);

/** The good folder with everything that a rollout is planned from, and no fault. Every place and name is invented. */
export const sound: Files = {
  ...good,
  'places.csv': lines(
    'placeId,name,kind,latitude_deg,longitude_deg,changeOver_h,maySleep,filledFrom,filledBy',
    'store,Harbour store,store,-8.5,125.2,,,,',
    'shed,Tarn shed,store,-8.52,125.22,0.5,no,store,truck',
    'jetty,Tarn jetty,landing,-8.52,125.24,,,,',
  ),
  'ways.csv': lines(
    'wayId,name,from,to,mode,length_km,there_h,back_h,limit_kg,porters,weatherArea,riverGaugeId',
    'W1,Harbour road,store,shed,road,6,,,,,coast,',
    'W2,Shed road,shed,jetty,road,4,,,,,coast,',
    'W3,Tarn river,jetty,S001,river,5,1,1.5,400,,hills,R-tarn',
    'W4,Stone path,S001,S002,foot,10,,,,2,hills,',
    'W5,Ferry,jetty,S003,river,42,6,7,,,,',
  ),
  'carriers.csv': lines(
    'carrierId,name,mode,limit_kg,speed_km_per_h,fuel_L_per_km,cost_per_day,currency,priceDate',
    'truck,Truck,truck,3000,25,0.25,60,USD,2026-02-01',
    'boat,Boat,boat,600,,1.2,45,USD,2026-02-01',
  ),
  'closures.csv': lines(
    'closureId,wayId,weatherArea,months,from,to,slower_factor,reason',
    'C1,W3,,1 to 2,,,,flood',
    'C2,,coast,,2027-03-01,2027-03-20,2,works on the bridge',
  ),
  'riverLevels.csv': lines('riverGaugeId,day,level_m', ...tenDays),
  'wayLevels.csv': lines('wayId,carrierId,least_m,greatest_m', 'W3,boat,0.8,3'),
  'crews.csv': lines(
    'crewId,name,base,store,people,skills,calendarId,restDays,mostDaysAway,from,to,cost_per_day,currency,priceDate,porters',
    'east,East crew,store,,5,roofWork;masonry,feasts,sat;sun,14,2027-01-04,,120,USD,2026-02-01,4',
    'west,West crew,jetty,shed,4,,feasts,sun,,,2028-12-31,,,,',
  ),
  'crewCarriers.csv': lines('crewId,carrierId', 'east,truck', 'east,boat', 'west,boat'),
  'workCalendars.csv': lines(
    'calendarId,from,to,works,reason',
    'feasts,2027-04-12,2027-04-16,no,feast of boats',
    'feasts,2027-06-05,2027-06-06,yes,days made up for',
  ),
  'arrivals.csv': lines(
    'arrivalId,store,partId,quantity,dueOn,slipLow_days,slipLikely_days,slipHigh_days',
    'A1,store,tank-5,12,2027-02-10,0,5,20',
    'A2,store,gutter-4,60,2026-11-02,,,',
  ),
  'carriersAway.csv': lines(
    'awayId,carrierId,count,from,to,reason',
    'B1,boat,,2027-03-08,2027-03-19,engine',
    'B2,truck,1,2027-06-01,,',
  ),
  'plans.csv': lines(
    'planId,name,from,isInForce,timedAt,note',
    'P1,First plan,2027-01-04,yes,2026-12-20T08:00:00Z,',
    'P2,With a second boat,2027-01-04,,2026-12-21T08:00:00Z,asked for by the board',
  ),
  'planTrips.csv': lines(
    'planId,tripId,crewId,order,notBefore,isLocked,leaves,back,leftOn,backOn',
    'P1,T1,west,1,,,2027-02-22,2027-03-05,2027-02-23,2027-03-06',
    'P1,T2,east,1.5,2027-04-01,yes,2027-04-05,2027-04-09,,',
    'P2,T1,east,1,,,,,,',
  ),
  'planStops.csv': lines(
    'planId,siteId,tripId,order,handOver',
    'P1,S001,T1,1,2027-03-01',
    'P1,S002,T2,1,2027-04-08',
    'P2,S002,T1,2,',
    'P2,S001,T1,1,',
  ),
  'sites.csv': lines(
    'siteId,name,latitude_deg,longitude_deg,people,gaugeId,rainFactor,handOverDay,place,weatherArea,readyFrom,finishBy,workMonths,priority_factor,priorityReason,agreedOn,installLow_days,installLikely_days,installHigh_days,skill',
    'S001,Upper Tarn,-8.5,125.25,120,G-east,1.1,2027-03-01,,hills,2027-01-10,2027-09-30,4 to 10,2,clinic without water,2026-08-01,1,2,5,masonry',
    'S002,Lower Tarn,-8.55,125.3,85,G-east,,,,,,,,,,,,,,',
    'S003,Ferry Stones,-8.75,125.5,240,G-west,,2027-05-15,jetty,,,,,,,,,,,',
  ),
  'settings.json':
    '{ "programme": "Tarn water", "target": { "longestDryRun_days": 5 }, "currency": "USD", "rolloutStart": "2027-01-04", "mainStore": "store", "mustHold": "yes" }\n',
};

export const but = (file: string, ...changes: readonly (readonly [from: string, to: string])[]): Files => {
  const text = changes.reduce((before, [from, to]) => {
    expect(before.split(from), from).toHaveLength(2);
    return before.replace(from, () => to);
  }, String(sound[file]));
  return { ...sound, [file]: text };
};

export type Rollout = ProgrammeRead['facts']['rollout'];
export const names = (rollout: Rollout) => {
  const { places, ways, closures, riverLevels, wayLevels, crews, calendars, arrivals, carriersAway, plans } = rollout;
  const trips = plans.flatMap((plan) => plan.trips);
  return {
    ...{ places: places.length, ways: ways.length, closures: closures.length, riverLevels: riverLevels.length },
    ...{ wayLevels: wayLevels.length, crews: crews.length, calendars: calendars.length, arrivals: arrivals.length },
    ...{ carriersAway: carriersAway.length, plans: plans.length, trips: trips.length },
    stops: trips.flatMap(({ stops }) => stops).length,
  };
};
export const all = {
  ...{ places: 3, ways: 5, closures: 2, riverLevels: 10, wayLevels: 1, crews: 2, calendars: 2, arrivals: 2 },
  ...{ carriersAway: 2, plans: 2, trips: 3, stops: 4 },
};

export interface PlantedRollout {
  readonly fault: string;
  readonly files: Files;
  /** Every problem, as `line` writes it. */
  readonly problems: readonly string[];
  readonly notUsed: readonly string[];
  /** How many rows of the rollout are left, where that is not all. */
  readonly left?: Partial<typeof all>;
  readonly shows?: (rollout: Rollout, read: ProgrammeRead) => void;
}
