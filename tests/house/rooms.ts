/**
 * The rooms, top to bottom. A room may import the rooms above it, through their `index.ts`; rooms on
 * one line may not import each other.
 */
export const FLOORS: readonly (readonly string[])[] = [
  ['schema'],
  ['model'],
  ['text'],
  ['typeset'],
  ['packs'],
  ['review'],
  ['checks'],
  ['select'],
  ['gate'],
  ['audit'],
  ['edit'],
  ['read'],
  ['write'],
  ['out/card', 'out/wording'],
  ['out/print', 'out/lists'],
  ['out/packet', 'out/brief', 'out/sheets'],
  ['out/packs'],
  ['out/proof', 'out/site'],
  ['release'],
  ['submission'],
  ['sheet'],
  ['mend'],
  ['status'],
  ['editor'],
  ['desk'],
  ['cli'],
];

/** Rooms without disk, clock, randomness and environment: these are arguments there. */
export const PURE: ReadonlySet<string> = new Set(FLOORS.slice(0, 11).flat());

/** Rooms that may import fewer rooms than those above them. */
export const ONLY_ROOMS: Readonly<Record<string, readonly string[]>> = {
  audit: ['model'],
};

/** Rooms whose types may stand in comments of site/, which imports nothing of the house itself. */
export const TYPES_FOR_SITE: ReadonlySet<string> = new Set(['schema']);

/**
 * The packages and Node modules that each room may import: what is not listed is forbidden.
 * `module#name` allows that name of it: so a pure room, which may list no whole Node module, can
 * have a digest without the randomness beside it.
 */
export const PACKAGES: Readonly<Record<string, readonly string[]>> = {
  schema: ['typebox'],
  model: ['temporal-polyfill', 'typebox', 'yaml'],
  text: ['flesch', 'flesch-kincaid', 'syllable'],
  typeset: ['fontkit', 'linebreak', 'fflate'],
  packs: [],
  review: [
    'canonicalize',
    'diff',
    'temporal-polyfill',
    'node:crypto#createHash',
    'node:crypto#createPublicKey',
    'node:crypto#verify',
  ],
  checks: [],
  select: [],
  gate: ['typebox'],
  audit: ['node:zlib#unzipSync'],
  edit: ['diff', 'yaml'],
  read: [
    'ajv',
    'ajv-formats',
    'fontkit',
    'gray-matter',
    'mdast',
    'nspell',
    'p-limit',
    'remark-parse',
    'sharp',
    'typebox',
    'unified',
    'unist',
    'vfile',
    'yaml',
    'node:crypto',
    'node:fs',
    'node:module',
    'node:path',
    'node:url',
  ],
  write: ['p-limit', 'write-file-atomic', 'node:crypto', 'node:fs', 'node:os', 'node:path'],
  'out/card': [],
  'out/wording': [],
  'out/print': ['fontkit', 'pdfkit'],
  'out/lists': ['canonicalize', 'fontkit', 'ical.js', 'node:crypto#createHash'],
  'out/proof': ['fontkit', 'pdfkit', 'sharp'],
  'out/packet': ['canonicalize', 'diff', 'fflate', 'fontkit', 'node:crypto'],
  'out/site': [
    '@11ty/eleventy',
    'canonicalize',
    'fontkit',
    'p-limit',
    'node:child_process',
    'node:crypto',
    'node:fs',
    'node:module',
    'node:os',
    'node:path',
    'node:url',
  ],
  'out/brief': [],
  'out/sheets': ['fflate', 'write-excel-file'],
  'out/packs': [],
  release: ['node:crypto', 'node:path', 'node:util'],
  submission: ['node:crypto', 'node:path'],
  sheet: ['csv-parse', 'fflate', 'yaml'],
  mend: ['yaml', 'node:path'],
  status: ['ical.js'],
  desk: [
    '@codemirror/commands',
    '@codemirror/lint',
    '@codemirror/state',
    '@codemirror/view',
    'diff',
    'preact',
    'sirv',
    'typebox',
    'yaml',
    'node:crypto',
    'node:fs',
    'node:http',
    'node:path',
    'node:url',
  ],
  editor: [
    'typebox',
    'vscode-languageserver',
    'vscode-languageserver-textdocument',
    'yaml',
    'node:path',
    'node:stream',
    'node:url',
  ],
  cli: [
    'chokidar',
    'commander',
    'p-limit',
    'picocolors',
    'sirv',
    'vfile',
    'node:child_process',
    'node:crypto#createHash',
    'node:fs',
    'node:http',
    'node:module',
    'node:os',
    'node:path',
    'node:process',
    'node:readline',
    'node:tty',
    'node:url',
    'node:vm',
  ],
  site: ['node:crypto', 'node:fs'],
};

/** What is bundled when the project is built: its packages are needed then, and not by users. */
export const BUNDLED = ['pipeline/desk/page/'];

/** The room that a file of schema, pipeline or site stands in, if any. */
export function roomOf(path: string): string | undefined {
  const [top = '', first = '', second = ''] = path.split('/');
  if (top === 'schema' || top === 'site') return top;
  const room = first === 'out' ? `out/${second}` : first;
  return top === 'pipeline' && floorOf(room) > 0 ? room : undefined;
}

/** How far down a room lies: 0 is the top, -1 is no room of the house. */
export function floorOf(room: string): number {
  return FLOORS.findIndex((rooms) => rooms.includes(room));
}

/** The one file of a room that others may import. */
export function wayIn(room: string): string {
  return room === 'schema' ? 'schema/index.ts' : `pipeline/${room}/index.ts`;
}
