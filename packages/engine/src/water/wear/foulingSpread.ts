import type { Spread } from '../../kernel/index.ts';
import { earlyShare_fraction, lateShare_fraction } from './constants.ts';
import { foulingAtShare_ratio } from './foulingBelief.ts';
import type { SiteFouling } from './siteFouling.ts';

/** What is believed of a site's fouling, whatever its turbidity: the tenth, middle and ninetieth of a hundred. All stretches have one grid. */
export function foulingSpread({ stretch_fraction, beliefs }: SiteFouling): Spread {
  const { lnFouling_ratio } = beliefs[0]!;
  const weight_fraction = lnFouling_ratio.map((_, place) =>
    beliefs.reduce((sum, one, stretch) => sum + stretch_fraction[stretch]! * one.weight_fraction[place]!, 0),
  );
  const at = (share: number) => foulingAtShare_ratio({ lnFouling_ratio, weight_fraction }, share);
  return { p10: at(earlyShare_fraction), p50: at(1 / 2), p90: at(lateShare_fraction) };
}
