import { calendarDay, type DayIndex, dayIndexOf, type Range } from '@eavewell/engine';
import { figuresIn, plainDays, plainExact, plainFigure, plainWhole } from './messages/figures.ts';
import type { NumberForm } from './messages/numberForm.ts';
import type { AppMessageKey, SayOf } from './messages/texts.ts';
import { dateParts, enoughLitres } from './numbers.ts';
import type { NumberWords } from './numberWords.ts';

type UnitKey = Extract<AppMessageKey, `units.${string}`>;

/** The engine's units that are words of their own, by every spelling of them. Those of no unit are null. */
const unitKeys: Readonly<Record<string, UnitKey | null>> = {
  L: 'units.L',
  L_per_day: 'units.L_per_day',
  L_per_year: 'units.L_per_year',
  L_per_person_per_day: 'units.L_per_person_per_day',
  litres_per_person_per_day: 'units.L_per_person_per_day',
  km: 'units.km',
  mm: 'units.mm',
  mm_per_h: 'units.mm_per_h',
  mm_per_year: 'units.mm_per_year',
  m: 'units.m',
  m2: 'units.m2',
  mm2: 'units.mm2',
  L_per_s: 'units.L_per_s',
  mm_per_m: 'units.mm_per_m',
  h: 'units.h',
  deg: 'units.deg',
  day: 'units.day',
  days: 'units.day',
  day_per_year: 'units.day_per_year',
  days_per_year: 'units.day_per_year',
  dryDay_per_year: 'units.dryDay_per_year',
  year: 'units.year',
  years: 'units.year',
  people: 'units.person',
  person: 'units.person',
  household: 'units.household',
  C: 'units.C',
  um: 'units.um',
  kg_per_m3: 'units.kg_per_m3',
  kg_per_year: 'units.kg_per_year',
  h_per_day: 'units.h_per_day',
  months: 'units.month',
  L_per_min: 'units.L_per_min',
  m_per_h: 'units.m_per_h',
  m_per_s: 'units.m_per_s',
  min: 'units.min',
  min_per_day: 'units.min_per_day',
  W: 'units.W',
  kg: 'units.kg',
  kPa: 'units.kPa',
  Pa: 'units.Pa',
  N: 'units.N',
  draws: 'units.draw',
  g_per_m2_per_year: 'units.g_per_m2_per_year',
  L_per_h: 'units.L_per_h',
  L_per_m2_per_h_per_bar: 'units.L_per_m2_per_h_per_bar',
  log10: 'units.log10',
  DALY_per_case: 'units.DALY_per_case',
  kPa_per_min: 'units.kPa_per_min',
  NTU: 'units.NTU',
  per_L: 'units.per_L',
  '1_per_L': 'units.per_L',
  per_100mL: 'units.per_100mL',
  '1_per_100mL': 'units.per_100mL',
  per_year: 'units.per_year',
  '1_per_year': 'units.per_year',
  DALY_per_million_per_year: 'units.DALY_per_million_per_year',
  '1_per_m3': 'units.per_m3',
  kJ_per_L: 'units.kJ_per_L',
  MJ_per_kg: 'units.MJ_per_kg',
  kg_per_L: 'units.kg_per_L',
  '1_per_min': 'units.per_min',
  mg_per_L: 'units.mg_per_L',
  g_per_L: 'units.g_per_L',
  mg_min_per_L: 'units.mg_min_per_L',
  nm: 'units.nm',
  mL: 'units.mL',
  g: 'units.g',
  number: null,
  count: null,
  factor: null,
  ratio: null,
  date: null,
  '': null,
  text: null,
};

/** Money for something: a currency's letters, and for what. */
const moneyForm = /^([A-Z]{3})_per_(\w+)$/;
const moneyKeys: Readonly<Record<string, UnitKey>> = {
  year: 'units.money_per_year',
  person: 'units.money_per_person',
  person_per_year: 'units.money_per_person_per_year',
  L: 'units.money_per_L',
  kg: 'units.money_per_kg',
};

/** Healthy years lost to one person in a year, by every spelling. */
const lostYearNames: ReadonlySet<string> = new Set(['DALY_per_person_per_year', 'DALY/person/year']);

/** No record and no plan has a day before this year; made-up rain has no other. */
const firstRealYear = 1001;

/** 99.96 % must not read 100 %: only what is whole is called whole. */
function percentOf(value_fraction: number): number {
  const value = value_fraction * 100;
  return value > 99 && value < 100 ? Math.floor(value * 10) / 10 : value;
}

/**
 * Numbers, days and shares in one language.
 *
 * @param say - its messages
 * @param form - its marks and dates
 */
