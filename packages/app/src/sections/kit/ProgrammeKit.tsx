import { useSuspenseQuery } from '@tanstack/react-query';
import { useNavigate, useParams, useSearch } from '@tanstack/react-router';
import { useDeferredValue } from 'react';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { PictureHatches } from '../../look/PictureView.tsx';
import { CostPictures } from './CostPictures.tsx';
import { KitProblems } from './KitProblems.tsx';
import { type KitAsked, kitAskedOf } from './kitAsked.ts';
import { type ProgrammeKitAnswer, programmeKitQuery } from './kitQuery.ts';
import { costSentence, leadWords } from './kitWords.ts';
import { Purchases } from './Purchases.tsx';
import { RuleLinks } from './RuleLinks.tsx';
import { SitesOfKits } from './SitesOfKits.tsx';
import { Trip } from './Trip.tsx';
import { WorkingOut } from './WorkingOut.tsx';
import './kit.css';

const from = '/p/$programmeId/kit';

/** What goes in the boat and what it costs: of the whole programme, or of a trip whose sites are chosen. */
export function ProgrammeKit() {
  return (
    <WorkingOut>
      <KitFound />
    </WorkingOut>
  );
}

function KitFound() {
  const language = useLanguage();
  const { say } = language;
  const { programmeId } = useParams({ from });
  const asked = useSearch({ from });
  const later = useDeferredValue(asked);
  const { data: kit } = useSuspenseQuery(programmeKitQuery(programmeId, later));
  const { first, rest } = leadWords(kit, language);
  const isTrip = kit.chosen !== null;
  return (
    <div className="programme-kit" aria-busy={later !== asked}>
      <PictureHatches />
      <h1>{first}</h1>
      {rest === '' ? null : <p className="rest">{rest}</p>}
      <NeededOn asked={asked} />
      <p className="papers on-screen">
        <a
          className="button"
          href={`/api/programmes/${encodeURIComponent(programmeId)}/kit.xlsx?${new URLSearchParams({ ...asked })}`}
          download="kit.xlsx"
        >
          {say('kit.sheet')}
        </a>
      </p>
      {kit.unknownSites.length === 0 ? null : (
        <p className="trouble">{say('kit.unknown_sites', { sites: kit.unknownSites.join(', ') })}</p>
      )}
      {isTrip ? <Trip kit={kit} asked={asked} /> : null}
      <Behind kit={kit} />
      <KitProblems problems={kit.problems} />
      <Purchases kit={kit} />
      <SitesOfKits kit={kit} programmeId={programmeId} asked={asked} />
      <section className="kit-cost" aria-labelledby="kit-cost">
        <h2 id="kit-cost">{say('kit.programme_cost')}</h2>
        <p className="small">
          {say('kit.cost_of_all', { count: kit.costSites_count, unknown: kit.costUnknown_count })}
        </p>
        <ProgrammeCost kit={kit} />
      </section>
      <RuleLinks programmeId={programmeId} />
    </div>
  );
}

/** What all sites cost; for each person, of those whose people are known. */
function ProgrammeCost({ kit }: { readonly kit: ProgrammeKitAnswer }) {
  const language = useLanguage();
  const { cost, costServed, costServed_count: served, costSites_count: sites, beside } = kit;
  if (cost === null || costServed === null || served === sites) return <CostPictures cost={cost} beside={beside} />;
  return (
    <>
      <p className="sentence">{costSentence(cost, language)}</p>
      <p className="small">{language.say('kit.cost_of_served', { count: served, of: sites })}</p>
      <CostPictures cost={costServed} beside={beside} />
    </>
  );
}

/** Of which state the costs are. */
function Behind({ kit }: { readonly kit: ProgrammeKitAnswer }) {
  const { say } = useLanguage();
  if (kit.designVersion === kit.version) return null;
  return (
    <p className="small" role="status">
      {say(kit.designVersion === null ? 'kit.wear_not_yet' : 'kit.wear_of_before')}
    </p>
  );
}

/** The day all is needed on: from it follows when to order. */
function NeededOn({ asked }: { readonly asked: KitAsked }) {
  const { say } = useLanguage();
  const navigate = useNavigate({ from });
  const put = (neededOn: string) =>
    void navigate({
      to: '.',
      search: ({ neededOn: _, ...before }) => kitAskedOf({ ...before, neededOn }),
      resetScroll: false,
    });
  return (
    <search className="needed-on on-screen">
      <label>
        {say('kit.needed_on')}{' '}
        <input type="date" value={asked.neededOn ?? ''} onChange={(event) => put(event.target.value)} />
      </label>
      {asked.neededOn === undefined ? <span className="small">{say('kit.needed_on_about')}</span> : null}
    </search>
  );
}
