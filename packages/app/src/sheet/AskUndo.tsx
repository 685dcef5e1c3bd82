import type { RefObject } from 'react';
import { Button, Dialog, Heading, Popover } from 'react-aria-components';
import { useLanguage } from '../language/LanguageProvider.tsx';

/** Asked before much is taken back at once: what goes, and how it comes again. */
export function AskUndo(props: {
  readonly what: string;
  readonly ask: 'all' | 'many';
  readonly count: number;
  readonly near: RefObject<HTMLElement | null>;
  onAnswer(isWanted: boolean): void;
}) {
  const { say } = useLanguage();
  const { what, ask, count, near, onAnswer } = props;
  return (
    <Popover
      className="popover"
      placement="bottom end"
      triggerRef={near}
      isOpen
      onOpenChange={(isOpen) => {
        if (!isOpen) onAnswer(false);
      }}
    >
      <Dialog className="popover-sheet" role="alertdialog">
        <Heading slot="title">{say(`history.ask_${ask}`, { count })}</Heading>
        <p>{what}</p>
        <p>{say(`history.ask_${ask}_about`, { count })}</p>
        <p>
          <Button className="button main" onPress={() => onAnswer(true)}>
            {say('history.ask_yes')}
          </Button>{' '}
          <Button className="button" autoFocus onPress={() => onAnswer(false)}>
            {say('history.ask_no')}
          </Button>
        </p>
      </Dialog>
    </Popover>
  );
}
