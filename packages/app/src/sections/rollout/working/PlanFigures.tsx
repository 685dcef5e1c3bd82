import type { RolloutSheet } from '@eavewell/tables';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { OpensWorking, WorkingOfPart } from './opening.tsx';
import { type PlanFigure, planFigures } from './planFigures.ts';

const part = 'plan';

/** What the plan comes to, in a line: each figure opens to its working. */
export function PlanFigures({ sheet }: { readonly sheet: RolloutSheet }) {
  const language = useLanguage();
  const figures = planFigures(sheet, language);
  if (figures.length === 0) return null;
  return (
    <>
      <dl className="plan-figures">
        {figures.map(({ figure, name, said }: PlanFigure) => (
          <div key={figure}>
            <dt>{name}</dt>
            <dd>
              <OpensWorking asked={{ figure }} part={part}>
                {said}
              </OpensWorking>
            </dd>
          </div>
        ))}
      </dl>
      <WorkingOfPart part={part} />
    </>
  );
}
