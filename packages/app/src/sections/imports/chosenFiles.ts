import type { DirectoryDropItem, DropItem } from 'react-aria-components';
import type { Chosen } from './importsApi.ts';

/** Files no programme is made of: what systems leave in folders. */
const leftBehind = /^(?:\.|Thumbs\.db$|desktop\.ini$|__MACOSX$|~\$)/i;

/** The files of a choice, with the folders above them where a folder was chosen. */
export function chosenOf(files: Iterable<File>): readonly Chosen[] {
  return [...files]
    .map((file) => ({ name: file.webkitRelativePath === '' ? file.name : file.webkitRelativePath, file }))
    .filter(({ name }) => !name.split('/').some((part) => leftBehind.test(part)));
}

/** What was dropped: files, and all in the folders among it. */
export async function chosenOfDrop(items: readonly DropItem[]): Promise<readonly Chosen[]> {
  const found: Chosen[] = [];
  for (const item of items) await addItem(item, '', found);
  return found;
}

async function addItem(item: DropItem, above: string, found: Chosen[]): Promise<void> {
  if (item.kind === 'text' || leftBehind.test(item.name)) return;
  if (item.kind === 'file') found.push({ name: `${above}${item.name}`, file: await item.getFile() });
  else await addFolder(item, above, found);
}

async function addFolder(folder: DirectoryDropItem, above: string, found: Chosen[]): Promise<void> {
  for await (const item of folder.getEntries()) await addItem(item, `${above}${folder.name}/`, found);
}
