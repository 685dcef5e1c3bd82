import { type AboardLine, kg, type StopLoad, type TripLoad } from '@eavewell/report/trip';
import type { RolloutTripAnswer } from '@eavewell/tables';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { massOf } from './masses.ts';
import { partWords } from './partWords.ts';
import { type TickKind, tickKinds, tickOf, useTicks } from './ticks.ts';

type Ticks = ReturnType<typeof useTicks>;

/** What is aboard in the order it is put in, with boxes that keep their ticks on this device. */
export function LoadList({
  load,
  trip,
  programmeId,
}: {
  readonly load: TripLoad;
  readonly trip: RolloutTripAnswer;
  readonly programmeId: string;
}) {
  const { say } = useLanguage();
  const ticks = useTicks(programmeId, trip.trip.tripId);
  const lines = load.stops.flatMap((stop) => stop.lines);
  const done = lines.filter((line) => ticks.ticks.has(tickOf('loaded', line))).length;
  return (
    <section className="load-list" aria-labelledby="load-order">
      <h2 id="load-order">{say('rolloutTrip.order')}</h2>
      {load.hasBothDangers ? <p className="w-short">{say('rolloutTrip.both_dangers')}</p> : null}
      {lines.length === 0 ? (
        <p>{say('rolloutTrip.nothing')}</p>
      ) : (
        <p className="small on-screen" role="status">
          {say('rolloutTrip.ticks_kept', { done, all: lines.length })}
        </p>
      )}
      {load.stops
        .filter((stop) => stop.lines.length > 0)
        .map((stop) => (
          <Stop key={stop.siteId} stop={stop} ticks={ticks} />
        ))}
      <Totals load={load} trip={trip} />
    </section>
  );
}

function Stop({ stop, ticks }: { readonly stop: StopLoad; readonly ticks: Ticks }) {
  const language = useLanguage();
  const { say, numbers } = language;
  const { nth, siteId, name, people } = stop;
  const heads = ['part', 'count', 'mass', 'longest', 'lift', ...tickKinds] as const;
  return (
    <section aria-labelledby={`stop-${siteId}`}>
      <h3 id={`stop-${siteId}`}>
        {say('rolloutTrip.stop', { nth, site: name })}
        {people === null ? '' : `, ${numbers.people(people)}`}; {massOf(stop, language)}
      </h3>
      <table className="stacks" aria-labelledby={`stop-${siteId}`}>
        <thead>
          <tr>
            {heads.map((head) => (
              <th key={head} scope="col" className={head === 'part' ? undefined : 'num'}>
                {say(`rolloutTrip.head_${head}`)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {stop.lines.map((line) => (
            <Line key={`${line.partId} ${line.each_count}`} line={line} site={name} ticks={ticks} />
          ))}
        </tbody>
      </table>
    </section>
  );
}

function Line({ line, site, ticks }: { readonly line: AboardLine; readonly site: string; readonly ticks: Ticks }) {
  const language = useLanguage();
  const { say, numbers } = language;
  const { count, mass_kg, longest_m, lift_people, danger, isPresumed } = line;
  const part = partWords(line, language);
  return (
    <tr>
      <th scope="row">
        {part}
        {isPresumed ? <span className="small presumed"> {say('rolloutTrip.presumed')}</span> : null}
        {danger === null ? null : <b className="w-short">, {say(`rolloutTrip.danger_${danger}`)}</b>}
      </th>
      <td className="num" data-head={say('rolloutTrip.head_count')}>
        {numbers.given(count, '')}
      </td>
      <td className="num" data-head={say('rolloutTrip.head_mass')}>
        {mass_kg === null ? say('rolloutTrip.weigh') : kg(mass_kg, language)}
        {mass_kg === null || count < 2 ? null : (
          <span className="small each"> {say('rolloutTrip.each', { mass: kg(mass_kg / count, language) })}</span>
        )}
      </td>
      <td className="num" data-head={say('rolloutTrip.head_longest')}>
        {longest_m === null ? '' : numbers.quantity(longest_m, 'm')}
      </td>
      <td className="num" data-head={say('rolloutTrip.head_lift')}>
        {lift_people === null ? '' : numbers.given(lift_people, '')}
      </td>
      {tickKinds.map((kind) => (
        <td key={kind} className="num tick" data-head={say(`rolloutTrip.head_${kind}`)}>
          <Tick kind={kind} line={line} name={say(`rolloutTrip.tick_${kind}`, { part, site })} ticks={ticks} />
        </td>
      ))}
    </tr>
  );
}

function Tick({
  kind,
  line,
  name,
  ticks,
}: {
  readonly kind: TickKind;
  readonly line: AboardLine;
  readonly name: string;
  readonly ticks: Ticks;
}) {
  const tick = tickOf(kind, line);
  return (
    <label className="tick-box">
      <input
        type="checkbox"
        aria-label={name}
        checked={ticks.ticks.has(tick)}
        onChange={(event) => ticks.set(tick, event.target.checked)}
      />
    </label>
  );
}

function Totals({ load, trip }: { readonly load: TripLoad; readonly trip: RolloutTripAnswer }) {
  const language = useLanguage();
  const { say, numbers } = language;
  const { fuel_kg, limit_kg, limitBy, left_kg, unweighed_count, isKitInPart } = load;
  const inPart = load.stops.filter((stop) => stop.isKitInPart).map(({ name }) => name);
  const limit = limit_kg === null ? '' : kg(limit_kg, language);
  const against =
    left_kg === null
      ? say('rolloutTrip.against_none')
      : left_kg < 0
        ? say('rolloutTrip.against_over', { limit, over: kg(-left_kg, language) })
        : say(isKitInPart ? 'rolloutTrip.against_left_most' : 'rolloutTrip.against_left', {
            limit,
            left: kg(Math.floor(left_kg), language),
          });
  const all = { mass_kg: load.loaded_kg, unweighed_count: unweighed_count + (fuel_kg === null ? 1 : 0), isKitInPart };
  const known = (mass_kg: number | null) => (mass_kg === null ? say('rolloutTrip.weigh') : kg(mass_kg, language));
  const fuel_L = trip.trip.fuel_L ?? 0;
  return (
    <>
      {fuel_L > 0 ? (
        <p>
          {say('rolloutTrip.fuel_line', { litres: numbers.quantity(Math.ceil(fuel_L), 'L'), mass: known(fuel_kg) })}
        </p>
      ) : null}
      <p className={left_kg !== null && left_kg < 0 ? 'w-short' : 'total'}>
        <b>{say('rolloutTrip.total', { mass: massOf(all, language), against })}</b>
      </p>
      {limitBy === null ? null : <p>{say('rolloutTrip.limit_of', { limit, ...limitBy })}</p>}
      {isKitInPart ? <p className="w-tight">{say('rolloutTrip.kit_in_part', { sites: inPart.join(', ') })}</p> : null}
      {load.presumed_count === 0 ? null : (
        <p className="w-tight">{say('rolloutTrip.presumed_about', { count: load.presumed_count })}</p>
      )}
      {unweighed_count === 0 ? null : (
        <p className="w-tight">{say('rolloutTrip.unweighed', { count: unweighed_count })}</p>
      )}
      <p>{say('rolloutTrip.crew_line', { people: numbers.people(trip.crew.people), mass: known(trip.crew_kg) })}</p>
    </>
  );
}
