import { type DayOrder, dayOrders, type Scenario } from '@eavewell/engine';
import { useId } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import type { Question as AskedOfRain } from '../../../water/index.ts';
import { MeasureField } from './MeasureField.tsx';

/** A share of what it was [%], as far as the command line asks. Ours: docs/decisions/0087-drier-and-wetter.md. */
const share = { least: 10, most: 300, step: 5, decimals: 0 } as const;

/** What if it had rained otherwise? Three controls on the rain and one on the day, and a sentence that it is no forecast. */
export function Question({
  asked,
  years,
  ownOrder,
  onAsk,
}: {
  readonly asked: AskedOfRain;
  /** Whole water years of the record; null where its last ones cannot be asked of. */
  readonly years: number | null;
  readonly ownOrder: DayOrder;
  onAsk(asked: AskedOfRain): void;
}) {
  const { say } = useLanguage();
  const name = useId();
  const { scenario } = asked;
  const order = asked.order ?? ownOrder;
  const rain = (more: Partial<Scenario>) => onAsk({ ...asked, scenario: { ...scenario, ...more } });
  const shareField = (key: 'wetDays_fraction' | 'wetDayRain_fraction') => (
    <MeasureField
      label={say(`water.${key}`)}
      unit="%"
      value={Math.round(scenario[key] * 100)}
      saved={scenario[key] === 1 ? null : '100 %'}
      limits={share}
      onPreview={() => undefined}
      onChange={(value) => rain({ [key]: value / 100 })}
    />
  );
  return (
    <div className="question">
      <p className="small">{say('water.not_forecast')}</p>
      <div className="measures">
        {shareField('wetDays_fraction')}
        {shareField('wetDayRain_fraction')}
        {years === null ? null : (
          <MeasureField
            label={say('water.last_years')}
            unit={say('water.years_unit')}
            value={scenario.lastYears ?? years}
            saved={scenario.lastYears === null ? null : String(years)}
            limits={{ least: 1, most: years, step: 1, decimals: 0 }}
            onPreview={() => undefined}
            onChange={(value) => rain({ lastYears: value === years ? null : value })}
          />
        )}
      </div>
      <fieldset>
        <legend>{say('water.order')}</legend>
        {dayOrders.map((one) => (
          <label key={one}>
            <input
              type="radio"
              name={name}
              checked={one === order}
              onChange={() => onAsk({ ...asked, order: one === ownOrder ? null : one })}
            />
            {say(`water.order_${one}`)}
          </label>
        ))}
      </fieldset>
    </div>
  );
}
