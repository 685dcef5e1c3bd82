import { Outlet } from '@tanstack/react-router';
import { useDeferredValue } from 'react';
import { useLanguage } from '../language/LanguageProvider.tsx';
import './sheet.css';

/** The paper every page is drawn on. The first press of Tab leads past its head. */
export function Sheet() {
  const { say } = useLanguage();
  // What stands on it is a rendering of its own, in slices, when the pages are opened.
  const isUp = useDeferredValue(true, false);
  return (
    <>
      <a className="skip" href="#sheet">
        {say('app.skip')}
      </a>
      {isUp ? <Outlet /> : null}
    </>
  );
}
