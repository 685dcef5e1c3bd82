import { defaultSettings, isoDay, noRollout, readIsoDay, readyWays, type WayClosure } from '@eavewell/engine';
import type { SheetCrew } from '@eavewell/tables';
import { english } from '@eavewell/words';
import { describe, expect, it } from 'vitest';
import { stripsOf } from './rolloutStrips.ts';

const day = (text: string) => readIsoDay(text)!;
const today = day('2027-06-10');
const horizon_days = 60;

const closure = (closureId: string, rest: Partial<WayClosure>): WayClosure => ({
  ...{ closureId, wayId: 'w', weatherArea: null, months: [], from: null, to: null, slower_factor: null, reason: null },
  ...rest,
});

const way = {
  ...{
    wayId: 'w',
    name: 'Tavilo',
    from: 'a',
    to: 'b',
    mode: 'river' as const,
    length_km: 10,
    there_h: 2,
    back_h: null,
  },
  ...{ limit_kg: null, limit_L: null, longest_m: null, porters_count: 0, fuel_L_per_km: null },
  ...{ weatherArea: null, riverGaugeId: 'G' },
};

/** A level on each day of eleven years: too low for the boat from May to July. */
const riverLevels = Array.from({ length: 4018 }, (_, nth) => {
  const at = day('2016-01-01') + nth;
  const isLow = ['05', '06', '07'].includes(isoDay(at).slice(5, 7));
  return { riverGaugeId: 'G', day: at, level_m: isLow ? 0.2 : 2 };
});

/** The strip of one way of a plan made on 10 June, a trip of which left on that day. */
function stripWith(closures: readonly WayClosure[], left = '2027-06-01', hasLevels = false) {
  const place = (placeId: string) => ({
    ...{ placeId, name: placeId, kind: null, latitude_deg: null, longitude_deg: null, changeOver_h: null },
    ...{ maySleep: true, filledFrom: null, filledBy: null },
  });
  const rollout = {
    ...{ ...noRollout, places: ['a', 'b'].map(place), ways: [way], closures: [...closures] },
    riverLevels: hasLevels ? riverLevels : [],
    wayLevels: [{ wayId: 'w', carrierId: 'boat', least_m: 1, greatest_m: null }],
    crews: [{ carrierIds: ['boat'] }],
  };
  const kit = { carriers: [{ carrierId: 'boat', mode: 'boat' }] };
  const days = { firstDay: today, horizon_days };
  const facts = { rollout, kit, settings: defaultSettings } as never;
  const asked = { ...rollout, ...kit, ...days, siteIds: [], settings: defaultSettings } as never;
  const told = {
    ...{ ways: readyWays(asked), waysWanted: new Set(['w']), facts, problem: days as never, today, language: english },
    nameOf: new Map(),
  };
  const crews = [{ trips: [{ leaves: left, legs: [] }] }] as unknown as readonly SheetCrew[];
  return stripsOf(told, crews)[0];
}

const spansWith = (...given: Parameters<typeof stripWith>) =>
  stripWith(...given)?.spans.map(({ from, to, kind, isToGuessed }) => [from, to, kind, isToGuessed]);

describe('strips of ways that close', () => {
  it('have what was closed or slower since the first trip left, not from today alone', () => {
    const season = closure('S', { months: [6], slower_factor: 2 });
    expect(spansWith([season])).toEqual([['2027-06-01', '2027-06-30', 'slower', false]]);
    expect(spansWith([season], '2027-05-20')).toEqual([['2027-06-01', '2027-06-30', 'slower', false]]);
    const past = closure('P', { from: day('2027-05-25'), to: day('2027-06-03') });
    expect(spansWith([past], '2027-05-20')).toEqual([['2027-05-25', '2027-06-03', 'closed', false]]);
  });

  it('call a last day a guess where the way opens by it', () => {
    const guess = { from: day('2027-06-05'), to: day('2027-06-20'), isToGuessed: true };
    expect(spansWith([closure('C', guess)])).toEqual([['2027-06-05', '2027-06-20', 'closed', true]]);
    expect(spansWith([closure('C', { ...guess, isToGuessed: false })])).toEqual([
      ['2027-06-05', '2027-06-20', 'closed', false],
    ]);
    // Still slower afterwards: it opens all the same.
    expect(spansWith([closure('C', guess), closure('S', { months: [6], slower_factor: 2 })])).toEqual([
      ['2027-06-01', '2027-06-04', 'slower', false],
      ['2027-06-05', '2027-06-20', 'closed', true],
      ['2027-06-21', '2027-06-30', 'slower', false],
    ]);
  });

  it('do not where something else keeps it closed, whichever stands first', () => {
    const guess = closure('C', { from: day('2027-06-05'), to: day('2027-06-20'), isToGuessed: true });
    const longer = closure('L', { from: day('2027-06-15'), to: day('2027-06-25') });
    for (const both of [
      [guess, longer],
      [longer, guess],
    ])
      expect(spansWith(both)).toEqual([['2027-06-05', '2027-06-25', 'closed', false]]);
    const both = [guess, closure('B', { from: day('2027-06-10'), to: day('2027-06-20') })];
    expect(spansWith(both)).toEqual([['2027-06-05', '2027-06-20', 'closed', true]]);
  });

  it('tell of levels from the plan on, with the share of years of past weeks beside', () => {
    expect(spansWith([], '2027-05-10', true)?.map((span) => span.slice(0, 3))).toEqual([
      // Of the week from 30 July to 5 August two days in seven are too low: open on fewer than the settings ask for.
      ['2027-06-10', '2027-08-05', 'tooLow'],
    ]);
    const weeks = stripWith([], '2027-05-10', true)!.weeks;
    expect(weeks.slice(0, 2)).toEqual([
      { from: '2027-05-10', closed_fraction: 1 },
      { from: '2027-05-17', closed_fraction: 1 },
    ]);
  });
});
