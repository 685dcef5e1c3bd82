import { Link, useNavigate } from '@tanstack/react-router';
import { useEffect, useId, useRef, useState } from 'react';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { type Asked, askedOf, orders } from './asked.ts';
import { type Station, stationsInOrder } from './overview.ts';

const from = '/p/$programmeId/sites';
/** The address follows what is typed after this long [ms], so that each letter is no step of its own. Ours. */
const settle_ms = 250;

/** Finds a village, and shows sites of one area or with trouble at one station alone. */
export function Tools({
  asked,
  areas,
  isFull,
}: {
  readonly asked: Asked;
  /** Areas there are, with how many sites lie in each. */
  readonly areas: readonly (readonly [area: string, sites: number])[];
  readonly isFull: boolean;
}) {
  const { say } = useLanguage();
  const navigate = useNavigate({ from });
  const put = (more: Readonly<Record<string, string>>) =>
    void navigate({ to: '.', search: (before) => askedOf({ ...before, ...more }), resetScroll: false });
  return (
    <search className="tools on-screen">
      <FindBox asked={asked} />
      {areas.length === 0 ? null : (
        <label>
          {say('sites.filter_area')}
          <select value={asked.area ?? ''} onChange={(event) => put({ area: event.target.value })}>
            <option value="">{say('sites.any_area')}</option>
            {areas.map(([area, sites]) => (
              <option key={area} value={area}>{`${area} (${sites})`}</option>
            ))}
          </select>
        </label>
      )}
      <label>
        {say('sites.filter_station')}
        <select value={asked.station ?? ''} onChange={(event) => put({ station: event.target.value as Station })}>
          <option value="">{say('sites.any_station')}</option>
          {stationsInOrder.map((station) => (
            <option key={station} value={station}>
              {say(`sites.station_${station}`)}
            </option>
          ))}
        </select>
      </label>
      {isFull ? null : (
        <Link from={from} to="." search={{}} className="all" resetScroll={false}>
          {say('sites.show_all')}
        </Link>
      )}
    </search>
  );
}

/** The box that finds a village by name, number or area. */
function FindBox({ asked }: { readonly asked: Asked }) {
  const { say } = useLanguage();
  const navigate = useNavigate({ from });
  const help = useId();
  const [typed, setTyped] = useState(asked.text ?? '');
  const sent = useRef(asked.text ?? '');
  // An address that changed by other means, such as back, fills the box.
  useEffect(() => {
    const text = asked.text ?? '';
    if (text === sent.current) return;
    sent.current = text;
    setTyped(text);
  }, [asked.text]);
  useEffect(() => {
    if (typed.trim() === sent.current) return undefined;
    const timer = setTimeout(() => {
      sent.current = typed.trim();
      void navigate({
        to: '.',
        search: (before) => askedOf({ ...before, text: typed.trim() }),
        replace: (asked.text ?? '') !== '',
        resetScroll: false,
      });
    }, settle_ms);
    return () => clearTimeout(timer);
  }, [typed, navigate, asked.text]);
  return (
    <label className="find">
      {say('sites.find')}
      <input
        type="search"
        value={typed}
        onChange={(event) => setTyped(event.target.value)}
        aria-describedby={help}
        autoComplete="off"
        spellCheck={false}
      />
      <span id={help} className="said-only">
        {say('sites.find_help')}
      </span>
    </label>
  );
}

/** In which order the list stands, and the other orders. */
export function OrderWords({ asked }: { readonly asked: Asked }) {
  const { say } = useLanguage();
  const now = asked.order ?? 'worst';
  const isFound = now === 'worst' && asked.text !== undefined;
  return (
    <div className="order">
      <p className="small">{say(isFound ? 'sites.order_found' : `sites.order_${now}`)}</p>
      <ul className="on-screen" aria-label={say('sites.orders')}>
        {orders
          .filter((order) => order !== now)
          .map((order) => (
            <li key={order}>
              <Link from={from} to="." search={askedOf({ ...asked, order })} resetScroll={false}>
                {say(`sites.by_${order}`)}
              </Link>
            </li>
          ))}
      </ul>
    </div>
  );
}
