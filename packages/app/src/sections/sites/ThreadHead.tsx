import { memo } from 'react';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { stationsInOrder } from './overview.ts';

/** Columns of the thread are this wide [px]; the drawing hangs from it (sites.css has the same). */
const column = 30;
/** From where in the drawing each leader comes: roof sheet, gutter, settling tank, tank, its stand, treatment unit, tap, cup. */
const from = [
  [30, 20],
  [66, 30],
  [89, 44],
  [121, 38],
  [132, 50],
  [165, 44],
  [201, 40],
  [209, 50],
] as const;
const foot = 62;
/** Every other word hangs lower [px]: sites.css has the same. */
const lower = 14;

/** The building in small, roof to cup: each column of the thread hangs by a leader from its place in it. */
export const ThreadHead = memo(function ThreadHead() {
  const { say } = useLanguage();
  return (
    <div className="thread-head" dir="ltr">
      <svg viewBox="0 0 240 64" width="240" height="64" aria-hidden="true" focusable="false">
        <g className="water">
          <path d="M83 36H95V51H83ZM110 31H132V46H110Z" />
        </g>
        <g className="beyond">
          <path d="M23 37h9v9H23zM42 35h8v17H42zM14 30H60M35 10V30M21 20L35 30L49 20" />
          <path d="M66 31L82 32M96 35H108M134 44H154M176 46H199" />
        </g>
        <g className="edge">
          <path d="M82 52V31Q89 27 96 31V52M83 36H95M108 47V24Q121 18 134 24V47M110 31H132M105 52V47H137V52" />
          <path d="M154 52V34H176V52M159 34V28H156M171 34V28H174M159.5 39v8M165 39v8M170.5 39v8" />
          <path d="M197 52V40H214M209 40v4M204.5 46h9l-1.2 6h-6.6z" />
          <path d="M62 28q0 5 4 5t4-5" />
        </g>
        <g className="cut">
          <path d="M6 28L35 8L66 28M12 25V52M58 25V52M0 52.6H240" />
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
          <span key={station}>{say(station === 'settling' ? 'sites.short_settling' : `sites.station_${station}`)}</span>
        ))}
      </p>
    </div>
  );
});
