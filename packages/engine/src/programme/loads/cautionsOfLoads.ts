import type { Carrier } from '../../kernel/index.ts';
import type { LoadCaution } from './foundLoads.ts';
import type { Piece } from './piece.ts';

/**
 * Which cautions does carrying this ask for?
 *
 * @param carrier - how it is carried
 * @param pieces - what is carried
 * @returns the cautions, in the order of `loadCautions`
 * @definition ours: lifting always; on a boat life vests, the skipper, the mark, nobody on the load; on what rolls a lashed load with nobody on it;
 *   and what must stay apart where chlorine or fuel is among it
 */
export function cautionsOfLoads(
  carrier: Pick<Carrier, 'mode'>,
  pieces: readonly Pick<Piece, 'danger'>[],
): readonly LoadCaution[] {
  const { mode } = carrier;
  const cautions: LoadCaution[] = ['lifting'];
  if (mode === 'boat') cautions.push('lifeVests', 'localSkipperDecides', 'freeboardMark', 'nobodyOnLoad', 'lashed');
  else if (mode !== 'person' && mode !== 'twoPeople') cautions.push('nobodyOnLoad', 'lashed');
  if (pieces.some(({ danger }) => danger !== null)) cautions.push('dangerApart');
  return cautions;
}
