import type { DayIndex, DesignSettings, SiteFacts, TankFacts, WindExposure } from '../../kernel/index.ts';

/** What stands are judged by. */
export interface StandGiven {
  readonly site: SiteFacts;
  readonly settings: DesignSettings;
  /** The day it is asked on, for signatures of a day to come; null or left out: not known. */
  readonly today?: DayIndex | null;
}

/** The wind a site's stands are held against: its own, else that of the settings. */
export function windOf({ site, settings }: StandGiven): {
  readonly windSpeed_m_per_s: number | null;
  readonly exposure: WindExposure;
} {
  return {
    windSpeed_m_per_s: site.windSpeed_m_per_s ?? settings.windSpeed_m_per_s,
    exposure: site.windExposure ?? settings.windExposure,
  };
}

/** Does it stand on something above the ground? Where the height is not known, other measures of a stand tell. */
export function isOnStand(tank: Pick<TankFacts, 'standHeight_m' | 'standMass_kg' | 'baseWidth_m'>): boolean {
  if (tank.standHeight_m !== null) return tank.standHeight_m > 0;
  return (tank.standMass_kg ?? 0) > 0 || tank.baseWidth_m !== null;
}

/** Tanks whose stand or ground is judged. */
export function judgedTanks({ site, settings }: StandGiven): readonly TankFacts[] {
  if (settings.judgeStand === 'never') return [];
  if (settings.judgeStand === 'always') return site.tanks;
  return site.tanks.filter(isMeasured);
}

/** Was something of its stand or ground measured? */
function isMeasured(tank: TankFacts): boolean {
  return isOnStand(tank) || tank.groundClass !== null || tank.padSide_m !== null || tank.baseWidth_m !== null;
}
