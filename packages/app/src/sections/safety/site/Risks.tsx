import { riskPicture } from '@eavewell/drawing';
import { useCallback } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { Drawn } from './Drawn.tsx';
import { Opens, Part } from './opening.tsx';
import { germWords, harmSentences, riskRows, type SafetyReport } from './safetyFigures.ts';

/** What the germs do to those who drink, held against the target; and what a leak, a skipped day and people who skip do to it. */
export function Risks({ safety }: { readonly safety: SafetyReport }) {
  const language = useLanguage();
  const { say, numbers } = language;
  const { risks, target_DALY_per_person_per_year: target, leaking, effective } = safety;
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
  const daly = (value: number) => numbers.quantity(value, 'DALY/person/year');
  return (
    <Part id="risks" title={say('safety.risks')}>
      <p>{say('safety.risks_about')}</p>
      {risks.length === 0 ? (
        <p className="heed">{say('safety.no_risks')}</p>
      ) : (
        <>
          <Drawn draw={draw} name={say('safety.risks_name')} most_px={820} />
          <div className="wide">
            <table className="of-risks">
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
                  <tr key={`${risk.pathogen} ${risk.secondSourceId}`}>
                    <th scope="row">{germWords(risk, language)}</th>
                    <td>
                      <Opens code="safety.raw" of={risk.pathogen}>
                        {numbers.quantity(risk.raw_per_L, '1/L')}
                      </Opens>{' '}
                      <span className="small">
                        {risk.rawHigh_per_L === null
                          ? say('safety.no_range')
                          : say('safety.up_to', { amount: numbers.quantity(risk.rawHigh_per_L, '1/L') })}
                      </span>
                    </td>
                    <td>
                      <Opens code="safety.illness" of={risk.pathogen}>
                        {say('safety.ill_of', { count: numbers.quantity(risk.illness_per_year * 1000, '') })}
                      </Opens>
                    </td>
                    <td>
                      <Opens code="safety.daly" of={risk.pathogen}>
                        {daly(risk.DALY_per_person_per_year)}
                      </Opens>{' '}
                      <span className="small">
                        {say('safety.up_to', { amount: daly(risk.DALYHigh_per_person_per_year) })}
                      </span>
                    </td>
                    <td>
                      <Opens code="safety.needed" of={risk.pathogen}>
                        {say('safety.steps', { steps: numbers.fixed(risk.needed_log10, 1), count: risk.needed_log10 })}
                      </Opens>
                    </td>
                  </tr>
                ))}
              </tbody>
            </table>
          </div>
        </>
      )}
      <h3>{say('safety.harm')}</h3>
      <ul className="plain-list">
        {harmSentences(safety, language).map((one) => (
          <li key={one}>{one}</li>
        ))}
      </ul>
      {risks.length === 0 ? null : (
        <p>
          {say('safety.effective')}{' '}
          <Opens code="safety.effective">
            {say('safety.of_classes', {
              bacteria: numbers.fixed(effective.bacteria_log10, 1),
              viruses: numbers.fixed(effective.viruses_log10, 1),
              protozoa: numbers.fixed(effective.protozoa_log10, 1),
            })}
          </Opens>
          {leaking === null ? '' : '. '}
          {leaking === null ? null : (
            <>
              {say('safety.leaking')}{' '}
              <Opens code="safety.leaking">
                {say('safety.of_classes', {
                  bacteria: numbers.fixed(leaking.bacteria_log10, 1),
                  viruses: numbers.fixed(leaking.viruses_log10, 1),
                  protozoa: numbers.fixed(leaking.protozoa_log10, 1),
                })}
              </Opens>
            </>
          )}
          .
        </p>
      )}
    </Part>
  );
}
