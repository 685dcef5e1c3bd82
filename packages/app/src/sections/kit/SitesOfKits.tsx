import { Link, useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { type KitAsked, kitAskedOf, tripOf, tripWith } from './kitAsked.ts';
import type { ProgrammeKitAnswer, SiteOfKits } from './kitQuery.ts';
import { massWords, personYearWords } from './kitWords.ts';

/** Rows shown before one asks for more. Ours. */
const first = 30;

/** The sites to fit, with what they take; then those handed over, with what they cost. Sites are chosen for a trip here. */
export function SitesOfKits({
  kit,
  programmeId,
  asked,
}: {
  readonly kit: ProgrammeKitAnswer;
  readonly programmeId: string;
  readonly asked: KitAsked;
}) {
  const { say } = useLanguage();
  const toFit = kit.sites.filter(({ isBuilt }) => !isBuilt);
  const built = kit.sites.filter(({ isBuilt }) => isBuilt);
  // What cannot be counted or carried comes first.
  const worst = [...toFit].sort((a, b) => b.problems_count - a.problems_count || b.mass_kg - a.mass_kg);
  return (
    <section className="kit-sites" aria-labelledby="kit-sites">
      <h2 id="kit-sites">{say('kit.sites_to_fit', { count: toFit.length })}</h2>
      {toFit.length === 0 ? <p>{say('kit.none_to_fit')}</p> : <p className="small">{say('kit.choose_about')}</p>}
      <Rows
        {...{ kit, programmeId, asked }}
        sites={worst}
        isToFit
        name={say('kit.sites_to_fit', { count: toFit.length })}
      />
      {built.length === 0 ? null : (
        <details>
          <summary>{say('kit.built_cost', { count: built.length })}</summary>
          <Rows
            {...{ kit, programmeId, asked }}
            sites={built}
            isToFit={false}
            name={say('kit.built_cost', { count: built.length })}
          />
        </details>
      )}
    </section>
  );
}

// long: a table of one row each
function Rows({
  kit,
  programmeId,
  asked,
  sites,
  isToFit,
  name: caption,
}: {
  readonly kit: ProgrammeKitAnswer;
  readonly programmeId: string;
  readonly asked: KitAsked;
  readonly sites: readonly SiteOfKits[];
  readonly isToFit: boolean;
  readonly name: string;
}) {
  const language = useLanguage();
  const { say, numbers } = language;
  const navigate = useNavigate({ from: '/p/$programmeId/kit' });
  const [most, setMost] = useState(first);
  if (sites.length === 0) return null;
  const trip = tripOf(asked.sites);
  const boats = kit.carriers.filter(({ mode }) => mode === 'boat');
  const choose = (siteId: string) =>
    void navigate({
      to: '.',
      search: (before) => kitAskedOf({ ...before, sites: tripWith(before.sites, siteId) }),
      resetScroll: false,
    });
  const heads = { mass: say('kit.head_mass'), loads: say('kit.head_loads'), cost: say('kit.head_cost') };
  return (
    <>
      <table className="stacks">
        <caption className="said-only">{caption}</caption>
        <thead>
          <tr>
            {isToFit ? (
              <th scope="col" className="on-screen">
                {say('kit.head_trip')}
              </th>
            ) : null}
            <th scope="col">{say('kit.head_site')}</th>
            {isToFit ? (
              <>
                <th scope="col" className="num">
                  {heads.mass}
                </th>
                <th scope="col">{heads.loads}</th>
              </>
            ) : null}
            <th scope="col" className="num">
              {heads.cost}
            </th>
          </tr>
        </thead>
        <tbody>
          {sites.slice(0, most).map((site) => {
            const { siteId, name, people, problems_count } = site;
            const cost = personYearWords(site.cost, kit.currency, language);
            return (
              <tr key={siteId}>
                {isToFit ? (
                  <td className="choose on-screen">
                    <label>
                      <input type="checkbox" checked={trip.includes(siteId)} onChange={() => choose(siteId)} />
                      <span className="said-only">{say('kit.choose', { name: name ?? siteId })}</span>
                      {trip.includes(siteId) ? <span aria-hidden="true">{trip.indexOf(siteId) + 1}</span> : null}
                    </label>
                  </td>
                ) : null}
                <th scope="row">
                  <Link to="/p/$programmeId/sites/$siteId/kit" params={{ programmeId, siteId }}>
                    {name ?? siteId}
                  </Link>{' '}
                  <span className="small">{people === null ? say('sites.no_people') : numbers.people(people)}</span>
                  {problems_count === 0 ? null : (
                    <span className="w-tight"> {say('kit.problems', { count: problems_count })}</span>
                  )}
                </th>
                {isToFit ? (
                  <>
                    <td className="num" data-head={heads.mass}>
                      {massWords(site.mass_kg, site.noMass_count, language)}
                    </td>
                    <td data-head={heads.loads} className="small">
                      {boats
                        .map(({ carrierId, name: carrier }) => {
                          const loads = site.loads.find((one) => one.carrierId === carrierId);
                          return loads === undefined || loads.loads_count === null
                            ? say('kit.no_limit', { carrier })
                            : say('kit.loads_of_short', {
                                carrier,
                                count: loads.loads_count,
                                left: loads.left_count,
                              });
                        })
                        .join('; ')}
                    </td>
                  </>
                ) : null}
                <td className="num" data-head={heads.cost}>
                  {cost === null ? (
                    say('kit.not_known')
                  ) : (
                    <>
                      {cost.amount} <span className="small">{cost.range}</span>
                    </>
                  )}
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
      {sites.length <= most ? null : (
        <button type="button" className="button on-screen" onClick={() => setMost(most + 200)}>
          {say('kit.more', { count: Math.min(200, sites.length - most) })}
        </button>
      )}
    </>
  );
}
