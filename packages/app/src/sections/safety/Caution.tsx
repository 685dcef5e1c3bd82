import { useLanguage } from '../../language/LanguageProvider.tsx';

const steps = ['stop', 'tell', 'treat', 'mend', 'again'] as const;

/** Over every page of Safety: who decides, and what is done when a test fails. */
export function SafetyCaution() {
  const { say } = useLanguage();
  return (
    <aside className="safety-caution" aria-label={say('safety.caution_name')}>
      <p>{say('safety.caution')}</p>
      <p>
        <b>{say('safety.when_fails')}</b>
      </p>
      <ol>
        {steps.map((step) => (
          <li key={step}>{say(`safety.step_${step}`)}</li>
        ))}
      </ol>
    </aside>
  );
}
