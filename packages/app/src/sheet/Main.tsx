import { createContext, type ReactNode, useContext } from 'react';

/** Is the sheet's main part around this already? A page has one, and what could not be shown may stand in it or in its place. */
const InMain = createContext(false);

/** The main part of a sheet, where "skip to the page" leads; inside another it is only what it holds. */
export function Main({ children }: { readonly children: ReactNode }) {
  if (useContext(InMain)) return children;
  return (
    <main id="sheet" className="sheet" tabIndex={-1}>
      <InMain value={true}>{children}</InMain>
    </main>
  );
}
