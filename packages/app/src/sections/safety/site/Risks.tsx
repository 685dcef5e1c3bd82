import { riskPicture } from '@eavewell/drawing';
import { useCallback } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { twoDigits } from '../cupWords.ts';
import { Drawn } from './Drawn.tsx';
import { Opens, Part } from './opening.tsx';
import {
  classesWords,
  germWords,
  harmSentences,
  illWords,
  rawOfWords,
  riskRows,
  type SafetyReport,
} from './safetyFigures.ts';

/** What the germs do to those who drink, held against the target; and what a leak, a skipped day and people who skip do to it. */
// long: sentences, picture and table of one part
export function Risks({ safety }: { readonly safety: SafetyReport }) {
  const language = useLanguage();
  const { say, numbers } = language;
  const { risks, target_DALY_per_person_per_year: target, leaking, effective, credited } = safety;
  const draw = useCallback(
    (width: number) =>
      riskPicture(
        riskRows(safety, language),
        {
          target: say('safety.at_target', { amount: numbers.given(target * 1e6, '') }),
          times: (ratio) => numbers.given(Number((ratio * target * 1e6).toPrecision(3)), ''),
        },
        { width },
      ),
    [safety, language, say, numbers, target],
  );
  // Of a million people, as the head of the column says.
  const daly = (value: number) => numbers.quantity(twoDigits(value * 1e6), '');
  return (
    <Part id="risks" title={say('safety.risks')}>
      <p>{say('safety.risks_about')}</p>
      {safety.sourceDays === null ? null : <p>{safety.sourceDays.finding}</p>}
      {risks.length === 0 ? (
        <p className="heed">{say('safety.no_risks')}</p>
      ) : (
        <>
          <Drawn draw={draw} name={say('safety.risks_name')} most_px={820} />
          <table className="of-risks stacks">
            <thead>
              <tr>
                {(['germ', 'raw', 'ill', 'lost', 'wanted'] as const).map((head) => (
                  <th key={head} scope="col">
                    {say(`safety.head_${head}`)}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {risks.map((risk) => (
                <tr key={`${risk.pathogen} ${risk.waters[0]?.secondSourceId}`}>
                  <th scope="row">{germWords(risk, safety, language)}</th>
                  <td data-head={say('safety.head_raw')}>
                    {risk.waters.map((water) => (
                      <RawOf key={water.secondSourceId} water={water} risk={risk} safety={safety} />
                    ))}
                  </td>
                  <td data-head={say('safety.head_ill')}>
                    <Opens code="safety.illness" of={risk.pathogen}>
                      {illWords(risk.illness_per_year, language)}
                    </Opens>
                  </td>
                  <td data-head={say('safety.head_lost')}>
                    <Opens code="safety.daly" of={risk.pathogen}>
                      {daly(risk.DALY_per_person_per_year)}
                    </Opens>{' '}
                    <span className="small">
                      {say('safety.up_to', { amount: daly(risk.DALYHigh_per_person_per_year) })}
                    </span>
                  </td>
                  <td data-head={say('safety.head_wanted')}>
                    <Opens code="safety.needed" of={risk.pathogen}>
                      {say('safety.steps', { steps: numbers.fixed(risk.needed_log10, 1), count: risk.needed_log10 })}
                    </Opens>
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </>
      )}
      <h3>{say('safety.harm')}</h3>
      <ul className="plain-list">
        {leaking === null ? null : (
          <li>
            {say('safety.leaking')} <Opens code="safety.leaking">{classesWords(leaking, language)}</Opens>{' '}
            {say('safety.instead_of', { classes: classesWords(credited, language) })}
          </li>
        )}
        {harmSentences(safety, language).map((one) => (
          <li key={one}>{one}</li>
        ))}
        {risks.length === 0 ? null : (
          <li>
            {say('safety.effective')} <Opens code="safety.effective">{classesWords(effective, language)}</Opens>.
          </li>
        )}
      </ul>
    </Part>
  );
}

/** Germs in one raw water of a risk, with the high end. */
function RawOf({
  water,
  risk,
  safety,
}: {
  readonly safety: SafetyReport;
  readonly water: SafetyReport['risks'][number]['waters'][number];
  readonly risk: SafetyReport['risks'][number];
}) {
  const language = useLanguage();
  const { say, numbers } = language;
  return (
    <span className="raw-of">
      {rawOfWords(water, risk, safety, language)}
      <Opens code="safety.raw" of={risk.pathogen}>
        {numbers.quantity(water.raw_per_L, '1/L')}
      </Opens>{' '}
      <span className="small">
        {water.rawHigh_per_L === null
          ? say('safety.no_range')
          : say('safety.up_to', { amount: numbers.quantity(water.rawHigh_per_L, '1/L') })}
      </span>{' '}
    </span>
  );
}
