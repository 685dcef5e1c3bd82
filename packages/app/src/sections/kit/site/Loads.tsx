import { loadsPicture } from '@eavewell/drawing';
import { useState } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { Cautions } from '../Cautions.tsx';
import { Drawn } from '../Drawn.tsx';
import type { Carried, SiteKitAnswer } from '../kitQuery.ts';
import { carriedWords, overWords, pieceWords } from '../kitWords.ts';
import { BoatLoad } from '../Trip.tsx';

/** How the kit is carried: by people on foot, in a boat, on a truck, each drawn. */
export function Loads({ site }: { readonly site: SiteKitAnswer }) {
  const language = useLanguage();
  const { say } = language;
  const [wanted, setWanted] = useState<string | null>(null);
  const shown = site.carried.find(({ carrierId }) => carrierId === wanted) ?? usual(site.carried);
  const leftOver = site.carried.filter(({ cannotCarry }) => cannotCarry.length > 0);
  return (
    <section className="carried" aria-labelledby="kit-carried">
      <h2 id="kit-carried">{say('kit.carried')}</h2>
      {site.carried.length === 0 ? <p>{say('kit.no_carriers')}</p> : null}
      <ul className="which-carrier">
        {site.carried.map((carried) => (
          <li key={carried.carrierId}>
            <button
              type="button"
              className="press"
              aria-pressed={carried.carrierId === shown?.carrierId}
              onClick={() => setWanted(carried.carrierId)}
            >
              {carriedWords(carried, language)}
            </button>
          </li>
        ))}
      </ul>
      {shown === undefined ? null : <OneCarrier carried={shown} site={site} />}
      {leftOver.length === 0 || leftOver.length < site.carried.length ? null : (
        <p className="w-short">{say('kit.nobody_takes')}</p>
      )}
      {site.kitsIn.length === 0 ? null : (
        <p className="small">
          {site.kitsIn
            .map(({ name, kits_count, limitedBy }) =>
              kits_count === null
                ? say('kit.kits_unknown', { carrier: name })
                : say('kit.kits_whole', { carrier: name, count: kits_count, by: limitedBy ?? 'none' }),
            )
            .join(' ')}
        </p>
      )}
    </section>
  );
}

/** What is shown first: the boat, on which most hangs; else people on foot, the last stretch of every way. */
const usual = (all: readonly Carried[]): Carried | undefined =>
  all.find(({ mode, limit_kg }) => mode === 'boat' && limit_kg !== null) ??
  all.find(({ mode, limit_kg }) => mode === 'twoPeople' && limit_kg !== null) ??
  all.find(({ limit_kg }) => limit_kg !== null) ??
  all[0];

// long: one carrier after the other, each in its own manner
function OneCarrier({ carried, site }: { readonly carried: Carried; readonly site: SiteKitAnswer }) {
  const language = useLanguage();
  const { say, numbers } = language;
  const { mode, name, limit_kg, loads, cannotCarry, noMass, problems } = carried;
  const carrier = site.carriers.find(({ carrierId }) => carrierId === carried.carrierId);
  const title = say('kit.drawn_loads', { carrier: name });
  const kg = (value: number) => numbers.quantity(Math.round(value * 10) / 10, 'kg');
  const isOnFoot = mode === 'person' || mode === 'twoPeople';
  const words = {
    mass: (value: number) => numbers.fixed(value, 1),
    limit: (value: number) => say('kit.may_carry', { mass: kg(value) }),
    nth: (nth: number) => String(nth),
  };
  return (
    <>
      {loads.length === 0 ? null : isOnFoot ? (
        <Drawn
          name={title}
          draw={(width) => loadsPicture(loads, limit_kg, mode === 'person' ? 'one' : 'two', words, { width })}
        />
      ) : mode === 'boat' ? (
        loads.slice(0, 3).map((load, nth) => (
          <BoatLoad
            // biome-ignore lint/suspicious/noArrayIndexKey: loads have no name but their place
            key={nth}
            blocks={[
              {
                ...{ blockId: `load:${nth + 1}`, nth: String(nth + 1), mass_kg: load.mass_kg },
                label: say('kit.load_nth', { nth: nth + 1, of: loads.length }),
                said: kg(load.mass_kg),
              },
            ]}
            boat={carried}
            {...{ carrier, name: title }}
          />
        ))
      ) : null}
      {cannotCarry.length === 0 && noMass.length === 0 ? null : (
        <ul className="cannot">
          {cannotCarry.map((one) => (
            <li key={one.partId}>
              <b className="w-short">{say('kit.cannot', { carrier: name })}</b> {pieceWords(one, language)}
              {overWords(one, language) === '' ? '' : `: ${overWords(one, language)}`}
            </li>
          ))}
          {noMass.map((one) => (
            <li key={one.partId}>
              <b>{say('kit.no_mass')}</b> {pieceWords(one, language)}
            </li>
          ))}
        </ul>
      )}
      <Cautions of={carried.cautions} />
      {loads.length === 0 ? null : (
        <details>
          <summary>{say('kit.load_by_load')}</summary>
          <ol className="load-list">
            {loads.map((load, nth) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: loads have no name but their place
              <li key={nth}>
                <b>{kg(load.mass_kg)}</b>
                {load.longest_m === null
                  ? ''
                  : `, ${say('kit.longest', { length: numbers.quantity(load.longest_m, 'm') })}`}
                {isOnFoot && load.carriedBy !== 'one' && mode === 'person'
                  ? `, ${say(`loads.by.${load.carriedBy}`)}`
                  : ''}
                : {load.pieces.map((piece) => pieceWords(piece, language)).join('; ')}
              </li>
            ))}
          </ol>
        </details>
      )}
      {problems
        .filter(({ code }) => code !== 'loads.cannot_carry' && code !== 'loads.mass_unknown')
        .map(({ code, what, todo }) => (
          <p key={`${code} ${what}`} className="small">
            {what} {todo}
          </p>
        ))}
    </>
  );
}
