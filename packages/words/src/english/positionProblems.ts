import type { TableProblemCode } from '@eavewell/tables';
import type { ProblemSentence } from '../language.ts';
import type { Told } from '../problems.ts';
import { distance_km } from './distances.ts';

type MapCode = Extract<TableProblemCode, `positions.${string}` | `zip.${string}` | `ways.${string}`>;
type LinkCode = 'link.unknown_place' | 'link.site_and_place';
type Sentences<Code extends string> = Readonly<Record<Code, (told: Told) => ProblemSentence>>;

const say = (what: string, todo: string): ProblemSentence => ({ what, todo });

const quoted = (t: Told, name = 'value'): string => {
  const value = t.text(name);
  return value.startsWith('(') ? value : `"${value}"`;
};

/** The thing by its name, or by where it stands in the file. */
const thing = (t: Told): string => {
  const name = t.has('name') ? t.text('name') : '(empty)';
  return name.startsWith('(') ? `Thing ${t.text('number')} of the file` : `"${name}"`;
};

const many = (t: Told, one: string, more: string): string =>
  `${t.text('count')} ${t.number('count') === 1 ? one : more}`;
const km = (t: Told, name: string): string => distance_km(t.number(name));
const likely = (t: Told): string | null => {
  const value = t.has('likely') ? t.text('likely') : '(empty)';
  return value.startsWith('(') ? null : value;
};

const notSet = 'It is not set by itself.';
const saveAgain = 'Save it again from the program it comes from.';

const asFile = {
  'positions.file_missing': (t) => say(`There is no file ${quoted(t)}.`, 'Check the path.'),
  'positions.not_a_map': (t) =>
    say(
      `This is no map that can be read: it is not GeoJSON, KML, KMZ or GPX, but begins as ${quoted(t, 'found')}.`,
      'Save the positions as one of these.',
    ),
  'positions.json_broken': (t) =>
    t.text('reason') === 'cutOff'
      ? say('The file begins as GeoJSON and ends in the middle: it was cut off.', saveAgain)
      : say(
          `The file begins as GeoJSON and is broken inside${t.has('letter') ? `, at letter ${t.text('letter')}` : ''}.`,
          saveAgain,
        ),
  'positions.not_geojson': (t) =>
    say(`This is JSON, but not GeoJSON: its type is ${quoted(t, 'found')}.`, 'Save it as GeoJSON.'),
  'positions.xml_broken': (t) =>
    say(
      t.text('reason') === 'cutOff'
        ? 'The file ends in the middle, or has a tag that is not closed.'
        : `The file is not sound XML: ${t.text('reason')}.`,
      `${saveAgain} Nothing of it was used.`,
    ),
  'positions.doctype': () =>
    say(
      'The file declares a document type, in which harm can be hidden.',
      'It was not read. Maps need none: delete the line that begins with <!DOCTYPE.',
    ),
  'positions.too_deep': (t) =>
    say(`Things stand inside one another more than ${t.text('deepest')} deep.`, `It was not read. ${saveAgain}`),
  'positions.too_many': (t) =>
    say(`The file has more than ${t.text('most')} elements.`, 'It was not read. Save it in several files.'),
  'positions.nothing': () =>
    say('There is no point and no line in the file that can be used.', 'Check that it is the right file.'),
  'positions.crs_other': (t) =>
    say(
      `The positions are in another system of coordinates: ${quoted(t)}.`,
      'Save it with longitude and latitude (WGS 84). Nothing of it was used.',
    ),
  'positions.crs_said': (t) =>
    say(`The file names its system of coordinates, as old files do: ${quoted(t)}.`, 'Nothing to do.'),
  'positions.link_not_followed': (t) =>
    say(
      `The file points to ${many(t, 'other map', 'other maps')}: ${quoted(t)}.`,
      'No address is ever opened. Save those maps as files if you need what is in them.',
    ),
  'positions.address_not_opened': (t) =>
    say(`The file names ${many(t, 'address', 'addresses')}, such as ${quoted(t)}.`, 'None was opened. Nothing to do.'),
  'positions.area_left': (t) =>
    say(`${many(t, 'area was', 'areas were')} left out, such as ${quoted(t)}.`, 'Mark a point where the site is.'),
  'positions.without_geometry': (t) =>
    say(`${many(t, 'thing has', 'things have')} no position, such as ${quoted(t)}.`, 'Nothing to do.'),
  'positions.height_left': (t) =>
    say(`${many(t, 'position has', 'positions have')} a height, which is not used.`, 'Nothing to do.'),
  'positions.time_left': (t) =>
    say(`${many(t, 'thing has', 'things have')} a time, which is not used.`, 'Nothing to do.'),
} satisfies Partial<Sentences<MapCode>>;

