import { Outlet } from '@tanstack/react-router';
import { useLanguage } from '../language/LanguageProvider.tsx';
import './sheet.css';

/** The paper every page is drawn on. The first press of Tab leads past its head. */
export function Sheet() {
  const { say } = useLanguage();
  return (
    <>
      <a className="skip" href="#sheet">
        {say('app.skip')}
      </a>
      <Outlet />
    </>
  );
}
