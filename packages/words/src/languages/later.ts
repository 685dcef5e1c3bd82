// Made by "npm run generate" from packages/words/languages.
/** The languages there are: what each calls itself, which way it runs, and the sections the app loads later. */
export const laterLanguages = {
  "en": { name: "English", direction: "ltr", load: () => import('./en/later.ts') },
  "es": { name: "español", direction: "ltr", load: () => import('./es/later.ts') },
} as const;
