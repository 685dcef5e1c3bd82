import { useLanguage } from '../language/LanguageProvider.tsx';
import { Who } from './Who.tsx';

/** Stands at the foot of a form: what is not saved yet, under whose name it is saved, and the presses that save it or let it go. */
export function SaveBar(props: { readonly unsaved: number; readonly isSaving: boolean; onLetGo(): void }) {
  const { say } = useLanguage();
  const { unsaved, isSaving, onLetGo } = props;
  return (
    <div className="save-bar on-screen">
      <p role="status">
        {isSaving ? say('forms.saving') : say('forms.unsaved', { count: unsaved })}{' '}
        {unsaved > 0 && !isSaving ? <span className="small">{say('forms.kept_in_browser')}</span> : null}
      </p>
      <Who />
      <p className="save-presses">
        <button type="submit" className="button main" disabled={isSaving}>
          {say('forms.save')}
        </button>
        <button type="button" className="button" onClick={onLetGo} disabled={isSaving}>
          {unsaved > 0 ? say('forms.let_go') : say('forms.close')}
        </button>
      </p>
    </div>
  );
}
