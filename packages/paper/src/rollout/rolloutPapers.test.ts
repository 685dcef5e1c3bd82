import { type Language, loadPaperLanguage, paperChoices } from '@eavewell/words';
import { describe, expect, it } from 'vitest';
import { contentsOf, textsOf } from '../reading/readBack.testing.ts';
import type { TripOnPaper } from './given.ts';
import { haulsPaper } from './hauls.ts';
import { itineraryPaper } from './itinerary.ts';
import type { RolloutPaper } from './laid.ts';
import { haul, haulByRoad, options, part, roadTrip, trip } from './madeUpTrip.testing.ts';
import { manifestPaper } from './manifest.ts';
import { noticesPaper } from './notices.ts';

const ofBoats = ['lifeVests', 'localSkipperDecides', 'freeboardMark', 'nobodyOnLoad', 'weather', 'noDark'] as const;

function pagesOf(paper: RolloutPaper): readonly string[] {
  if (paper.kind !== 'made') throw new Error(paper.said.join(' '));
  const pages = textsOf(paper.bytes).map((page) => squeezed(page.join('')));
  expect(pages).toHaveLength(paper.pages_count);
  return pages;
}
/** Where lines break and spans end there may be a space or none. */
const squeezed = (text: string) => text.replace(/\s/g, '');

const crew = { programme: trip.programme, plan: trip.plan, crew: trip.crew };
const english = await loadPaperLanguage('en');

/** So much is aboard that the list runs over several pages. */
const large: TripOnPaper = {
  ...trip,
  aboard: trip.trip.stops.flatMap(({ siteId }) =>
    Array.from({ length: 40 }, (_, nth) => part(siteId, `part ${nth} of ${siteId}`, 2, 3, 1)),
  ),
};
/** Of the second leg no way is known: it may go by boat. */
const unknownWay: TripOnPaper = {
  ...roadTrip,
  legs: [...roadTrip.legs.slice(0, 1), { ...roadTrip.legs[1]!, stretches: [] }],
};

describe.each(paperChoices.map(({ code }) => code))('papers of a trip in %s', (code) => {
  const lacked = new Set<string>();
  const language = loadPaperLanguage(code, (key) => lacked.add(key));
  const has = (pages: readonly string[], said: readonly string[]) =>
    pages.map((page) => said.filter((one) => !page.includes(squeezed(one))));
  const nothing = (pages: readonly string[]) => pages.map(() => []);

  it('no page of a boat lacks a caution of boats: manifest, stowing, itinerary', async () => {
    const { say } = await language;
    const said = ofBoats.map((name) => say(`loads.caution.${name}`));
    for (const given of [trip, large, unknownWay]) {
      const pages = pagesOf(manifestPaper(given, await language, options));
      expect(has(pages, said)).toEqual(nothing(pages));
      const days = pagesOf(itineraryPaper({ ...crew, trips: [given, roadTrip] }, await language, options));
      expect(has(days, said)).toEqual(nothing(days));
    }
    expect(pagesOf(manifestPaper(large, await language, options)).length).toBeGreaterThan(4);
  });

  it('no notice lacks those of the work, of drinking, and of boats where the crew comes by river', async () => {
    const { say } = await language;
    const said = [say('rolloutPapers.village_work'), say('pack.caution_drink')];
    const pages = pagesOf(noticesPaper([trip], await language, options));
    expect(pages).toHaveLength(3);
    expect(has(pages, [...said, say('rolloutPapers.village_boat'), say('rolloutPapers.river_low')])).toEqual([
      ...[[], [], []],
    ]);
    const road = pagesOf(noticesPaper([roadTrip], await language, options));
    expect(has(road, [...said, say('rolloutPapers.way_shut')])).toEqual([[], [], []]);
    expect(road.join('')).not.toContain(squeezed(say('rolloutPapers.village_boat')));
  });

  it('a trip by road has the cautions of every load, and neither a boat nor its cautions', async () => {
    const { say } = await language;
    const pages = pagesOf(manifestPaper(roadTrip, await language, options));
    const said = (['lashed', 'dangerApart', 'lifting'] as const).map((name) => say(`loads.caution.${name}`));
    expect(has(pages, said)).toEqual(nothing(pages));
    const all = pages.join('');
    for (const one of [say('loads.caution.lifeVests'), say('rolloutPapers.sign_freeboard'), '9.6'])
      expect(all, one).not.toContain(squeezed(one));
  });

  it('no sheet of goods that are brought lacks a caution of boats, by whatever they are brought', async () => {
    const { say } = await language;
    const said = [...ofBoats, 'lifting' as const].map((name) => say(`loads.caution.${name}`));
    for (const given of [trip, large, roadTrip]) {
      const pages = pagesOf(haulsPaper({ ...given, hauls: [haulByRoad, haul] }, await language, options));
      expect(has(pages, said)).toEqual(nothing(pages));
    }
  });

  it('tells a river from a path, a boat from a truck, and a carrier from porters', async () => {
    const { say } = await language;
    const given = { to: 'A', hours: 'B', limit: '9', name: 'C', trip: 'D' };
    const ways = (['road', 'river', 'foot'] as const).map((mode) => say('rolloutPapers.stretch', { ...given, mode }));
    const limits = (['carrier', 'way', 'porters'] as const).map((kind) =>
      say('rolloutPapers.limit_of', { ...given, kind }),
    );
    const titles = (['yes', 'no'] as const).map((isAfloat) => say('rolloutPapers.manifest', { ...given, isAfloat }));
    expect([ways, limits, titles].map((all) => new Set(all).size)).toEqual([3, 3, 2]);
  });

  it('is said without a word of another language, and every letter has a face', async () => {
    await language;
    lacked.clear();
    const bare: TripOnPaper = { ...trip, aboard: [], carriers: [], fuel_kg: null, crew_kg: null };
    for (const given of [trip, bare]) {
      expect(manifestPaper(given, await language, options).kind).toBe('made');
      expect(itineraryPaper({ ...crew, trips: [given] }, await language, options).kind).toBe('made');
      expect(noticesPaper([given], await language, options).kind).toBe('made');
      const hauls = [haul, haulByRoad, { ...haul, carrier: null, by: null, limit_kg: null }];
      expect(haulsPaper({ ...given, hauls }, await language, options).kind).toBe('made');
    }
    expect(itineraryPaper({ ...crew, trips: [] }, await language, options).kind).toBe('made');
    expect([...lacked]).toEqual([]);
  });
});

