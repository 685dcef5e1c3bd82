import { samplesPicture } from '@eavewell/drawing';
import { useCallback } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import type { TableRow } from '../../../offline/outbox.ts';
import { countWords } from '../cupWords.ts';
import { notedOf } from '../noted.ts';
import { Drawn } from './Drawn.tsx';
import { Opens, Part } from './opening.tsx';
import { hasCleanBefore, type SafetyReport, sampleDots } from './safetyFigures.ts';

/** A band in its colour: what is low is plain. */
const bandClass = { low: '', intermediate: 'w-tight', high: 'w-short', veryHigh: 'w-short' } as const;

/** Samples told in the table before one asks for all. Ours. */
const newest = 12;

/** Is it the same sample? */
const isOf =
  ({ testId }: { readonly testId: string }) =>
  (one: { readonly testId: string }) =>
    one.testId === testId;

/** What the samples say, in time, with their limits; and what was seen by whoever walked the site. */
// long: sentence, picture and table of one part
export function Samples({
  safety,
  rows,
  siteId,
}: {
  readonly safety: SafetyReport;
  readonly rows: readonly TableRow[];
  readonly siteId: string;
}) {
  const language = useLanguage();
  const { say, numbers } = language;
  const { waterTests } = safety;
  const noted = notedOf(rows, siteId, language);
  const { tests, clean_count, cleanWanted_count, cleanBelow_per_100mL, inspection, priority } = waterTests;
  const dots = sampleDots(waterTests);
  const draw = useCallback(
    (width: number) =>
      samplesPicture(
        sampleDots(waterTests),
        {
          band: (band) => say(`safety.band_${band}`),
          count: (count) => numbers.given(count, ''),
          axis: say('safety.samples_axis'),
          month: (year, month) =>
            say('safety.month_year', { month: numbers.quantity(month, 'month'), year: String(year) }),
          year: (year) => String(year),
        },
        { width },
      ),
    [waterTests, say, numbers],
  );
  return (
    <Part id="samples" title={say('safety.samples')}>
      <p>{waterTests.finding}</p>
      {dots.length === 0 ? null : (
        <>
          <Drawn draw={draw} name={say('safety.samples_name', { count: dots.length })} most_px={820} />
          <p className="small">{say('safety.samples_signs')}</p>
        </>
      )}
      {tests.length === 0 ? null : (
        <table className="of-samples stacks">
          <thead>
            <tr>
              {(['day', 'point', 'found', 'band', 'chlorine', 'turbidity', 'by'] as const).map((head) => (
                <th key={head} scope="col">
                  {say(`safety.head_${head}`)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {[...tests]
              .reverse()
              .slice(0, newest)
              .map((test) => (
                <tr key={test.testId} className={test.isBeforeHandOver ? 'before' : undefined}>
                  <th scope="row">
                    {numbers.date(test.takenOn)} <span className="small">{test.testId}</span>
                  </th>
                  <td>{say(`safety.point_${test.point}`)}</td>
                  <td>
                    <Opens code="waterTests.count" of={test.testId}>
                      {countWords(test, language, waterTests.unusable.some(isOf(test)))}
                    </Opens>{' '}
                    {test.low_per_100mL === null || test.high_per_100mL === null ? null : (
                      <span className="small">
                        {numbers.likely({ low: test.low_per_100mL, high: test.high_per_100mL })}
                      </span>
                    )}
                    {test.rarity !== null && test.rarity < 0.05 ? (
                      <span className="small"> {say('safety.rare')}</span>
                    ) : null}
                  </td>
                  <td>
                    {test.band === null ? null : (
                      <span className={test.isBeforeHandOver ? '' : bandClass[test.band]}>
                        {say(`safety.band_${test.band}`)}
                      </span>
                    )}
                    {test.isBeforeHandOver ? <span className="small"> {say('safety.before_hand_over')}</span> : null}
                  </td>
                  {(['chlorine', 'turbidity', 'by'] as const).map((one) => {
                    const text = noted(test.testId)[one];
                    return (
                      <td key={one} data-head={text === '' ? undefined : say(`safety.head_${one}`)}>
                        {text}
                      </td>
                    );
                  })}
                </tr>
              ))}
          </tbody>
        </table>
      )}
      {tests.length > newest ? (
        <p className="small">{say('safety.newest_of', { count: newest, all: tests.length })}</p>
      ) : null}
      {cleanWanted_count === 0 ? null : (
        <p>
          <Opens code="waterTests.clean">
            {hasCleanBefore(waterTests) ? say('safety.clean_broken') : say('safety.clean', { count: clean_count })}
          </Opens>{' '}
          {cleanBelow_per_100mL === null
            ? null
            : say('safety.clean_below', { amount: numbers.quantity(cleanBelow_per_100mL, 'per_100mL') })}{' '}
          <Opens code="waterTests.cleanWanted">{say('safety.clean_wanted', { count: cleanWanted_count })}</Opens>
        </p>
      )}
      <p>
        {inspection === null ? (
          say('safety.no_inspection')
        ) : (
          <Opens code="waterTests.inspection">
            {say('safety.inspection', {
              day: numbers.date(inspection.inspectedOn),
              score: numbers.given(inspection.score, ''),
              band: say(`safety.band_${inspection.band}`),
            })}
          </Opens>
        )}{' '}
        {priority === null || inspection === null || waterTests.last === null ? null : (
          <Opens code="waterTests.priority">{say('safety.priority', { band: say(`safety.band_${priority}`) })}</Opens>
        )}
      </p>
    </Part>
  );
}
