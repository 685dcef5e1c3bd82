/**
 * Every fault that reading positions and ways from a map file, matching them and keeping them can find. value: what was found, as
 * written; name: what the file calls the thing; number: which of the file's things it is, counted from 1.
 */
export const positionProblems = {
  // The file as a whole.
  'positions.file_missing': 'blocker',
  'positions.not_a_map': 'blocker', // found: what it seems to be
  'positions.json_broken': 'blocker', // reason: cutOff or broken; letter of the text where that is known
  'positions.not_geojson': 'blocker', // found: its type
  'positions.xml_broken': 'blocker', // reason
  'positions.doctype': 'blocker',
  'positions.too_deep': 'blocker', // deepest
  'positions.too_many': 'blocker', // most: elements of XML
  'positions.nothing': 'blocker',
  'positions.crs_other': 'blocker', // value: the name of the system of coordinates
  'positions.crs_said': 'note', // value: its name
  'positions.link_not_followed': 'warning', // value: the first address; count
  'positions.address_not_opened': 'note', // value: the first address of a picture or a page; count
  'positions.area_left': 'note', // value: the first one's name; count
  'positions.without_geometry': 'note', // value: the first one's name; count
  'positions.height_left': 'note', // count of positions
  'positions.time_left': 'note', // count of things
  // A zip and the map in it. value: the file, or the entry.
  'zip.broken': 'blocker', // reason
  'zip.cut_off': 'blocker',
  'zip.too_many': 'blocker', // count, most
  'zip.too_large': 'blocker', // largest_MB
  'zip.too_dense': 'blocker', // most: how many times its size an entry may grow
  'zip.unreadable': 'blocker', // reason: encrypted, or a compression that is not read
  'positions.kmz_without_kml': 'blocker', // found: what is in it
  'positions.kmz_taken': 'note', // value: the entry read; others: those not read
  // One thing in the file. It is not used; the others are.
  'positions.not_a_number': 'warning',
  'positions.not_a_thing': 'warning', // found
  'positions.out_of_range': 'warning', // likely, or ''
  'positions.projected': 'warning',
  'positions.swapped': 'warning', // likely
  'positions.line_too_short': 'warning',
  'positions.line_gaps': 'note', // pieces, gaps_km; used without its gaps
  // A point and what it would set. It is never set by itself.
  'positions.zero': 'warning',
  'positions.swapped_likely': 'warning', // likely
  'positions.far_from_present': 'warning', // moved_km, far_km
  'positions.far_from_others': 'warning', // away_km
  'positions.two_points': 'warning', // names
  'positions.id_and_name': 'warning', // one, other: the two that are meant
  'positions.of_two': 'warning', // ids
  'positions.same_point': 'note', // names
  'positions.without_name': 'note', // count
  // Writing into a table. value: the table's file.
  'positions.table_missing': 'blocker',
  'positions.table_encoding': 'blocker',
  'positions.table_broken': 'blocker',
  // Ways and their lines.
  'link.unknown_place': 'blocker', // a way's end; likely
  'link.site_and_place': 'blocker', // an id that a site and a place both have
  'ways.same_ends': 'warning',
  'ways.line_unknown': 'warning', // a line without a way
  'ways.no_lines': 'warning', // found: what kind of map it is
  'ways.without_line': 'note', // count
  'ways.without_length': 'warning', // neither a length nor a line
  'ways.length_differs': 'warning', // length_km, line_km
  'ways.shorter_than_straight': 'warning', // length_km, straight_km
  'ways.end_not_found': 'note', // side: from or to; reach_km
} as const;
