import { memo } from 'react';
import { useLanguage } from '../../language/LanguageProvider.tsx';

/** How many sites are shown, and what can be done with the list. */
export const ListActs = memo(function ListActs({
  count,
  isChoosing,
  onChoose,
  onChooseAll,
  onPrint,
}: {
  readonly count: number;
  readonly isChoosing: boolean;
  onChoose(): void;
  onChooseAll(): void;
  onPrint(): void;
}) {
  const { say } = useLanguage();
  return (
    <p className="list-acts on-screen">
      <span role="status">{say('sites.shown', { count })}</span>
      <button type="button" className="press" aria-pressed={isChoosing} onClick={onChoose}>
        {say(isChoosing ? 'sites.choose_end' : 'sites.choose')}
      </button>
      {isChoosing && count > 0 ? (
        <button type="button" className="press" onClick={onChooseAll}>
          {say('sites.choose_all', { count })}
        </button>
      ) : null}
      <button type="button" className="press" onClick={onPrint}>
        {say('sites.print')}
      </button>
    </p>
  );
});
