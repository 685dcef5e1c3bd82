import { useLanguage } from '../../language/LanguageProvider.tsx';
import type { Carried } from './kitQuery.ts';

/** Where it can hurt somebody, framed, beside what is lifted or loaded. */
export function Cautions({ of }: { readonly of: readonly Carried['cautions'][number][] }) {
  const { say } = useLanguage();
  const once = [...new Set(of)];
  if (once.length === 0) return null;
  return (
    <ul className="framed-cautions">
      {once.map((caution) => (
        <li key={caution}>{say(`loads.caution.${caution}`)}</li>
      ))}
    </ul>
  );
}
