import { wayPicture } from '@eavewell/drawing';
import { germClasses } from '@eavewell/engine';
import { useCallback, useMemo } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { Drawn } from './Drawn.tsx';
import { Opens, Part } from './opening.tsx';
import { barrierName, type SafetyReport, stopNumber, wayOf } from './safetyFigures.ts';

/** The way of the water from roof to cup: what each barrier is credited with, and by what evidence. */
export function Way({ safety }: { readonly safety: SafetyReport }) {
  const language = useLanguage();
  const { say, numbers } = language;
  const input = useMemo(() => wayOf(safety, language), [safety, language]);
  const steps = useCallback(
    (count: number) => say('safety.steps', { steps: numbers.fixed(count, 1), count }),
    [say, numbers],
  );
  const draw = useCallback(
    (width: number) =>
      wayPicture(
        input,
        {
          ...{ germs: (one) => say(`safety.germs_${one}`), steps, leaking: say('safety.dashed_leak') },
          needed: (count) => say('safety.needed', { steps: numbers.fixed(count, 1) }),
        },
        { width },
      ),
    [input, say, numbers, steps],
  );
  const { barriers, credited, tier } = safety;
  return (
    <Part id="way" title={say('safety.way')}>
      <p>
        {say('safety.way_about')} {say(`safety.tier_${tier}`)}
      </p>
      <Drawn draw={draw} name={say('safety.way_name')} />
      {barriers.length === 0 ? (
        <p className="heed">{say('safety.no_barrier')}</p>
      ) : (
        <table className="of-barriers stacks">
          <thead>
            <tr>
              <th scope="col">{say('safety.head_stop')}</th>
              <th scope="col">{say('safety.head_evidence')}</th>
              {germClasses.map((one) => (
                <th key={one} scope="col" className="num">
                  {say(`safety.germs_${one}`)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {barriers.map((barrier, nth) => (
              <tr key={`${barrier.kind} ${barrier.barrierId}`}>
                <th scope="row">
                  <span className="stop-number">{stopNumber(barriers, nth)}</span> {barrierName(barrier, language)}
                </th>
                <td>{say(`safety.evidence_${barrier.evidence}`)}</td>
                {germClasses.map((one) => (
                  <td key={one} className="num" data-head={say(`safety.germs_${one}`)}>
                    <Opens code="safety.barrier" of={barrier.kind}>
                      {numbers.fixed(barrier.credited[`${one}_log10`], 1)}
                    </Opens>
                  </td>
                ))}
              </tr>
            ))}
            <tr className="together">
              <th scope="row" colSpan={2}>
                {say('safety.together')}
              </th>
              {germClasses.map((one) => (
                <td key={one} className="num" data-head={say(`safety.germs_${one}`)}>
                  <Opens code="safety.credited">{numbers.fixed(credited[`${one}_log10`], 1)}</Opens>
                </td>
              ))}
            </tr>
          </tbody>
        </table>
      )}
      <p className="small">{say('safety.number_about')}</p>
    </Part>
  );
}
