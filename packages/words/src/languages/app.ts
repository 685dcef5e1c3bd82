// Made by "npm run generate" from packages/words/languages.
/** The languages there are: what each calls itself, which way it runs, and the sections of the app. */
export const appLanguages = {
  "en": { name: "English", direction: "ltr", load: () => import('./en/app.ts') },
  "es": { name: "español", direction: "ltr", load: () => import('./es/app.ts') },
} as const;
