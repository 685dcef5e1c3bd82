import type { Language } from '@eavewell/words';
import { laterTop_pt } from '../document/heads.ts';
import type { Setter } from '../document/setter.ts';
import { bodyEnd_pt, mm } from '../document/sheetSize.ts';
import { type Band, type Cell, framed, heading, paragraph, stackHeight, table, text } from '../flow/index.ts';
import type { PackTests } from './content.ts';
import { withLead } from './overview.ts';

/** Heights of a row somebody writes in with a thick pencil, the best first [mm]. Ours: the record is one page as long as it can be. */
const rows_mm = [7, 6.4, 5.8, 5.2, 4.6] as const;
/** More taps than so many share a line. Ours: the record is one page. */
const mostTaps = 4;
/** White over a form's heading [pt]. */
const formGap_pt = 9;
const blank: Cell = { kind: 'blank' };

interface Form {
  readonly heads: readonly (readonly [string, number])[];
  readonly names: readonly string[];
}

/** What a form is laid with. */
interface Sheet {
  readonly setter: Setter;
  readonly width: number;
  readonly row_pt: number;
  readonly language: Language;
}

function form({ setter, width, row_pt }: Sheet, { heads, names }: Form): readonly Band[] {
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
  let bands: readonly Band[] = [];
  for (const row_mm of rows_mm) {
    bands = forms({ setter, width, row_pt: mm(row_mm) - 3.6, language }, tests);
    if (stackHeight(bands) <= bodyEnd_pt - laterTop_pt) break;
  }
  return bands;
}

function forms(sheet: Sheet, tests: PackTests): readonly Band[] {
  const { setter, width, language } = sheet;
  return [
    heading(setter, width, language.say('pack.tests'), 0),
    ...framed(setter, width, [withLead(language.say('pack.caution_drink'))], 4),
    ...flowTest(sheet, tests),
    ...airTest(sheet, tests),
    ...samples(sheet, tests),
    ...(tests.hasChlorine ? chlorine(sheet, tests) : []),
    ...signing(sheet),
  ];
}

function flowTest(sheet: Sheet, { flow_L_per_h, taps_count }: PackTests): readonly Band[] {
  const { setter, width } = sheet;
  const { say, numbers } = sheet.language;
  const wanted =
    flow_L_per_h === null
      ? say('pack.flow_unknown')
      : say('pack.flow_wanted', { flow: numbers.quantity(flow_L_per_h, 'L_per_h') });
  const taps = Array.from({ length: Math.min(mostTaps, taps_count ?? 2) }, (_, nth) =>
    say('pack.tap_number', { number: numbers.given(nth + 1, '') }),
  );
  return [
    heading(setter, width, say('pack.flow_test'), formGap_pt),
    ...paragraph(setter, width, `${say('pack.flow_how')} ${wanted}`, { before_pt: 0, keepsNext: true }),
    ...form(sheet, {
      heads: [
        [say('pack.tap'), 20],
        [say('pack.litres'), 16],
        [say('pack.seconds'), 16],
        [say('pack.litres_an_hour'), 22],
        [say('pack.by_whom'), 26],
      ],
      names: named(taps, 2),
    }),
  ];
}

function airTest(sheet: Sheet, { units, air_kPa, airMost_kPa, airFall_kPa_per_min }: PackTests): readonly Band[] {
  const { setter, width } = sheet;
  const { say, numbers } = sheet.language;
  if (units.length === 0) return [];
  // What was over the limit is not told as what to test at.
  const at_kPa = air_kPa !== null && air_kPa <= (airMost_kPa ?? Infinity) ? air_kPa : null;
  const at =
    at_kPa === null ? say('pack.air_unknown') : say('pack.air_at', { pressure: numbers.quantity(at_kPa, 'kPa') });
  const most = airMost_kPa === null ? [] : [say('pack.air_most', { pressure: numbers.quantity(airMost_kPa, 'kPa') })];
  const fall =
    airFall_kPa_per_min === null
      ? []
      : [say('pack.air_fall', { fall: numbers.quantity(airFall_kPa_per_min, 'kPa_per_min') })];
  return [
    heading(setter, width, say('pack.air_test'), formGap_pt),
    ...paragraph(setter, width, [at, ...most, ...fall].join(' '), { before_pt: 0, keepsNext: true }),
    ...paragraph(setter, width, withLead(say('pack.caution_air')), { before_pt: 2, keepsNext: true }),
    ...form(sheet, {
      heads: [
        [say('pack.unit'), 22],
        [say('pack.air_start'), 17],
        [say('pack.air_end'), 17],
        [say('pack.minutes'), 12],
        [say('pack.air_fell'), 18],
        [say('pack.by_whom'), 20],
      ],
      names: units,
    }),
  ];
}

function samples(sheet: Sheet, { samplePlaces }: PackTests): readonly Band[] {
  const { setter, width } = sheet;
  const { say } = sheet.language;
  return [
    heading(setter, width, say('pack.samples'), formGap_pt),
    ...paragraph(setter, width, say('pack.samples_how'), { before_pt: 0, keepsNext: true }),
    ...form(sheet, {
      heads: [
        [say('pack.place'), 24],
        [say('pack.bottle'), 14],
        [say('pack.taken'), 20],
        [say('pack.laboratory'), 22],
        [say('pack.coli'), 20],
      ],
      names: named(samplePlaces, 2),
    }),
  ];
}

function chlorine(sheet: Sheet, { residual_mg_per_L }: PackTests): readonly Band[] {
  const { setter, width } = sheet;
  const { say, numbers } = sheet.language;
  const wanted =
    residual_mg_per_L === null
      ? say('pack.chlorine_unknown')
      : say('pack.chlorine_wanted', {
          low: numbers.given(residual_mg_per_L.least, ''),
          high: numbers.quantity(residual_mg_per_L.most, 'mg_per_L'),
        });
  return [
    heading(setter, width, say('pack.chlorine'), formGap_pt),
    ...paragraph(setter, width, wanted, { before_pt: 0, keepsNext: true }),
    ...paragraph(setter, width, withLead(say('pack.caution_chlorine')), { before_pt: 2, keepsNext: true }),
    ...form(sheet, {
      heads: [
        [say('pack.place'), 24],
        [say('pack.time'), 13],
        [say('pack.dose'), 15],
        [say('pack.waited'), 15],
        [say('pack.residual'), 17],
        [say('pack.turbidity'), 16],
      ],
      names: named([], 2),
    }),
  ];
}

function signing({ setter, width, row_pt, language }: Sheet): readonly Band[] {
  const { say } = language;
  const names = [say('pack.sign_stand'), say('pack.sign_work'), say('pack.sign_water'), say('pack.sign_over')];
  return [
    heading(setter, width, say('pack.signing'), formGap_pt),
    ...table(setter, width, {
      columns: [
        { head: say('pack.sign_what'), share: 30 },
        { head: say('pack.sign_name'), share: 24 },
        { head: say('pack.sign_office'), share: 16 },
        { head: say('pack.sign_date'), share: 12 },
        { head: say('pack.sign_signature'), share: 18 },
      ],
      rows: names.map((name) => [text(name), blank, blank, blank, blank]),
      leastRow_pt: row_pt,
    }),
  ];
}
