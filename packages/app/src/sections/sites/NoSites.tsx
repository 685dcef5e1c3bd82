import { useLanguage } from '../../language/LanguageProvider.tsx';

/** A programme without a site yet: what to do. */
export function NoSites({ programmeId }: { readonly programmeId: string }) {
  const { say } = useLanguage();
  return (
    <>
      <h1>{say('sites.empty')}</h1>
      <p>{say('sites.empty_todo')}</p>
      <p>
        <a className="button main" href={`/p/${encodeURIComponent(programmeId)}/take-in`}>
          {say('sites.take_in')}
        </a>
      </p>
    </>
  );
}
