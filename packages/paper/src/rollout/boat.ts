import { type BoatBlock, boatPicture } from '@eavewell/drawing';
import { massOf, type TripLoad } from '@eavewell/report';
import type { Language } from '@eavewell/words';
import type { Setter } from '../document/setter.ts';
import { pt_per_px } from '../drawing/shapesOnPaper.ts';
import type { Band } from '../flow/index.ts';
import { fitted, pictureBand } from '../pack/pictureBand.ts';

/** What lies in the boat from the stern: fuel, then the last stop, so that the first lies nearest the bow. */
export function blocksOf(load: TripLoad, language: Language): readonly BoatBlock[] {
  const { say, numbers } = language;
  const fuel = load.fuel_kg ?? 0;
  const fuelBlock: readonly BoatBlock[] =
    fuel <= 0
      ? []
      : [
          {
            ...{ blockId: 'fuel', label: say('rolloutPapers.fuel'), nth: null, mass_kg: fuel },
            said: numbers.quantity(fuel, 'kg'),
          },
        ];
  return [
    ...fuelBlock,
    ...load.stops.map((stop) => ({
      ...{ blockId: `stop:${stop.siteId}`, label: stop.name, nth: String(stop.nth), mass_kg: stop.mass_kg },
      said: massOf(stop, language),
    })),
  ];
}

/**
 * The boat from the side with its load.
 *
 * @param setter - lays its letters
 * @param width - of the body [pt]
 * @param load - what is aboard
 * @param language - words
 * @param enlarged - times as large as it is laid for: its letters too
 */
export function boatBand(setter: Setter, width: number, load: TripLoad, language: Language, enlarged = 1): Band {
  const { say, numbers } = language;
  const cm = (value: number) => say('rolloutPapers.cm', { amount: numbers.fixed(value, 0) });
  const { carrier, freeboard } = load;
  const asCm = (value_m: number | null | undefined) => (value_m == null ? null : value_m * 100);
  const width_px = Math.floor(width / pt_per_px / enlarged);
  const picture = boatPicture(
    {
      blocks: blocksOf(load, language),
      limit_kg: load.limit_kg,
      freeboard_cm: freeboard?.freeboard_cm ?? null,
      atLimit_cm: asCm(carrier?.freeboard_m),
      leastFreeboard_cm: asCm(carrier?.leastFreeboard_m),
      length_m: carrier?.length_m ?? null,
    },
    {
      freeboard: (value) => say('rolloutPapers.freeboard_of', { height: cm(Math.floor(value)) }),
      mark: (value) => say('rolloutPapers.mark', { height: cm(value) }),
      spare: (mass_kg) =>
        say(load.isKitInPart ? 'rolloutPapers.spare_most' : 'rolloutPapers.spare', {
          mass: numbers.quantity(Math.floor(mass_kg), 'kg'),
        }),
      length: (length_m) => (length_m === null ? say('rolloutPapers.not_to_scale') : numbers.quantity(length_m, 'm')),
    },
    { width: width_px },
  );
  const size = {
    ...fitted(picture, { width, height: Number.MAX_VALUE }),
    ...{ scale: pt_per_px * enlarged, width_pt: picture.width * pt_per_px * enlarged },
    height_pt: picture.height * pt_per_px * enlarged,
  };
  const said = load.stops.map((stop) => `${stop.nth} ${stop.name} ${massOf(stop, language)}`).join(', ');
  return { ...pictureBand(setter, picture, size, say('rolloutPapers.boat', { said }), 10), keepsNext: false };
}
