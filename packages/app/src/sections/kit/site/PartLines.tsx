import { Fragment, useState } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { Working } from '../../site/Working.tsx';
import type { SiteKitAnswer } from '../kitQuery.ts';
import { countWords } from '../kitWords.ts';

type Line = SiteKitAnswer['lines'][number];

/** What is in the kit, part by part; every count opens to its working. */
export function PartLines({ site }: { readonly site: SiteKitAnswer }) {
  const language = useLanguage();
  const { say, numbers } = language;
  const [opened, setOpened] = useState<string | null>(null);
  const heads = {
    count: say('kit.head_count'),
    spare: say('kit.head_spare'),
    from: say('kit.head_from'),
    price: say('kit.head_each'),
  };
  return (
    <section className="part-lines" aria-labelledby="kit-lines">
      <h2 id="kit-lines">{say('kit.lines')}</h2>
      <table className="stacks">
        <caption className="said-only">{say('kit.lines')}</caption>
        <thead>
          <tr>
            <th scope="col">{say('kit.head_part')}</th>
            <th scope="col" className="num">
              {heads.count}
            </th>
            <th scope="col" className="num">
              {heads.spare}
            </th>
            <th scope="col">{heads.from}</th>
            <th scope="col" className="num">
              {heads.price}
            </th>
          </tr>
        </thead>
        <tbody>
          {site.lines.map((line) => (
            <Fragment key={line.partId}>
              <tr>
                <th scope="row">{line.name}</th>
                <td className="num" data-head={heads.count}>
                  <Count
                    line={line}
                    isOpen={opened === line.partId}
                    onOpen={() => setOpened(opened === line.partId ? null : line.partId)}
                  />
                </td>
                <td className="num" data-head={heads.spare}>
                  {line.spare_count === 0 ? '' : countWords(line.spare_count, { countedIn: line.countedIn }, language)}
                </td>
                <td data-head={heads.from} className="small">
                  {fromWords(line, language)}
                </td>
                <td className="num" data-head={heads.price}>
                  {line.price === null ? say('kit.no_price') : numbers.money(line.price.amount, line.price.currency)}
                </td>
              </tr>
              {opened === line.partId ? (
                <tr className="opened">
                  <td colSpan={5}>
                    <Working lines={line.working} opened="kit.total" onClose={() => setOpened(null)} />
                  </td>
                </tr>
              ) : null}
            </Fragment>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function Count({ line, isOpen, onOpen }: { readonly line: Line; readonly isOpen: boolean; onOpen(): void }) {
  const language = useLanguage();
  const said = countWords(line.total_count, line, language);
  if (line.working.length === 0) return said;
  return (
    <button
      type="button"
      className="opens"
      aria-expanded={isOpen}
      aria-label={language.say('site.open_working', { figure: `${line.name} ${said}` })}
      onClick={onOpen}
    >
      {said}
    </button>
  );
}

/** What asks for the part: the design names it, or rules count it. */
function fromWords({ from, ruleIds }: Line, { say }: ReturnType<typeof useLanguage>): string {
  const rules = ruleIds.length === 0 ? '' : say('kit.from_rules', { count: ruleIds.length, rules: ruleIds.join(', ') });
  return from === 'named' ? [say('kit.from_named'), rules].filter(Boolean).join('; ') : rules;
}
