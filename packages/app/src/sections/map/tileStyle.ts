import type { LayerSpecification, StyleSpecification } from 'maplibre-gl';
import type { MapFile } from './useMapFiles.ts';

/** Colours of the look, as they stand now. */
export interface TileColours {
  readonly paper: string;
  readonly ink: string;
  readonly mark: string;
  readonly rule: string;
  readonly pool: string;
  readonly waterline: string;
  readonly figure: string;
}

type Drawn = 'water' | 'land' | 'road' | 'border' | 'building' | 'other';

/** What a layer shows, by the words of its name; what has none of them is drawn as a thin line of no meaning. */
const words: readonly (readonly [Drawn, RegExp])[] = [
  ['water', /water|river|ocean|sea|lake|stream/i],
  ['building', /build|house/i],
  ['road', /road|street|transport|highway|path|track|rail/i],
  ['border', /bound|border|admin/i],
  ['land', /land|earth|wood|forest|park|green/i],
];

/** What does a layer of this name show? */
export function drawnAs(layer: string): Drawn {
  return words.find(([, form]) => form.test(layer))?.[0] ?? 'other';
}

/**
 * How a map file is drawn: plainly, by what its layers are called, without a word in it, so that nothing has to be fetched.
 *
 * @param map - the file
 * @param address - where its pieces are asked for
 */
export function tileStyle(map: MapFile, address: string, colours: TileColours): StyleSpecification {
  const paper: LayerSpecification = {
    ...{ id: 'paper', type: 'background' },
    paint: { 'background-color': colours.paper },
  };
  if (map.tiles === 'raster') {
    const tiles = { type: 'raster', url: address, tileSize: 256 } as const;
    return { version: 8, sources: { tiles }, layers: [paper, { id: 'tiles', type: 'raster', source: 'tiles' }] };
  }
  const layers = map.layers.map((name) => ({ name, drawn: drawnAs(name) }));
  return {
    version: 8,
    sources: { tiles: { type: 'vector', url: address } },
    layers: [
      paper,
      ...layers.flatMap(({ name, drawn }) => fillOf(name, drawn, colours)),
      ...layers.map(({ name, drawn }) => lineOf(name, drawn, colours)),
    ],
  };
}

function fillOf(name: string, drawn: Drawn, { pool, figure }: TileColours): readonly LayerSpecification[] {
  const colour = drawn === 'water' ? pool : drawn === 'building' ? figure : null;
  if (colour === null) return [];
  return [
    {
      ...{ id: `fill ${name}`, type: 'fill', source: 'tiles', 'source-layer': name },
      filter: ['==', ['geometry-type'], 'Polygon'],
      paint: { 'fill-color': colour },
    },
  ];
}

function lineOf(name: string, drawn: Drawn, colours: TileColours): LayerSpecification {
  const { waterline, ink, mark, rule } = colours;
  const looks = {
    water: { colour: waterline, width: 1.2 },
    road: { colour: ink, width: 0.9 },
    border: { colour: mark, width: 1 },
    building: { colour: mark, width: 0.6 },
    land: { colour: rule, width: 0.6 },
    other: { colour: rule, width: 0.75 },
  } as const;
  const { colour, width } = looks[drawn];
  const dashes = drawn === 'border' ? { 'line-dasharray': [5, 2, 1, 2] } : {};
  return {
    ...{ id: `line ${name}`, type: 'line', source: 'tiles', 'source-layer': name },
    filter: ['!=', ['geometry-type'], 'Point'],
    paint: { 'line-color': colour, 'line-width': width, ...dashes },
  };
}
