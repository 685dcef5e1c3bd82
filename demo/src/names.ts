import { chanceFor } from './chance.ts';

// Syllables of our own, joined by rule; they belong to no language. Every name they can make was looked for among the
// towns and other names of towns of an open gazetteer, and none was there: see docs/decisions/0020-demo-programme.md.
const heads = words(
  'Ard Bem Bres Cail Dov Drin Eld Fenn Gav Grel Hul Ibr Jend Keld Lorv Mirr Nesk Obr Prel Quem',
).concat(words('Rov Sarn Sted Tev Thul Ulm Vesk Wend Yarr Zeph'));
const shortMiddles = words('a e i o u');
const longMiddles = words('ade ela ine ole uva eri oma ilu una');
const tails = words(
  'bry dessa fane torra lith lune mey nock poll quay rath sund tavi thrae vane wick zell dorrin',
).concat(words('mossa kett narra vosk halla'));
/** Said before a name once every plain one is used. */
const fore = words('Upper Lower Old New Far Near North South');

/**
 * Names for this many places, all different. The first ones are the same however many are asked for; the shorter ones
 * come first.
 */
export function placeNames(seed: number, count: number): readonly string[] {
  const chance = chanceFor(seed, 'names');
  const plain = [shortMiddles, longMiddles].flatMap((middles) => shuffled(chance.whole, joined(middles)));
  const all = [...plain, ...fore.flatMap((word) => plain.map((name) => `${word} ${name}`))];
  if (count > all.length) throw new RangeError(`the demo has names for ${all.length} places, not for ${count}`);
  return all.slice(0, count);
}

function joined(middles: readonly string[]): string[] {
  return heads.flatMap((head) => middles.flatMap((middle) => tails.map((tail) => head + middle + tail)));
}

function words(text: string): string[] {
  return text.split(' ');
}

/** Fisher and Yates's shuffle. */
function shuffled(whole: (low: number, high: number) => number, names: string[]): string[] {
  for (let i = 0; i < names.length - 1; i++) {
    const j = whole(i, names.length - 1);
    [names[i], names[j]] = [names[j]!, names[i]!];
  }
  return names;
}
