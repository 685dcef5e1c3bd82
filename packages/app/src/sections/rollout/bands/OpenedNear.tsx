import type { ReactNode, RefObject } from 'react';
import { Button, Dialog, Heading, Popover } from 'react-aria-components';
import { useLanguage } from '../../../language/LanguageProvider.tsx';

/** What was pressed in the bands, opened beside it. */
export function OpenedNear({
  title,
  near,
  onClose,
  children,
}: {
  readonly title: string;
  readonly near: RefObject<HTMLElement | null>;
  readonly onClose: () => void;
  readonly children: ReactNode;
}) {
  const { say } = useLanguage();
  return (
    <Popover
      className="popover trip-opened"
      placement="bottom"
      triggerRef={near}
      isOpen
      onOpenChange={(isOpen) => {
        if (!isOpen) onClose();
      }}
    >
      <Dialog className="popover-sheet">
        <Heading slot="title">{title}</Heading>
        {children}
        <p>
          <Button className="button plain" slot="close">
            {say('rolloutBands.close')}
          </Button>
        </p>
      </Dialog>
    </Popover>
  );
}
