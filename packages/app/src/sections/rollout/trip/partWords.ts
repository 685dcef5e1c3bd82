import type { useLanguage } from '../../../language/LanguageProvider.tsx';

/** A part, a pack of it, or one of the pieces it travels in. */
export function partWords(
  { name, each_count }: { readonly name: string; readonly each_count: number },
  { say, numbers }: Pick<ReturnType<typeof useLanguage>, 'say' | 'numbers'>,
): string {
  if (each_count === 1) return name;
  return each_count < 1
    ? say('rolloutTrip.part_of', { name, count: numbers.given(Math.round(1 / each_count), '') })
    : say('rolloutTrip.pack_of', { name, count: numbers.given(each_count, '') });
}