describe('the manifest of a boat', () => {
  const said = (given: TripOnPaper, language: Language = english) => pagesOf(manifestPaper(given, language, options));

  it('has the parts by stop, the last first, with what each weighs and how many lift it', () => {
    const all = said(trip).join('');
    const at = ['Stop 3: Vennaro', 'Stop 2: Ruvela', 'Stop 1: Pellanta'].map((one) => all.indexOf(squeezed(one)));
    expect(at).toEqual(at.toSorted((a, b) => a - b));
    expect(at[0]).toBeGreaterThan(0);
    // Four shells of 58 kg; two people lift one.
    expect(all).toContain(squeezed('tank 12,000 L in four shells 4 58 kg 232 kg 2.6 m 2'));
    expect(all).toContain(squeezed('chlorine, drum (chlorine: never with fuel)'));
    expect(all).toContain(squeezed('Chlorine and fuel are both on this list'));
  });

  it('sums parts and fuel against the limit, by hand', () => {
    // A stop's usual parts: 46 + 2 × 9.5 + 18 + 2 × 4.1 + 5 × 6.2 = 122.2 kg, three times; cement 100; tank 232, pipe 11.5, chlorine 12; fuel 82.
    const sum_kg = 3 * 122.2 + 100 + 232 + 11.5 + 12 + 82;
    expect(sum_kg).toBeCloseTo(804.1, 9);
    const all = said(trip).join('');
    expect(all).toContain(squeezed('804 kg parts and fuel; limit 1,600 kg, 795 kg to spare'));
    const heavy = said({ ...trip, fuel_kg: 1000 }).join('');
    // 722.1 + 1000 − 1600 = 122.1.
    expect(heavy).toContain(squeezed('limit 1,600 kg: 122 kg TOO MUCH'));
  });

  it('names what its limit comes from: the boat, a way, or porters', () => {
    expect(said(trip).join('')).toContain(squeezed('The limit of 1,600 kg is what longboat may carry.'));
    const with_kg = (limit_kg: number, limitBy: Partial<NonNullable<TripOnPaper['legs'][number]['limitBy']>>) => {
      const by = {
        wayId: 'W',
        way: 'path to Vennaro',
        mode: 'road',
        carrierId: 'truck',
        isOfWay: false,
        ...limitBy,
      } as const;
      return said({
        ...trip,
        legs: trip.legs.map((one, nth) => (nth === 0 ? { ...one, limit_kg, limitBy: by } : one)),
      }).join('');
    };
    const told = (what: string) => squeezed(`The limit of 900 kg is ${what}.`);
    expect(with_kg(900, { isOfWay: true })).toContain(told('the most that passes on path to Vennaro'));
    expect(with_kg(900, {})).toContain(told('what truck may carry'));
    expect(with_kg(900, { mode: 'foot', carrierId: null })).toContain(told('what porters carry on path to Vennaro'));
    // More than the boat may carry bounds nothing.
    expect(with_kg(1700, { isOfWay: true })).toContain(squeezed('The limit of 1,600 kg is what longboat may carry.'));
    // Where nobody wrote a limit, the sum says so, and names none.
    const carriers = trip.carriers.map((one) => ({ ...one, limit_kg: null }));
    const legs = trip.legs.map((one) => ({ ...one, limit_kg: null, limitBy: null }));
    const none = said({ ...trip, carriers, legs }).join('');
    expect(none).toContain(squeezed('Parts and fuel; no limit is written down: whoever answers for the boat'));
    expect(none).not.toContain(squeezed('The limit of'));
  });

  it('has one room to spare, in figures and in the boat: that of the way where less passes than the boat takes', () => {
    const legs = trip.legs.map((one, nth) => (nth === 0 ? { ...one, limit_kg: 900 } : one));
    const all = said({ ...trip, legs }).join('');
    // The boat takes 1,600 kg, the first way lets 900 kg pass: 900 − 804.1 = 95.9, never rounded up.
    expect(all).toContain(squeezed('limit 900 kg, 95 kg to spare'));
    for (const one of ['795 kg', '796 kg']) expect(all, one).not.toContain(squeezed(one));
  });

  it('tells a freeboard only of figures somebody gave; else it is to be measured and the boat is not to scale', () => {
    // 55 cm with its crew, 35 cm at 1,600 kg: 55 − 20 × 804.1 ÷ 1600 = 44.9 cm, never rounded up.
    const known = said(trip)[0]!;
    for (const one of ['44 cm', 'mark: 25 cm left', '9.6 m']) expect(known, one).toContain(squeezed(one));
    const carriers = trip.carriers.map((one) => ({ ...one, freeboard_m: null, length_m: null }));
    const unknown = said({ ...trip, carriers })[0]!;
    for (const one of ['not to scale; measure the freeboard by hand', 'freeboard when loaded: not known'])
      expect(unknown, one).toContain(squeezed(one));
    expect(unknown).not.toContain('44cm');
    const unweighed = said({ ...trip, aboard: [...trip.aboard, part('S1', 'crate', 1, null, null)] }).join('');
    expect(unweighed).not.toContain('44cm');
    for (const one of ['Lines without a mass: 1', 'at least 804 kg']) expect(unweighed, one).toContain(squeezed(one));
  });

  it('is the same file for the same trip and hour, and names a letter that no face has', () => {
    const bytes = (given: TripOnPaper) => {
      const made = manifestPaper(given, english, options);
      return made.kind === 'made' ? Buffer.from(made.bytes) : null;
    };
    expect(Buffer.compare(bytes(trip)!, bytes(trip)!)).toBe(0);
    const odd = manifestPaper({ ...trip, plan: 'after 雨' }, english, options);
    expect(odd).toMatchObject({ kind: 'lettersMissing', letters: [{ letter: '雨' }] });
  });

  it('from right to left the boat is drawn as it is from left to right', async () => {
    const arabic = manifestPaper(trip, await loadPaperLanguage('ar'), options);
    const plain = manifestPaper(trip, english, options);
    if (arabic.kind !== 'made' || plain.kind !== 'made') throw new Error('not made');
    // The hull, as its path is written: the same on both.
    const hull = (bytes: Uint8Array) => /\n14 84 m\n[^\n]+ [cv]\n/.exec(contentsOf(bytes)[0]!)?.[0];
    expect(hull(plain.bytes)).toBeDefined();
    expect(hull(arabic.bytes)).toBe(hull(plain.bytes));
  });
});

