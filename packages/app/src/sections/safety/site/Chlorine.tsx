import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { DoseTable } from '../DoseTable.tsx';
import type { Doses } from '../doses.ts';
import { Opens, Part } from './opening.tsx';
import type { SafetyReport } from './safetyFigures.ts';

/** What chlorine does where it is used, and how much of the stock goes into how much water. */
export function Chlorine({
  found,
  doses,
}: {
  readonly found: NonNullable<SafetyReport['chlorine']>;
  readonly doses: Doses | null;
}) {
  const { say, numbers } = useLanguage();
  const { ct_mg_min_per_L: ct, ctForGiardia_mg_min_per_L: wanted, giardia_log10, viruses_log10, wait_min } = found;
  const fixed = (value: number) => numbers.fixed(value, 1);
  return (
    <Part id="chlorine" title={say('safety.chlorine')}>
      <p>{found.finding}</p>
      <ul className="plain-list">
        {found.residualBand === null ? null : <li>{say(`safety.residual_${found.residualBand}`)}</li>}
        {ct === null ? null : (
          <li>
            <Opens code="chlorine.ct">{say('safety.ct', { ct: numbers.quantity(ct, 'mg_min_per_L') })}</Opens>{' '}
            {wanted === null ? null : say('safety.ct_wanted', { ct: numbers.quantity(wanted, 'mg_min_per_L') })}
          </li>
        )}
        {giardia_log10 === null ? null : (
          <li>
            <Opens code="chlorine.giardia">{say('safety.giardia', { steps: fixed(giardia_log10) })}</Opens>
          </li>
        )}
        {viruses_log10 === null ? null : (
          <li>
            <Opens code="chlorine.viruses">{say('safety.viruses', { steps: fixed(viruses_log10) })}</Opens>
          </li>
        )}
        {wait_min === null || doses !== null ? null : (
          <li>{say('safety.wait', { time: numbers.quantity(wait_min, 'min') })}</li>
        )}
        {found.isTooTurbid === true ? <li className="w-short">{say('safety.too_turbid')}</li> : null}
      </ul>
      {doses === null ? null : (
        <DoseTable doses={doses} opens={(amount) => <Opens code="chlorine.stock">{amount}</Opens>} />
      )}
      <p className="caution">{say('safety.chlorine_caution')}</p>
    </Part>
  );
}
