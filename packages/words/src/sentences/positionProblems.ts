import type { TableProblemCode } from '@eavewell/tables';
import type { Told } from '../problems.ts';
import { likelyOf, part, quoted, type Sentences, says, wordFor, yes } from './telling.ts';

type MapCode = Extract<TableProblemCode, `positions.${string}` | `zip.${string}` | `ways.${string}`>;
type LinkCode = 'link.unknown_place' | 'link.site_and_place';

/** The thing by its name, or by where it stands in the file. */
const thing = (t: Told): string => {
  const name = t.has('name') ? t.text('name') : '(';
  return name.startsWith('(') ? part(t, 'thing', { number: t.text('number') }) : `"${name}"`;
};

const km = (t: Told, name: string): string => t.numbers.distance_km(t.number(name));
const likely = (t: Told): string | null => {
  const value = likelyOf(t);
  return value?.startsWith('(') ? null : value;
};

const asFile = {
  'positions.file_missing': (t) => says(t, 'positions.file_missing', { value: quoted(t) }),
  'positions.not_a_map': (t) => says(t, 'positions.not_a_map', { found: quoted(t, 'found') }),
  'positions.json_broken': (t) =>
    t.text('reason') === 'cutOff'
      ? says(t, 'positions.json_broken')
      : says(t, 'positions.json_broken.otherwise', { hasLetter: yes(t.has('letter')), letter: t.text('letter') }),
  'positions.not_geojson': (t) => says(t, 'positions.not_geojson', { found: quoted(t, 'found') }),
  'positions.xml_broken': (t) =>
    says(t, 'positions.xml_broken', { isCutOff: yes(t.text('reason') === 'cutOff'), reason: t.text('reason') }),
  'positions.doctype': (t) => says(t, 'positions.doctype'),
  'positions.too_deep': (t) => says(t, 'positions.too_deep', { deepest: t.text('deepest') }),
  'positions.too_many': (t) => says(t, 'positions.too_many', { most: t.text('most') }),
  'positions.nothing': (t) => says(t, 'positions.nothing'),
  'positions.crs_other': (t) => says(t, 'positions.crs_other', { value: quoted(t) }),
  'positions.crs_said': (t) => says(t, 'positions.crs_said', { value: quoted(t) }),
  'positions.link_not_followed': (t) =>
    says(t, 'positions.link_not_followed', { count: t.count('count'), value: quoted(t) }),
  'positions.address_not_opened': (t) =>
    says(t, 'positions.address_not_opened', { count: t.count('count'), value: quoted(t) }),
  'positions.area_left': (t) => says(t, 'positions.area_left', { count: t.count('count'), value: quoted(t) }),
  'positions.without_geometry': (t) =>
    says(t, 'positions.without_geometry', { count: t.count('count'), value: quoted(t) }),
  'positions.height_left': (t) => says(t, 'positions.height_left', { count: t.count('count') }),
  'positions.time_left': (t) => says(t, 'positions.time_left', { count: t.count('count') }),
} satisfies Partial<Sentences<MapCode>>;

const reasonOf = (t: Told): string => wordFor(t, 'zipReason', t.text('reason')) ?? t.text('reason');

const asZip = {
  'zip.broken': (t) => says(t, 'zip.broken', { reason: reasonOf(t) }),
  'zip.cut_off': (t) => says(t, 'zip.cut_off'),
  'zip.too_many': (t) => says(t, 'zip.too_many', { most: t.text('most') }),
  'zip.too_large': (t) => says(t, 'zip.too_large', { largest: t.text('largest_MB') }),
  'zip.too_dense': (t) => says(t, 'zip.too_dense', { most: t.text('most') }),
  'zip.unreadable': (t) => says(t, 'zip.unreadable', { value: quoted(t), reason: reasonOf(t) }),
  'positions.kmz_without_kml': (t) => says(t, 'positions.kmz_without_kml', { found: t.text('found') }),
  'positions.kmz_taken': (t) =>
    says(t, 'positions.kmz_taken', {
      value: quoted(t),
      hasOthers: yes(t.list('others').length > 0),
      others: t.text('others'),
    }),
} satisfies Partial<Sentences<MapCode>>;

