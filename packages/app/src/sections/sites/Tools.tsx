import { useNavigate } from '@tanstack/react-router';
import { memo, useCallback, useEffect, useId, useRef, useState } from 'react';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { useIsDrawn } from '../../look/useIsDrawn.ts';
import { AskedLink } from './AskedLink.tsx';
import { type Asked, askedOf, type Order, orders } from './asked.ts';
import { stationsInOrder } from './overview.ts';

const from = '/p/$programmeId/sites';
/** The address follows what is typed after this long [ms], so that each letter is no step of its own. Ours. */
const settle_ms = 250;

/** Asks for more, or for less. */
type Put = (more: Readonly<Record<string, string>>) => void;
/** Areas there are, with how many sites lie in each. */
type Areas = readonly (readonly [area: string, sites: number])[];

const nothing: Asked = {};

/** Finds a village, and shows sites of one area or with trouble at one station alone. */
export const Tools = memo(function Tools({
  programmeId,
  asked,
  areas,
}: {
  readonly programmeId: string;
  readonly asked: Asked;
  readonly areas: Areas;
}) {
  const { say } = useLanguage();
  const navigate = useNavigate({ from });
  const put = useCallback<Put>(
    (more) => void navigate({ to: '.', search: (before) => askedOf({ ...before, ...more }), resetScroll: false }),
    [navigate],
  );
  return (
    <search className="tools on-screen">
      <FindBox text={asked.text} />
      {areas.length === 0 ? null : <AreaChoice area={asked.area} areas={areas} put={put} />}
      <StationChoice station={asked.station} put={put} />
      {Object.keys(asked).length === 0 ? null : (
        <AskedLink programmeId={programmeId} asked={nothing} className="all">
          {say('sites.show_all')}
        </AskedLink>
      )}
    </search>
  );
});

const AreaChoice = memo(function AreaChoice({
  area,
  areas,
  put,
}: {
  readonly area: Asked['area'];
  readonly areas: Areas;
  readonly put: Put;
}) {
  const { say } = useLanguage();
  // There may be a hundred, and none is seen before it is opened.
  const isDrawn = useIsDrawn('areas of sites');
  return (
    <label>
      {say('sites.filter_area')}
      <select value={area ?? ''} onChange={(event) => put({ area: event.target.value })}>
        <option value="">{say('sites.any_area')}</option>
        {(isDrawn ? areas : areas.filter(([name]) => name === area)).map(([name, sites]) => (
          <option key={name} value={name}>{`${name} (${sites})`}</option>
        ))}
      </select>
    </label>
  );
});

const StationChoice = memo(function StationChoice({
  station,
  put,
}: {
  readonly station: Asked['station'];
  readonly put: Put;
}) {
  const { say } = useLanguage();
  return (
    <label>
      {say('sites.filter_station')}
      <select value={station ?? ''} onChange={(event) => put({ station: event.target.value })}>
        <option value="">{say('sites.any_station')}</option>
        {stationsInOrder.map((one) => (
          <option key={one} value={one}>
            {say(`sites.station_${one}`)}
          </option>
        ))}
      </select>
    </label>
  );
});

/** The box that finds a village by name, number or area. */
const FindBox = memo(function FindBox({ text }: { readonly text: Asked['text'] }) {
  const { say } = useLanguage();
  const navigate = useNavigate({ from });
  const help = useId();
  const [typed, setTyped] = useState(text ?? '');
  const sent = useRef(text ?? '');
  // An address that changed by other means, such as back, fills the box.
  useEffect(() => {
    const now = text ?? '';
    if (now === sent.current) return;
    sent.current = now;
    setTyped(now);
  }, [text]);
  useEffect(() => {
    if (typed.trim() === sent.current) return undefined;
    const timer = setTimeout(() => {
      sent.current = typed.trim();
      void navigate({
        to: '.',
        search: (before) => askedOf({ ...before, text: typed.trim() }),
        replace: (text ?? '') !== '',
        resetScroll: false,
      });
    }, settle_ms);
    return () => clearTimeout(timer);
  }, [typed, navigate, text]);
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
});

/** In which order the list stands, and the other orders. */
export const OrderWords = memo(function OrderWords({
  programmeId,
  asked,
}: {
  readonly programmeId: string;
  readonly asked: Asked;
}) {
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
              <AskedLink programmeId={programmeId} asked={inOrder(asked, order)}>
                {say(`sites.by_${order}`)}
              </AskedLink>
            </li>
          ))}
      </ul>
    </div>
  );
});

function inOrder({ order: _, ...rest }: Asked, order: Order): Asked {
  return order === 'worst' ? rest : { ...rest, order };
}
