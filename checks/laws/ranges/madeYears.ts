import { gammaDraw, normalDraw, seededDice, uniformDraw, type WaterYear } from '@eavewell/engine';

export const days_per_year = 365;

/** Rain of a made climate: so many years of 365 days [mm], each year leaning on the last by this correlation. */
export type Climate = (years: number, correlation: number, seed: number) => Float64Array;

/**
 * One wet season of 220 days, then a few showers; a year's rain is multiplied by a log-normal number of spread 0.25. The
 * years beyond the extremes were given their distance by what is measured here.
 */
export const oneSeason: Climate = (years, correlation, seed) => {
  const dice = seededDice(seed);
  const sigma = Math.sqrt(Math.log(1 + 0.25 ** 2));
  const rain_mm = new Float64Array(years * days_per_year);
  let z = normalDraw(dice);
  for (let year = 0; year < years; year++) {
    if (year > 0) z = correlation * z + Math.sqrt(1 - correlation ** 2) * normalDraw(dice);
    const wetness = Math.exp(sigma * z - sigma ** 2 / 2);
    for (let day = 0; day < days_per_year; day++) {
      const chance = day < 220 ? 0.55 * Math.sin((Math.PI * day) / 220) : 0.06;
      if (uniformDraw(dice) < chance) rain_mm[year * days_per_year + day] = -Math.log(uniformDraw(dice)) * 10 * wetness;
    }
  }
  return rain_mm;
};

/**
 * Two wet seasons whose rain goes each its own way (spread 0.35), wet days that follow wet days, amounts with a gamma
 * distribution. Nothing was chosen by it.
 */
export const twoSeasons: Climate = (years, correlation, seed) => {
  const dice = seededDice(seed);
  const rain_mm = new Float64Array(years * days_per_year);
  const sigma = Math.sqrt(Math.log(1 + 0.35 ** 2));
  const z = [normalDraw(dice), normalDraw(dice)];
  let wet = false;
  for (let year = 0; year < years; year++) {
    for (const season of [0, 1]) {
      z[season] = correlation * z[season]! + Math.sqrt(1 - correlation ** 2) * normalDraw(dice);
      const wetness = Math.exp(sigma * z[season]! - sigma ** 2 / 2);
      const [from, to] = season === 0 ? [0, 210] : [210, days_per_year];
      const wetDays = season === 0 ? 120 : 80;
      for (let day = from!; day < to!; day++) {
        const inSeason = day - from! < wetDays;
        wet = uniformDraw(dice) < (wet ? (inSeason ? 0.62 : 0.35) : inSeason ? 0.25 : 0.03);
        if (wet) rain_mm[year * days_per_year + day] = gammaDraw(dice, 0.7) * 11 * wetness;
      }
    }
  }
  return rain_mm;
};

/** Years of 365 days, all judged. */
export function yearsOf(count: number): readonly WaterYear[] {
  return Array.from({ length: count }, (_, i) => ({
    label: 2001 + i,
    from: i * days_per_year,
    to: (i + 1) * days_per_year,
    missing_days: 0,
    judged: true,
  }));
}
