import { dayOnClock, isoDay } from '@eavewell/engine';
import { useMemo } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { footRule } from './footRule.ts';

/** Stands for a number the browser counts: no words have them. */
const [page, pages] = ['\u{E000}', '\u{E001}'] as const;

/** On paper alone: programme, plan and day at the foot of every sheet, what it is a sheet of, and which of how many. */
export function PaperFoot({
  programme,
  plan,
  sheet,
}: {
  readonly programme: string;
  /** What the plan is called; null: there is none. */
  readonly plan: string | null;
  /** What the sheets are of. */
  readonly sheet: string;
}) {
  const { say, numbers, direction } = useLanguage();
  const rule = useMemo(() => {
    const day = numbers.date(isoDay(dayOnClock(new Date())));
    const [before = '', between = '', after = ''] = say('rolloutBands.foot_page', { sheet, page, pages }).split(
      /[\u{E000}\u{E001}]/u,
    );
    return footRule({
      said: say('rolloutBands.foot', { programme, plan: plan ?? '', hasPlan: plan === null ? 'no' : 'yes', day }),
      ...{ numbered: [before, between, after], font: getComputedStyle(document.body).fontFamily },
      direction,
    });
  }, [programme, plan, sheet, say, numbers, direction]);
  return <style media="print">{rule}</style>;
}
