import { engineProblem, type Problem, type SiteFacts } from '../../kernel/index.ts';
import { least_pH } from './constants.ts';
import { type RoofWarningCode, roofWarnings } from './roofWarnings.ts';

/** What roofs may give that no treatment takes out. */
const dissolved: readonly RoofWarningCode[] = ['safety.lead', 'safety.coating'];

/** What the water of a site may pick up before it reaches the tank: each warning once, with its roofs. */
export function waterWarnings(site: SiteFacts): readonly Problem[] {
  const place = { file: 'roofs.csv', siteId: site.siteId };
  const roofsBy = new Map<RoofWarningCode, string[]>();
  for (const roof of site.roofs)
    for (const code of roofWarnings(roof)) roofsBy.set(code, [...(roofsBy.get(code) ?? []), roof.roofId]);
  const water_pH = lastOfPH(site);
  const hasMetal = site.roofs.some(({ material, hasLead }) => material === 'corrugatedMetal' || hasLead === true);
  const isAcid = hasMetal && water_pH !== null && water_pH < least_pH;
  const isDissolved = isAcid || dissolved.some((code) => roofsBy.has(code));
  return [
    ...[...roofsBy].map(([code, roofs]) => engineProblem(code, place, { roofs })),
    ...(isAcid
      ? [engineProblem('safety.ph_low', { ...place, file: 'waterTests.csv' }, { pH: water_pH, least_pH })]
      : []),
    ...(isDissolved ? [engineProblem('safety.not_taken_out', place, {})] : []),
  ];
}

/** The last pH anybody measured; that of the water as it is chlorinated where no sample has one. */
function lastOfPH({ safety: { tests, chlorination } }: SiteFacts): number | null {
  return tests.findLast(({ pH }) => pH !== null)?.pH ?? chlorination?.pH ?? null;
}
