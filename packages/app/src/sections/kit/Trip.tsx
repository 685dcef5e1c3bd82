import { type BoatBlock, boatPicture } from '@eavewell/drawing';
import { freeboardWith } from '@eavewell/engine';
import { Link } from '@tanstack/react-router';
import { useMemo, useState } from 'react';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { Cautions } from './Cautions.tsx';
import { Drawn } from './Drawn.tsx';
import { type KitAsked, tripOf } from './kitAsked.ts';
import type { Carried, ProgrammeKitAnswer } from './kitQuery.ts';
import { carriedWords, massWords, overWords, pieceWords } from './kitWords.ts';
import { type StopLoad, stopsOfLoads } from './stopsOfLoads.ts';

type TripBoat = NonNullable<ProgrammeKitAnswer['trip']>['carried'][number];

/** A trip: what its sites take together, the boat with it from the side, and in which order it is loaded. */
export function Trip({ kit, asked }: { readonly kit: ProgrammeKitAnswer; readonly asked: KitAsked }) {
  const language = useLanguage();
  const { say } = language;
  const { trip } = kit;
  const boats = trip?.carried.filter(({ mode }) => mode === 'boat') ?? [];
  const [wanted, setWanted] = useState<string | null>(null);
  if (trip === null) return null;
  const best = [...boats]
    .filter(({ limit_kg }) => limit_kg !== null)
    .sort((a, b) => a.loads.length - b.loads.length)[0];
  const boat = boats.find(({ carrierId }) => carrierId === wanted) ?? best ?? boats[0];
  const names = tripOf(asked.sites).map((siteId) => kit.sites.find((site) => site.siteId === siteId)?.name ?? siteId);
  return (
    <section className="trip" aria-labelledby="trip-head">
      <h2 id="trip-head">{say('kit.trip_title', { sites: names.join(', ') })}</h2>
      <p className="sentence">{say('kit.trip_mass', { mass: massWords(trip.mass_kg, trip.noMass_count, language) })}</p>
      <ul className="plain">
        {trip.carried.map((carried) => (
          <li key={carried.carrierId}>{carriedWords(carried, language)}</li>
        ))}
      </ul>
      <p className="on-screen">
        <Link from="/p/$programmeId/kit" to="." search={({ sites: _, ...rest }) => rest} resetScroll={false}>
          {say('kit.trip_none')}
        </Link>
      </p>
      {boats.length < 2 || boat === undefined ? null : (
        <label className="on-screen which-boat">
          {say('kit.which_boat')}{' '}
          <select value={boat.carrierId} onChange={(event) => setWanted(event.target.value)}>
            {boats.map(({ carrierId, name }) => (
              <option key={carrierId} value={carrierId}>
                {name}
              </option>
            ))}
          </select>
        </label>
      )}
      {boat === undefined ? <p>{say('kit.no_boat')}</p> : <Boat kit={kit} boat={boat} />}
      {boat === undefined ? null : <Stowing kit={kit} boat={boat} />}
    </section>
  );
}

function Boat({ kit, boat }: { readonly kit: ProgrammeKitAnswer; readonly boat: TripBoat }) {
  const language = useLanguage();
  const { say } = language;
  const carrier = kit.carriers.find(({ carrierId }) => carrierId === boat.carrierId);
  const byStop = useMemo(() => stopsOfLoads(boat.loads, boat.stowed, kit.chosen ?? []), [boat, kit.chosen]);
  return (
    <>
      <h3>{carriedWords(boat, language)}</h3>
      {byStop.slice(0, mostBoats).map((stops, nth) => (
        <BoatLoad
          // biome-ignore lint/suspicious/noArrayIndexKey: loads have no name but their place
          key={nth}
          blocks={blocksOf(stops, kit, language)}
          name={say('kit.boat_nth', { carrier: boat.name, nth: nth + 1 })}
          {...{ boat, carrier }}
        />
      ))}
      {boat.loads.length <= mostBoats ? null : (
        <p className="small">{say('kit.more_loads', { count: boat.loads.length - mostBoats })}</p>
      )}
      {boat.loads.length < 2 ? null : <p className="small">{say('kit.stops_mixed')}</p>}
      {boat.cannotCarry.length === 0 ? null : (
        <ul className="cannot">
          {boat.cannotCarry.map((one) => (
            <li key={one.partId}>
              <b className="w-short">{say('kit.cannot', { carrier: boat.name })}</b> {pieceWords(one, language)}
              {overWords(one, language) === '' ? '' : `: ${overWords(one, language)}`}
            </li>
          ))}
        </ul>
      )}
      {carrier?.limitSetBy ? <p className="small">{say('kit.limit_by', { by: carrier.limitSetBy })}</p> : null}
      <Cautions of={boat.cautions} />
    </>
  );
}

