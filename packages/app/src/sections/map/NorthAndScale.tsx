import { useLanguage } from '../../language/LanguageProvider.tsx';
import type { Plane } from './plane.ts';
import { scaleBarOf } from './scaleBar.ts';
import type { View } from './view.ts';

/** Which way is north, and how long a kilometre is in the middle of the picture. */
export function NorthAndScale({
  view,
  plane,
  wide,
}: {
  readonly view: View;
  readonly plane: Plane;
  readonly wide: number;
}) {
  const { say, numbers } = useLanguage();
  const pixels_per_km = view.pixels_per_km / plane.truth([view.east_km, view.south_km]);
  const { length_km, pixels } = scaleBarOf(pixels_per_km, Math.min(120, wide / 3));
  const isShort = length_km < 1;
  const amount = numbers.fixed(isShort ? length_km * 1000 : length_km, 0);
  const text = say(isShort ? 'map.metres' : 'map.kilometres', { amount });
  return (
    <>
      <svg className="map-north" width="24" height="54" viewBox="0 0 24 54" role="img" aria-label={say('map.north_up')}>
        <text x="12" y="12" textAnchor="middle">
          {say('map.north')}
        </text>
        <path className="head" d="M12 16 17 28H7Z" />
        <path className="shaft" d="M12 27V52" />
      </svg>
      <p className="map-scale">
        <span>{text}</span>
        <span className="bar" style={{ inlineSize: pixels }} />
      </p>
    </>
  );
}
