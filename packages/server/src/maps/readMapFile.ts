import { type FileHandle, open } from 'node:fs/promises';
import type { Checked } from '@eavewell/engine';
import { recordProblem } from '@eavewell/records';
import { PMTiles, type RangeResponse, type Source, TileType } from 'pmtiles';

/** What a map file holds. */
export interface MapFile {
  /** Its name, with .pmtiles. */
  readonly file: string;
  readonly size_bytes: number;
  readonly tiles: 'vector' | 'raster';
  readonly leastZoom: number;
  readonly mostZoom: number;
  readonly west_deg: number;
  readonly south_deg: number;
  readonly east_deg: number;
  readonly north_deg: number;
  /** Names of the layers of vector tiles. */
  readonly layers: readonly string[];
  /** Whose data it is, as plain text; null where it does not say. */
  readonly attribution: string | null;
}

const tilesOf: Readonly<Partial<Record<TileType, MapFile['tiles']>>> = {
  [TileType.Mvt]: 'vector',
  [TileType.Png]: 'raster',
  [TileType.Jpeg]: 'raster',
  [TileType.Webp]: 'raster',
  [TileType.Avif]: 'raster',
};

/** Length of the header, and of its first part that names the form and its version [byte]. */
const [headerLength, nameLength] = [127, 8] as const;
/** Most layers and letters taken from what a file says of itself. Ours. */
const [mostLayers, mostLetters] = [200, 300] as const;

/** A file as the library reads it. */
class FileSource implements Source {
  constructor(
    private readonly file: FileHandle,
    private readonly name: string,
  ) {}

  getKey(): string {
    return this.name;
  }

  async getBytes(offset: number, length: number): Promise<RangeResponse> {
    const bytes = new Uint8Array(length);
    const { bytesRead } = await this.file.read(bytes, 0, length, offset);
    return { data: bytes.buffer.slice(0, bytesRead) };
  }
}

/**
 * What is in a file of map tiles?
 *
 * @param path - where it is
 * @param file - what it is called
 * @returns kind of tiles, zooms, bounds [deg], layers, whose data it is
 * @problem map.unreadable - reason: kind, version, cut (shorter than it says), tiles (of a kind not known), inside
 * @source pmtiles-3, header and metadata
 */
export async function readMapFile(path: string, file: string): Promise<Checked<MapFile>> {
  const wrong = (reason: string) =>
    ({ ok: false, problems: [recordProblem('map.unreadable', {}, { value: file, reason })] }) as const;
  const handle = await open(path);
  try {
    const { size } = await handle.stat();
    const fault = await nameFault(handle);
    if (fault !== null) return wrong(fault);
    if (size < headerLength) return wrong('cut');
    const tiles = new PMTiles(new FileSource(handle, file));
    const header = await tiles.getHeader();
    const ends = [
      header.rootDirectoryOffset + header.rootDirectoryLength,
      header.jsonMetadataOffset + header.jsonMetadataLength,
      header.leafDirectoryOffset + (header.leafDirectoryLength ?? 0),
      header.tileDataOffset + (header.tileDataLength ?? 0),
    ];
    if (Math.max(...ends) > size) return wrong('cut');
    const kind = tilesOf[header.tileType];
    if (kind === undefined) return wrong('tiles');
    const value = {
      ...{ file, size_bytes: size, tiles: kind, leastZoom: header.minZoom, mostZoom: header.maxZoom },
      ...{ west_deg: header.minLon, south_deg: header.minLat, east_deg: header.maxLon, north_deg: header.maxLat },
      ...saidOf(await tiles.getMetadata()),
    };
    return { ok: true, value, problems: [] };
  } catch {
    return wrong('inside');
  } finally {
    await handle.close();
  }
}

/** Does it begin as such a file does? */
async function nameFault(handle: FileHandle): Promise<'kind' | 'version' | null> {
  const { buffer } = await handle.read(Buffer.alloc(nameLength), 0, nameLength, 0);
  if (buffer.toString('latin1', 0, 2) !== 'PM') return 'kind';
  if (buffer.toString('latin1', 0, 7) !== 'PMTiles') return buffer[2] === 2 ? 'version' : 'kind';
  return buffer[7] === 3 ? null : 'version';
}

/** What a file says of itself, as plain text. */
function saidOf(metadata: unknown): Pick<MapFile, 'layers' | 'attribution'> {
  const { vector_layers, attribution } = (metadata ?? {}) as Readonly<Record<string, unknown>>;
  const layers = (Array.isArray(vector_layers) ? vector_layers : []).flatMap(
    (layer: { readonly id?: unknown } | null) =>
      typeof layer?.id === 'string' ? [layer.id.slice(0, mostLetters)] : [],
  );
  const text =
    typeof attribution === 'string'
      ? attribution
          .replace(/<[^>]*>/g, '')
          .replace(/\s+/g, ' ')
          .trim()
      : '';
  return { layers: layers.slice(0, mostLayers), attribution: text === '' ? null : text.slice(0, mostLetters) };
}
