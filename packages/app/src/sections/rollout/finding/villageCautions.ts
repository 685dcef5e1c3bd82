import type { RolloutSheet } from '@eavewell/tables';
import type { AppLanguage } from '@eavewell/words/app';
import type { VillageFound } from './villageFound.ts';

/** What is not sure of a village a crew comes to or came to: its water is not treated, does not last, or not all that is carried there is counted. */
export function villageCautions(
  { kind, village: { siteId, name }, ...found }: VillageFound,
  { candidates }: Pick<RolloutSheet, 'candidates'>,
  { say }: Pick<AppLanguage, 'say'>,
): readonly string[] {
  const candidate = candidates.find((one) => one.siteId === siteId);
  const stop = 'coming' in found ? found.coming?.stop : undefined;
  if (kind === 'notPlanned' || (stop === undefined && candidate === undefined)) return [];
  const isUntreated = stop?.isUntreated ?? candidate?.isUntreated ?? false;
  const verdict = candidate?.verdict ?? null;
  return [
    ...(isUntreated ? [say('rolloutFinding.untreated', { name })] : []),
    ...(verdict === 'short' || verdict === 'unknown' ? [say('rolloutFinding.not_holding', { name, verdict })] : []),
    ...(kind === 'coming' && stop?.isKitInPart ? [say('rolloutFinding.kit_in_part', { name })] : []),
  ];
}
