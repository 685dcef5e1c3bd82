import { loadAppLanguage } from '@eavewell/words/app';
import { expect, it } from 'vitest';
import type { SiteEntry } from './overview.ts';
import { leadWords, lineWords, stationsWords } from './rowWords.ts';

const stations = {
  roof: 'notJudged',
  gutter: 'short',
  settling: 'holds',
  storage: 'holds',
  stand: 'unknown',
  treatmentUnit: 'notJudged',
  tap: 'notJudged',
  cup: 'notJudged',
} as const;

const judged: SiteEntry = {
  ...{ key: 'S1', siteId: 'S1', name: 'Tarn', area: null, siteClass: null, people: 40, design_people: null },
  ...{
    latitude_deg: null,
    longitude_deg: null,
    verdict: 'short',
    stations,
    finding: 'Enough water.',
    withheldBy: null,
  },
  ...{
    remedy: null,
    notMended: null,
    figures: null,
    target: null,
    standGate: 'closed',
    hasStorm: true,
    isNotToDrink: false,
  },
  decides: {
    ...{ station: 'gutter', figure: 'downpipe', id: 'D1', value: 3.4, range: { low: 3, high: 3.9 } },
    ...{ limit: 2.05, unit: 'L/s' },
  },
};

it('a site whose gutter is its worst station is told by what the storm brings, not by its tank', async () => {
  const words = await loadAppLanguage('en');
  expect(`${leadWords(judged, words)} ${lineWords(judged, true, words)}`).toBe(
    'gutter short: downpipe D1: 3.4 L a second in the storm (3 to 3.9), it carries 2.05 L a second',
  );
  const plain = { ...judged, decides: { ...judged.decides!, range: null } };
  expect(lineWords(plain, true, words)).toBe('downpipe D1: 3.4 L a second in the storm, it carries 2.05 L a second');
});

it('a row says first that its water must not be drunk, whatever station it is about', async () => {
  const words = await loadAppLanguage('en');
  const site = { ...judged, stations: { ...stations, cup: 'short' as const }, isNotToDrink: true };
  expect(leadWords(site, words)).toBe('Do not drink. gutter short:');
  const germs = {
    station: 'cup',
    figure: 'germs',
    id: 'W2',
    value: 23,
    range: null,
    limit: null,
    unit: '1/100mL',
  } as const;
  const own = { ...site, stations: { ...site.stations, gutter: 'holds' as const }, decides: germs };
  expect(`${leadWords(own, words)} ${lineWords(own, true, words)}`).toMatch(
    /^cup short: do not drink: E. coli in sample W2/,
  );
});

it('head that is missing is told as missing, not as less than nothing', async () => {
  const words = await loadAppLanguage('en');
  const decides: SiteEntry['decides'] = {
    ...{ station: 'tap', figure: 'headLeft', id: 'T1', value: -1.2, range: null, limit: null, unit: 'm' },
  };
  const site = { ...judged, stations: { ...stations, gutter: 'holds' as const, tap: 'short' as const }, decides };
  expect(`${leadWords(site, words)} ${lineWords(site, true, words)}`).toBe(
    'tap short: T1: 1.2 m of head missing at the tap',
  );
});

it('a treatment unit is told by its hours, the cup by what a sample held or by healthy years lost', async () => {
  const words = await loadAppLanguage('en');
  const all = { roof: 'notJudged', gutter: 'holds', settling: 'holds', storage: 'holds', stand: 'holds' } as const;
  const line = (decides: NonNullable<SiteEntry['decides']>) => {
    const own = { treatmentUnit: 'holds', tap: 'holds', cup: 'holds', [decides.station]: 'short' } as const;
    const site: SiteEntry = { ...judged, stations: { ...all, ...own }, decides };
    return `${leadWords(site, words)} ${lineWords(site, true, words)}`;
  };
  const none = { range: null, limit: null };
  expect(
    line({ ...none, station: 'treatmentUnit', figure: 'hoursNeeded', id: 'U1', value: 9.5, limit: 8, unit: 'h' }),
  ).toBe('unit short: U1: 9.5 hours of pumping a day, target 8 hours');
  expect(line({ ...none, station: 'cup', figure: 'germs', id: 'W2', value: 23, unit: '1/100mL' })).toBe(
    'cup short: do not drink: E. coli in sample W2, 23 in 100 mL',
  );
  const unit = 'DALY/million/year';
  expect(line({ ...none, station: 'cup', figure: 'lostYears', id: 'rotavirus', value: 3.5, limit: 1, unit })).toBe(
    'cup short: viruses: 3.5 healthy years lost a year per million people, target 1 healthy years lost a year per million people',
  );
});

it('a station that is unknown is told by what is missing there', async () => {
  const words = await loadAppLanguage('en');
  const site: SiteEntry = {
    ...judged,
    ...{ verdict: 'unknown', stations: { ...stations, gutter: 'holds' }, decides: null },
    withheldBy: 'The ground under T1 is not known.',
  };
  expect(`${leadWords(site, words)} ${lineWords(site, true, words)}`).toBe(
    'stand unknown: The ground under T1 is not known.',
  );
});

it('names the stations that are judged, in the order of the water', async () => {
  expect(stationsWords(judged, await loadAppLanguage('en'))).toBe(
    'gutter short, settling tank holds, tank holds, stand unknown',
  );
});
