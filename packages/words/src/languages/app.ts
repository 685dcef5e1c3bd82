// Made by "npm run generate" from packages/words/languages.
/** The languages there are: what each calls itself, which way it runs, and the sections of the app. */
export const appLanguages = {
  "en": { name: "English", direction: "ltr", load: () => import('./en/app.ts') },
  "es": { name: "español", direction: "ltr", load: () => import('./es/app.ts') },
} as const;

/** The languages that what is printed is said in. */
export const paperNames = [
  { code: "en", name: "English", direction: "ltr" },
  { code: "es", name: "español", direction: "ltr" },
  { code: "ar", name: "العربية", direction: "rtl" },
  { code: "hi", name: "हिन्दी", direction: "ltr" },
] as const;