const asThing = {
  'positions.not_a_number': (t) => says(t, 'positions.not_a_number', { thing: thing(t), value: quoted(t) }),
  'positions.not_a_thing': (t) => says(t, 'positions.not_a_thing', { thing: thing(t), found: quoted(t, 'found') }),
  'positions.out_of_range': (t) =>
    says(t, 'positions.out_of_range', {
      thing: thing(t),
      value: t.text('value'),
      hasLikely: yes(likely(t) !== null),
      likely: likely(t) ?? '',
    }),
  'positions.projected': (t) => says(t, 'positions.projected', { thing: thing(t), value: t.text('value') }),
  'positions.swapped': (t) =>
    says(t, 'positions.swapped', {
      thing: thing(t),
      value: t.text('value'),
      likely: likely(t) ?? part(t, 'themRight'),
    }),
  'positions.line_too_short': (t) => says(t, 'positions.line_too_short', { thing: thing(t) }),
  'positions.line_gaps': (t) =>
    says(t, 'positions.line_gaps', { thing: thing(t), pieces: t.text('pieces'), gaps: km(t, 'gaps_km') }),
} satisfies Partial<Sentences<MapCode>>;

const asMatch = {
  'positions.zero': (t) => says(t, 'positions.zero', { thing: thing(t) }),
  'positions.swapped_likely': (t) =>
    says(t, 'positions.swapped_likely', {
      thing: thing(t),
      value: t.text('value'),
      likely: likely(t) ?? part(t, 'itOther'),
    }),
  'positions.far_from_present': (t) =>
    says(t, 'positions.far_from_present', { thing: thing(t), moved: km(t, 'moved_km'), far: km(t, 'far_km') }),
  'positions.far_from_others': (t) => says(t, 'positions.far_from_others', { thing: thing(t), away: km(t, 'away_km') }),
  'positions.two_points': (t) =>
    says(t, 'positions.two_points', { value: quoted(t), count: t.count('count'), names: t.text('names') }),
  'positions.same_point': (t) =>
    says(t, 'positions.same_point', { value: quoted(t), count: t.count('count'), names: t.text('names') }),
  'positions.id_and_name': (t) =>
    says(t, 'positions.id_and_name', { thing: thing(t), one: t.text('one'), other: t.text('other') }),
  'positions.of_two': (t) => says(t, 'positions.of_two', { thing: thing(t), ids: t.text('ids') }),
  'positions.without_name': (t) => says(t, 'positions.without_name', { count: t.count('count') }),
  'positions.table_missing': (t) => says(t, 'positions.table_missing', { value: quoted(t) }),
  'positions.table_encoding': (t) => says(t, 'positions.table_encoding', { value: quoted(t) }),
  'positions.table_broken': (t) => says(t, 'positions.table_broken', { value: quoted(t) }),
} satisfies Partial<Sentences<MapCode>>;

const asWay = {
  'ways.same_ends': (t) => says(t, 'ways.same_ends', { thing: thing(t), value: quoted(t) }),
  'ways.line_unknown': (t) =>
    says(t, 'ways.line_unknown', { value: quoted(t), hasLikely: yes(likely(t) !== null), likely: likely(t) ?? '' }),
  'ways.no_lines': (t) =>
    says(t, 'ways.no_lines', { isMap: yes(t.text('found') === 'geojson'), found: t.text('found') }),
  'ways.without_line': (t) => says(t, 'ways.without_line', { count: t.count('count'), value: quoted(t) }),
  'ways.without_length': (t) => says(t, 'ways.without_length', { value: quoted(t) }),
  'ways.length_differs': (t) =>
    says(t, 'ways.length_differs', { value: quoted(t), length: km(t, 'length_km'), line: km(t, 'line_km') }),
  'ways.shorter_than_straight': (t) =>
    says(t, 'ways.shorter_than_straight', {
      value: quoted(t),
      length: km(t, 'length_km'),
      straight: km(t, 'straight_km'),
    }),
  'ways.end_not_found': (t) =>
    says(t, 'ways.end_not_found', { thing: thing(t), reach: km(t, 'reach_km'), isEnd: yes(t.text('side') === 'to') }),
} satisfies Partial<Sentences<MapCode>>;

const asLink = {
  'link.unknown_place': (t) =>
    says(t, 'link.unknown_place', { value: quoted(t), hasLikely: yes(likely(t) !== null), likely: likely(t) ?? '' }),
  'link.site_and_place': (t) => says(t, 'link.site_and_place', { value: quoted(t) }),
} satisfies Sentences<LinkCode>;

/** One sentence for every fault of a map, and of places and ways. */
export const positionProblemSentences: Sentences<MapCode | LinkCode> = {
  ...asFile,
  ...asZip,
  ...asThing,
  ...asMatch,
  ...asWay,
  ...asLink,
};
