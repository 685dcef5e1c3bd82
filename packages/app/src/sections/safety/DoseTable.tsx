import type { ReactNode } from 'react';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import type { Doses } from './doses.ts';

/** How much stock goes into how much water. */
export function DoseTable({ doses, opens }: { readonly doses: Doses; opens?(amount: string): ReactNode }) {
  const { say, numbers } = useLanguage();
  const { rows, product_per_L, isLiquid, wait_min } = doses;
  return (
    <>
      <table className="of-doses">
        <thead>
          <tr>
            <th scope="col" className="num">
              {say('safety.head_water')}
            </th>
            <th scope="col" className="num">
              {say('safety.head_stock')}
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ water_L, stock_mL }) => {
            const amount = numbers.quantity(stock_mL, 'mL');
            return (
              <tr key={water_L}>
                <th scope="row" className="num">
                  {numbers.litres(water_L)}
                </th>
                <td className="num">{opens === undefined ? amount : opens(amount)}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
      {product_per_L === null ? null : (
        <p>
          {say('safety.stock_recipe', {
            amount: numbers.fixed(product_per_L, isLiquid ? 0 : 1),
            kind: isLiquid ? 'liquid' : 'powder',
          })}
        </p>
      )}
      {wait_min === null ? null : <p>{say('safety.wait', { time: numbers.quantity(wait_min, 'min') })}</p>}
    </>
  );
}
