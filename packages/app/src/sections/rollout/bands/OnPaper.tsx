import { readIsoDay } from '@eavewell/engine';
import type { RolloutSheet } from '@eavewell/tables';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { CrewDrawing, CrewName } from './CrewRow.tsx';
import { CrewsHead } from './CrewsBand.tsx';
import { DrinkingBand } from './DrinkingBand.tsx';
import { AxisHead, type OnAxis } from './Ground.tsx';
import { HaulDrawing, HaulName } from './HaulRows.tsx';
import { haulsLaid } from './haulBoxes.ts';
import { hullsOf } from './hulls.ts';
import { type StockChoice, StockOnPaper } from './StockBand.tsx';
import { paperAxes, spanOf } from './span.ts';
import { haulLabel } from './tripWords.ts';
import { WaysBand } from './WaysBand.tsx';

/** What A4 on its side has between its edges of 12 mm, less the edges of the page and the names [px of 1/96 inch]; bands.css has them. */
const room_px = Math.floor((297 - 2 * 12) * (96 / 25.4)) - 2 * 32 - 152;

/** The bands on paper: so many weeks a sheet, one under the other, with all their crews. */
export function OnPaper({ sheet, stock }: { readonly sheet: RolloutSheet; readonly stock: StockChoice }) {
  const today = readIsoDay(sheet.day) ?? 0;
  return paperAxes(spanOf(sheet), today, room_px).map((axis) => {
    const on: OnAxis = { axis, today, seen: { from: 0, to: axis.width_px } };
    return (
      <div key={axis.first} className="bands-sheet bands-on-paper" dir="ltr">
        <div className="bands-together">
          <AxisHead on={on} />
          <WaysBand strips={sheet.strips} on={on} />
        </div>
        <div className="bands-again">
          <div className="bands-again-head">
            <AxisHead on={on} />
          </div>
          <div>
            <CrewsHead on={on} sheet={sheet} />
            <Crews sheet={sheet} on={on} />
            <Hauls sheet={sheet} on={on} />
          </div>
        </div>
        <div className="bands-together">
          <AxisHead on={on} />
          <DrinkingBand sheet={sheet} on={on} />
        </div>
        <StockOnPaper sheet={sheet} on={on} chosen={stock.key} />
      </div>
    );
  });
}

function Crews({ sheet, on }: { readonly sheet: RolloutSheet; readonly on: OnAxis }) {
  const { say } = useLanguage();
  const { rows } = hullsOf(sheet, on.axis);
  return sheet.crews.map((crew, row) => {
    const box = rows[row]!;
    const hulls = box.hulls.filter(({ x, width }) => x + width > 0 && x < on.axis.width_px);
    return (
      <div key={crew.crewId} className="band-row crew-row">
        <CrewName sheet={sheet} crew={crew} />
        <div className="crew-trips">
          <CrewDrawing crew={crew} box={box} on={on} hulls={hulls} />
          {crew.trips.length === 0 ? <p className="no-trips small">{say('rolloutBands.crew_no_trips')}</p> : null}
        </div>
      </div>
    );
  });
}

/** What is brought between stores, under the crews: numbered, and each of this sheet in words. */
function Hauls({ sheet, on }: { readonly sheet: RolloutSheet; readonly on: OnAxis }) {
  const language = useLanguage();
  return haulsLaid(sheet, on.axis).rows.map((row) => (
    <div key={row.storeId}>
      <div className="band-row crew-row">
        <HaulName row={row} sheet={sheet} />
        <div className="crew-trips">
          <HaulDrawing row={row} on={on} isPaper />
        </div>
      </div>
      <ol className="hauls-on-paper">
        {row.hulls
          .filter(({ x, width }) => x + width > 0 && x < on.axis.width_px)
          .map(({ haul, index }) => (
            <li key={haul.haulId} value={index + 1}>
              {haulLabel(haul, sheet, language)}
            </li>
          ))}
      </ol>
    </div>
  ));
}
