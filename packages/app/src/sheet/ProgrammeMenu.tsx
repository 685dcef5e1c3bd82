import { appLanguages } from '@eavewell/words/app';
import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { Button, Header, Menu, MenuItem, MenuSection, MenuTrigger, Popover, Separator } from 'react-aria-components';
import { useLanguage } from '../language/LanguageProvider.tsx';
import { type Light, lightChosen, lights, showLight } from '../look/light.ts';
import './programmeMenu.css';

/** Under the programme's name: what is done with the whole of it, and how the pages are shown. */
export function ProgrammeMenu({ programmeId, name }: { readonly programmeId: string; readonly name: string }) {
  const { say } = useLanguage();
  const navigate = useNavigate();
  const params = { programmeId };
  const go: Readonly<Record<string, () => void>> = {
    newSite: () => void navigate({ to: '/p/$programmeId/new-site', params }),
    takeIn: () => void navigate({ to: '/p/$programmeId/take-in', params, search: {} }),
    changes: () => void navigate({ to: '/p/$programmeId/changes', params }),
    settings: () => void navigate({ to: '/p/$programmeId/settings', params }),
    others: () => void navigate({ to: '/programmes' }),
  };
  return (
    <MenuTrigger>
      <Button className="programme-press">
        <span className="said-only">{say('programmeMenu.programme')} </span>
        <span className="programme-name">{name}</span>
        <Opens />
      </Button>
      <Popover className="popover" placement="bottom start">
        <Menu className="programme-menu" aria-label={name} onAction={(key) => go[String(key)]?.()}>
          <MenuItem id="newSite">{say('programmeMenu.new_site')}</MenuItem>
          <MenuItem id="takeIn">{say('programmeMenu.take_in')}</MenuItem>
          <MenuItem id="export" href={`/api/programmes/${programmeId}/export.zip`} download>
            {say('programmeMenu.export')}
          </MenuItem>
          <MenuItem id="changes">{say('programmeMenu.changes')}</MenuItem>
          <MenuItem id="settings">{say('programmeMenu.settings')}</MenuItem>
          <MenuItem id="others">{say('programmeMenu.others')}</MenuItem>
          <Separator />
          <LanguageSection />
          <LightSection />
        </Menu>
      </Popover>
    </MenuTrigger>
  );
}

/** How the pages are shown, where no programme is open. */
export function ShownMenu() {
  const { say } = useLanguage();
  return (
    <MenuTrigger>
      <Button className="programme-press">
        {say('programmeMenu.shown')}
        <Opens />
      </Button>
      <Popover className="popover" placement="bottom start">
        <Menu className="programme-menu" aria-label={say('programmeMenu.shown')}>
          <LanguageSection />
          <LightSection />
        </Menu>
      </Popover>
    </MenuTrigger>
  );
}

function LanguageSection() {
  const { say, code, choose } = useLanguage();
  const chosen = appLanguages.find((one) => code === one.code || code.startsWith(`${one.code}-`));
  return (
    <MenuSection
      selectionMode="single"
      selectedKeys={chosen === undefined ? [] : [`language-${chosen.code}`]}
      onSelectionChange={(keys) => {
        const [key] = keys === 'all' ? [] : keys;
        if (key !== undefined) choose(String(key).slice('language-'.length));
      }}
    >
      <Header>{say('programmeMenu.language')}</Header>
      {appLanguages.map((language) => (
        <MenuItem key={language.code} id={`language-${language.code}`} lang={language.code}>
          {language.name}
        </MenuItem>
      ))}
    </MenuSection>
  );
}

function LightSection() {
  const { say } = useLanguage();
  const [light, setLight] = useState<Light>(lightChosen);
  return (
    <MenuSection
      selectionMode="single"
      selectedKeys={[light]}
      onSelectionChange={(keys) => {
        const [key] = keys === 'all' ? [] : keys;
        const chosen = lights.find((one) => one === key);
        if (chosen === undefined) return;
        showLight(chosen);
        setLight(chosen);
      }}
    >
      <Header>{say('programmeMenu.light')}</Header>
      {lights.map((one) => (
        <MenuItem key={one} id={one}>
          {say(`programmeMenu.light_${one}`)}
        </MenuItem>
      ))}
    </MenuSection>
  );
}

/** A small mark that more opens under it. */
function Opens() {
  return (
    <svg viewBox="0 0 12 8" width="12" height="8" aria-hidden="true" focusable="false">
      <path d="M1 1.5 6 6.5 11 1.5" fill="none" stroke="currentColor" strokeWidth="1.7" />
    </svg>
  );
}
