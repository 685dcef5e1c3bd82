import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import * as fontkit from 'fontkit';

/** The two weights of the look. */
export type Weight = 'plain' | 'strong';

/** A face: how it is called in a document, its file as it stands, and its tables. */
export interface Face {
  readonly name: string;
  readonly bytes: Buffer;
  readonly font: fontkit.Font;
}

const find = createRequire(import.meta.url).resolve;

/** Faces by weight, in the order they are asked for a letter: Andika, then what it lacks, then a script of its own. */
const files: Readonly<Record<Weight, readonly (readonly [string, string])[]>> = {
  plain: [
    ['andika', '@expo-google-fonts/andika/Andika_400Regular.ttf'],
    ['dejavu', 'dejavu-fonts-ttf/ttf/DejaVuSans.ttf'],
    ['devanagari', '@expo-google-fonts/noto-sans-devanagari/400Regular/NotoSansDevanagari_400Regular.ttf'],
  ],
  strong: [
    ['andika-strong', '@expo-google-fonts/andika/Andika_700Bold.ttf'],
    ['dejavu-strong', 'dejavu-fonts-ttf/ttf/DejaVuSans-Bold.ttf'],
    ['devanagari-strong', '@expo-google-fonts/noto-sans-devanagari/700Bold/NotoSansDevanagari_700Bold.ttf'],
  ],
};

const opened = new Map<Weight, readonly Face[]>();

/** The faces of a weight, read from their packages when first asked for. */
export function facesOf(weight: Weight): readonly Face[] {
  const known = opened.get(weight);
  if (known) return known;
  const made = files[weight].map(([name, path]): Face => {
    const bytes = readFileSync(find(path));
    // A file of one face opens as a font; a collection of many, which none of ours is, has no glyphs of its own.
    return { name, bytes, font: fontkit.create(bytes) as fontkit.Font };
  });
  opened.set(weight, made);
  return made;
}
