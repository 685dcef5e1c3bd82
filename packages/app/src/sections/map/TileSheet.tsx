import { addProtocol, setWorkerUrl, Map as TileMap } from 'maplibre-gl';
import workerAddress from 'maplibre-gl/dist/maplibre-gl-worker.mjs?worker&url';
import 'maplibre-gl/dist/maplibre-gl.css';
import { Protocol } from 'pmtiles';
import { useEffect, useRef } from 'react';
import { onLight } from '../../look/light.ts';
import { mercatorScale, type Plane } from './plane.ts';
import { type TileColours, tileStyle } from './tileStyle.ts';
import type { MapFile } from './useMapFiles.ts';
import type { Size, View } from './view.ts';

setWorkerUrl(workerAddress);
addProtocol('pmtiles', new Protocol().tile);

/** How much of a map file cannot be drawn. */
export type TileFault = 'some' | 'all';

interface TileSheetProps {
  readonly map: MapFile;
  readonly view: View;
  readonly size: Size;
  readonly plane: Plane;
  /** Called where it cannot be drawn, or some of it. */
  onFault(what: TileFault): void;
}

/** A map file under the sites, in the same place and scale as they are drawn. It is moved with them, never by itself. */
export function TileSheet({ map, view, size, plane, onFault }: TileSheetProps) {
  const element = useRef<HTMLDivElement>(null);
  const drawn = useRef<TileMap | null>(null);
  const latest = useRef({ view, plane, onFault });
  latest.current = { view, plane, onFault };
  useEffect(() => {
    const made = begin(element.current!, map, (what) => latest.current.onFault(what));
    drawn.current = made;
    if (made) place(made, latest.current.view, latest.current.plane);
    const redraw = () => made?.setStyle(tileStyle(map, addressOf(map), colours(element.current!)));
    const end = onLight(redraw);
    return () => {
      end();
      made?.remove();
      drawn.current = null;
    };
  }, [map]);
  useEffect(() => {
    if (drawn.current) place(drawn.current, view, plane);
  }, [view, plane]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the picture follows its element, whose size this is
  useEffect(() => void drawn.current?.resize(), [size]);
  return <div ref={element} className="tile-sheet" aria-hidden="true" />;
}

const addressOf = ({ file }: MapFile) => `pmtiles://${location.origin}/maps/${file}`;

function begin(container: HTMLElement, map: MapFile, onFault: (what: TileFault) => void): TileMap | null {
  try {
    const made = new TileMap({
      ...{ container, interactive: false, attributionControl: false, fadeDuration: 0, renderWorldCopies: true },
      style: tileStyle(map, addressOf(map), colours(container)),
      // So that it is on the paper as well.
      canvasContextAttributes: { preserveDrawingBuffer: true },
    });
    // One tile that cannot be read is no reason to show none.
    made.on('error', (event) => onFault('tile' in event && event.tile ? 'some' : 'all'));
    return made;
  } catch {
    onFault('all');
    return null;
  }
}

/** Puts the middle of the picture where the sites have it, at their scale. Tiles of 512 pixels show the earth at scale 0. */
function place(made: TileMap, view: View, plane: Plane): void {
  const middle = plane.placeAt([view.east_km, view.south_km]);
  if (middle === null) return;
  const around = 2 * Math.PI * mercatorScale(plane.middle.latitude_deg) * view.pixels_per_km;
  made.jumpTo({ center: [middle.longitude_deg, middle.latitude_deg], zoom: Math.log2(around / 512) });
}

function colours(element: Element): TileColours {
  const style = getComputedStyle(element);
  const of = (name: string) => style.getPropertyValue(`--${name}`).trim() || 'gray';
  return {
    ...{ paper: of('paper'), ink: of('ink'), mark: of('mark'), rule: of('rule') },
    ...{ pool: of('pool'), waterline: of('waterline'), figure: of('sheet') },
  };
}
