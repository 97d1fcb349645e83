/**
 * Who may import what, read from the text of every file under `src`. The table is the one in DEVELOPERS.md; a folder
 * that is not in it fails, so that a new one is decided on and not slipped in.
 */
import { posix } from 'node:path';
import { describe, expect, it } from 'vitest';
import { sourceFiles } from './support/sourceFiles.ts';

interface Rule {
  /** Folders under `src`; a parent stands for all that is in it, `core/base` for the four base files. */
  readonly folders: readonly string[];
  readonly packages: readonly string[];
}

const pure = (...folders: string[]): Rule => ({ folders: folders.map((name) => `core/${name}`), packages: [] });
const ALL_BUT_DESIGN = [
  'base',
  'numeric',
  'geometry',
  'print',
  'material',
  'beam',
  'closedForms',
  'flexures',
  'strength',
  'life',
];

const RULES: Readonly<Record<string, Rule>> = {
  'core/base': pure(),
  // Seeded draws are a standard job with known traps, and the package touches nothing but numbers.
  'core/numeric': { ...pure('base'), packages: ['pure-rand'] },
  // Cutting, offsetting and triangulating polygons are jobs that the libraries do better than we would.
  'core/geometry': { ...pure('base', 'numeric'), packages: ['clipper2-ts'] },
  'core/print': pure('base'),
  'core/material': pure('base', 'numeric', 'print'),
  // Never `beam`: the hand formulas must stay independent of the solver they check.
  'core/closedForms': pure('base', 'numeric'),
  // Sees widths, thicknesses and a modulus: never a material, a print profile or a family.
  'core/beam': pure('base', 'numeric', 'geometry'),
  'core/flexures': pure('base', 'geometry', 'print', 'beam', 'closedForms'),
  'core/strength': pure('base', 'numeric', 'material'),
  'core/life': pure('base', 'numeric', 'material'),
  'core/design': pure(...ALL_BUT_DESIGN),
  'core/find': pure(...ALL_BUT_DESIGN, 'design'),
  // Turning flat outlines into triangles is a standard job.
  'core/coupons': { folders: ['core'], packages: ['earcut'] },
  'core/working': pure(...ALL_BUT_DESIGN, 'design'),
  'core/lesson': pure(...ALL_BUT_DESIGN, 'design', 'find', 'working'),
  'core/tallies': pure(...ALL_BUT_DESIGN, 'design', 'coupons'),
  'core/inspect': { folders: ['core'], packages: ['delaunator', 'earcut'] },
  // Unzipping, XML and the splitting of polygons have traps enough to fill a package each.
  files: { folders: ['core'], packages: ['valibot', '@tarikjabiri/dxf', 'fflate', 'saxes', 'earcut'] },
  cli: {
    folders: ['core', 'files'],
    packages: ['node:fs', 'node:path', 'node:process', 'node:stream', 'node:stream/promises', 'node:util'],
  },
  workers: { folders: ['core', 'files'], packages: [] },
  store: { folders: ['core', 'files'], packages: ['zustand', 'idb-keyval'] },
  ui: {
    folders: ['core', 'files', 'store', 'workers'],
    packages: ['react', 'react-dom', 'd3', 'mathjs', 'zustand', '@fontsource-variable'],
  },
  main: { folders: ['store', 'ui'], packages: ['react', 'react-dom', '@fontsource-variable'] },
};
const BASE_FILES = ['core/units.ts', 'core/result.ts', 'core/problems.ts', 'core/sources.ts'];
const BARRELS = ['core/flexures/index.ts'];

/** The row of the table a file under `src` belongs to; undefined when it belongs to none. */
function folderOf(path: string): string | undefined {
  if (BASE_FILES.includes(path)) return 'core/base';
  if (path === 'main.tsx') return 'main';
  return Object.keys(RULES).find((folder) => path.startsWith(`${folder}/`));
}

/** Comments may speak of imports; code may not hide one behind them. Strings keep their slashes. */
function withoutComments(text: string): string {
  return text.replaceAll(/'(?:\\.|[^'\\\n])*'|"(?:\\.|[^"\\\n])*"|\/\*[\s\S]*?\*\/|\/\/[^\n]*/g, (match) =>
    match.startsWith('/') ? ' ' : match,
  );
}

