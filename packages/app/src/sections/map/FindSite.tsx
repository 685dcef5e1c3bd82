import { useMemo, useState } from 'react';
import { Button, ComboBox, Input, Label, ListBox, ListBoxItem, Popover } from 'react-aria-components';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { VerdictMark } from '../../look/VerdictMark.tsx';
import { findable, findSites } from './findSites.ts';
import { type MapSites, type MapVerdict, mapVerdicts } from './mapSites.ts';

/** Names offered at once. Ours. */
const most = 30;

/** Finds a site by name or id, and shows where it lies. */
export function FindSite({ sites, onFound }: { readonly sites: MapSites; onFound(key: string): void }) {
  const { say } = useLanguage();
  const [typed, setTyped] = useState('');
  const all = useMemo(() => findable(sites), [sites]);
  // At once, not deferred: a key pressed right after the last letter is to choose among what those letters find.
  const items = useMemo(
    () =>
      findSites(all, typed, most).map((place) => ({
        ...{ id: sites.keyAt(place), name: sites.nameAt(place), verdict: mapVerdicts[sites.verdict[place]!]! },
      })),
    [sites, all, typed],
  );
  return (
    <ComboBox
      className="find-site on-screen"
      items={items}
      inputValue={typed}
      onInputChange={setTyped}
      onSelectionChange={(key) => {
        const place = key === null ? -1 : sites.placeOf(String(key));
        if (place < 0) return;
        setTyped(sites.nameAt(place));
        onFound(sites.keyAt(place));
      }}
      allowsEmptyCollection
      // The list closes when the page scrolls: what was typed stays.
      allowsCustomValue
    >
      <Label>{say('map.find')}</Label>
      <div>
        <Input />
        <Button aria-label={say('map.find_open')}>
          <svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true" focusable="false">
            <path d="M2 5.5 8 11.5 14 5.5" />
          </svg>
        </Button>
      </div>
      <Popover className="find-site-list">
        <ListBox renderEmptyState={() => <p className="small">{say('map.find_none')}</p>}>
          {(site: { readonly id: string; readonly name: string; readonly verdict: MapVerdict }) => (
            <ListBoxItem id={site.id} textValue={site.name}>
              <VerdictMark verdict={site.verdict} size={16} /> {site.name}{' '}
              <span className="small">{say('map.verdict', { verdict: site.verdict })}</span>
            </ListBoxItem>
          )}
        </ListBox>
      </Popover>
    </ComboBox>
  );
}
