import type { Page } from 'playwright-core';
import { type Demo, designedDemo } from './demo.ts';

/** A row that is added: its table, its key, its cells. */
type Added = readonly [table: string, key: string, cells: Readonly<Record<string, string>>];

/** A day not long ago: a sample that is too old shows nothing. */
const lately = new Date(Date.now() - 30 * 86_400_000).toISOString().slice(0, 10);

const invented = 'invented for this test';

/** A site with a roof, a tank and a unit; handed over, with people who are asked about. */
function siteOf(siteId: string, name: string, more: Readonly<Record<string, string>> = {}): readonly Added[] {
  return [
    [
      'sites',
      siteId,
      {
        ...{ siteId, name, people: '80', handOverDay: '2025-01-15', altitude_m: '1200' },
        ...{ skipping_fraction: '0', daysOff_per_year: '0', ...more },
      },
    ],
    ['roofs', `${siteId}/R1`, { siteId, roofId: 'R1', length_m: '14', width_m: '9', material: 'corrugatedMetal' }],
    ['tanks', `${siteId}/T1`, { siteId, tankId: 'T1', nominal_L: '20000' }],
    ['treatmentUnits', `${siteId}/U1`, { siteId, serial: 'U1', partId: 'TUX', installedOn: '2025-01-10' }],
    ...(
      [
        ['campylobacter', '0.02', '0.1'],
        ['rotavirus', '0.002', '0.01'],
        ['cryptosporidium', '0.002', '0.01'],
      ] as const
    ).map(
      ([pathogen, typical_per_L, high_per_L]): Added => [
        'rawWater',
        `${siteId}//${pathogen}`,
        { siteId, pathogen, typical_per_L, high_per_L, source: invented },
      ],
    ),
  ];
}

/** A sample of ten tubes of 10 mL, so many of which turned. */
function sampleOf(siteId: string, testId: string, takenOn: string, positive: number): readonly Added[] {
  return [
    ['waterTests', `${siteId}/${testId}`, { siteId, testId, takenOn, point: 'tap', turbidity_NTU: '0.5', pH: '7' }],
    [
      'testPortions',
      `${siteId}/${testId}/tubes/10`,
      { siteId, testId, kind: 'tubes', volume_mL: '10', portions: '10', positive: String(positive) },
    ],
  ];
}

/** Sites of every standing: germs found, clean, never sampled, chlorinated. */
const added: readonly Added[] = [
  [
    'parts',
    'TUX',
    {
      ...{ partId: 'TUX', name: 'Unit of three cartridges', kind: 'treatmentUnit', cartridges: '3' },
      ...{ ratedFlow_L_per_h: '600', ratedPressure_kPa: '60', lowestFlow_L_per_h: '200', ratedLitres_L: '2000000' },
      ...{
        ratedTurbidity_NTU: '5',
        lifeLimit_years: '3',
        bacteria_log10: '6',
        viruses_log10: '4',
        protozoa_log10: '6',
      },
      ...{ evidence: 'challengeTest', evidenceSource: invented },
    },
  ],
  ...siteOf('S991', 'Osk landing'),
  ...sampleOf('S991', 'W1', '2025-06-01', 0),
  ...sampleOf('S991', 'W2', '2026-03-01', 4),
  ...siteOf('S992', 'Tullen ford'),
  ...sampleOf('S992', 'W1', '2025-06-01', 0),
  ...sampleOf('S992', 'W2', lately, 0),
  ...siteOf('S993', 'Harrow bend', { skipping_fraction: '0.1' }),
  ...siteOf('S994', 'Mill reach'),
  [
    'chlorination',
    'S994',
    {
      ...{ siteId: 'S994', product: 'calciumHypochlorite', active_fraction: '0.65', stock_g_per_L: '10' },
      ...{ dose_mg_per_L: '2', residual_mg_per_L: '0.5', contact_min: '60', pH: '7', batch_L: '1000' },
    },
  ],
];

/** The demo programme with sites whose water is fit, not fit, and not shown to be either, once all of it is designed. */
export async function withSafetySites(page: Page): Promise<Demo> {
  const { programmeId } = await designedDemo(page);
  const at = new URL(`/api/programmes/${programmeId}/changes`, page.url());
  const changes = added.map(([table, key, after]) => ({ kind: 'added', table, key, after }));
  const made = await page.request.post(at.href, { headers: { origin: at.origin }, data: { by: 'Nadi', changes } });
  // The journeys of one file share a programme: the first adds them.
  const isThere = made.status() === 409 && (await made.text()).includes('change.row_there');
  if (!made.ok() && !isThere) throw new Error(`${made.status()}: ${await made.text()}`);
  return designedDemo(page);
}
