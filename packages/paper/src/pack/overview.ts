import type { Language } from '@eavewell/words';
import { firstTop_pt } from '../document/heads.ts';
import { drawLines, type Setter } from '../document/setter.ts';
import { bodyEnd_pt, mm } from '../document/sheetSize.ts';
import { drawQr, qrOf } from '../drawing/qr.ts';
import {
  type Band,
  band,
  columns,
  framed,
  heading,
  paragraph,
  stackHeight,
  table,
  text,
  ticks,
} from '../flow/index.ts';
import type { PackStation, SitePackContent } from './content.ts';
import { namePlate } from './namePlate.ts';
import { fitted, pictureBand } from './pictureBand.ts';
import { wayBand } from './wayLine.ts';

/** The tallest a section may be on the first page, and a detail beside the list [pt]. Ours: the stations stand under it. */
const sectionMost_pt = mm(96);
const detailMost_pt = mm(62);
const detailGap_pt = 11;
/** Height of the first page under its head [pt]. */
const firstPage_pt = bodyEnd_pt - firstTop_pt;

/** How much of the first page is given to what may stand elsewhere or smaller; the best first. */
const fits = [
  { finding: 'whole', section_pt: sectionMost_pt },
  { finding: 'first', section_pt: sectionMost_pt },
  { finding: 'first', section_pt: mm(70) },
  { finding: 'none', section_pt: mm(70) },
  { finding: 'none', section_pt: mm(50) },
] as const;

/**
 * The first page: the way in, the building, the stations, what is built and what comes first; the code of the site.
 *
 * @param setter - lays its letters
 * @param width - of the body [pt]
 * @param content - of the pack
 * @param language - its words
 * @returns its bands; what can hurt is on the first page: where all has no room, the finding's first sentence alone stands over it and the whole of it behind, and the section is smaller
 */
export function overview(setter: Setter, width: number, content: SitePackContent, language: Language): readonly Band[] {
  const code = codeAndCautions(setter, width, content);
  const whole = paragraph(setter, width, content.finding, { before_pt: 6 });
  const sentence = paragraph(setter, width, withLead(content.finding)[0]?.text ?? '', { before_pt: 6 });
  const findings = { whole, first: sentence, none: [] } as const;
  const way = wayBand(setter, width, content.way, language);
  const stations = stationsTable(setter, width, content.stations, language);
  const all = code.height_pt + code.before_pt;
  let first: readonly Band[] = [];
  let isFindingLater = false;
  for (const { finding, section_pt } of fits) {
    const section = sectionBands(setter, width, content, language, section_pt);
    first = [...way, ...findings[finding], ...section, ...stations];
    isFindingLater = finding !== 'whole';
    if (stackHeight(first) + all <= firstPage_pt) break;
  }
  const room = firstPage_pt - stackHeight(first) - all - detailGap_pt;
  return [...first, ...restOf(setter, width, content, language, { code, room }), ...(isFindingLater ? whole : [])];
}

/** Detail and what comes first, before the code where there is room on the first page, else behind it. */
function restOf(
  setter: Setter,
  width: number,
  content: SitePackContent,
  language: Language,
  { code, room }: { readonly code: Band; readonly room: number },
): readonly Band[] {
  const detail = detailBands(setter, width, content, language, Math.min(detailMost_pt, room));
  if (stackHeight(detail) <= room) return [...detail, code];
  const short = beforeInTwo(setter, width, content, language);
  const isRoom = stackHeight(short) <= room;
  const later = { ...content, beforeAnything: isRoom ? [] : content.beforeAnything };
  return [...(isRoom ? short : []), code, ...detailBands(setter, width, later, language, detailMost_pt)];
}

/** What comes first in two columns: where the page has no room for the detail beside it. */
function beforeInTwo(
  setter: Setter,
  width: number,
  { beforeAnything }: SitePackContent,
  { say }: Language,
): readonly Band[] {
  if (beforeAnything.length === 0) return [];
  const half = Math.ceil(beforeAnything.length / 2);
  const halves = [beforeAnything.slice(0, half), beforeAnything.slice(half)];
  const two = halves.map((texts) => ({ share: 1, bands: (own: number) => ticks(setter, own, texts) }));
  return [heading(setter, width, say('pack.before')), columns(setter, width, columnGap_pt, two)];
}

