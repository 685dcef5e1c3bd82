import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { KitAndCost } from '../KitAndCost.tsx';
import { StationTable } from '../StationTable.tsx';
import type { SiteReport } from '../siteFigures.ts';
import { TreatmentAndSafety } from '../TreatmentAndSafety.tsx';
import { Working } from '../Working.tsx';

/** The stations, under them the working of the figure that was pressed, and treatment and safety in short. */
export function Stations({
  report,
  opened,
  onOpen,
  programmeId,
  siteId,
}: {
  readonly report: SiteReport;
  readonly programmeId: string;
  readonly siteId: string;
  readonly opened: string | null;
  onOpen(code: string | null): void;
}) {
  const { say } = useLanguage();
  const toggle = (code: string) => onOpen(opened === code ? null : code);
  return (
    <>
      <section className="by-station">
        <h2>{say('site.stations')}</h2>
        <StationTable design={report} opened={opened} onOpen={toggle} />
        {opened === null ? null : <Working lines={report.working} opened={opened} onClose={() => onOpen(null)} />}
      </section>
      <TreatmentAndSafety {...{ report, programmeId, siteId, opened }} onOpen={toggle} />
      <KitAndCost {...{ programmeId, siteId }} />
    </>
  );
}
