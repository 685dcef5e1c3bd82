// Made by "npm run generate" from packages/words/languages.
/** The sections of which all that is printed for a site is said. */
export const paperSections = [
  "cautions",
  "drawn",
  "findings",
  "installation",
  "loads",
  "numbers",
  "pack",
  "pictures",
  "remedies",
  "rolloutPapers",
  "severities",
  "stations",
  "steps",
  "units",
  "verdicts"
] as const;
/** The languages that only what is printed is said in. */
export const paperLanguages = {
  "ar": { name: "العربية", direction: "rtl", load: () => import('./ar/paper.ts') },
  "hi": { name: "हिन्दी", direction: "ltr", load: () => import('./hi/paper.ts') },
} as const;
