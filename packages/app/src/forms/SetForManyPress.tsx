import { lazy, Suspense } from 'react';
import { Button, Dialog, DialogTrigger, Heading, Popover } from 'react-aria-components';
import { useLanguage } from '../language/LanguageProvider.tsx';

/** The form itself is loaded when it is opened. */
const SetForMany = lazy(() => import('./SetForMany.tsx').then((loaded) => ({ default: loaded.SetForMany })));

/** Opens the form that sets one field alike for many sites. */
export function SetForManyPress(props: { readonly programmeId: string; readonly siteIds: readonly string[] }) {
  const { say } = useLanguage();
  const title = say('forms.set_for_many', { count: props.siteIds.length });
  return (
    <DialogTrigger>
      <Button className="button">{title}</Button>
      <Popover className="popover" placement="bottom start">
        <Dialog className="popover-sheet">
          <Heading slot="title">{title}</Heading>
          <Suspense fallback={<p>{say('forms.reading')}</p>}>
            <SetForMany {...props} />
          </Suspense>
        </Dialog>
      </Popover>
    </DialogTrigger>
  );
}
