import type { HeaviestPiece, RoofFacts, RoofMaterial, SiteCaution, SiteFacts, TankFacts } from './kernel/index.ts';
import { carton_kg } from './parts/index.ts';

/** From this height of the eave on a fall is work at height [m]. Ours: the height of a person; rules begin between 1.2 and 3 m. */
const workAtHeight_m = 2;

/** Coverings that may break under a foot. Common practice, no source: old fibre cement and tiles crack, thatch gives way. */
const mayBreak: readonly RoofMaterial[] = ['fibreCement', 'thatch', 'tile'];

/**
 * Which cautions does the work at this site ask for? What is not known counts as dangerous.
 *
 * @param site - the site's facts
 * @param heaviest - the heaviest piece that is carried there [kg]; null where none has a mass
 * @param isStandJudged - is a stand or its ground judged there?
 * @returns the cautions, in the order of `siteCautions`
 * @definition ours: height where an eave is over 2 m or not measured; a fragile roof where it is said to be one or its covering may break;
 *   a stand where a tank is not known to stand on the ground; lifting over 15 kg or where no mass is known
 */
export function cautionsOf(
  { roofs, tanks }: Pick<SiteFacts, 'roofs' | 'tanks'>,
  heaviest: HeaviestPiece | null,
  isStandJudged: boolean,
): readonly SiteCaution[] {
  const cautions: SiteCaution[] = [];
  const isHigh = ({ eaveHeight_m }: RoofFacts) => eaveHeight_m === null || eaveHeight_m > workAtHeight_m;
  const isFragile = ({ isFragile: said, material }: RoofFacts) =>
    said ?? (material !== null && mayBreak.includes(material));
  const isOnGround = ({ standHeight_m }: TankFacts) => standHeight_m === 0;
  if (roofs.some((roof) => isHigh(roof) || isFragile(roof))) cautions.push('height');
  if (roofs.some(isFragile)) cautions.push('fragileRoof');
  if (isStandJudged || !tanks.every(isOnGround)) cautions.push('stand');
  if (heaviest === null || heaviest.mass_kg > carton_kg) cautions.push('lifting');
  return cautions;
}
