import { truncate } from 'node:fs/promises';
import { join } from 'node:path';
import { readMapFile } from '@eavewell/formats';
import { describe, expect, it } from 'vitest';
import { readMap } from '../../packages/formats/src/readMap.ts';
import { inFolder, line } from './folder.ts';
import { assertCases, bytes, collection, good, json, kml, type MapCase, ofFile, tarn } from './mapCases.ts';

const wholeFiles: readonly MapCase[] = [
  { fault: 'an empty file', file: bytes(' \n'), problems: [ofFile('file.empty')] },
  {
    fault: 'a picture',
    file: Uint8Array.of(0xff, 0xd8, 0xff, 0xe0, 0, 0, 1, 2),
    problems: [ofFile('file.wrong_encoding')],
  },
  { fault: 'a table', file: bytes('siteId,lat\nS1,8\n'), problems: [ofFile('positions.not_a_map')] },
  { fault: 'a web page', file: bytes('<!DOCTYPE html><html></html>'), problems: [ofFile('positions.not_a_map')] },
  { fault: 'XML of another kind', file: bytes('<svg><path/></svg>'), problems: [ofFile('positions.not_a_map')] },
  {
    fault: 'JSON cut off',
    file: bytes('{"type":"FeatureCollection","feat'),
    problems: [ofFile('positions.json_broken')],
  },
  { fault: 'JSON that is no map', file: json({ name: 'x' }), problems: [ofFile('positions.not_geojson')] },
  { fault: 'a list', file: json([good]), problems: [ofFile('positions.not_geojson')] },
  {
    fault: 'TopoJSON',
    file: json({ type: 'Topology', objects: {}, arcs: [] }),
    problems: [ofFile('positions.not_geojson')],
  },
  {
    fault: 'features that are no list',
    file: json({ type: 'FeatureCollection', features: 7 }),
    problems: [ofFile('positions.not_geojson')],
  },
  { fault: 'XML cut off', file: bytes(kml(tarn).slice(0, -20)), problems: [ofFile('positions.xml_broken')] },
  {
    fault: 'XML cut off inside a tag',
    file: bytes('<kml><Document id="a'),
    problems: [ofFile('positions.xml_broken')],
  },
  { fault: 'tags that cross', file: bytes('<kml><a><b></a></b></kml>'), problems: [ofFile('positions.xml_broken')] },
  {
    fault: 'an entity nobody declared',
    file: bytes(kml('<name>&tarn;</name>')),
    problems: [ofFile('positions.xml_broken')],
  },
  {
    fault: 'entities that grow',
    file: bytes(`<!DOCTYPE kml [<!ENTITY a "ha"><!ENTITY b "&a;&a;&a;">]>${kml('<name>&b;</name>', '')}`),
    problems: [ofFile('positions.doctype')],
  },
  {
    fault: 'an entity that is a file',
    file: bytes(`<?xml version="1.0"?><!DOCTYPE kml SYSTEM "file:///etc/hostname">${kml(tarn, '')}`),
    problems: [ofFile('positions.doctype')],
  },
  {
    fault: 'folders in folders without end',
    file: bytes(kml('<Folder>'.repeat(5000) + '</Folder>'.repeat(5000))),
    problems: [ofFile('positions.too_deep')],
  },
  {
    fault: 'elements without number',
    file: bytes(kml('<a/>'.repeat(300_000))),
    problems: [ofFile('positions.too_many')],
  },
  { fault: 'a map without a thing', file: json(collection()), problems: [ofFile('positions.nothing')] },
  {
    fault: 'metres of a grid, said in the file',
    file: json({ ...collection(good), crs: { type: 'name', properties: { name: 'urn:ogc:def:crs:EPSG::32751' } } }),
    problems: [ofFile('positions.crs_other', 'urn:ogc:def:crs:EPSG::32751')],
  },
  {
    fault: 'another system, named by an address',
    file: json({ ...collection(good), crs: { type: 'link', properties: { href: 'http://example.invalid/crs/4' } } }),
    problems: [ofFile('positions.crs_other', 'http://example.invalid/crs/4')],
  },
];

describe('a map that cannot be read at all', () => assertCases(wholeFiles));

describe('JSON that is broken', () => {
  const reason = (text: string) => readMap(bytes(text), 'a.map').problems[0]!.facts['reason'];

  it('was cut off, or is broken inside', () => {
    for (const text of ['{"type":"Feat', '{"type":', '{"features":[1,', '{']) expect(reason(text)).toBe('cutOff');
    for (const text of ['{"type":NaN}', '{type:1}', '{"a":1}}', '[1,]']) expect(reason(text)).toBe('broken');
  });
});

describe('a file that cannot be opened', () => {
  const of = (name: string, folder: string) =>
    readMapFile(join(folder, name)).then(({ problems }) => problems.map(line));

  it('is not there, is a folder, or is too large', async () => {
    await inFolder({ 'dir/a.kml': '', 'large.gpx': '' }, async (folder) => {
      await truncate(join(folder, 'large.gpx'), 50e6 + 1);
      const value = (name: string) => JSON.stringify(join(folder, name));
      expect(await of('none.gpx', folder)).toEqual([
        `positions.file_missing blocker @ none.gpx - - = ${value('none.gpx')}`,
      ]);
      expect(await of('dir', folder)).toEqual([`file.not_a_file blocker @ dir - - = ${value('dir')}`]);
      expect(await of('large.gpx', folder)).toEqual([`file.too_large blocker @ large.gpx - - = ${value('large.gpx')}`]);
      expect(await of('dir/a.kml', folder)).toEqual(['file.empty blocker @ a.kml - - = "a.kml"']);
    });
  });
});
