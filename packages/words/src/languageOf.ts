import { type Severity, type StationVerdict, stations } from '@eavewell/engine';
import { englishTexts, loadTexts } from './catalogues.ts';
import { cautionNames, type Language } from './language.ts';
import { languageFor } from './messages/languageFor.ts';
import { numberForm } from './messages/numberForm.ts';
import { pseudoTexts } from './messages/pseudo.ts';
import { isPseudo } from './messages/pseudoTags.ts';
import { sayOf } from './messages/sayIn.ts';
import type { LanguageTexts, MessageKey } from './messages/texts.ts';
import { numberWordsOf } from './numberWordsOf.ts';
import { type Speech, told } from './problems.ts';
import { commandLineIn } from './sentences/commandLine.ts';
import { findingsIn } from './sentences/findings.ts';
import { placeIn } from './sentences/place.ts';
import { problemSentences } from './sentences/problemSentences.ts';
import { remediesIn } from './sentences/remedies.ts';
import { workingIn } from './sentences/working.ts';

const verdicts = ['holds', 'tight', 'short', 'unknown', 'notJudged'] as const satisfies readonly StationVerdict[];

/** A record of messages by the last part of their keys. */
function each<Name extends string>(
  names: readonly Name[],
  say: (name: Name) => string,
): Readonly<Record<Name, string>> {
  return Object.fromEntries(names.map((name) => [name, say(name)])) as Readonly<Record<Name, string>>;
}

/**
 * Every text a person reads, made of the messages of a language. What it lacks is said in English.
 *
 * @param texts - its messages
 * @param region - tag of a region whose forms of numbers and dates are wanted, such as `es-PE`
 * @param lacks - told the key of each message that is said in English
 */
export function languageOf(texts: LanguageTexts, region?: string, lacks?: (key: string) => void): Language {
  const form = numberForm(texts.language, region);
  const say = sayOf<MessageKey>(texts, texts === englishTexts ? undefined : englishTexts, form, lacks);
  const speech: Speech = { say, numbers: numberWordsOf(say, form) };
  const { code, name, direction } = texts.language;
  const severity = (of: Severity) => ({
    name: say(`severities.${of}`),
    counted: (count: number) => say(`severities.${of}.counted`, { count }),
  });
  return {
    ...speech,
    ...workingIn(speech),
    code: region ?? code,
    name,
    direction,
    verdicts: each(verdicts, (verdict) => say(`verdicts.${verdict}`)),
    stations: each(stations, (station) => say(`stations.${station}`)),
    severities: { blocker: severity('blocker'), warning: severity('warning'), note: severity('note') },
    problem: (problemCode, problem) => problemSentences[problemCode](told(problem, speech)),
    place: placeIn(speech),
    findings: findingsIn(speech),
    remedies: remediesIn(speech),
    cautions: each(cautionNames, (caution) => say(`cautions.${caution}`)),
    commandLine: commandLineIn(speech),
  };
}

/** Every text in English. */
export const english: Language = languageOf(englishTexts);

const loaded = new Map<string, Promise<Language>>();

/** How many languages and regions are kept ready: more than any household of a server asks for. Ours. */
const mostKept = 50;

/**
 * Every text in the language that comes nearest to a tag, loaded when it is first asked for; English where none does.
 *
 * @param tag - `es`, `es-PE`, …
 */
export async function loadLanguage(tag: string): Promise<Language> {
  const found = languageFor(tag);
  if (found === null || (found.code === 'en' && found.region === undefined)) return english;
  const { code, region } = found;
  const key = region ?? code;
  const kept = loaded.get(key);
  if (kept) return kept;
  const made = isPseudo(key)
    ? Promise.resolve(languageOf(pseudoTexts(englishTexts, key)))
    : loadTexts(code).then((texts) => languageOf(texts, region));
  if (loaded.size < mostKept) loaded.set(key, made);
  return made;
}
