import { type AppLanguage, loadAppLanguage } from '@eavewell/words/app';
import { useQueryClient } from '@tanstack/react-query';
import { createContext, type ReactNode, startTransition, useContext, useEffect, useState } from 'react';
import { I18nProvider } from 'react-aria-components';
import { askIn } from '../api/client.ts';
import { keep, kept } from '../kept.ts';

interface Chosen extends AppLanguage {
  choose(code: string): void;
}

const LanguageContext = createContext<Chosen | null>(null);

/** The language that is loaded or being loaded, and whether a page asked for what is said later. */
const words: { now: Promise<AppLanguage> | null; isMoreAsked: boolean } = { now: null, isMoreAsked: false };

/** Waits until the words of the rollout's pages are there, in the language of the page and in any that is chosen later. */
export async function moreWords(): Promise<void> {
  words.isMoreAsked = true;
  await words.now?.then((language) => language.more());
}

async function loaded(code: string): Promise<AppLanguage> {
  const language = await loadAppLanguage(code);
  if (words.isMoreAsked) await language.more();
  return language;
}

/** Gives every page its texts in the language that was chosen, and tells the browser which it is and which way it runs. */
export function LanguageProvider({ children }: { readonly children: ReactNode }) {
  const client = useQueryClient();
  const [code, setCode] = useState(() => kept('language') ?? navigator.language);
  const [language, setLanguage] = useState<AppLanguage | null>(null);
  useEffect(() => {
    let isWanted = true;
    words.now = loaded(code);
    void words.now.then((found) => {
      if (!isWanted) return;
      document.documentElement.lang = found.code;
      document.documentElement.dir = found.direction;
      askIn(found.code);
      // As a transition the pages are drawn in slices.
      startTransition(() => setLanguage(found));
      // What was answered in another language is asked for again.
      void client.invalidateQueries();
    });
    return () => {
      isWanted = false;
    };
  }, [code, client]);
  if (language === null) return null;
  const choose = (chosen: string) => {
    keep('language', chosen);
    setCode(chosen);
  };
  return (
    <LanguageContext value={{ ...language, choose }}>
      <I18nProvider locale={language.code}>{children}</I18nProvider>
    </LanguageContext>
  );
}

/** The language of the pages: `say` gives a text, `numbers` writes and reads figures. */
export function useLanguage(): Chosen {
  const language = useContext(LanguageContext);
  if (language === null) throw new Error('useLanguage is used outside LanguageProvider');
  return language;
}