/** Loads drawn of one boat. Ours. */
const mostBoats = 3;

type Language = ReturnType<typeof useLanguage>;

/** What lies together for each stop, the last stop aft. */
function blocksOf(stops: readonly StopLoad[], kit: ProgrammeKitAnswer, { numbers }: Language): readonly BoatBlock[] {
  return [...stops].reverse().map(({ siteId, nth, mass_kg }) => ({
    ...{ blockId: `stop:${siteId}`, label: kit.sites.find((site) => site.siteId === siteId)?.name ?? siteId },
    ...{ nth: String(nth), mass_kg, said: numbers.quantity(Math.round(mass_kg), 'kg') },
  }));
}

/** One boat with what lies in it. */
export function BoatLoad({
  blocks,
  boat,
  carrier,
  name,
}: {
  readonly blocks: readonly BoatBlock[];
  readonly boat: Carried;
  readonly carrier: ProgrammeKitAnswer['carriers'][number] | undefined;
  readonly name: string;
}) {
  const { say, numbers } = useLanguage();
  const cm = (value: number) => say('kit.cm', { amount: numbers.fixed(value, 0) });
  const load_kg = blocks.reduce((sum, { mass_kg }) => sum + mass_kg, 0);
  const known = carrier === undefined ? null : freeboardWith({ ...carrier, limit_kg: boat.limit_kg }, load_kg);
  const input = {
    ...{ blocks, limit_kg: boat.limit_kg, freeboard_cm: known?.freeboard_cm ?? null },
    ...{ atLimit_cm: carrier?.freeboard_cm ?? null, leastFreeboard_cm: carrier?.leastFreeboard_cm ?? null },
  };
  const words = {
    freeboard: (value: number) => say('kit.freeboard', { height: cm(value), how: known?.from ?? 'atLimit' }),
    mark: (value: number) => say('kit.freeboard_mark', { height: cm(value) }),
    spare: (mass_kg: number) => say('kit.to_spare', { mass: numbers.quantity(Math.round(mass_kg), 'kg') }),
  };
  return <Drawn name={name} most_px={900} draw={(width) => boatPicture(input, words, { width })} />;
}

/** In which order it is loaded: the last stop first, what is fragile on top. */
function Stowing({ kit, boat }: { readonly kit: ProgrammeKitAnswer; readonly boat: TripBoat }) {
  const language = useLanguage();
  const { say, numbers } = language;
  if (boat.stowed.length === 0) return null;
  const nameOf = (siteId: string) => kit.sites.find((site) => site.siteId === siteId)?.name ?? siteId;
  const runs: {
    readonly siteId: string;
    readonly isFragile: boolean;
    readonly pieces: TripBoat['stowed'][number][];
  }[] = [];
  for (const piece of boat.stowed) {
    const last = runs.at(-1);
    if (last !== undefined && last.siteId === piece.siteId && last.isFragile === piece.isFragile)
      last.pieces.push(piece);
    else runs.push({ siteId: piece.siteId, isFragile: piece.isFragile, pieces: [piece] });
  }
  return (
    <>
      <h3>{say('kit.stow_title')}</h3>
      <ol className="stowing">
        {runs.map(({ siteId, isFragile, pieces }) => (
          <li key={`${siteId} ${isFragile} ${pieces[0]?.partId}`}>
            <b>{say(isFragile ? 'kit.stow_fragile' : 'kit.stow_stop', { site: nameOf(siteId) })}</b>{' '}
            {pieces
              .map((piece) => {
                const mass =
                  piece.mass_kg === null ? say('kit.not_known') : numbers.quantity(piece.mass_kg * piece.count, 'kg');
                return `${pieceWords(piece, language)} (${mass})`;
              })
              .join('; ')}
          </li>
        ))}
      </ol>
    </>
  );
}
