import { crc32, deflateSync, gzipSync } from 'node:zlib';

/** A number in groups of seven bits, least first, as directories and vector tiles have it. */
function varint(value: number): readonly number[] {
  const bytes: number[] = [];
  let rest = value;
  while (rest > 127) {
    bytes.push((rest % 128) + 128);
    rest = Math.floor(rest / 128);
  }
  return [...bytes, rest];
}

const packed = (...values: readonly number[]) => values.flatMap(varint);
/** A field of a vector tile that holds bytes. */
const field = (number: number, bytes: readonly number[]) => [
  ...varint(number * 8 + 2),
  ...varint(bytes.length),
  ...bytes,
];
const text = (value: string) => [...Buffer.from(value, 'utf8')];
const zigzag = (value: number) => (value < 0 ? -value * 2 - 1 : value * 2);

/** A square in the middle of a tile, as a feature of kind polygon, and a line across it. */
function vectorTile(): Uint8Array {
  const at = (...pairs: readonly number[]) => pairs.map(zigzag);
  const square = [1 * 8 + 1, ...at(1024, 1024), 3 * 8 + 2, ...at(2048, 0, 0, 2048, -2048, 0), 1 * 8 + 7];
  const line = [1 * 8 + 1, ...at(0, 2048), 1 * 8 + 2, ...at(4096, 0)];
  const feature = (kind: number, geometry: readonly number[]) =>
    field(2, [...packed(3 * 8, kind), ...field(4, packed(...geometry))]);
  const layer = (name: string, features: readonly number[]) =>
    field(3, [...packed(15 * 8, 2), ...field(1, text(name)), ...features, ...packed(5 * 8, 4096)]);
  return Uint8Array.from([...layer('water', feature(3, square)), ...layer('roads', feature(2, line))]);
}

/** A picture of one grey point as PNG: signature, header (grey, eight bits), data, end. */
function pointPicture(): Uint8Array {
  const chunk = (name: string, data: Uint8Array) => {
    const body = Buffer.concat([Buffer.from(name, 'latin1'), data]);
    const [length, check] = [Buffer.alloc(4), Buffer.alloc(4)];
    length.writeUInt32BE(data.length);
    check.writeUInt32BE(crc32(body));
    return Buffer.concat([length, body, check]);
  };
  const header = Uint8Array.from([0, 0, 0, 1, 0, 0, 0, 1, 8, 0, 0, 0, 0]);
  const signature = Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  const data = deflateSync(Uint8Array.from([0, 0xb0]));
  return Buffer.concat([signature, chunk('IHDR', header), chunk('IDAT', data), chunk('IEND', new Uint8Array())]);
}

/** What a tiny map is to be, and what is to be wrong with it. */
export interface TinyMap {
  readonly tiles?: 'vector' | 'raster';
  readonly attribution?: string;
  /** Bytes of the header that are to be others. */
  readonly header?: Readonly<Record<number, number>>;
  /** The metadata as it stands in the file, where it is to be wrong. */
  readonly metadata?: Uint8Array;
}

/**
 * A file of map tiles with a single tile, that of the whole earth, made from the description of the form: PMTiles
 * specification, version 3.1 (header, directory, metadata) and the encoding of vector tiles (version 2.1, from memory).
 */
export function tinyMap({ tiles = 'vector', attribution, header = {}, metadata }: TinyMap = {}): Uint8Array {
  const isVector = tiles === 'vector';
  const tile = isVector ? gzipSync(vectorTile()) : pointPicture();
  // One entry: tile 0, once, its length, and its offset plus one.
  const root = gzipSync(Uint8Array.from(packed(1, 0, 1, tile.length, 1)));
  const layers = ['water', 'roads'].map((id) => ({ id, fields: {} }));
  const said = gzipSync(JSON.stringify({ ...(isVector ? { vector_layers: layers } : {}), attribution }));
  const json = metadata ?? said;
  const head = Buffer.alloc(127);
  head.write('PMTiles', 'latin1');
  head[7] = 3;
  const at = { root: 127, json: 127 + root.length, tile: 127 + root.length + json.length };
  const places = [at.root, root.length, at.json, json.length, 0, 0, at.tile, tile.length, 1, 1, 1];
  for (const [i, value] of places.entries()) head.writeBigUInt64LE(BigInt(value), 8 + 8 * i);
  head.set([1, 2, isVector ? 2 : 1, isVector ? 1 : 2, 0, 0], 96);
  for (const [i, degrees] of [-180, -85, 180, 85].entries()) head.writeInt32LE(degrees * 1e7, 102 + 4 * i);
  for (const [place, byte] of Object.entries(header)) head[Number(place)] = byte;
  return Buffer.concat([head, root, json, tile]);
}
