import type { Language } from '@eavewell/words';
import type { Setter } from '../document/setter.ts';
import { mm } from '../document/sheetSize.ts';
import { type Band, type Cell, framed, heading, paragraph, table, text } from '../flow/index.ts';
import type { PackTests } from './content.ts';
import { withLead } from './overview.ts';

/** A row somebody writes in with a thick pencil [pt]. Ours. */
const row_pt = mm(6.4);
const blank: Cell = { kind: 'blank' };

interface Form {
  readonly heads: readonly (readonly [string, number])[];
  readonly names: readonly string[];
}

function form(setter: Setter, width: number, { heads, names }: Form): readonly Band[] {
  return table(setter, width, {
    columns: heads.map(([head, share]) => ({ head, share })),
    rows: names.map((name) => [text(name), ...heads.slice(1).map(() => blank)]),
    leastRow_pt: row_pt,
  });
}

/** At least so many lines, so that there is room for what was not foreseen. */
const named = (names: readonly string[], least: number): readonly string[] =>
  names.length >= least ? names : [...names, ...new Array<string>(least - names.length).fill('')];

/** What is measured at the end, to be written in by hand, and who signs. */
export function testRecord(setter: Setter, width: number, tests: PackTests, language: Language): readonly Band[] {
  const { say } = language;
  return [
    heading(setter, width, say('pack.tests'), 0),
    ...framed(setter, width, [withLead(say('pack.caution_drink'))], 5),
    ...flowTest(setter, width, tests, language),
    ...airTest(setter, width, tests, language),
    ...samples(setter, width, tests, language),
    ...(tests.hasChlorine ? chlorine(setter, width, tests, language) : []),
    ...signing(setter, width, language),
  ];
}

function flowTest(setter: Setter, width: number, { flow_L_per_h, taps_count }: PackTests, { say, numbers }: Language): readonly Band[] {
  const wanted = flow_L_per_h === null ? say('pack.flow_unknown') : say('pack.flow_wanted', { flow: numbers.quantity(flow_L_per_h, 'L_per_h') });
  const taps = Array.from({ length: Math.min(6, taps_count ?? 2) }, (_, nth) => say('pack.tap_number', { number: numbers.given(nth + 1, '') }));
  return [
    heading(setter, width, say('pack.flow_test'), 12),
    ...paragraph(setter, width, `${say('pack.flow_how')} ${wanted}`, { before_pt: 0, keepsNext: true }),
    ...form(setter, width, {
      heads: [[say('pack.tap'), 20], [say('pack.litres'), 16], [say('pack.seconds'), 16], [say('pack.litres_an_hour'), 22], [say('pack.by_whom'), 26]],
      names: named(taps, 2),
    }),
  ];
}

function airTest(setter: Setter, width: number, { units, air_kPa, airFall_kPa_per_min }: PackTests, { say, numbers }: Language): readonly Band[] {
  if (units.length === 0) return [];
  const at = air_kPa === null ? say('pack.air_unknown') : say('pack.air_at', { pressure: numbers.quantity(air_kPa, 'kPa') });
  const fall = airFall_kPa_per_min === null ? [] : [say('pack.air_fall', { fall: numbers.quantity(airFall_kPa_per_min, 'kPa_per_min') })];
  return [
    heading(setter, width, say('pack.air_test'), 12),
    ...paragraph(setter, width, [at, ...fall].join(' '), { before_pt: 0, keepsNext: true }),
    ...paragraph(setter, width, withLead(say('pack.caution_air')), { before_pt: 2, keepsNext: true }),
    ...form(setter, width, {
      heads: [[say('pack.unit'), 22], [say('pack.air_start'), 17], [say('pack.air_end'), 17], [say('pack.minutes'), 12], [say('pack.air_fell'), 18], [say('pack.by_whom'), 20]],
      names: units,
    }),
  ];
}

function samples(setter: Setter, width: number, { samplePlaces }: PackTests, { say }: Language): readonly Band[] {
  return [
    heading(setter, width, say('pack.samples'), 12),
    ...paragraph(setter, width, say('pack.samples_how'), { before_pt: 0, keepsNext: true }),
    ...form(setter, width, {
      heads: [[say('pack.place'), 24], [say('pack.bottle'), 14], [say('pack.taken'), 20], [say('pack.laboratory'), 22], [say('pack.coli'), 20]],
      names: named(samplePlaces, 2),
    }),
  ];
}

function chlorine(setter: Setter, width: number, { residual_mg_per_L }: PackTests, { say, numbers }: Language): readonly Band[] {
  const wanted =
    residual_mg_per_L === null
      ? say('pack.chlorine_unknown')
      : say('pack.chlorine_wanted', { low: numbers.given(residual_mg_per_L.low, ''), high: numbers.quantity(residual_mg_per_L.high, 'mg_per_L') });
  return [
    heading(setter, width, say('pack.chlorine'), 12),
    ...paragraph(setter, width, wanted, { before_pt: 0, keepsNext: true }),
    ...paragraph(setter, width, withLead(say('pack.caution_chlorine')), { before_pt: 2, keepsNext: true }),
    ...form(setter, width, {
      heads: [[say('pack.place'), 24], [say('pack.time'), 13], [say('pack.dose'), 15], [say('pack.waited'), 15], [say('pack.residual'), 17], [say('pack.turbidity'), 16]],
      names: named([], 2),
    }),
  ];
}

function signing(setter: Setter, width: number, { say }: Language): readonly Band[] {
  const names = [say('pack.sign_stand'), say('pack.sign_work'), say('pack.sign_water'), say('pack.sign_over')];
  return [
    heading(setter, width, say('pack.signing'), 12),
    ...table(setter, width, {
      columns: [
        { head: say('pack.sign_what'), share: 30 },
        { head: say('pack.sign_name'), share: 24 },
        { head: say('pack.sign_office'), share: 16 },
        { head: say('pack.sign_date'), share: 12 },
        { head: say('pack.sign_signature'), share: 18 },
      ],
      rows: names.map((name) => [text(name), blank, blank, blank, blank]),
      leastRow_pt: mm(7),
    }),
  ];
}
