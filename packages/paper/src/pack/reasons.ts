import type { Language } from '@eavewell/words';
import type { Setter } from '../document/setter.ts';
import { type Band, heading, paragraph } from '../flow/index.ts';
import type { PackStation } from './content.ts';
import { exceptionsFirst } from './overview.ts';

/** Why each station holds or does not, exceptions first. */
export function reasons(
  setter: Setter,
  width: number,
  stations: readonly PackStation[],
  language: Language,
): readonly Band[] {
  const told = exceptionsFirst(stations).filter(({ reason }) => reason !== null);
  if (told.length === 0) return [];
  return [
    heading(setter, width, language.say('pack.reasons')),
    ...told.flatMap(({ station, verdict, reason }) => {
      const stands = language.say('pack.station_stands', {
        station: language.stations[station],
        verdict: language.verdicts[verdict],
      });
      return paragraph(setter, width, [
        { text: `${stands}. `, weight: 'strong' },
        { text: reason ?? '', weight: 'plain' },
      ]);
    }),
  ];
}
