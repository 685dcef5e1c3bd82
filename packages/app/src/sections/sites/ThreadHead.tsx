import { memo } from 'react';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { stationsInOrder } from './overview.ts';

/** Columns of the thread are this wide [px]; the drawing hangs from it (threads.css has the same). */
const column = 42;
/** From where in the drawing each leader comes: roof sheet, gutter, tank, treatment unit, cup under the tap. */
const from = [
  [30, 20],
  [66, 30],
  [100, 52],
  [146, 52],
  [188, 50],
] as const;
const foot = 62;
/** Every other word hangs lower [px]: sites.css has the same. */
const lower = 14;

/** The building in small, roof to cup: each column of the thread hangs by a leader from its place in it. */
export const ThreadHead = memo(function ThreadHead() {
  const { say } = useLanguage();
  return (
    <div className="thread-head" dir="ltr">
      <svg viewBox="0 0 210 64" width="210" height="64" aria-hidden="true" focusable="false">
        <g className="water">
          <path d="M88 33H112V51H88Z" />
        </g>
        <g className="beyond">
          <path d="M23 37h9v9H23zM42 35h8v17H42zM14 30H60M35 10V30M21 20L35 30L49 20" />
          <path d="M66 31L85 27M114 48H135M157 46H178" />
        </g>
        <g className="edge">
          <path d="M85 52V26Q100 20 115 26V52M88 33H112" />
          <path d="M135 52V34H157V52M140 34V28H137M152 34V28H155M140.5 39v8M146 39v8M151.5 39v8" />
          <path d="M176 52V40H193M188 40v4M183.5 46h9l-1.2 6h-6.6z" />
          <path d="M62 28q0 5 4 5t4-5" />
        </g>
        <g className="cut">
          <path d="M6 28L35 8L66 28M12 25V52M58 25V52M0 52.6H210" />
        </g>
        <g className="leader">
          {from.map(([x, y], i) => (
            <path key={stationsInOrder[i]} d={`M${x} ${y}V55L${column * (i + 0.5)} 58V${foot + (i % 2) * lower}`} />
          ))}
        </g>
        {from.map(([x, y], i) => (
          <circle key={stationsInOrder[i]} className="dot" cx={x} cy={y} r="1.8" />
        ))}
      </svg>
      <p>
        {stationsInOrder.map((station) => (
          <span key={station}>{say(`sites.station_${station}`)}</span>
        ))}
      </p>
    </div>
  );
});
