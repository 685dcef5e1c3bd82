import type { RolloutSheet } from '@eavewell/tables';
import { Link, useNavigate, useSearch } from '@tanstack/react-router';
import { useMemo, useState } from 'react';
import { Button, ComboBox, Input, Label, ListBox, ListBoxItem, Popover } from 'react-aria-components';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { SiteFinder } from '../../sites/index.ts';
import { rolloutAskedOf } from '../rolloutAsked.ts';
import { weekOfDay } from '../weekMap/weeks.ts';
import { OpensWorking, WorkingOfPart } from '../working/opening.tsx';
import { MendingLink } from './MendingLink.tsx';
import { mendingOf } from './mending.ts';
import { useVillages } from './useVillages.ts';
import { villageCautions } from './villageCautions.ts';
import { comingDay, type Village, type VillageFound, type Villages, villageFound } from './villageFound.ts';
import { villageWords } from './villageWords.ts';
import { WhyThen } from './WhyThen.tsx';
import { whenAsked } from './whenAsked.ts';
import './finding.css';

const from = '/p/$programmeId/rollout';

/** Names offered at once. Ours. */
const most = 30;

/** A field for the name of a village, and one sentence: when it drinks, how sure that is, who comes; or why nobody does. */
export function FindVillage({ sheet, programmeId }: { readonly sheet: RolloutSheet; readonly programmeId: string }) {
  const { say } = useLanguage();
  const { plan, site } = useSearch({ from });
  const navigate = useNavigate({ from });
  const { villages, known } = useVillages(sheet, programmeId);
  const found = useMemo(() => (site === undefined ? null : villageFound(sheet, site, known)), [sheet, site, known]);
  const choose = (siteId: string) => {
    const week = weekOfDay(comingDay(sheet, siteId) ?? '')?.from;
    void navigate({
      to: '.',
      search: (before) => rolloutAskedOf({ ...before, site: siteId, ...(week === undefined ? {} : { week }) }),
      resetScroll: false,
    });
  };
  return (
    <section className="find-village">
      <NameField villages={villages} onChosen={choose} />
      <p className="small on-screen to-all-sites">
        <Link to="/p/$programmeId/rollout/sites" params={{ programmeId }} search={plan === undefined ? {} : { plan }}>
          {say('rolloutFinding.all_sites')}
        </Link>
      </p>
      {found === null ? null : <Answer {...{ found, sheet, programmeId }} />}
    </section>
  );
}

function NameField({ villages, onChosen }: { readonly villages: Villages; onChosen(siteId: string): void }) {
  const { say, numbers } = useLanguage();
  const [typed, setTyped] = useState('');
  const finder = useMemo(
    () => whenAsked(() => new SiteFinder(Array.from({ length: villages.count }, (_, i) => villages.at(i)))),
    [villages],
  );
  // At once, not deferred: a key pressed right after the last letter is to choose among what those letters find.
  const items = useMemo(() => {
    const places = typed.trim() === '' ? null : finder().find(typed);
    const shown = places?.slice(0, most) ?? Array.from({ length: Math.min(most, villages.count) }, (_, i) => i);
    return Array.from(shown, (at) => ({ ...villages.at(at), id: villages.at(at).siteId }));
  }, [finder, villages, typed]);
  return (
    <ComboBox
      className="village-name on-screen"
      items={items}
      inputValue={typed}
      onInputChange={setTyped}
      onSelectionChange={(key) => {
        const village = items.find(({ id }) => id === key);
        if (!village) return;
        setTyped(village.name);
        onChosen(village.siteId);
      }}
      allowsEmptyCollection
      // The list closes when the page scrolls, as it does where a keyboard comes up: what was typed stays.
      allowsCustomValue
    >
      <Label>{say('rolloutFinding.label')}</Label>
      <div>
        <Input />
        <Button aria-label={say('rolloutFinding.open')}>
          <svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true" focusable="false">
            <path d="M2 5.5 8 11.5 14 5.5" />
          </svg>
        </Button>
      </div>
      <Popover className="village-list">
        <ListBox renderEmptyState={() => <p className="small">{say('rolloutFinding.none')}</p>}>
          {(village: Village & { id: string }) => (
            <ListBoxItem id={village.id} textValue={village.name}>
              {village.name}{' '}
              <span className="small">
                {[village.siteId, ...(village.area === null ? [] : [village.area])].join(', ')}
                {village.people === null ? '' : `, ${numbers.people(village.people)}`}
              </span>
            </ListBoxItem>
          )}
        </ListBox>
      </Popover>
    </ComboBox>
  );
}

function Answer(props: { readonly found: VillageFound; readonly sheet: RolloutSheet; readonly programmeId: string }) {
  const language = useLanguage();
  const { say } = language;
  const { found, sheet, programmeId } = props;
  const { plan, week } = useSearch({ from });
  const { first, more, why } = useMemo(() => villageWords(found, sheet, language), [found, sheet, language]);
  const cautions = useMemo(() => villageCautions(found, sheet, language), [found, sheet, language]);
  const { siteId, name } = found.village;
  const mending = found.kind === 'notPlanned' ? mendingOf(found.candidate) : null;
  const ofPlan = plan === undefined ? {} : { plan };
  return (
    // Told aloud when another village is chosen.
    <section className="village-answer" aria-label={say('rolloutFinding.answer', { name })}>
      <div role="status">
        <p className="sentence">
          <b>{first}</b> {more}
        </p>
        {cautions.map((said) => (
          <p key={said} className="w-tight">
            {said}
          </p>
        ))}
        {why.map((said) => (
          <p key={said}>{said}</p>
        ))}
      </div>
      {found.kind === 'coming' && found.coming.trip.state === 'planned' ? (
        <WhyThen {...{ sheet, programmeId, siteId }} />
      ) : null}
      <p className="village-links on-screen">
        {mending === null || mending.to === 'plan' ? null : <MendingLink {...{ programmeId, siteId, plan, mending }} />}
        {found.kind === 'coming' ? (
          <>
            {found.coming.stop.served === null ? null : (
              <OpensWorking
                asked={{ figure: 'drinks', site: siteId }}
                part={`village ${siteId}`}
                served={found.coming.stop.served}
              >
                {say('rolloutFinding.how_reached')}
              </OpensWorking>
            )}
            <Link
              to="/p/$programmeId/rollout/trips/$tripId"
              params={{ programmeId, tripId: found.coming.trip.tripId }}
              search={ofPlan}
            >
              {say('rolloutFinding.see_trip')}
            </Link>
            <Link
              from={from}
              to="."
              search={rolloutAskedOf({ ...ofPlan, site: siteId, ...(week === undefined ? {} : { week }) })}
              hash="week-map"
              resetScroll={false}
            >
              {say('rolloutFinding.see_map')}
            </Link>
          </>
        ) : null}
        <Link to="/p/$programmeId/sites/$siteId" params={{ programmeId, siteId }}>
          {say('rolloutFinding.see_site')}
        </Link>
      </p>
      <WorkingOfPart part={`village ${siteId}`} />
    </section>
  );
}
