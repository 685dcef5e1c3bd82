import {
  type HeaviestPiece,
  leastSafety_factor,
  type StandFinding,
  type StandGate,
  type StandLack,
} from '@eavewell/engine';
import type { Speech } from '../problems.ts';

/** A finding of a stand, as far as it is said; a report names the assumption by its code alone. */
export type StandSaid = Omit<StandFinding, 'cappedBy'> & { readonly cappedBy: string | null };

/** What is said of stands, of their signatures, and of what is heaviest to carry. */
export interface StandWords {
  /** One tank, its stand and its ground, in a sentence or two. */
  stand(finding: StandSaid): string;
  /** May it be filled, as far as signatures go? */
  standGate(gate: StandGate): string;
  heaviestPiece(piece: HeaviestPiece): string;
}

function reason({ say, numbers }: Speech, f: StandSaid, lack: StandLack): string {
  const wind = numbers.quantity(f.windSpeed_m_per_s, 'm/s');
  const least = numbers.quantity(leastSafety_factor, 'number');
  const factor = (value: number | null) => numbers.quantity(value, 'number');
  switch (lack) {
    case 'bearing':
      return say('findings.stand.short.bearing', {
        bearing: numbers.quantity(f.bearing_kPa, 'kPa'),
        allowed: numbers.quantity(f.bearingAllowed_kPa, 'kPa'),
      });
    case 'overturning':
      return say('findings.stand.short.overturning', { wind, least, factor: factor(f.empty.overturning_factor) });
    case 'sliding':
      return say('findings.stand.short.sliding', { wind, least, factor: factor(f.empty.sliding_factor) });
    case 'fastening':
      return say('findings.stand.short.fastening', { wind });
  }
}

/** Would the wind take the empty tank off its stand, were it not fastened? Where it is known not to be, the litres have that in them. */
function goesAlone({ loose, lacks }: StandSaid): boolean {
  if (loose === null || lacks.includes('fastening')) return false;
  return [loose.overturning_factor, loose.sliding_factor].some((one) => one === null || one < leastSafety_factor);
}

/** What would keep it from tipping and sliding: water left in it, or nothing but a tie-down. Water is no answer where the ground gives way. */
function kept({ say, numbers }: Speech, f: StandSaid): string {
  if (!f.lacks.includes('overturning') && !f.lacks.includes('sliding')) return '';
  if (f.leastHeld_L !== null) {
    if (f.lacks.includes('bearing')) return '';
    const litres = numbers.tankLitres(f.leastHeld_L);
    return say(goesAlone(f) ? 'findings.stand.held.fastened' : 'findings.stand.held', { litres });
  }
  const isKnown = f.massFull_kg !== null && f.empty.overturning_factor !== null && f.empty.sliding_factor !== null;
  return isKnown ? say('findings.stand.tieDown') : '';
}

function stand(w: Speech, f: StandSaid): string {
  const { say, numbers } = w;
  const tank = say('findings.tank', { tank: f.tankId });
  switch (f.verdict) {
    case 'holds':
      return say('findings.stand.holds', { tank, wind: numbers.quantity(f.windSpeed_m_per_s, 'm/s') });
    case 'tight':
      return say(f.cappedBy === null ? 'findings.stand.tight' : 'findings.stand.tight.fastening', { tank });
    case 'short': {
      const reasons = f.lacks.map((lack) => reason(w, f, lack)).join('; ');
      return say('findings.stand.short', { tank, reasons, held: kept(w, f) });
    }
    default:
      return say('findings.stand.unknown', { tank });
  }
}

/** What is said of stands, in a language. */
export const standWordsIn = (w: Speech): StandWords => ({
  stand: (finding) => {
    const text = stand(w, finding);
    return text.slice(0, 1).toUpperCase() + text.slice(1);
  },
  standGate: (gate) => w.say(`findings.standGate.${gate}`),
  heaviestPiece: ({ name, mass_kg, from, carriedBy, liftingLimit_kg }) =>
    w.say('findings.heaviestPiece', {
      name,
      mass: w.numbers.quantity(mass_kg, 'kg'),
      from,
      carriedBy,
      limit: w.numbers.quantity(liftingLimit_kg, 'kg'),
    }),
});
