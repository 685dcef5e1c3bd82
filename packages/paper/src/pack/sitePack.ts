import type { Language } from '@eavewell/words';
import { type Branch, Canvas } from '../document/canvas.ts';
import { firstTop_pt, type Heads, laterTop_pt } from '../document/heads.ts';
import { Setter } from '../document/setter.ts';
import { bodyEnd_pt, bodyWidth_pt, margin_pt } from '../document/sheetSize.ts';
import { type Placed, pagesOf } from '../flow/index.ts';
import type { MissingLetter } from '../text/index.ts';
import { caretaker } from './caretaker.ts';
import type { SitePackContent, SitePackOptions } from './content.ts';
import { kit } from './kit.ts';
import { overview } from './overview.ts';
import { headsOf } from './pageHead.ts';
import { reasons } from './reasons.ts';
import { steps } from './steps.ts';
import { testRecord } from './testRecord.ts';

/** A pack that was made, or why none was. */
export type SitePack =
  | {
      readonly kind: 'made';
      readonly bytes: Uint8Array;
      readonly pages_count: number;
      /** Rows of the kit that are told as `… and n more`. */
      readonly leftOut_count: number;
      /** It is longer than asked for: nothing is left that may be shortened. */
      readonly isOver: boolean;
    }
  | {
      readonly kind: 'lettersMissing';
      /** Each letter once, with the text it stands in. */
      readonly letters: readonly MissingLetter[];
      /** What is wrong and what to do, in the language of the pack. */
      readonly said: readonly string[];
    };

/** Pages of a pack at most, unless it is told otherwise. Ours: what is read on a boat. */
const mostPages_usual = 6;
/** Rows of a load's list, tried one after another until the pack is short enough. */
const rowsTried = [Number.POSITIVE_INFINITY, 40, 30, 24, 18, 14, 10, 7, 5, 3, 2] as const;

/**
 * The pack that is carried to one site, as a file of paper: made without a browser, the same bytes for the same content.
 *
 * @param content - what it says
 * @param language - its words; a language from right to left mirrors the sheet and never its drawings
 * @param options - when it is printed, and how many pages it may have
 * @returns the file, or the letters that no face has: never a file with boxes in their place
 * @definition ours: docs/methods/paper.md
 * @law cautions are never left out
 */
export function sitePack(content: SitePackContent, language: Language, options: SitePackOptions): SitePack {
  const setter = new Setter(language.direction);
  const heads = headsOf(setter, content, language, options);
  const { pages, left } = laid(setter, content, language, options.mostPages ?? mostPages_usual);
  heads.lay(pages.length);
  if (setter.missing.length > 0) return missingIn(setter.missing, language);
  const bytes = drawn(content, language, options, heads, pages);
  return {
    kind: 'made',
    bytes,
    pages_count: pages.length,
    leftOut_count: left,
    isOver: pages.length > (options.mostPages ?? mostPages_usual),
  };
}

/** Each part on its own page; the kit behind the reasons where that saves one; the steps behind the kit where it must be. */
const runsOn = [
  { kitRuns: false, stepsRun: false },
  { kitRuns: true, stepsRun: false },
  { kitRuns: true, stepsRun: true },
] as const;

type Pages = readonly (readonly Placed[])[];

/** The pack on its pages: as they are, then with shorter lists until it is short enough. */
function laid(
  setter: Setter,
  content: SitePackContent,
  language: Language,
  most: number,
): { readonly pages: Pages; readonly left: number } {
  const width = bodyWidth_pt;
  const fixed = {
    overview: overview(setter, width, content, language),
    reasons: reasons(setter, width, content.stations, language),
    steps: steps(setter, width, content.steps, language),
    tests: testRecord(setter, width, content.tests, language),
    caretaker: caretaker(setter, width, content, language),
  };
  const body = { firstTop_pt, top_pt: laterTop_pt, end_pt: bodyEnd_pt };
  let shortest: Pages | null = null;
  let left = 0;
  const longest = Math.max(0, ...content.loads.map(({ items }) => items.length));
  for (const rows of rowsTried.filter((one) => one === Number.POSITIVE_INFINITY || one < longest)) {
    const list = kit(setter, width, content.loads, language, rows);
    const tried = runsOn.map(({ kitRuns, stepsRun }) =>
      pagesOf(
        [
          { bands: fixed.overview, startsPage: true },
          { bands: fixed.reasons, startsPage: false },
          { bands: list, startsPage: !kitRuns },
          { bands: fixed.steps, startsPage: !stepsRun },
          { bands: fixed.tests, startsPage: true },
          { bands: fixed.caretaker, startsPage: true },
        ],
        body,
      ),
    );
    const [apart, kitOn, allOn] = tried as [Pages, Pages, Pages];
    const best = kitOn.length < apart.length ? kitOn : apart;
    const pages = best.length > most && allOn.length < best.length ? allOn : best;
    if (shortest === null || pages.length < shortest.length) {
      shortest = pages;
      left = content.loads.reduce((sum, { items }) => sum + (items.length > rows ? items.length - rows + 1 : 0), 0);
    }
    if (shortest.length <= most) break;
  }
  return { pages: shortest ?? [], left };
}

function drawn(
  content: SitePackContent,
  language: Language,
  options: SitePackOptions,
  heads: Heads,
  pages: Pages,
): Uint8Array {
  const { say, code } = language;
  const canvas = new Canvas({
    title: say('pack.title', { name: content.name, site: content.siteId }),
    author: content.programme,
    language: code,
    madeAt_ms: Date.parse(`${options.printedOn}T${options.printedAt ?? '00:00'}:00Z`) || 0,
  });
  const branches = new Map<number, Branch>();
  pages.forEach((placed, nth) => {
    canvas.addPage();
    heads.draw(canvas, canvas.root, nth + 1, pages.length);
    for (const { band, y, section, isAgain } of placed) {
      const under = branches.get(section) ?? canvas.branch(canvas.root, 'Sect');
      branches.set(section, under);
      band.draw(canvas, under, { x: margin_pt, y, width: bodyWidth_pt }, isAgain);
    }
  });
  return canvas.finish();
}

function missingIn(all: readonly MissingLetter[], { say }: Language): SitePack {
  const letters = [...new Map(all.map((one) => [one.codePoint, one])).values()];
  return {
    kind: 'lettersMissing',
    letters,
    said: letters.map(({ letter, codePoint, text }) =>
      say('pack.letter_missing', { letter, code: codePoint, text: text.slice(0, 80) }),
    ),
  };
}
