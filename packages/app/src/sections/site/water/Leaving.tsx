import { Button, Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import { useLanguage } from '../../../language/LanguageProvider.tsx';

/** The page is about to be left with a draft on it: it would be lost, so she is asked. */
export function Leaving({ leave, stay }: { leave(): void; stay(): void }) {
  const { say } = useLanguage();
  return (
    <ModalOverlay isOpen isDismissable onOpenChange={(isOpen) => (isOpen ? undefined : stay())} className="over">
      <Modal>
        <Dialog role="alertdialog">
          <Heading slot="title">{say('water.leave_head')}</Heading>
          <p>{say('water.leave_about')}</p>
          <p className="acts">
            <Button className="button main" onPress={stay}>
              {say('water.leave_stay')}
            </Button>
            <Button className="button" onPress={leave}>
              {say('water.leave_go')}
            </Button>
          </p>
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}
