/**
 * Who may import whom. A room of the engine takes values, not rooms: it knows the kernel and the catalogue of parts, and
 * only site.ts with siteRain.ts and siteWater.ts, plan.ts and remedies/ call rooms, through their doors. checks/rules proves that each rule here bites.
 */

const error = /** @type {const} */ ('error');
const engine = '^packages/engine/src/';
const room = `${engine}(?:water|programme)/([^/]+)/`;
const test = '\\.test\\.ts$';

/** Packages of this repository that one package may import, itself aside. */
const mayImport = {
  engine: [],
  tables: ['engine'],
  formats: ['engine', 'records', 'tables'],
  records: ['engine'],
  database: ['engine', 'records'],
  words: ['engine', 'records', 'tables'],
  demo: ['engine', 'formats', 'tables'],
  report: ['engine', 'tables', 'words'],
  drawing: ['engine'],
  paper: ['drawing', 'engine', 'report', 'tables', 'words'],
  work: [],
  linear: ['engine'],
  server: ['database', 'demo', 'engine', 'formats', 'linear', 'paper', 'records', 'report', 'tables', 'words', 'work'],
  app: ['drawing', 'engine', 'report', 'tables', 'words'],
  cli: ['app', 'demo', 'engine', 'formats', 'linear', 'paper', 'report', 'server', 'tables', 'words', 'work'],
};

const folderOf = (/** @type {string} */ name) => (name === 'demo' ? 'demo/' : `packages/${name}/`);

const layers = Object.entries(mayImport).map(([name, others]) => ({
  name: `layers-${name}`,
  comment: `${name} may import ${others.length > 0 ? others.join(', ') : 'no other package of ours'}.`,
  severity: error,
  from: { path: `^${folderOf(name)}` },
  to: { path: '^(?:packages|demo|checks|bench|setup)/', pathNot: [name, ...others].map((one) => `^${folderOf(one)}`) },
}));

/** @type {import('dependency-cruiser').IConfiguration} */
module.exports = {
  forbidden: [
    ...layers,
    {
      name: 'rooms-take-values',
      comment: 'A room imports its own files, the kernel and parts; a shared type lives in the kernel.',
      severity: error,
      from: { path: room },
      to: {
        path: engine,
        pathNot: [`${engine}(?:water|programme)/$1/`, `${engine}kernel/`, `${engine}parts/index\\.ts$`],
      },
    },
    {
      name: 'parts-take-the-kernel',
      comment: 'The catalogue imports its own files and the kernel.',
      severity: error,
      from: { path: `${engine}parts/` },
      to: { path: engine, pathNot: [`${engine}parts/`, `${engine}kernel/`] },
    },
    {
      name: 'kernel-stands-alone',
      comment: 'The kernel imports nothing else of the engine.',
      severity: error,
      from: { path: `${engine}kernel/` },
      to: { path: engine, pathNot: `${engine}kernel/` },
    },
    {
      name: 'few-call-rooms',
      comment:
        'Only site.ts with siteRain.ts, siteStorm.ts, siteService.ts, siteStations.ts, siteWater.ts and siteWear.ts, plan.ts, programmeKit.ts, programmeRollout.ts with its own files, remedies/ and the door index.ts call rooms.',
      severity: error,
      from: {
        path: engine,
        pathNot: [
          room,
          `${engine}(?:site|siteRain|siteService|siteStations|siteStorm|siteWater|siteWear|plan|programmeKit|programmeRollout[A-Za-z]*|index)(?:\\.test|\\.testing)?\\.ts$`,
          `${engine}remedies/`,
        ],
      },
      to: { path: room },
    },
    {
      name: 'rooms-by-their-door',
      comment: 'A room is entered through its index.ts.',
      severity: error,
      from: { path: engine, pathNot: room },
      to: { path: room, pathNot: '/index\\.ts$' },
    },
    {
      name: 'parts-by-their-door',
      comment: 'The catalogue is entered through its index.ts.',
      severity: error,
      from: { path: engine, pathNot: `${engine}parts/` },
      to: { path: `${engine}parts/`, pathNot: '/index\\.ts$' },
    },
    {
      name: 'packages-by-their-door',
      comment: 'A package is imported by its name, never by a path into its files.',
      severity: error,
      from: { path: '^(packages/[^/]+|demo)/' },
      to: { path: '^(?:packages/[^/]+|demo)/', pathNot: '^$1/', dependencyTypesNot: ['aliased-workspace'] },
    },
    {
      name: 'engine-is-pure',
      comment: 'The engine has no file, clock, network or randomness: it imports no module of Node.',
      severity: error,
      from: { path: engine, pathNot: test },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'engine-allow-list',
      comment: 'The engine imports pure-rand and no other package of npm.',
      severity: error,
      from: { path: engine, pathNot: test },
      to: { path: 'node_modules/', pathNot: 'node_modules/pure-rand/' },
    },
    {
      name: 'tables-records-and-words-are-pure',
      comment: 'The contract, the records and the words run on a phone as well: no module of Node.',
      severity: error,
      from: { path: '^packages/(?:tables|records|words)/src/', pathNot: test },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'no-circles',
      comment: 'Nothing imports itself by a detour.',
      severity: error,
      from: {},
      to: { circular: true },
    },
    {
      name: 'no-built-files',
      comment: 'dist is never imported by path; a bin file is the one exception.',
      severity: error,
      from: { pathNot: '^packages/cli/bin/' },
      to: { path: '^(?:packages/[^/]+|demo)/dist/' },
    },
    {
      name: 'nothing-unresolved',
      comment: 'Every import leads somewhere; packages of types alone lead nowhere at run time.',
      severity: error,
      from: { pathNot: '^packages/cli/bin/' },
      to: { couldNotResolve: true, pathNot: '^(?:@react-types/shared|topojson-specification)$' },
    },
  ],
  options: {
    doNotFollow: { path: ['node_modules', '(?:^|/)dist/'] },
    tsPreCompilationDeps: true,
    combinedDependencies: true,
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['eavewell-source', 'import', 'node', 'default', 'types'],
      extensions: ['.ts', '.mjs', '.js', '.json'],
    },
  },
};