/** The section with its name plate; a line where there is none. */
function sectionBands(
  setter: Setter,
  width: number,
  { section, name }: SitePackContent,
  language: Language,
  most_pt: number,
): readonly Band[] {
  const { say } = language;
  if (section === null) return paragraph(setter, width, say('pack.no_section'));
  const size = fitted(section.picture, { width, height: most_pt });
  return [
    pictureBand(setter, section.picture, size, say('pack.section_of', { name })),
    namePlate(setter, width, plateOf(section, size.isReduced, language), say('pack.section')),
  ];
}

function plateOf(
  { oneTo, measuredOn, measuredBy }: NonNullable<SitePackContent['section']>,
  isReduced: boolean,
  { say, numbers }: Language,
): readonly (readonly [string, string])[] {
  const scale =
    oneTo === null || isReduced ? say('pack.scale_none') : say('pack.scale_of', { many: numbers.given(oneTo, '') });
  return [
    [say('pack.scale'), scale],
    [say('pack.measured'), measuredOn === null ? say('pack.not_known') : numbers.date(measuredOn)],
    [say('pack.by'), measuredBy ?? say('pack.not_known')],
    [say('pack.dashed'), say('pack.dashed_means')],
  ];
}

const isException = ({ verdict }: PackStation) => verdict === 'short' || verdict === 'tight' || verdict === 'unknown';

/** Exceptions first, each in the order of the water. */
export const exceptionsFirst = (stations: readonly PackStation[]): readonly PackStation[] => {
  const told = stations.filter(({ verdict }) => verdict !== 'notJudged');
  const rank = { short: 0, tight: 1, unknown: 2, holds: 3, notJudged: 4 } as const;
  return [...told].sort((a, b) => rank[a.verdict] - rank[b.verdict]);
};

function stationsTable(
  setter: Setter,
  width: number,
  stations: readonly PackStation[],
  language: Language,
): readonly Band[] {
  const { say } = language;
  const rows = exceptionsFirst(stations).map((one) => {
    const stands = say('pack.station_stands', {
      station: language.stations[one.station],
      verdict: language.verdicts[one.verdict],
    });
    return [
      { kind: 'mark', verdict: one.verdict, says: language.verdicts[one.verdict] } as const,
      text(stands, isException(one) ? 'strong' : 'plain'),
      text(one.figure ?? ''),
      text(one.toDo ?? ''),
    ];
  });
  if (rows.length === 0) return paragraph(setter, width, say('pack.nothing_judged'));
  const heads = [
    { head: '', share: 3 },
    { head: say('pack.station'), share: 22 },
    { head: say('pack.figure'), share: 39 },
    { head: say('pack.to_do'), share: 36 },
  ];
  return [heading(setter, width, say('pack.stations')), ...table(setter, width, { columns: heads, rows })];
}

/** What is built, larger, beside what is carried and what comes first; at most so high, its picture smaller where it must be. */
function detailBands(
  setter: Setter,
  width: number,
  content: SitePackContent,
  language: Language,
  most_pt: number,
): readonly Band[] {
  const { detail, beforeAnything } = content;
  const before = (own: number, before_pt: number): readonly Band[] =>
    beforeAnything.length === 0
      ? []
      : [heading(setter, own, language.say('pack.before'), before_pt), ...ticks(setter, own, beforeAnything)];
  const loads = (own: number) => carried(setter, own, content, language);
  if (detail === null) {
    if (content.loads.length === 0 && beforeAnything.length === 0) return [];
    const halves = [loads, (own: number) => before(own, 0)].map((bands) => ({ share: 1, bands }));
    return [columns(setter, width, mm(6), halves, detailGap_pt)];
  }
  const left = (own: number): readonly Band[] => {
    const title = detailTitle(detail, language);
    const head = heading(setter, own, title, 0);
    const size = fitted(detail.picture, { width: own, height: Math.max(mm(25), most_pt - head.height_pt - 8) });
    // Where it is smaller than its scale, the bar tells how long a metre is.
    const shown = size.isReduced ? heading(setter, own, detail.title, 0) : head;
    return [shown, pictureBand(setter, detail.picture, size, detail.title, 8)];
  };
  const side = (own: number) => [...loads(own), ...before(own, content.loads.length > 0 ? 12 : 0)];
  return [
    columns(
      setter,
      width,
      columnGap_pt,
      [
        { share: detailShare, bands: left },
        { share: 100 - detailShare, bands: side },
      ],
      detailGap_pt,
    ),
  ];
}