/** Everything a text imports, exports from, loads while running or names as a type; '' for what cannot be read off. */
function importsOf(text: string): string[] {
  const code = withoutComments(text);
  const named = code.matchAll(/\b(?:import|export)\b[^'"`;()]*?\bfrom\s*['"]([^'"]+)['"]/g);
  const bare = code.matchAll(/\bimport\s*['"]([^'"]+)['"]/g);
  const loaded = code.matchAll(/\b(?:import|require)\s*\(\s*(?:['"`]([^'"`$]+)['"`])?/g);
  const byUrl = code.matchAll(/\bnew\s+URL\s*\(\s*['"`]([^'"`$]+)['"`]\s*,\s*import\.meta\.url/g);
  const globbed = code.matchAll(/\bimport\.meta\.glob\b/g);
  const found = [...named, ...bare, ...loaded, ...byUrl].map((match) => match[1] ?? '');
  return [...found, ...[...globbed].map(() => '')];
}

function packageOf(specifier: string): string {
  const [first = '', second = ''] = specifier.split('/');
  return first.startsWith('@') && first !== '@fontsource-variable' ? `${first}/${second}` : first;
}

/** What one import of one file breaks, in words; undefined when nothing. */
function breach(path: string, specifier: string): string | undefined {
  const from = folderOf(path);
  const rule = RULES[from ?? ''];
  if (!from || !rule) return `${path} is in no folder of the table`;
  if (specifier === '') return `${path} imports something that cannot be read off its text`;
  if (!specifier.startsWith('.')) {
    return rule.packages.includes(packageOf(specifier)) ? undefined : `${from} may not import the package ${specifier}`;
  }
  const target = posix.normalize(posix.join(posix.dirname(path), specifier.replace(/[?#].*$/, '')));
  const to = folderOf(target);
  if (!to) return `${path} imports ${specifier}, which is in no folder of the table`;
  if (posix.basename(target).startsWith('index.') && !BARRELS.includes(target)) return `${target} is a barrel file`;
  const isGranted = to === from || rule.folders.some((folder) => to === folder || to.startsWith(`${folder}/`));
  return isGranted ? undefined : `${from} may not import ${to} (${path}: ${specifier})`;
}

function breaches(path: string, text: string): string[] {
  const specifiers = importsOf(text);
  if (specifiers.length === 0) return folderOf(path) ? [] : [`${path} is in no folder of the table`];
  return specifiers.flatMap((specifier) => breach(path, specifier) ?? []);
}

describe('the import table', () => {
  const files = sourceFiles();

  it('is kept by every file under src', () => {
    expect(files.length).toBeGreaterThan(50);
    expect(files.flatMap(({ path, text }) => breaches(path, text))).toEqual([]);
  });

  it('is kept without barrel files', () => {
    expect(files.map(({ path }) => path).filter((path) => posix.basename(path).startsWith('index.'))).toEqual(BARRELS);
  });

  it('has a row for every folder, and a folder for every row', () => {
    const used = new Set(files.map(({ path }) => folderOf(path)));
    expect(Object.keys(RULES).filter((folder) => !used.has(folder))).toEqual([]);
  });
});

/** Files that come with a file at once: what it imports by name or bare, and so on. Types are gone by then. */
function loadedWith(path: string, texts: ReadonlyMap<string, string>, seen = new Set<string>()): ReadonlySet<string> {
  if (seen.has(path)) return seen;
  seen.add(path);
  const code = withoutComments(texts.get(path) ?? '');
  const named = code.matchAll(/\b(?:import|export)\s(?!type\b)[^'"`;()]*?\bfrom\s*['"]([^'"]+)['"]/g);
  const bare = code.matchAll(/\bimport\s*['"]([^'"]+)['"]/g);
  for (const [, specifier = ''] of [...named, ...bare]) {
    if (specifier.startsWith('.')) loadedWith(posix.join(posix.dirname(path), specifier), texts, seen);
    else seen.add(specifier);
  }
  return seen;
}

describe('what the first screen loads', () => {
  const texts = new Map(sourceFiles().map(({ path, text }) => [path, text]));

  it('is far from the packages that are loaded when they are first needed', () => {
    const first = loadedWith('main.tsx', texts);
    expect(first.size).toBeGreaterThan(50);
    expect(first.has('react')).toBe(true);
    expect(['clipper2-ts', '@tarikjabiri/dxf', 'mathjs/number', 'valibot'].filter((name) => first.has(name))).toEqual(
      [],
    );
  });

  it('is far from the solver, which works in its worker, and from the search for ways out', () => {
    const [first, worker] = ['main.tsx', 'workers/solve.worker.ts'].map((path) => loadedWith(path, texts));
    const late = ['core/beam/solve.ts', 'core/flexures/networks.ts', 'core/design/waysOut.ts'];
    expect(late.filter((path) => first?.has(path))).toEqual([]);
    expect(late.filter((path) => !worker?.has(path))).toEqual([]);
  });

  it('is far from the search for a joint and from what tunes one, which come with their jobs', () => {
    const late = [
      'core/find/find.ts',
      'core/find/wantedOf.ts',
      'core/flexures/soughts.ts',
      'core/design/matchEffort.ts',
    ];
    const entries = ['main.tsx', 'workers/solve.worker.ts'].map((path) => loadedWith(path, texts));
    expect(late.filter((path) => entries.some((entry) => entry.has(path)))).toEqual([]);
    expect(late.slice(0, 1).filter((path) => !loadedWith('workers/findJob.ts', texts).has(path))).toEqual([]);
  });

  it('knows no kinds of flexure but its own; what reads, solves or reports any joint knows all', () => {
    const every = ['core/flexures/index.ts', 'core/flexures/toggle.ts'];
    const first = loadedWith('main.tsx', texts);
    const late = [...every, 'ui/text/everyKindText.ts', 'ui/text/kinds/toggle.ts', 'ui/joints/everyKind.ts'];
    expect(late.filter((path) => first.has(path))).toEqual([]);
    expect(late.filter((path) => !loadedWith('ui/joints/everyKind.ts', texts).has(path))).toEqual([]);
    for (const entry of ['cli/assess.ts', 'workers/jobs.ts', 'files/partFile.ts', 'files/jointLink.ts']) {
      expect(every.filter((path) => !loadedWith(entry, texts).has(path))).toEqual([]);
    }
  });

  it('leaves what is read at the foot of a sheet to the foot', () => {
    const late = ['core/material/wholeRow.ts', 'core/material/further/petg.ts', 'ui/text/sourceText.ts'];
    expect(late.filter((path) => loadedWith('main.tsx', texts).has(path))).toEqual([]);
    expect(late.filter((path) => !loadedWith('ui/joints/Foot.tsx', texts).has(path))).toEqual([]);
  });

  it('would be seen to hold one of them', () => {
    const drawn = loadedWith('core/geometry/unionOutline.ts', texts);
    expect(drawn.has('clipper2-ts')).toBe(true);
  });
});

describe('a breach of the table is caught', () => {
  it.each([
    ['the core importing the screen', 'core/design/assess.ts', "import { App } from '../../ui/app/App.tsx';"],
    ['a type of the screen', 'core/design/assess.ts', "import type { Row } from '../../ui/app/row.ts';"],
    ['the core importing the store', 'core/life/scatter.ts', "export * from '../../store/state.ts';"],
    ['a package in the core', 'core/numeric/roots.ts', "import { createRequire } from 'node:module';"],
    ['react loaded while running', 'core/units.ts', "const react = await import('react');"],
    ['react loaded in a template string', 'core/units.ts', 'const react = await import(`react`);'],
    ['react loaded over several lines', 'core/units.ts', "const react = import(\n  /* lazily */ 'react',\n);"],
    ['a name put together while running', 'core/units.ts', "const x = await import('re' + 'act');"],
    ['a name kept in a variable', 'core/units.ts', 'const x = await import(name);'],
    ['an old-fashioned require', 'core/units.ts', "const fs = require('node:fs');"],
    ['a type named in place', 'core/units.ts', "type Node = import('react').ReactNode;"],
    ['an import for its side effects', 'core/units.ts', "import 'd3';"],
    ['an import spread over lines', 'core/units.ts', "import {\n  select,\n} from 'd3';"],
    ['an import after a comment on one line', 'core/units.ts', "/* why */ import { select } from 'd3';"],
    ['an import after a string with slashes', 'core/units.ts', "const a = 'https://x'; import { select } from 'd3';"],
    ['a worker named by its address', 'core/units.ts', "new Worker(new URL('../ui/x.ts', import.meta.url));"],
    ['files matched by a pattern', 'core/units.ts', "import.meta.glob('../ui/*.ts');"],
    [
      'hand formulas importing the solver',
      'core/closedForms/leafBending.ts',
      "import { solve } from '../beam/solve.ts';",
    ],
    [
      'hand formulas importing the filaments',
      'core/closedForms/leafBending.ts',
      "import { x } from '../material/types.ts';",
    ],
    ['print importing numerics', 'core/print/bead.ts', "import { x } from '../numeric/roots.ts';"],
    ['flexures importing filaments', 'core/flexures/crease.ts', "import { x } from '../material/types.ts';"],
    ['a base file importing a folder', 'core/result.ts', "import { x } from './print/profile.ts';"],
    ['a lower folder importing a higher one', 'core/life/scatter.ts', "import { x } from '../design/assess.ts';"],
    ['a path that wanders through the core', 'core/life/scatter.ts', "import { x } from '../life/.././../ui/x.ts';"],
    ['a path out of src and in again', 'core/life/scatter.ts', "import { x } from '../../../src/ui/x.ts';"],
    ['a package by its path', 'core/life/scatter.ts', "import x from '../../../node_modules/react/index.js';"],
    ['a path from the root of the page', 'core/life/scatter.ts', "import x from '/src/ui/x.ts';"],
    ['a path with a query', 'core/life/scatter.ts', "import x from '../../ui/x.ts?raw';"],
    ['a folder imported as if it were a file', 'core/life/scatter.ts', "import x from '../../ui';"],
    ['a barrel', 'core/design/assess.ts', "import { x } from '../print/index.ts';"],
    ['a package that only resembles a granted one', 'ui/app/App.tsx', "import x from 'd3-force';"],
    ['a scoped package that is not granted', 'files/dxf.ts', "import x from '@tarikjabiri/other';"],
    ['files importing the store', 'files/svg.ts', "import { x } from '../store/state.ts';"],
    ['the store importing the screen', 'store/state.ts', "import { x } from '../ui/app/App.tsx';"],
    ['the terminal importing the store', 'cli/assess.ts', "import { x } from '../store/state.ts';"],
    ['the screen importing the terminal', 'ui/app/App.tsx', "import { x } from '../../cli/report.ts';"],
    ['the screen reading the disk', 'ui/app/App.tsx', "import { x } from 'node:fs';"],
    ['a fifth base file', 'core/helpers.ts', 'export const x = 1;'],
    ['a new folder of the core', 'core/misc/x.ts', "import { ok } from '../result.ts';"],
  ])('%s', (_, path, text) => {
    expect(breaches(path, text)).toHaveLength(1);
  });

  it.each([
    ['a folder below', 'core/design/assess.ts', "import { x } from '../life/scatter.ts';"],
    ['the same folder', 'core/print/bead.ts', "import { x } from './profile.ts';"],
    ['a base file', 'core/print/bead.ts', "import type { Mm } from '../units.ts';"],
    ['another part of the screen', 'ui/app/App.tsx', "import { x } from '../text/numbers.ts';"],
    ['a part of a granted package', 'ui/controls/mathEngine.ts', "import { x } from 'mathjs/number';"],
    ['a lettering', 'main.tsx', "import '@fontsource-variable/sofia-sans';"],
    ['the list of families', 'core/design/assess.ts', "import { FAMILIES } from '../flexures/index.ts';"],
    [
      'talk of imports in comments',
      'core/units.ts',
      "// import { x } from 'react'\n/* import('react') */ export const x = 1;",
    ],
  ])('%s is not', (_, path, text) => {
    expect(breaches(path, text)).toEqual([]);
  });
});
