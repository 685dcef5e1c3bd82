import { Button, FileTrigger } from 'react-aria-components';
import { NotDone } from '../../api/client.ts';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import type { useMapFiles } from './useMapFiles.ts';

/** Which map lies under the sites: the program's own outlines, or a file of map tiles on this computer. */
export function MapFiles({ maps }: { readonly maps: ReturnType<typeof useMapFiles> }) {
  const { say, numbers } = useLanguage();
  const { files, folder, chosen, choose, add, remove } = maps;
  return (
    <section className="map-files on-screen" aria-labelledby="map-files-title">
      <h2 id="map-files-title">{say('map.files_title')}</h2>
      <fieldset>
        <legend className="said-only">{say('map.files_title')}</legend>
        <label>
          <input type="radio" name="map-file" checked={chosen === null} onChange={() => choose(null)} />
          {say('map.files_own')}
        </label>
        {files.map(({ file, map, problems }) => (
          <div key={file}>
            <label>
              <input
                type="radio"
                name="map-file"
                checked={chosen?.file === file}
                disabled={map === null}
                onChange={() => choose(file)}
              />
              {file}
              {map && (
                <span className="small">
                  {' '}
                  {say('map.megabytes', { amount: numbers.fixed(Math.max(0.1, map.size_bytes / 1e6), 1) })}
                </span>
              )}
            </label>
            <button type="button" className="press plain-press" onClick={() => remove.mutate(file)}>
              {say('map.files_remove', { file })}
            </button>
            {problems.map(({ what, todo }) => (
              <p key={what} className="small">
                {what} {todo}
              </p>
            ))}
          </div>
        ))}
      </fieldset>
      <FileTrigger acceptedFileTypes={['.pmtiles']} onSelect={(list) => list?.[0] && add.mutate(list[0])}>
        <Button className="button">{say('map.files_add')}</Button>
      </FileTrigger>
      <p role="status">{add.isPending && say('map.files_sending')}</p>
      {add.error && <NotKept error={add.error} />}
      <p className="small">{say('map.files_about', { folder: folder ?? '' })}</p>
    </section>
  );
}

/** Why a file was not kept. */
function NotKept({ error }: { readonly error: unknown }) {
  const { say } = useLanguage();
  const problems = error instanceof NotDone ? (error.body?.problems ?? []) : [];
  if (problems.length === 0) return <p className="trouble">{say('map.files_unreachable')}</p>;
  return (
    <div className="trouble">
      {problems.map(({ what, todo }) => (
        <p key={what}>
          {what} {todo}
        </p>
      ))}
    </div>
  );
}
