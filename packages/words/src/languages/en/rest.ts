// long: made by "npm run generate" from packages/words/languages/en.json; change that file, not this one.
export const missing = [] as const;
