import type { APIResponse, Page } from 'playwright-core';

/** What a journey knows of the demo programme, as the program answers it. */
export interface Demo {
  readonly programmeId: string;
  /** Ids of its sites, and their verdicts. */
  readonly sites: readonly {
    readonly siteId: string;
    readonly name: string;
    readonly verdict: string;
    /** That of its tank alone. */
    readonly storage: string;
    /** Do all its other stations hold, as far as they are judged? */
    readonly isTankAlone: boolean;
    readonly hasSecondSource: boolean;
  }[];
}

async function bodyOf<T>(asked: Promise<APIResponse>): Promise<T> {
  const answer = await asked;
  if (!answer.ok()) throw new Error(`${answer.url()} answered ${answer.status()}: ${await answer.text()}`);
  return (await answer.json()) as T;
}

interface SitesAnswer {
  readonly sites: readonly {
    readonly key: string;
    readonly cells: Readonly<Record<string, string>>;
    readonly design: { readonly verdict: string; readonly stations: Readonly<Record<string, string>> } | null;
  }[];
}

/** How far the design of a programme is, and of which version. */
interface Progress {
  readonly done_fraction: number;
  readonly designVersion: number | null;
  readonly version: number;
}

/** How long the design of the demo may take [ms]: some seconds; much more where other suites run beside it. */
const patience_ms = 90_000;

/** The demo programme once its design is there. */
export async function designedDemo(page: Page): Promise<Demo> {
  const ask = <T>(path: string) => bodyOf<T>(page.request.get(new URL(path, page.url()).href));
  const { programmes } = await ask<{ programmes: readonly { programmeId: string }[] }>('/api/programmes');
  const { programmeId } = programmes[0]!;
  const one = `/api/programmes/${programmeId}`;
  const until = Date.now() + patience_ms;
  for (;;) {
    // The design itself is five megabytes: it is asked for where it is not the one of the programme as it is now.
    const now = await ask<Progress>(one);
    if (now.done_fraction === 1 && now.designVersion === now.version) break;
    const { done_fraction, designVersion } = await ask(`${one}/design`).then(() => ask<Progress>(one));
    if (done_fraction === 1 && designVersion !== null) break;
    if (Date.now() > until) throw new Error(`The design of the demo is ${done_fraction} done after ${patience_ms} ms.`);
    await page.waitForTimeout(200);
  }
  const { sites } = await ask<SitesAnswer>(`${one}/sites`);
  return {
    programmeId,
    sites: sites.map(({ key, cells, design }) => ({
      siteId: key,
      name: cells['name'] ?? key,
      verdict: design?.verdict ?? 'unknown',
      storage: design?.stations['storage'] ?? 'unknown',
      hasSecondSource: (cells['secondSourceId'] ?? '') !== '',
      isTankAlone: Object.entries(design?.stations ?? {}).every(
        ([station, verdict]) => station === 'storage' || verdict === 'holds' || verdict === 'notJudged',
      ),
    })),
  };
}
