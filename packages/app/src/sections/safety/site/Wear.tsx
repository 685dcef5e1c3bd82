import { duePicture } from '@eavewell/drawing';
import { wearEnds } from '@eavewell/engine';
import { useCallback } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { todayHere } from '../cups.ts';
import { dueWords } from '../cupWords.ts';
import { Drawn } from './Drawn.tsx';
import { Opens, Part } from './opening.tsx';
import { dayOf, type SiteReport } from './safetyFigures.ts';

type Wear = NonNullable<SiteReport['wear']>[number];

/** The end that comes first in most futures. */
const firstEnd = ({ endsBy_fraction: by }: Wear) =>
  wearEnds.reduce((first, one) => (by[one] > by[first] ? one : first));

/** When the sets of cartridges are due, as ranges on a line of months, and which end comes first. */
// long: sentences, picture and table of one part
export function WearPart({ wear }: { readonly wear: readonly Wear[] }) {
  const language = useLanguage();
  const { say, numbers } = language;
  const today = todayHere();
  const draw = useCallback(
    (width: number) =>
      duePicture(
        wear
          .flatMap((one) => (one.endsOn === null ? [] : [{ ...one, endsOn: one.endsOn }]))
          .sort((a, b) => (a.endsOn.p50 < b.endsOn.p50 ? -1 : 1))
          .map((one) => ({
            serial: one.serial,
            early: dayOf(one.endsOn.p10),
            middle: dayOf(one.endsOn.p50),
            late: dayOf(one.endsOn.p90),
            said: say(`safety.end_${firstEnd(one)}`),
          })),
        dayOf(todayHere()),
        { today: say('safety.today'), year: (year) => String(year) },
        { width },
      ),
    [wear, say],
  );
  const isDated = wear.some(({ endsOn }) => endsOn !== null);
  return (
    <Part id="wear" title={say('safety.wear')}>
      {wear.map(({ serial, finding }) => (
        <p key={serial}>{finding}</p>
      ))}
      {isDated ? (
        <>
          <Drawn draw={draw} name={say('safety.wear_name')} most_px={820} />
          <p className="small">{say('safety.wear_about')}</p>
          <table className="of-wear stacks">
            <thead>
              <tr>
                {(['set', 'due', 'likelyDays', 'first'] as const).map((head) => (
                  <th key={head} scope="col">
                    {say(`safety.head_${head}`)}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {wear.map((one) =>
                one.endsOn === null ? null : (
                  <tr key={one.serial}>
                    <th scope="row">{one.serial}</th>
                    <td data-head={say('safety.head_due')}>
                      <Opens code="wear.endsOn" of={one.serial}>
                        {dueWords(
                          { serial: one.serial, early: one.endsOn.p10, middle: one.endsOn.p50, late: one.endsOn.p90 },
                          today,
                          language,
                        )}
                      </Opens>
                    </td>
                    <td data-head={say('safety.head_likelyDays')}>
                      {say('safety.days_between', {
                        from: numbers.date(one.endsOn.p10),
                        to: numbers.date(one.endsOn.p90),
                      })}
                    </td>
                    <td data-head={say('safety.head_first')}>
                      <Opens code="wear.ends" of={one.serial}>
                        {wearEnds
                          .filter((end) => one.endsBy_fraction[end] > 0)
                          .sort((a, b) => one.endsBy_fraction[b] - one.endsBy_fraction[a])
                          .map((end) =>
                            say('safety.end_share', {
                              end: say(`safety.end_${end}`),
                              share: numbers.percent(one.endsBy_fraction[end]),
                            }),
                          )
                          .join('; ')}
                      </Opens>
                    </td>
                  </tr>
                ),
              )}
            </tbody>
          </table>
        </>
      ) : null}
    </Part>
  );
}
