/** Acidities the tables are read for [pH]. Source: epa-815-r-20-003, tables B-1 and B-2: the first column is for 6 and less (from memory). That nothing under 5 is read is ours: docs/decisions/0218-chlorine-by-the-table.md. */
export const leastRead_pH = 5;
export const mostVirus_pH = 10;
export const virusColumn_pH = 9;

/** The table for Giardia is for so many logs, the one for viruses for up to so many [log]. Source: epa-815-r-20-003, tables B-1 and B-2. */
export const giardiaTable_log = 3;
export const mostVirus_log = 4;

/** Chlorine times minutes against Cryptosporidium, for 3 logs [mg·min/L]. Source: cdc-crypto, CT of 15,300 (from memory): more than ten days at 1 mg/L. */
export const cryptosporidium_mg_min_per_L = 15_300;
export const cryptosporidiumTable_log = 3;

/**
 * Share of the mean stay after which the first tenth of the water is through [ratio], by how a tank is parted. Source: epa-816-r-03-004, baffling factors (from memory).
 * Standing water, mixed and then left alone, stays as long as it stands: 1.
 */
export const baffling_ratio = { unbaffled: 0.1, poor: 0.3, average: 0.5, superior: 0.7, standing: 1 } as const;

/** Smith's regression: below 12.5 °C and from there on. Source: smith-1995, as epa-815-r-20-003 prints it (coefficients as a public transcription has them). */
export const smithParts_C = 12.5;
export const smith = {
  cold: { factor: 0.353, plus: 12.006, exponent: 2.46, perC: -0.073, perChlorine: 0.125, perPH: 0.389 },
  warm: { factor: 0.361, plus: -2.261, exponent: 2.69, perC: -0.065, perChlorine: 0.111, perPH: 0.361 },
} as const;

/** The older regression. Source: epa-swtr-1991, equation for Giardia; also water-research-ct. It falls up to 11 % short of the table. */
export const older = { factor: 0.2828, powerPH: 2.69, powerChlorine: 0.15, perC: 0.933, from_C: 5 } as const;

/** Active chlorine in products as sold [fraction]: of the mass of a powder, and kilograms in a litre of a liquid. Source: gtfcc-2019, appendix 14. Each loses strength with age. */
export const activeChlorine_fraction = { calciumHypochlorite: 0.7, chlorinatedLime: 0.3, bleach: 0.05 } as const;

/** Bleach of 5 % that the printed recipe takes for a litre of stock of one percent [mL]: right if added to a litre, a quarter too strong if made up to one. Source: gtfcc-2019, appendix 14. */
export const bleachRecipe_mL = 250;

/** Active chlorine in a tablet of NaDCC as meant for stock [g]. Source: gtfcc-2019, appendix 14. */
export const tablet_g = 1;

/** Millilitres in a litre. Source: bipm-si-2019, by definition. */
export const mL_per_L = 1000;

/** Chlorine in a litre of stock of one percent [g/L]. Source: gtfcc-2019, appendix 14. */
export const onePercent_g_per_L = 10;

/** Doses that are tried in buckets of 20 L [mg/L], 1, 1.5, 2 and 2.5 mL of stock of one percent. Source: msf-cholera, appendix 16 (from memory). */
export const bucketDoses_mg_per_L = [0.5, 0.75, 1, 1.25] as const;

/** Above this acidity chlorine works slower: wait longer, leave more [pH]. Source: msf-cholera, appendix 16 (from memory); who-gdwq-2017, chlorine (from memory). At 8 itself the slower is taken (ours). */
export const slowFrom_pH = 8;
export const wait_min = 30;
export const slowWait_min = 60;

/**
 * Free chlorine wanted after the wait, and with slow water [mg/L]. Source: msf-cholera, appendix 16 (from memory); who-gdwq-2017, at least 0.5 mg/L after 30 min
 * (from memory).
 */
export const afterWait_mg_per_L = 0.5;
export const afterSlowWait_mg_per_L = 1;

/** Free chlorine wanted where people drink, from and to [mg/L]. Source: gtfcc-2019, appendix 14. */
export const atUse_mg_per_L = 0.2;
export const tasteAtUse_mg_per_L = 0.5;
/** In treated water twice what is wanted is still good [factor]: 1 mg/L, as gtfcc-2019, appendix 14, wants at the source. Ours. */
export const goodUpTo_factor = 2;

/** More free chlorine than this must not be drunk [mg/L]. Source: who-gdwq-2017, guideline value (from memory). */
export const mostDrunk_mg_per_L = 5;

/** Water wants to be under this for chlorine, and under that where means are few [NTU]. Source: who-turbidity-2017 (from memory); gtfcc-2019; wash-cluster-w4. */
export const clear_NTU = 1;
export const mostForChlorine_NTU = 5;

/** Antoine's equation for the pressure of water's vapour, in mmHg and °C [number]. Source: antoine-water, 8.07131, 1730.63, 233.426 (from memory). */
export const antoine = { a: 8.07131, b: 1730.63, c: 233.426 } as const;
/** Pascals in a millimetre of mercury [Pa]. Source: nist-sp811, App. B.8 (from memory). */
export const Pa_per_mmHg = 133.3224;

/** The standard atmosphere up to 11 km. Source: iso-2533, also as us-standard-atmosphere (from memory). */
export const atmosphere = { sea_Pa: 101_325, sea_K: 288.15, fall_K_per_m: 0.0065, power: 5.255_88 } as const;
/** Heights over the sea at which people live and boil water, with room to spare [m]. Ours; the atmosphere is given to 11,000 m. */
export const leastHeight_m = -500;
export const mostHeight_m = 9000;

/** Boiling: bacteria die within a minute a log from here on, viruses by more than five logs and Cryptosporidium within a minute from there on [C]. Source: who-boil-2015, table 1 and text. */
export const bacteriaDie_C = 65;
export const virusesDie_C = 70;

/** How long water is to boil by the more careful advice, and from which height longer [min, m]. Source: cdc-boil, 1 min, above 6,500 ft 3 min (from memory). */
export const boil_min = 1;
export const boilHigh_min = 3;
export const boilHighFrom_m = 2000;

/** No figure of chlorine is greater, or nearer to 0 without being 0, than its inverse [ratio]. Ours: far outside anything that is done. */
export const largestFigure_ratio = 1e9;
