import { mkdirSync, readdirSync, readFileSync, realpathSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { root } from './run.mjs';

/**
 * One language as it stands in its file: a head, and sections of messages.
 *
 * @typedef {{ code: string, name: string, direction: 'ltr' | 'rtl', forms?: string, groups?: 'space', for?: 'paper' }} Head
 * @typedef {Readonly<Record<string, string>>} Section
 * @typedef {{ head: Head, sections: Readonly<Record<string, Section>> }} LanguageFile
 */

const folder = 'packages/words/languages';
const into = 'packages/words/src/languages';

/** Sections the app says on the pages of the rollout alone: loaded with them. */
const laterInTheApp = [
  'rolloutBands',
  'rolloutByHand',
  'rolloutChoosing',
  'rolloutHappened',
  'rolloutMap',
  'rolloutPlans',
  'rolloutTrip',
];

/** Sections that the pages in a browser do not need; every other one is loaded by them. */
const notForTheApp = [
  'commandLine',
  'findings',
  'kitReport',
  'pack',
  'pictures',
  'places',
  'problems',
  'remedies',
  'rolloutAnswers',
  'rolloutPapers',
  'rolloutReport',
  'severities',
  'sources',
  'working',
];

/** Sections of which everything that is printed for a site is said. A language for paper alone has them, and no other. */
export const paperSections = [
  'cautions',
  'drawn',
  'findings',
  'installation',
  'loads',
  'numbers',
  'pack',
  'pictures',
  'remedies',
  'rolloutPapers',
  'severities',
  'stations',
  'steps',
  'units',
  'verdicts',
];

/** Codes of the languages that have a file, English first. */
const everyCode = readdirSync(join(root, folder))
  .filter((file) => file.endsWith('.json'))
  .map((file) => basename(file, '.json'))
  .sort((a, b) => Number(b === 'en') - Number(a === 'en') || a.localeCompare(b));

/** @param {string} code @returns {LanguageFile} */
function read(code) {
  const { language, ...sections } = JSON.parse(readFileSync(join(root, folder, `${code}.json`), 'utf8'));
  if (language?.code !== code) throw new Error(`${folder}/${code}.json does not name its own code`);
  return { head: language, sections };
}

/** Is it a language for what is printed alone? Its pages would be half in English. @param {string} code */
const isForPaper = (code) => read(code).head.for === 'paper';
const languageCodes = everyCode.filter((code) => !isForPaper(code));
const paperCodes = everyCode.filter(isForPaper);

/** The messages of English that another language lacks, as `section.key`. @param {LanguageFile} language @param {string[]} names */
function missingIn(language, names) {
  return names.flatMap((section) =>
    Object.keys(read('en').sections[section] ?? {})
      .filter((key) => language.sections[section]?.[key] === undefined)
      .map((key) => `${section}.${key}`),
  );
}

/** @param {string} name @param {unknown} value */
const constant = (name, value) => `export const ${name} = ${JSON.stringify(value, null, 2)} as const;\n`;

/**
 * A part of a language as a module: the sections of the app, those it loads later, or all the others.
 *
 * @param {string} code @param {'app' | 'later' | 'rest'} half
 */
function moduleText(code, half) {
  const language = read(code);
  const names = Object.keys(read('en').sections).filter((name) => partOf(name) === half);
  const head = half === 'app' ? constant('language', language.head) : '';
  const body = names.map((name) => constant(name, language.sections[name] ?? {})).join('');
  const reason = `// long: made by "npm run generate" from ${folder}/${code}.json; change that file, not this one.\n`;
  return `${reason}${head}${constant('missing', missingIn(language, names))}${body}`;
}

/** @param {string} section */
function partOf(section) {
  if (notForTheApp.includes(section)) return 'rest';
  return laterInTheApp.includes(section) ? 'later' : 'app';
}

/** A language for paper alone as a module: the sections of paper. @param {string} code */
function paperModuleText(code) {
  const language = read(code);
  const names = paperSections.filter((name) => read('en').sections[name] !== undefined);
  const reason = `// long: made by "npm run generate" from ${folder}/${code}.json; change that file, not this one.\n`;
  const body = names.map((name) => constant(name, language.sections[name] ?? {})).join('');
  return `${reason}${constant('language', language.head)}${constant('missing', missingIn(language, names))}${body}`;
}

/** The list of the languages for paper alone, and the sections they say. */
function paperListText() {
  const comment = '/** The languages that only what is printed is said in. */';
  const sections = `/** The sections of which all that is printed for a site is said. */\n${constant('paperSections', paperSections)}`;
  return `// Made by "npm run generate" from ${folder}.\n${sections}${comment}\nexport const paperLanguages = {\n${listLines(paperCodes, 'paper')}} as const;\n`;
}

/** @param {readonly string[]} codes @param {'app' | 'later' | 'rest' | 'paper'} part */
function listLines(codes, part) {
  return codes
    .map((code) => {
      const { name, direction } = read(code).head;
      const known = `name: ${JSON.stringify(name)}, direction: ${JSON.stringify(direction)}`;
      return `  ${JSON.stringify(code)}: { ${known}, load: () => import('./${code}/${part}.ts') },\n`;
    })
    .join('');
}

/**
 * The list of languages: what each is called, and how one half of it is loaded when asked for. Each half has a list of its
 * own, so that the app carries no chunk it never loads.
 *
 * @param {'app' | 'later' | 'rest'} half
 */
function listText(half) {
  const what = {
    app: 'the sections of the app',
    later: 'the sections the app loads later',
    rest: 'the sections the app does not need',
  }[half];
  const comment = `/** The languages there are: what each calls itself, which way it runs, and ${what}. */`;
  return `// Made by "npm run generate" from ${folder}.\n${comment}\nexport const ${half}Languages = {\n${listLines(languageCodes, half)}} as const;\n${half === 'app' ? paperNamesText() : ''}`;
}

/** What the languages for what is printed call themselves, for a page that offers them. */
function paperNamesText() {
  const names = [...languageCodes, ...paperCodes].map((code) => {
    const { name, direction } = read(code).head;
    return `  { code: ${JSON.stringify(code)}, name: ${JSON.stringify(name)}, direction: ${JSON.stringify(direction)} },\n`;
  });
  return `\n/** The languages that what is printed is said in. */\nexport const paperNames = [\n${names.join('')}] as const;\n`;
}

/** Every module made of the files of languages, with its text. @returns {readonly { file: string, text: () => string }[]} */
export function languageModules() {
  const halves = languageCodes.flatMap((code) =>
    /** @type {const} */ (['app', 'later', 'rest']).map((half) => ({
      file: `${into}/${code}/${half}.ts`,
      text: () => moduleText(code, half),
    })),
  );
  const lists = /** @type {const} */ (['app', 'later', 'rest']).map((half) => ({
    file: `${into}/${half}.ts`,
    text: () => listText(half),
  }));
  const onPaper = paperCodes.map((code) => ({ file: `${into}/${code}/paper.ts`, text: () => paperModuleText(code) }));
  return [...halves, ...lists, ...onPaper, { file: `${into}/paper.ts`, text: paperListText }];
}

/** Writes the modules, so that the build after it knows every message. */
export function writeLanguages() {
  for (const { file, text } of languageModules()) {
    mkdirSync(dirname(join(root, file)), { recursive: true });
    writeFileSync(join(root, file), text());
  }
}

const started = process.argv[1];
if (started && pathToFileURL(realpathSync(started)).href === import.meta.url) writeLanguages();