const zipReasons: Readonly<Record<string, string>> = {
  entriesDiffer: 'its list of contents and its contents differ',
  nameTwice: 'two files in it have one name',
  checkSum: 'a check sum is wrong, so something in it was changed by accident',
  packing: 'its packing is damaged',
  encrypted: 'it is locked with a password',
};

const reasonOf = (t: Told): string => zipReasons[t.text('reason')] ?? t.text('reason');

const asZip = {
  'zip.broken': (t) => say(`The zip is damaged: ${reasonOf(t)}.`, 'Copy it again from where it comes from.'),
  'zip.cut_off': () => say('The zip has no end: it was cut off.', 'Copy it again from where it comes from.'),
  'zip.too_many': (t) =>
    say(`The zip holds more than ${t.text('most')} files.`, 'It was not read. Take out what is not needed.'),
  'zip.too_large': (t) =>
    say(`Unpacked, the zip is larger than ${t.text('largest_MB')} MB.`, 'It was not read. Save it in several files.'),
  'zip.too_dense': (t) =>
    say(
      `Unpacked, something in the zip grows more than ${t.text('most')} times, as no map does.`,
      'It was not read. Ask who made it.',
    ),
  'zip.unreadable': (t) => say(`${quoted(t)} in the zip cannot be unpacked: ${reasonOf(t)}.`, saveAgain),
  'positions.kmz_without_kml': (t) =>
    say(`There is no KML in the KMZ, only: ${t.text('found')}.`, 'Check that it is the right file.'),
  'positions.kmz_taken': (t) =>
    say(
      `${quoted(t)} of the KMZ was read${t.list('others').length > 0 ? `, and not: ${t.text('others')}` : ''}.`,
      'Nothing to do, if that is the right one.',
    ),
} satisfies Partial<Sentences<MapCode>>;

const asThing = {
  'positions.not_a_number': (t) =>
    say(
      `${thing(t)} has a position that is no pair of plain numbers: ${quoted(t)}.`,
      'Write decimal degrees with a point. It was not used.',
    ),
  'positions.not_a_thing': (t) =>
    say(`${thing(t)} is nothing a map here can have: ${quoted(t, 'found')}.`, 'It was not used.'),
  'positions.out_of_range': (t) =>
    say(
      `${thing(t)} lies nowhere on the earth: ${t.text('value')}.`,
      likely(t) === null ? 'Check it. It was not used.' : `Write ${likely(t)} if that is meant. It was not used.`,
    ),
  'positions.projected': (t) =>
    say(
      `${thing(t)} is likely given in metres of a grid, not in degrees: ${t.text('value')}.`,
      'Save the file with longitude and latitude (WGS 84). It was not used.',
    ),
  'positions.swapped': (t) =>
    say(
      `${thing(t)} has latitude and longitude the other way round: ${t.text('value')}.`,
      `Write ${likely(t) ?? 'them the right way round'} if that is the place. It was not used.`,
    ),
  'positions.line_too_short': (t) =>
    say(`${thing(t)} is a line that goes nowhere: it has fewer than two places.`, 'It was not used.'),
  'positions.line_gaps': (t) =>
    say(
      `${thing(t)} is in ${t.text('pieces')} pieces; the ${km(t, 'gaps_km')} between them are not in its length.`,
      'Join the pieces, if the way goes on between them.',
    ),
} satisfies Partial<Sentences<MapCode>>;

