import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import type { components } from '../../api/apiTypes.ts';
import { answerOf, api, NotDone } from '../../api/client.ts';
import { queries } from '../../api/queries.ts';
import { keep, kept } from '../../kept.ts';

/** A file of map tiles on this computer. */
export type MapFile = components['schemas']['mapFile'];

/** The map files there are, the one that lies under the sites, and what can be done with them. */
export function useMapFiles() {
  const client = useQueryClient();
  const { data } = useQuery(queries.mapFiles());
  const [chosenName, setChosen] = useState(() => kept('map'));
  const choose = (file: string | null) => {
    keep('map', file ?? '');
    setChosen(file);
  };
  const askAnew = () => client.invalidateQueries({ queryKey: ['mapFiles'] });
  const add = useMutation({
    mutationFn: (file: File) => sendMapFile(file),
    onSuccess: async (map) => {
      await askAnew();
      choose(map.file);
    },
  });
  const remove = useMutation({
    mutationFn: async (file: string) => {
      const { response, error } = await api.DELETE('/api/maps/{file}', { params: { path: { file } } });
      if (!response.ok) throw new NotDone('problems', error ?? null);
    },
    onSettled: askAnew,
  });
  const files = data?.files ?? [];
  const chosen = files.find(({ file, map }) => file === chosenName && map !== null)?.map ?? null;
  return { files, folder: data?.folder ?? null, chosen, choose, add, remove };
}

/** Sends a file as it is; the program keeps it, or says what is wrong with it. */
async function sendMapFile(file: File): Promise<MapFile> {
  const name = file.name.replace(/\.pmtiles$/i, '').replace(/[^A-Za-z0-9_-]+/g, '-');
  const asked = fetch(`/api/maps?name=${encodeURIComponent(`${name.slice(0, 60)}.pmtiles`)}`, {
    method: 'POST',
    headers: { 'content-type': 'application/vnd.pmtiles' },
    body: file,
  });
  return answerOf(
    asked.then(async (response) => {
      const body: unknown = await response.json().catch(() => null);
      return response.ok ? { data: body as MapFile, response } : { error: body, response };
    }),
  );
}
