// Made by "npm run generate" from packages/words/languages.
/** The languages there are: what each calls itself, which way it runs, and the sections the app does not need. */
export const restLanguages = {
  "en": { name: "English", direction: "ltr", load: () => import('./en/rest.ts') },
  "es": { name: "español", direction: "ltr", load: () => import('./es/rest.ts') },
} as const;
