import { useLanguage } from '../../language/LanguageProvider.tsx';
import { GateMark } from '../../look/GateMark.tsx';
import type { SiteReport } from './siteFigures.ts';

/** A tank as its row has it: on a stand or not, and who signed for it. */
export interface SignedTank {
  readonly tankId: string;
  readonly standHeight_m: number | null;
  readonly signedBy: string | null;
  readonly signedOn: string | null;
}

type Row = { readonly table: string; readonly cells: Readonly<Record<string, string>> };

/** The tanks of a site that stand on something, as its rows have them. */
export function standingTanks(rows: readonly Row[]): readonly SignedTank[] {
  return rows
    .filter(({ table }) => table === 'tanks')
    .map(({ cells }) => ({
      tankId: cells['tankId'] ?? '',
      standHeight_m: cells['standHeight_m'] === undefined ? null : Number(cells['standHeight_m']),
      signedBy: cells['signedBy'] ?? null,
      signedOn: cells['signedOn'] ?? null,
    }))
    .filter(({ standHeight_m }) => standHeight_m !== null && standHeight_m > 0);
}

/** May its tanks be filled and handed over? It stands apart from the verdict, over everything else of the site. */
export function GateBand({
  gate,
  tanks,
}: {
  readonly gate: SiteReport['standGate'];
  readonly tanks: readonly SignedTank[];
}) {
  const { say, numbers } = useLanguage();
  if (gate.gate === 'notNeeded') return null;
  const isClosed = gate.gate === 'closed';
  const signed = ({ tankId, signedBy, signedOn }: SignedTank) =>
    signedBy === null || signedOn === null
      ? say('site.not_signed', { tank: tankId })
      : say('site.signed', { tank: tankId, by: signedBy, on: numbers.date(signedOn) });
  return (
    <section className={isClosed ? 'gate-band closed' : 'gate-band'} aria-label={say('site.gate')}>
      {isClosed ? <GateMark size={26} /> : null}
      <p>
        <b>{say(isClosed ? 'site.gate_closed' : 'site.gate_open')}</b> {tanks.map(signed).join('; ')}
        {tanks.length === 0 ? '' : '. '}
        {isClosed ? say('site.gate_apart') : null}
      </p>
    </section>
  );
}
