/** Tags of the two languages nobody speaks, made to test with (Unicode CLDR: pseudo-locales). */
export const pseudoTags = ['en-XA', 'ar-XB'] as const;
export type PseudoTag = (typeof pseudoTags)[number];

export const isPseudo = (tag: string): tag is PseudoTag => (pseudoTags as readonly string[]).includes(tag);
