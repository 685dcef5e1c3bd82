import type { GaugeFinding, SiteFacts } from '../kernel/index.ts';
import type { Programme } from '../site.ts';
import type { Market } from './market.ts';

/** Everything a site's remedies are looked for with. */
export interface RemedyCase {
  readonly site: SiteFacts;
  readonly gauge: GaugeFinding | undefined;
  readonly programme: Programme;
  readonly market: Market;
}
