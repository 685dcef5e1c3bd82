import type { Station, StationVerdict, Verdict } from '@eavewell/engine';
import type {
  DrainageSaid,
  HeadSaid,
  Language,
  SafetySaid,
  SettlingSaid,
  StandSaid,
  TreatmentSaid,
} from '@eavewell/words';

/** What was found at the stations beside the tank, of a design or of a report. */
export interface FoundBeside {
  readonly verdict: Verdict;
  readonly stations: Readonly<Record<Station, StationVerdict>>;
  readonly drainage: DrainageSaid | null;
  readonly settling: readonly SettlingSaid[];
  readonly stands: readonly StandSaid[];
  readonly head: readonly HeadSaid[];
  readonly treatment: readonly (TreatmentSaid & { readonly verdict: Verdict })[];
  readonly safety: SafetySaid | null;
}

/** Of the stations beside the tank, those that are as badly off as the site, where that needs somebody. */
export interface BesideSaid {
  /** Is its tank less badly off, so that they are told first? */
  readonly isFirst: boolean;
  readonly drainage: DrainageSaid | null;
  readonly settling: SettlingSaid | null;
  readonly stand: StandSaid | null;
  readonly head: HeadSaid | null;
  readonly treatment: TreatmentSaid | null;
  readonly safety: SafetySaid | null;
}

/** What is kept of a design or a report to say its worst stations. */
export function besideSaid(found: FoundBeside): BesideSaid {
  const { verdict, stations, drainage, settling, stands, head, treatment, safety } = found;
  const isWorst = (station: Station) => verdict !== 'holds' && stations[station] === verdict;
  return {
    isFirst: !isWorst('storage'),
    drainage: isWorst('gutter') ? drainage : null,
    settling: (isWorst('settling') ? settling[0] : null) ?? null,
    stand: (isWorst('stand') ? stands[0] : null) ?? null,
    head: (isWorst('tap') ? head[0] : null) ?? null,
    treatment: (isWorst('treatmentUnit') ? treatment.find((one) => one.verdict === verdict) : null) ?? null,
    safety: isWorst('cup') ? safety : null,
  };
}

/** The sentences of those stations, the way of the water down; '' where there are none. */
export function besideInWords(beside: BesideSaid, { findings }: Language): string {
  const { drainage, settling, stand, head, treatment, safety } = beside;
  return [
    drainage && findings.drainage(drainage),
    settling && findings.settling(settling),
    stand && findings.stand(stand),
    treatment && findings.treatment(treatment),
    head && findings.head(head),
    safety && findings.safety(safety),
  ]
    .filter((sentence) => sentence !== null)
    .join(' ');
}