// long: every kind of number of one language, each a line or two
export function numberWordsOf(say: SayOf<AppMessageKey>, form: NumberForm): NumberWords {
  const figures = figuresIn(form, say('numbers.notKnown'), (amount) => say('numbers.under', { amount }));
  const unit = (amount: string, count: number, name: string): string => {
    const key = unitKeys[name] ?? unitKeys[name.replaceAll('/', '_per_').replaceAll(' ', '_')];
    if (key) return say(key, { amount, count });
    const [, currency, per] = moneyForm.exec(name) ?? [];
    const money = per === undefined ? undefined : moneyKeys[per];
    if (currency && money) return say(money, { amount, currency });
    return key === null || name in unitKeys ? amount : `${amount} ${name.replaceAll('_', ' ')}`;
  };
  /** A number with its unit: which form the unit takes is told by the number as it is shown. */
  const withUnit = (value: number, name: string, shown: (value: number) => string, plain: (value: number) => string) =>
    unit(shown(value), Number.isFinite(value) ? Number(plain(value)) : 0, name);
  const figure = (value: number, name: string) => withUnit(value, name, figures.figure, plainFigure);
  const days = (value: number, name: string) => withUnit(value, name, figures.days, plainDays);
  const whole = (value: number, name: string) => withUnit(value, name, figures.whole, plainWhole);
  const date = (day: DayIndex | string): string => {
    const parts = dateParts(day);
    if (!parts) return String(day);
    if (parts.month < 1 || parts.month > 12) return String(day);
    // Made-up rain has years of its own, counted from 1.
    return parts.year < firstRealYear
      ? say('numbers.madeUpYear', { day: form.dayAndMonth(parts.month, parts.day), year: String(parts.year) })
      : form.day(parts.year, parts.month, parts.day);
  };
  const percent = (value_fraction: number): string =>
    Number.isFinite(value_fraction)
      ? say('numbers.percent', { amount: figures.figure(percentOf(value_fraction)) })
      : say('numbers.shareNotKnown');
  /** A calendar day of a year without 29 February. */
  const dayOfYear = (value: number): string => {
    const { month, day } = calendarDay(dayIndexOf(2001, 1, 1) + value - 1);
    return form.dayAndMonth(month, day);
  };
  /** The two ends of a range to the same number of decimals, coarse enough to be believed; and the count of the second. */
  const ends = ({ low, high }: Range) => {
    const tenth = (value: number) => Math.round(value * 10) / 10;
    return Math.abs(high) >= 10
      ? { from: figures.whole(low), to: figures.whole(high), count: Number(plainWhole(high)) }
      : { from: figures.figure(tenth(low)), to: figures.figure(tenth(high)), count: tenth(high) };
  };
  const between = (from: string, to: string): string => (from === to ? from : say('numbers.between', { from, to }));
  const wholeRange = ({ low, high }: Range) => between(figures.whole(low), figures.whole(high));
  const rangeOf = (value: Range, name: string): string => {
    if (name === 'fraction') return say('numbers.between', { from: percent(value.low), to: percent(value.high) });
    const { from, to, count } = ends(value);
    return say('numbers.between', { from, to: unit(to, Number.isFinite(count) ? count : 0, name) });
  };
  /** Healthy years lost, of a million people: those of one person have too many zeros to be read. */
  const lostYears = (value: number, shown: (value: number) => string): string =>
    say('units.DALY_per_million_per_year', { amount: shown(value * 1e6), count: 0 });
  const quantity = (value: number | string | Range | null, name: string, exactly: boolean): string => {
    if (value === null) return say('numbers.none');
    if (typeof value === 'object') return rangeOf(value, name);
    if (typeof value === 'string') return dateParts(value) ? date(value) : value;
    if (name === 'fraction') return percent(value);
    if (lostYearNames.has(name)) return lostYears(value, exactly ? figures.exact : figures.figure);
    if (name === 'dayOfYear') return dayOfYear(value);
    if (name === 'month') return value >= 1 && value <= 12 ? form.month(value) : String(value);
    if (exactly) return withUnit(value, name, figures.exact, plainExact);
    return /^day/.test(name) ? days(value, name) : figure(value, name);
  };
  return {
    litres: (value) => figure(value, 'L'),
    tankLitres: (value) => figure(enoughLitres(value), 'L'),
    litresADay: (value) => figure(value, 'L_per_day'),
    days: (value) => days(value, 'day'),
    daysAYear: (value) => days(value, 'day_per_year'),
    dryDaysAYear: (value) => days(value, 'dryDay_per_year'),
    years: (count) => whole(count, 'year'),
    people: (count) => whole(count, 'person'),
    ofYears: (good, all) => say('numbers.ofYears', { good: figures.whole(good), all: Math.round(all) }),
    money: (amount, currency) => say('numbers.money', { amount: figures.figure(amount), currency }),
    percent,
    percentAtMost: (value_fraction) => percent(Math.ceil(value_fraction * 1000) / 1000),
    likely: (range) => say('numbers.likely', { range: between(ends(range).from, ends(range).to) }),
    range: (range) => between(ends(range).from, ends(range).to),
    rangeOfYears: (range, coming) =>
      say('numbers.rangeOfYears', { range: wholeRange(range), coming: figures.whole(coming) }),
    likelyNextYears: (range, coming) =>
      say('numbers.likelyNextYears', { range: wholeRange(range), coming: Math.round(coming) }),
    date,
    distance_km: (value) => {
      if (value === null || !Number.isFinite(value)) return say('numbers.unknownWay');
      if (value < 0.9995) return unit(form.marked(String(Math.round(value * 1000))), 0, 'm');
      return figure(value, 'km');
    },
    fixed: figures.fixed,
    quantity: (value, name) => quantity(value, name, false),
    given: (value, name) => quantity(value, name, true),
  };
}
