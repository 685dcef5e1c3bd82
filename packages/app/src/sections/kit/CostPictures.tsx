import { type RangeRow, rangesPicture, swingsPicture } from '@eavewell/drawing';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { Drawn } from './Drawn.tsx';
import type { Cost, SiteKitAnswer } from './kitQuery.ts';
import { costSentence, inputWords, reasonsWords } from './kitWords.ts';

/** What it costs over its whole life: by heads, what moves it, and what stands beside it. */
export function CostPictures({
  cost,
  beside,
}: {
  readonly cost: Cost | null;
  readonly beside: SiteKitAnswer['beside'];
}) {
  const language = useLanguage();
  const { say } = language;
  if (cost === null) return <p>{say('kit.no_currency')}</p>;
  return (
    <>
      <p className="sentence">{costSentence(cost, language)}</p>
      {cost.perPersonYear_amount === null ? <p className="small">{say('kit.no_person_year')}</p> : null}
      <h3>{say('kit.by_head')}</h3>
      <Heads cost={cost} />
      {cost.swings.length === 0 ? null : (
        <>
          <h3>{say('kit.what_moves')}</h3>
          <Swings cost={cost} />
        </>
      )}
      <h3>{say('kit.beside')}</h3>
      <Beside cost={cost} beside={beside} />
    </>
  );
}

function Heads({ cost }: { readonly cost: Cost }) {
  const language = useLanguage();
  const { say, numbers } = language;
  const rows = cost.heads.map(({ head, perYear_amount, known_amount, least_amount, most_amount }): RangeRow => {
    const isKnown = perYear_amount !== null;
    const amount = numbers.money(perYear_amount ?? known_amount, cost.currency);
    const range = most_amount > least_amount ? ` (${numbers.range({ low: least_amount, high: most_amount })})` : '';
    return {
      ...{ rowId: `head:${head}`, label: say(`choices.${head}`) },
      said: isKnown ? `${amount}${range}` : known_amount > 0 ? say('kit.at_least', { amount }) : say('kit.not_known'),
      ...{ value: isKnown || known_amount > 0 ? (perYear_amount ?? known_amount) : null },
      ...{ low: least_amount, high: most_amount, isAtLeast: !isKnown, isStrong: false },
    };
  });
  const open = cost.heads.filter(({ reasons }) => reasons.length > 0);
  return (
    <>
      <Drawn
        name={say('kit.by_head')}
        most_px={820}
        draw={(width) => rangesPicture(rows, { tick: (value) => numbers.fixed(value, 0) }, { width })}
      />
      {open.length === 0 ? null : (
        <p className="small">
          {say('kit.heads_not_known', {
            heads: open
              .map(({ head, reasons }) =>
                say('kit.head_why', { head: say(`choices.${head}`), why: reasonsWords(reasons, language) }),
              )
              .join('; '),
          })}
        </p>
      )}
    </>
  );
}

function Swings({ cost }: { readonly cost: Cost }) {
  const language = useLanguage();
  const { say, numbers } = language;
  const isEach = cost.perPersonYear_amount !== null;
  const of = (one: Cost['swings'][number]['low']) => (isEach ? (one.perPersonYear_amount ?? 0) : one.perYear_amount);
  const likely = cost.perPersonYear_amount ?? cost.perYear_amount;
  const said = (value: number) => numbers.money(value, cost.currency);
  const rows = cost.swings
    .filter(({ low, high }) => Math.abs(of(low) - of(high)) > likely * 0.001)
    .map((swing) => ({
      ...{ rowId: `swing:${swing.inputId}`, label: inputWords(swing, language) },
      ...{ atLow: of(swing.low), atHigh: of(swing.high), saidLow: said(of(swing.low)), saidHigh: said(of(swing.high)) },
    }));
  const unit = isEach ? `${cost.currency}_per_person_per_year` : `${cost.currency}_per_year`;
  return (
    <Drawn
      name={say('kit.what_moves')}
      most_px={820}
      draw={(width) =>
        swingsPicture(
          rows,
          likely,
          { likely: say('kit.likely_at', { amount: numbers.quantity(likely, unit) }) },
          { width },
        )
      }
    />
  );
}

function Beside({ cost, beside }: { readonly cost: Cost; readonly beside: SiteKitAnswer['beside'] }) {
  const { say, numbers } = useLanguage();
  const { currency, perPersonYear_amount, perPersonYearSpread_amount: spread, isAtLeast } = cost;
  const said = (value: number) => numbers.money(value, currency);
  const own: RangeRow = {
    ...{ rowId: 'beside:own', label: say('kit.beside_own'), value: perPersonYear_amount, isAtLeast, isStrong: true },
    ...{ low: spread?.p10 ?? null, high: spread?.p90 ?? null },
    said:
      perPersonYear_amount === null
        ? say('kit.not_known')
        : `${isAtLeast ? say('kit.at_least', { amount: said(perPersonYear_amount) }) : said(perPersonYear_amount)}${spread === null ? '' : ` (${numbers.range({ low: spread.p10, high: spread.p90 })})`}`,
  };
  const others = (['boughtWater', 'boiling', 'pipedScheme'] as const).map((name): RangeRow => {
    const value = beside[name].perPersonYear_amount;
    return {
      ...{ rowId: `beside:${name}`, label: say(`kit.beside_${name}`), value, low: null, high: null },
      ...{ isAtLeast: false, isStrong: false, said: value === null ? say('kit.not_stated') : said(value) },
    };
  });
  return (
    <>
      <p className="small">{say('kit.beside_about')}</p>
      <Drawn
        name={say('kit.beside')}
        most_px={820}
        draw={(width) => rangesPicture([own, ...others], { tick: (value) => numbers.fixed(value, 0) }, { width })}
      />
    </>
  );
}