describe('the sheet of goods that are brought before a trip', () => {
  const said = (hauls: TripOnPaper['hauls']) => pagesOf(haulsPaper({ ...trip, hauls }, english, options));

  it('says what is brought by what, when, and for which trip', () => {
    const page = said([haul]).join('');
    expect(page).toContain(squeezed('port to Tavilo Foot'));
    expect(page).toContain(squeezed('leaves 5 June 2026; back 8 June 2026'));
    expect(page).toContain(squeezed('for trip C1-4 of Crew one, which leaves 10 June 2026'));
    expect(page).toContain(squeezed('tank 12,000 L in four shells 4 58 kg 232 kg 2.6 m 2'));
  });

  it('says by which ways it goes, there and back, and those of several runs once, with their days', () => {
    const page = said([haul]).join('');
    // Nine hours down the river and eleven against it.
    expect(page).toContain(squeezed('5 June 2026: port to Tavilo Foot: on the river to Tavilo Foot, 9 hours'));
    expect(page).toContain(squeezed('7 June 2026: Tavilo Foot to port: on the river to port, 11 hours'));
    const three = said([haulByRoad]).join('');
    expect(three).toContain(squeezed('5 June 2026, 6 June 2026: depot to port: by road to port, 2 hours'));
    expect(three.split(squeezed('depot to port: by road'))).toHaveLength(2);
  });

  it('holds parts and fuel against the limit, by hand; of several runs against what all of them take', () => {
    // 3 × 122.2 + 100 + 232 + 11.5 + 12 = 722.1 kg of parts; 40 L of petrol 30 kg; 1,600 − 752.1 = 847.9.
    expect(said([haul]).join('')).toContain(squeezed('limit 1,600 kg: 847 kg to spare'));
    // 120 L 90 kg; three runs of 300 kg: 900 − 812.1 = 87.9.
    const three = said([haulByRoad]).join('');
    expect(three).toContain(squeezed('limit 900 kg: 87 kg to spare'));
    expect(three).toContain(squeezed('3 runs there and back; no run carries more than 300 kg, its fuel among it.'));
    expect(three).not.toContain(squeezed('freeboard when loaded'));
    const tooMuch = said([{ ...haulByRoad, limit_kg: 200 }]).join('');
    // 812.1 − 600.
    expect(tooMuch).toContain(squeezed('limit 600 kg: 212 kg TOO MUCH'));
  });
});