const asMatch = {
  'positions.zero': (t) =>
    say(`${thing(t)} is at 0, 0, which devices write when they do not know.`, `${notSet} Measure it again.`),
  'positions.swapped_likely': (t) =>
    say(
      `${thing(t)} is far away at ${t.text('value')}; the other way round it is where it should be.`,
      `Write ${likely(t) ?? 'it the other way round'} if that is the place. ${notSet}`,
    ),
  'positions.far_from_present': (t) =>
    say(
      `${thing(t)} is ${km(t, 'moved_km')} from where it stands in the table, more than ${km(t, 'far_km')}.`,
      `${notSet} If the map is right, say so with --far.`,
    ),
  'positions.far_from_others': (t) =>
    say(
      `${thing(t)} is ${km(t, 'away_km')} from the middle of the programme.`,
      `${notSet} If it is right, write it into the table by hand.`,
    ),
  'positions.two_points': (t) =>
    say(
      `${quoted(t)} has ${many(t, 'point', 'points')} in different places: ${t.text('names')}.`,
      'None is set by itself. Keep the right one in the map.',
    ),
  'positions.same_point': (t) =>
    say(`${quoted(t)} has ${many(t, 'point', 'points')} in one place: ${t.text('names')}.`, 'One was used.'),
  'positions.id_and_name': (t) =>
    say(
      `${thing(t)} has the id of ${t.text('one')} and the name of ${t.text('other')}.`,
      `${notSet} Correct one of them in the map.`,
    ),
  'positions.of_two': (t) =>
    say(`${thing(t)} could be any of: ${t.text('ids')}.`, `${notSet} Give it the id instead of the name.`),
  'positions.without_name': (t) =>
    say(`${many(t, 'point has', 'points have')} no name and no id.`, 'Name them, or leave them: they were not used.'),
  'positions.table_missing': (t) => say(`The file ${quoted(t)} is no longer there.`, 'Nothing was written. Try again.'),
  'positions.table_encoding': (t) =>
    say(
      `${quoted(t)} is not in UTF-8, so that its other cells could not be kept as they are.`,
      'Save it as "CSV UTF-8" first. Nothing was written.',
    ),
  'positions.table_broken': (t) =>
    say(
      `${quoted(t)} could not be changed surely, so it was left as it is.`,
      'Mend what "eavewell check" says of it first. Nothing was written.',
    ),
} satisfies Partial<Sentences<MapCode>>;

const asWay = {
  'ways.same_ends': (t) =>
    say(`${thing(t)} comes back to where it starts, ${quoted(t)}.`, 'Fill in where it leads in ways.csv.'),
  'ways.line_unknown': (t) =>
    say(
      `The line ${quoted(t)} of ways.geojson is no way of ways.csv.`,
      `${likely(t) === null ? '' : `Did you mean ${likely(t)}? `}Add the way, or take the line out.`,
    ),
  'ways.no_lines': (t) =>
    say(
      `The file ways.geojson holds no line of a way${t.text('found') === 'geojson' ? '' : `: it is a map of the kind ${t.text('found')}`}.`,
      'Write it as GeoJSON with a line for each way, or take it out of the folder. Lines of another map are taken in with: eavewell positions FOLDER FILE.',
    ),
  'ways.without_line': (t) =>
    say(`${many(t, 'way has', 'ways have')} no line in ways.geojson, such as ${quoted(t)}.`, 'Nothing to do.'),
  'ways.without_length': (t) =>
    say(`The way ${quoted(t)} has neither a length nor a line.`, 'Fill in its length in km.'),
  'ways.length_differs': (t) =>
    say(
      `The way ${quoted(t)} is given as ${km(t, 'length_km')}; its line is ${km(t, 'line_km')}.`,
      'Check both. The length given counts.',
    ),
  'ways.shorter_than_straight': (t) =>
    say(
      `The way ${quoted(t)} is ${km(t, 'length_km')} long, but its ends are ${km(t, 'straight_km')} apart.`,
      'Check its length and the positions of its ends.',
    ),
  'ways.end_not_found': (t) =>
    say(
      `${thing(t)}: no site or place within ${km(t, 'reach_km')} of where it ${t.text('side') === 'to' ? 'ends' : 'starts'}.`,
      'Fill it in in ways.csv, or look further with --reach.',
    ),
} satisfies Partial<Sentences<MapCode>>;

const asLink = {
  'link.unknown_place': (t) =>
    say(
      `There is no site and no place ${quoted(t)}.`,
      `${likely(t) === null ? '' : `Did you mean ${likely(t)}? `}Correct the id, or add it to places.csv.`,
    ),
  'link.site_and_place': (t) =>
    say(`${quoted(t)} is a site and a place.`, 'Give the place another id, so that ways know where they lead.'),
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
