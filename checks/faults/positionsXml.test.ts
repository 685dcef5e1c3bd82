import { describe } from 'vitest';
import { assertCases, bytes, gpx, kml, kmlPoint, type MapCase, noted, tarn, warned, wpt } from './mapCases.ts';

const spared: readonly MapCase[] = [
  {
    fault: 'a KML with latitude first',
    file: bytes(kml(kmlPoint('Ferry', '-8.75,125.5') + tarn)),
    problems: [warned('positions.swapped', '125.5, -8.75')],
    points: ['Tarn'],
  },
  {
    fault: 'a decimal comma in KML',
    file: bytes(kml(kmlPoint('Ferry', '125,5;-8,75') + tarn)),
    problems: [warned('positions.not_a_number', '125,5;-8,75')],
    points: ['Tarn'],
  },
  {
    fault: 'a space inside a KML position',
    file: bytes(kml(kmlPoint('Ferry', '125.5, -8.75') + tarn)),
    problems: [warned('positions.not_a_number', '125.5,')],
    points: ['Tarn'],
  },
  {
    fault: 'a number with two points',
    file: bytes(kml(kmlPoint('Ferry', '125.5.1,-8.75') + tarn)),
    problems: [warned('positions.not_a_number', '125.5.1,-8.75')],
    points: ['Tarn'],
  },
  {
    fault: 'a KML place without a position',
    file: bytes(kml(`<Placemark><name>Ferry</name></Placemark>${tarn}`)),
    problems: [noted('positions.without_geometry', 'Ferry')],
    points: ['Tarn'],
  },
  {
    fault: 'a link to another map, and pictures',
    file: bytes(
      kml(
        `<Style id="s"><IconStyle><Icon><href>http://example.invalid/pin.png</href></Icon></IconStyle></Style>` +
          `<NetworkLink><name>more</name><Link><href>http://example.invalid/more.kml</href></Link></NetworkLink>${tarn}`,
      ),
    ),
    problems: [
      warned('positions.link_not_followed', 'http://example.invalid/more.kml'),
      noted('positions.address_not_opened', 'http://example.invalid/pin.png'),
    ],
    points: ['Tarn'],
  },
  {
    fault: 'folders in folders, and a track with times',
    file: bytes(
      kml(
        `<Folder><name>a</name><Folder><Folder>${tarn}</Folder></Folder></Folder><Placemark><name>Path</name><gx:Track>` +
          '<when>2026-01-01T00:00:00Z</when><when>2026-01-01T00:10:00Z</when>' +
          '<gx:coord>125.5 -8.75 3</gx:coord><gx:coord>125.6 -8.75 4</gx:coord></gx:Track></Placemark>',
      ),
    ),
    problems: [noted('positions.height_left', 2), noted('positions.time_left', 1)],
    points: ['Tarn'],
    lines: 1,
  },
  {
    fault: 'a track whose positions are no numbers',
    file: bytes(
      kml(
        `<Placemark><name>Path</name><gx:Track><when>2026-01-01T00:00:00Z</when><gx:coord>125,5 -8,75 0</gx:coord></gx:Track></Placemark>${tarn}`,
      ),
    ),
    problems: [warned('positions.not_a_number', '125,5 -8,75 0')],
    points: ['Tarn'],
  },
  {
    fault: 'a decimal comma in GPX',
    file: bytes(gpx(wpt('Ferry', '-8,75', '125,5') + wpt('Tarn', '-8.5', '125.25'))),
    problems: [warned('positions.not_a_number', '-8,75, 125,5')],
    points: ['Tarn'],
  },
  {
    fault: 'a waypoint without a latitude',
    file: bytes(gpx(`<wpt lon="125.5"><name>Ferry</name></wpt>${wpt('Tarn', '-8.5', '125.25')}`)),
    problems: [warned('positions.not_a_number', ', 125.5')],
    points: ['Tarn'],
  },
  {
    fault: 'NaN for a latitude',
    file: bytes(gpx(wpt('Ferry', 'NaN', '125.5') + wpt('Tarn', '-8.5', '125.25'))),
    problems: [warned('positions.not_a_number', 'NaN, 125.5')],
    points: ['Tarn'],
  },
  {
    fault: 'waypoints without a name',
    file: bytes(gpx('<wpt lat="-8.5" lon="125.25"/><wpt lat="-8.75" lon="125.5"/>')),
    problems: [],
    points: [null, null],
  },
  {
    fault: 'a route, and a track in pieces',
    file: bytes(
      gpx(
        '<rte><name>Route</name><rtept lat="-8.5" lon="125.25"/><rtept lat="-8.75" lon="125.5"/></rte>' +
          '<trk><name>Track</name><trkseg><trkpt lat="-8" lon="125"/><trkpt lat="-8" lon="125.1"/></trkseg>' +
          '<trkseg><trkpt lat="-8" lon="125.2"/><trkpt lat="-8" lon="125.3"/></trkseg></trk>',
      ),
    ),
    problems: [noted('positions.line_gaps', 'Track')],
    lines: 2,
  },
  {
    fault: 'a track of one place',
    file: bytes(
      gpx(`<trk><name>Track</name><trkseg><trkpt lat="-8" lon="125"/></trkseg></trk>${wpt('Tarn', '-8.5', '125.25')}`),
    ),
    problems: [warned('positions.line_too_short', 'Track')],
    points: ['Tarn'],
  },
  {
    fault: 'one wrong place in a track',
    file: bytes(
      gpx(
        `<trk><name>Track</name><trkseg><trkpt lat="-8" lon="125"/><trkpt lat="-8" lon="12S"/><trkpt lat="-8" lon="126"/></trkseg></trk>${wpt('Tarn', '-8.5', '125.25')}`,
      ),
    ),
    problems: [warned('positions.not_a_number', '-8, 12S')],
    points: ['Tarn'],
    lines: 0,
  },
];

describe('a fault of KML or GPX that costs its own thing only', () => assertCases(spared));
