import { useLanguage } from '../../language/LanguageProvider.tsx';
import type { MapView } from './useMapView.ts';
import { nearerByPress } from './useSteps.ts';

/** Brings the map nearer or farther, or shows all of it. */
export function MapButtons({ seen }: { readonly seen: MapView }) {
  const { say } = useLanguage();
  return (
    <div className="map-buttons on-screen">
      <button type="button" onClick={() => seen.zoom(nearerByPress)} aria-label={say('map.nearer')}>
        <svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true" focusable="false">
          <path d="M2 8h12M8 2v12" />
        </svg>
      </button>
      <button type="button" onClick={() => seen.zoom(1 / nearerByPress)} aria-label={say('map.farther')}>
        <svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true" focusable="false">
          <path d="M2 8h12" />
        </svg>
      </button>
      <button type="button" onClick={seen.showAll}>
        {say('map.all')}
      </button>
    </div>
  );
}
