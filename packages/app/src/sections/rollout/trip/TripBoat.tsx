import { type BoatBlock, boatPicture } from '@eavewell/drawing';
import type { TripLoad } from '@eavewell/report/trip';
import { useRef } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { PictureHatches, PictureView } from '../../../look/PictureView.tsx';
import { useWidth } from '../../../look/useWidth.ts';
import { massOf } from './masses.ts';

/** The boat from the side with its load: the same shapes as on paper. */
export function TripBoat({ load }: { readonly load: TripLoad }) {
  const room = useRef<HTMLDivElement>(null);
  const { width } = useWidth(room);
  const language = useLanguage();
  const { say, numbers } = language;
  const cm = (value: number) => say('kit.cm', { amount: numbers.fixed(value, 0) });
  const asCm = (value_m: number | null | undefined) => (value_m == null ? null : value_m * 100);
  const { carrier, freeboard, fuel_kg } = load;
  const fuel: readonly BoatBlock[] =
    (fuel_kg ?? 0) > 0
      ? [
          {
            ...{ blockId: 'fuel', label: say('choices.fuel'), nth: null, mass_kg: fuel_kg ?? 0 },
            said: massOf({ mass_kg: fuel_kg ?? 0, unweighed_count: 0, isKitInPart: false }, language),
          },
        ]
      : [];
  const blocks = [
    ...fuel,
    ...load.stops.map((stop) => ({
      ...{ blockId: `stop:${stop.siteId}`, label: stop.name, nth: String(stop.nth), mass_kg: stop.mass_kg },
      said: massOf(stop, language),
    })),
  ];
  const input = {
    ...{ blocks, limit_kg: load.limit_kg, freeboard_cm: freeboard?.freeboard_cm ?? null },
    ...{ atLimit_cm: asCm(carrier?.freeboard_m), leastFreeboard_cm: asCm(carrier?.leastFreeboard_m) },
    length_m: carrier?.length_m ?? null,
  };
  const words = {
    freeboard: (value: number) =>
      say('kit.freeboard', { height: cm(Math.floor(value)), how: freeboard?.from ?? 'atLimit' }),
    mark: (value: number) => say('kit.freeboard_mark', { height: cm(value) }),
    spare: (mass_kg: number) =>
      say(load.isKitInPart ? 'rolloutTrip.spare_most' : 'kit.to_spare', {
        mass: numbers.quantity(Math.floor(mass_kg), 'kg'),
      }),
    length: (length_m: number | null) =>
      length_m === null ? say('rolloutTrip.not_to_scale') : numbers.quantity(length_m, 'm'),
  };
  const most_px = 900;
  return (
    <div ref={room} className="trip-boat" style={{ maxInlineSize: most_px }} dir="ltr">
      <PictureHatches />
      {width === null || width < 100 ? null : (
        <PictureView
          picture={boatPicture(input, words, { width: Math.min(most_px, width) })}
          name={say('rolloutTrip.boat_name')}
        />
      )}
    </div>
  );
}
