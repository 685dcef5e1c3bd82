import { cutsPicture } from '@eavewell/drawing';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { Drawn } from '../Drawn.tsx';
import type { SiteKitAnswer } from '../kitQuery.ts';

type Line = SiteKitAnswer['lines'][number];

/** How bars are cut: each bar drawn as it is sold, with its cuts and what is left. */
export function Cuts({ site }: { readonly site: SiteKitAnswer }) {
  const { say } = useLanguage();
  const cut = site.lines.filter(({ cuts }) => cuts !== null && cuts.bars.length > 0);
  if (cut.length === 0) return null;
  return (
    <section className="cuts" aria-labelledby="kit-cuts">
      <h2 id="kit-cuts">{say('kit.cuts')}</h2>
      {cut.map((line) => (
        <CutsOf key={line.partId} line={line} />
      ))}
    </section>
  );
}

function CutsOf({ line: { name, cuts } }: { readonly line: Line }) {
  const { say, numbers } = useLanguage();
  if (cuts === null) return null;
  const m = (value: number) => say('kit.metres', { length: numbers.fixed(value, 2) });
  const rows = wholeTogether(cuts.bars).map(({ bars_count, cuts: pieces, offcut_m }) => ({
    ...{ bars_count, cuts: pieces, offcut_m },
    bar_m: cuts.bar_m ?? pieces.reduce((sum, { length_m }) => sum + length_m, offcut_m),
  }));
  const words = {
    bars: (count: number) => say('kit.bars', { count }),
    cut: (runId: string, length_m: number) => `${runId} ${m(length_m)}`,
    length: m,
    offcut: (length_m: number) => say('kit.offcut', { length: m(length_m) }),
  };
  return (
    <>
      <h3>{name}</h3>
      <p>
        {say('kit.bars_of', { count: cuts.bars_count, length: cuts.bar_m === null ? '' : m(cuts.bar_m) })}{' '}
        {cuts.joints_count === 0 ? '' : say('kit.joints', { count: cuts.joints_count })}{' '}
        {cuts.bound_count < cuts.bars_count ? say('kit.bars_bound', { count: cuts.bound_count }) : ''}
      </p>
      <Drawn name={say('kit.cuts_of', { name })} most_px={820} draw={(width) => cutsPicture(rows, words, { width })} />
    </>
  );
}

type Bar = NonNullable<Line['cuts']>['bars'][number];

/** Bars that go whole into several runs stand in one row, with the runs they are for. */
function wholeTogether(bars: readonly Bar[]): readonly Bar[] {
  const isWhole = ({ cuts, offcut_m }: Bar) => cuts.length === 1 && offcut_m < 1e-6;
  const whole = bars.filter(isWhole);
  const [first] = whole;
  const cut = first?.cuts[0];
  if (first === undefined || cut === undefined || whole.length < 2) return bars;
  const runs = whole.map(
    ({ bars_count, cuts }) => `${cuts[0]?.runId ?? ''}${bars_count > 1 ? ` × ${bars_count}` : ''}`,
  );
  const bars_count = whole.reduce((sum, one) => sum + one.bars_count, 0);
  return [
    { ...first, bars_count, cuts: [{ length_m: cut.length_m, runId: `${runs.join(', ')}:` }] },
    ...bars.filter((bar) => !isWhole(bar)),
  ];
}