/** Share of the width a detail has [percent]. */
export const detailShare = 58;
export const columnGap_pt = mm(5);

const detailTitle = ({ oneTo, title }: NonNullable<SitePackContent['detail']>, { say, numbers }: Language): string =>
  oneTo === null
    ? title
    : say('pack.detail', { title, scale: say('pack.scale_of', { many: numbers.given(oneTo, '') }) });

/** Each load in a line: who carries it, its weight and its longest piece. */
function carried(
  setter: Setter,
  width: number,
  { loads }: SitePackContent,
  { say, numbers }: Language,
): readonly Band[] {
  if (loads.length === 0) return [];
  const known = loads.flatMap(({ weight_kg }) => (weight_kg === null ? [] : [weight_kg]));
  const all = known.reduce((sum, one) => sum + one, 0);
  const total =
    known.length === 0
      ? say('pack.weight_unknown')
      : known.length === loads.length
        ? numbers.quantity(all, 'kg')
        : say('pack.at_least', { amount: numbers.quantity(all, 'kg') });
  const shown = loads.length > mostLoads ? loads.slice(0, mostLoads - 1) : loads;
  const more = loads.length - shown.length;
  const rows = shown.map(({ loadId, carrier, weight_kg, longest_m }) => [
    text(say('pack.load_by', { load: loadId, carrier })),
    text(weight_kg === null ? say('pack.not_known') : numbers.quantity(weight_kg, 'kg')),
    text(longest_m === null ? '' : numbers.quantity(longest_m, 'm')),
  ]);
  if (more > 0) rows.push([text(say('pack.more_loads', { count: more })), text(''), text('')]);
  const heads = [
    { head: '', share: 52 },
    { head: '', share: 26, align: 'figures' as const },
    { head: '', share: 22, align: 'figures' as const },
  ];
  return [
    heading(setter, width, say('pack.carried', { weight: total }), 0),
    ...table(setter, width, { columns: heads, rows, isHeadless: true }),
  ];
}

/** Loads named on the first page; all of them are on the page of the kit. Ours. */
const mostLoads = 6;
const codeSide_pt = mm(23);

/** The frame of cautions, and beside it the code of the site with its id in letters under it. */
function codeAndCautions(setter: Setter, width: number, { siteId, cautions }: SitePackContent): Band {
  const code = qrOf(siteId);
  const room = codeSide_pt + mm(4);
  const frames = cautions.length === 0 ? [] : framed(setter, width - room, cautions.map(withLead), 0);
  const id = setter.lines(siteId, 9, codeSide_pt * 1.4, 'strong');
  const high = Math.max(stackHeight(frames), codeSide_pt + id.height_pt - 4);
  return band(
    high,
    (canvas, under, { x, y }) => {
      let top = y;
      for (const frame of frames) {
        frame.draw(canvas, under, { x: setter.place(x, width, 0, width - room), y: top, width: width - room }, false);
        top += frame.height_pt + frame.before_pt;
      }
      const left = setter.place(x, width, width - codeSide_pt, codeSide_pt);
      const figure = canvas.branch(under, 'Figure', siteId);
      canvas.within(figure, 'Figure', () => drawQr(canvas, code, left, y - mm(2), codeSide_pt));
      const under_ = { x: left, y: y + codeSide_pt - mm(4), width: codeSide_pt };
      canvas.within(canvas.branch(under, 'P'), 'P', () => drawLines(canvas, setter, id, under_, 'middle'));
    },
    { before_pt: 11 },
  );
}

/** The first sentence of a caution is strong: what can hurt. */
export function withLead(said: string): readonly { readonly text: string; readonly weight: 'plain' | 'strong' }[] {
  const first = /^.*?[.!?:。।؟](?=\s|$)/u.exec(said)?.[0] ?? said;
  return [
    { text: first, weight: 'strong' },
    { text: said.slice(first.length), weight: 'plain' },
  ];
}
