import type { StorageSaid } from '../language.ts';
import type { Speech } from '../problems.ts';

/** The smallest tanks that would do, with a space before: for the target, and to hold. Empty where none is known. */
export function tanksThatWouldDo(w: Speech, f: StorageSaid): string {
  return withoutSource(w, f, smallestTanks(w, f));
}

function smallestTanks(w: Speech, f: StorageSaid): string {
  const { say, numbers } = w;
  if (f.noExactSize !== null) return catalogueTanks(w, f);
  if (f.tankForTarget_L === null) return '';
  const tight = numbers.tankLitres(f.tankForTarget_L);
  if (f.tankToHold_L === null) return ` ${say('findings.tanks.tight', { tight })}`;
  const hold = numbers.tankLitres(f.tankToHold_L);
  return ` ${hold === tight ? say('findings.tanks.hold', { hold }) : say('findings.tanks.both', { tight, hold })}`;
}

/** Sizes are asked for without the second source: so it is said where there is one. */
export function withoutSource({ say }: Speech, { secondSource }: StorageSaid, text: string): string {
  if (secondSource === null || text === '') return text;
  const sentence = `${text.slice(1, 2).toLowerCase()}${text.slice(2)}`;
  return ` ${say('findings.withoutSource', { sentence })}`;
}

/** The same where sizes are run one by one: of the catalogue, and no size between. */
function catalogueTanks({ say, numbers }: Speech, f: StorageSaid): string {
  if (f.catalogueForTarget_L === null) return ` ${say('findings.catalogue.none')}`;
  const tight = numbers.litres(f.catalogueForTarget_L);
  if (f.catalogueToHold_L === null) return ` ${say('findings.catalogue.tight', { tight })}`;
  const hold = numbers.litres(f.catalogueToHold_L);
  return f.catalogueToHold_L === f.catalogueForTarget_L
    ? ` ${say('findings.catalogue.hold', { hold })}`
    : ` ${say('findings.catalogue.both', { tight, hold })}`;
}

/** What tank would hold, of a site that is tight; `withoutIt` where it rests on a second source. */
export function tankToHold({ say, numbers }: Speech, f: StorageSaid, how: 'alone' | 'withoutIt' = 'alone'): string {
  const of = f.catalogueToHold_L !== null ? 'catalogue' : 'tanks';
  const volume_L = f.catalogueToHold_L ?? f.tankToHold_L;
  if (volume_L === null) return '';
  const hold = of === 'catalogue' ? numbers.litres(volume_L) : numbers.tankLitres(volume_L);
  return ` ${say(`findings.${of}.${how === 'withoutIt' ? 'holdWithoutIt' : 'hold'}`, { hold })}`;
}
