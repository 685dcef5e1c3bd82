import { memo, useMemo, useState } from 'react';
import { SetForManyPress } from '../../forms/SetForManyPress.tsx';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { togetherOf } from './chosenSites.ts';
import { csvOfSites, saveAs } from './csvOfSites.ts';
import type { ListNumbers } from './listNumbers.ts';
import type { SiteEntry } from './overview.ts';
import type { Overview } from './overviewOpened.ts';
import type { SiteCollection } from './siteCollection.ts';

/** What the chosen sites come to, and what can be done with them. */
export const ChosenBar = memo(function ChosenBar({
  programmeId,
  overview,
  places,
  collection,
  onPrint,
  onClear,
}: {
  readonly programmeId: string;
  readonly overview: Overview;
  /** Of the chosen sites in it, in its order. */
  readonly places: Uint32Array;
  /** What the list shows. */
  readonly collection: SiteCollection;
  onPrint(): void;
  onClear(): void;
}) {
  const { say } = useLanguage();
  const [told, setTold] = useState('');
  const siteIds = useMemo(() => Array.from(places, (place) => overview.keyAt(place)), [overview, places]);
  const hidden_count = useMemo(
    () => places.reduce((count, place) => count + Number(collection.rowOfPlace(place) < 0), 0),
    [places, collection],
  );
  const copy = () =>
    navigator.clipboard.writeText(Array.from(places, (place) => overview.siteIdAt(place)).join('\n')).then(
      () => setTold(say('sites.chosen_copied', { count: places.length })),
      () => setTold(say('sites.chosen_not_copied')),
    );
  const save = async () => saveAs(say('sites.csv_name'), await csvOfSites(sitesAt(overview, places)));
  return (
    <section className="chosen on-screen" aria-label={say('sites.chosen_title')}>
      <ChosenWords numbers={overview.numbers} places={places} hidden_count={hidden_count} />
      <p className="acts">
        <button type="button" className="button" onClick={() => void save()}>
          {say('sites.chosen_csv')}
        </button>
        <button type="button" className="button" onClick={onPrint}>
          {say('sites.chosen_print')}
        </button>
        <button type="button" className="button" onClick={() => void copy()}>
          {say('sites.chosen_copy')}
        </button>
        <SetForManyPress programmeId={programmeId} siteIds={siteIds} />
        <button type="button" className="button plain" onClick={onClear}>
          {say('sites.chosen_clear')}
        </button>
        <span role="status" className="small">
          {told}
        </span>
      </p>
    </section>
  );
});

/** The sites at some places, each read in its turn. */
function* sitesAt(overview: Overview, places: Uint32Array): Generator<SiteEntry> {
  for (const place of places) yield overview.siteAt(place)!;
}

/** How many, how many people, and what mending them costs. */
function ChosenWords({
  numbers: of,
  places,
  hidden_count,
}: {
  readonly numbers: ListNumbers;
  readonly places: Uint32Array;
  readonly hidden_count: number;
}) {
  const { say, numbers } = useLanguage();
  const { people, withoutPeople_count, sums, withoutCost_count } = useMemo(() => togetherOf(of, places), [of, places]);
  const cost = sums.map(({ amount, currency }) => numbers.money(amount, currency)).join(' + ');
  const parts = [
    say('sites.chosen', { count: places.length, people }),
    ...(withoutPeople_count > 0 ? [say('sites.chosen_people_not_known', { count: withoutPeople_count })] : []),
    ...(hidden_count > 0 ? [say('sites.chosen_hidden', { count: hidden_count })] : []),
  ];
  return (
    <p role="status">
      <b>{parts.join('; ')}.</b> {cost === '' ? '' : say('sites.chosen_cost', { cost })}{' '}
      {withoutCost_count > 0 ? say('sites.chosen_no_cost', { count: withoutCost_count }) : ''}
    </p>
  );
}
