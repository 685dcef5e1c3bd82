/** What may be done to water. */
export type TreatmentKind = 'settling' | 'membrane' | 'chlorine' | 'boiling';

/** What may be wrong with it. */
export type WaterTrouble =
  | 'dissolvedMetals'
  | 'salts'
  | 'dissolvedChemicals'
  | 'tasteAndColour'
  | 'germsComingAgain'
  | 'cryptosporidium'
  | 'dirt'
  | 'bacteria'
  | 'viruses';

/**
 * What each leaves in: a membrane holds back what is larger than its pores, and nothing that is dissolved; chlorine does next to nothing to Cryptosporidium; only chlorine goes on
 * working in the container. Viruses stay behind a membrane unless a challenge test says otherwise.
 */
const left: Readonly<Record<TreatmentKind, readonly WaterTrouble[]>> = {
  settling: [
    'dissolvedMetals',
    'salts',
    'dissolvedChemicals',
    'tasteAndColour',
    'germsComingAgain',
    'cryptosporidium',
    'bacteria',
    'viruses',
  ],
  membrane: ['dissolvedMetals', 'salts', 'dissolvedChemicals', 'tasteAndColour', 'germsComingAgain', 'viruses'],
  chlorine: ['dissolvedMetals', 'salts', 'dissolvedChemicals', 'tasteAndColour', 'cryptosporidium', 'dirt'],
  boiling: ['dissolvedMetals', 'salts', 'dissolvedChemicals', 'tasteAndColour', 'germsComingAgain', 'dirt'],
};

/**
 * What does all that is done to the water leave in it?
 *
 * @param treatments - what is done, in any order; none: everything stays
 * @param isVirusTested - has a challenge test with viruses been passed by the membrane?
 * @returns what none of them takes out
 * @law one more treatment never leaves more in
 * @source who-gdwq-4, chapter 7 (from memory); who-fwc-15-02, boiling
 * @example
 * staysInWater(['membrane', 'chlorine'], false) // → ['dissolvedMetals', 'salts', 'dissolvedChemicals', 'tasteAndColour']
 * staysInWater(['chlorine', 'boiling'], false) // → ['dissolvedMetals', 'salts', 'dissolvedChemicals', 'tasteAndColour', 'dirt']
 */
export function staysInWater(treatments: readonly TreatmentKind[], isVirusTested: boolean): readonly WaterTrouble[] {
  const all = [...left.settling, 'dirt' as const];
  return all.filter((trouble) =>
    treatments.every(
      (kind) => left[kind].includes(trouble) && !(trouble === 'viruses' && kind === 'membrane' && isVirusTested),
    ),
  );
}