describe('the end of a manifest', () => {
  const pages = (lines: number) =>
    pagesOf(
      manifestPaper(
        { ...trip, aboard: Array.from({ length: lines }, (_, nth) => part('S1', `part ${nth}`, 2, 3, 1)) },
        english,
        options,
      ),
    );

  it('has who signs on one page with the sums, however many lines stand before', () => {
    const counts = Array.from({ length: 16 }, (_, nth) => 12 + 2 * nth);
    const found = counts.map(pages);
    for (const [nth, all] of found.entries()) {
      const signed = all.filter(
        (page) => page.includes(squeezed('boat’s master')) && page.includes('freeboardmeasured'),
      );
      expect(signed, `${counts[nth]} lines`).toHaveLength(1);
      for (const one of ['Parts and fuel; limit', 'The limit of', 'Crew with what they carry'])
        expect(signed[0], `${counts[nth]} lines`).toContain(squeezed(one));
    }
    // Some of them end on a page of their own, others do not.
    expect(new Set(found.map(({ length }) => length)).size).toBeGreaterThan(1);
  });
});

describe('an itinerary and a notice', () => {
  it('tells where a crew is on its way to on days on which nothing begins or ends, and no day of drinking that is not known', () => {
    const [first, ...others] = trip.trip.stops;
    const stops = [{ ...first!, served: null }, ...others];
    const home = { ...trip.legs.at(-1)!, arrives: '2026-06-24' };
    const slow: TripOnPaper = {
      ...{ ...trip, legs: [...trip.legs.slice(0, -1), home], trip: { ...trip.trip, back: '2026-06-24', stops } },
      days: [
        ...trip.days,
        ...['22', '23'].map((day) => ({ day: `2026-06-${day}`, said: [], sleeps: null, siteIds: [] })),
      ],
    };
    const said = pagesOf(itineraryPaper({ ...crew, trips: [slow] }, english, options)).join('');
    expect(said).toContain(squeezed('Hand over Pellanta, 90 people. They drink once the water test is read.'));
    expect(said).not.toContain(squeezed('drink from not known'));
    expect(said.split(squeezed('On the way to Tavilo Foot.'))).toHaveLength(3);
  });

  it('tell each day once, where the load grows less, and where the night is', () => {
    const all = pagesOf(itineraryPaper({ ...crew, trips: [trip] }, english, options)).join('');
    for (const one of [
      'Load at Tavilo Foot: 731 kg',
      'by road to Tavilo landing, 2.5 hours; on the river to Pellanta, 7.2 hours',
      'Night at Tavilo landing',
      // What is left for the two other stops: 2 × 122.2 + 100.
      'Aboard after that: 344 kg',
      'Back at Tavilo Foot',
    ])
      expect(all, one).toContain(squeezed(one));
    expect(all.split(squeezed('Work at'))).toHaveLength(4);
  });

  it('the week is told by its Monday, with how sure the day of water is', () => {
    const [first] = pagesOf(noticesPaper([trip], english, options));
    // 11 June 2026 is a Thursday.
    for (const one of [
      'The crew comes in the week of 8 June 2026',
      'As likely as not by 16 June 2026; nine times in ten by 20 July 2026',
      'S3',
    ])
      expect(first, one).toContain(squeezed(one));
    const stops = trip.trip.stops.map((stop) => ({ ...stop, futures: null }));
    const unsure = pagesOf(noticesPaper([{ ...trip, trip: { ...trip.trip, stops } }], english, options)).join('');
    expect(unsure).toContain(squeezed('How sure that is was not reckoned'));
    const dry = stops.map((stop) => ({ ...stop, served: null }));
    const unknown = pagesOf(noticesPaper([{ ...trip, trip: { ...trip.trip, stops: dry } }], english, options)).join('');
    expect(unknown).toContain(squeezed('When the tank fills after that is not known: no day of water is promised.'));
    expect(unknown).not.toContain(squeezed('Water is likely to run'));
  });
});
