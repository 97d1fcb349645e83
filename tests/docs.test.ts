/**
 * What the docstrings of the core promise a reader, read from their text: a unit for every parameter, sources that are in
 * the bibliography, and words on screen for every problem.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { PROBLEM_CODES } from '../src/core/problems.ts';
import { METHOD_SOURCES, SOURCES } from '../src/core/sources.ts';
import { PROBLEM_TEXT, problemText } from '../src/ui/text/problemText.ts';
import { sourceFiles } from './support/sourceFiles.ts';

/** A docstring and the first line of what it stands above. */
interface Documented {
  readonly doc: string;
  readonly declares: string;
}

function documented(text: string): readonly Documented[] {
  return [...text.matchAll(/\/\*\*(?<doc>[\s\S]*?)\*\/\s*(?<declares>[^\n]*)/g)].map(({ groups }) => ({
    doc: (groups?.['doc'] ?? '').replaceAll(/^\s*\* ?/gm, ''),
    declares: groups?.['declares'] ?? '',
  }));
}

/** Every tag of a docstring with its text, which may run over lines up to the next tag or an empty line. */
function tagsOf(doc: string): readonly { readonly tag: string; readonly text: string }[] {
  return [...doc.matchAll(/^@(?<tag>\w+)\s+(?<text>[\s\S]*?)(?=^@|\n\s*\n|$(?![\s\S]))/gm)].map(({ groups }) => ({
    tag: groups?.['tag'] ?? '',
    text: (groups?.['text'] ?? '').trim(),
  }));
}

/** Parameters of exported functions without a unit in square brackets, `[-]` for none. */
function withoutUnit(text: string): string[] {
  return documented(text)
    .filter(({ declares }) => declares.startsWith('export function'))
    .flatMap(({ doc }) => tagsOf(doc))
    .filter(({ tag, text: said }) => tag === 'param' && !/\[[^\]\s][^\]]*\]/.test(said))
    .map(({ text: said }) => said);
}

/** Exported functions that speak of some of their parameters and not of all. */
function incomplete(text: string): string[] {
  return documented(text).flatMap(({ doc, declares }) => {
    const name = /^export function (\w+)/.exec(declares)?.[1];
    const said = tagsOf(doc).flatMap(({ tag, text: words }) => (tag === 'param' ? [words.split(/\s/)[0] ?? ''] : []));
    if (name === undefined || said.length === 0) return [];
    return said.length === parameterCount(text.slice(text.indexOf(declares))) ? [] : [name];
  });
}

/** How many parameters the function at the start of a text takes: commas between them, outside any bracket. */
function parameterCount(text: string): number {
  const list = text.slice(text.indexOf('(') + 1);
  let [depth, commas, last] = [0, 0, ','];
  for (let i = 0; i < list.length; i += 1) {
    const char = list.charAt(i);
    if (depth === 0 && char === ')') return last === ',' ? commas : commas + 1;
    if ('([{'.includes(char) || (char === '<' && last !== ' ')) depth += 1;
    else if (')]}'.includes(char) || (char === '>' && list[i - 1] !== '=' && depth > 0)) depth -= 1;
    else if (depth === 0 && char === ',') commas += 1;
    if (!/\s/.test(char)) last = char;
  }
  return Number.NaN;
}

/** Words after `Source:` that end a part of the list and are no key of the bibliography. */
function unknownSources(text: string): string[] {
  return documented(text)
    .flatMap(({ doc }) => [...doc.matchAll(/^Source: ?(?<keys>[\s\S]*?)(?=\n\s*\n|\n@|$(?![\s\S]))/gm)])
    .flatMap(({ groups }) => (groups?.['keys'] ?? '').trim().replace(/\.$/, '').split(/[,;]/))
    .map((part) => part.trim().split(/\s+/).at(-1) ?? '')
    .filter((key) => !Object.hasOwn(ALL_SOURCES, key));
}

const ALL_SOURCES = { ...SOURCES, ...METHOD_SOURCES };
const files = sourceFiles('core/');
const inEach = (check: (text: string) => readonly string[]) =>
  files.flatMap(({ path, text }) => check(text).map((found) => `${path}: ${found}`));

describe('docstrings of the core', () => {
  it('give every parameter a unit', () => {
    expect(inEach(withoutUnit)).toEqual([]);
  });

  it('speak of every parameter once they speak of one', () => {
    expect(inEach(incomplete)).toEqual([]);
  });

  it('cite only what is in the bibliography', () => {
    expect(inEach(unknownSources)).toEqual([]);
  });

  it('are there to be checked at all', () => {
    const all = files.flatMap(({ text }) => documented(text));
    expect(all.filter(({ declares }) => declares.startsWith('export function')).length).toBeGreaterThan(40);
    expect(all.flatMap(({ doc }) => tagsOf(doc)).filter(({ tag }) => tag === 'param').length).toBeGreaterThan(80);
  });
});

describe('reference tests', () => {
  const folder = new URL('./reference/', import.meta.url);
  const tests = readdirSync(folder).filter((name) => name.endsWith('.test.ts'));

  const citedIn = (name: string) =>
    [...readFileSync(new URL(name, folder), 'utf8').matchAll(/(?:Source |^ \* )\[(?<key>[\w.-]+)\]/gm)].map(
      ({ groups }) => groups?.['key'] ?? '',
    );

  it('cite only what is in the bibliography', () => {
    const cited = tests.flatMap(citedIn);
    expect(cited.length).toBeGreaterThan(5);
    expect(cited.filter((key) => !Object.hasOwn(ALL_SOURCES, key))).toEqual([]);
  });
});

describe('every problem', () => {
  it.each(PROBLEM_CODES)('%s has words on screen', (code) => {
    const said = problemText(
      { code, message: 'Something of 1 mm is wrong; mend it', field: 'sizes.length', value: 1, limit: 2 },
      'mm',
    );
    expect(said.trim()).not.toBe('');
    expect(said).not.toMatch(/undefined|NaN|\[object/);
    expect(Object.hasOwn(PROBLEM_TEXT, code)).toBe(true);
  });
});

function above(doc: string, declares = 'export function f(a: number, b: number): void {}'): string {
  return `/**\n${doc}\n */\n${declares}\n`;
}

describe('a docstring is caught', () => {
  it.each([
    [' * @param a - a length, > 0\n * @param b - another [mm]', 1],
    [' * @param a - a length []\n * @param b - another [ ]', 2],
    [' * @param a - a length that is\n *   told of at length [mm]\n * @param b - a count [-]', 0],
    [' * @param a - a length [mm], > 0\n * @returns nothing\n * @param b - a range 0 to 1', 1],
  ])('without units: %j', (doc, count) => {
    expect(withoutUnit(above(doc))).toHaveLength(count);
  });

  it('but not above what is not exported', () => {
    expect(withoutUnit(above(' * @param a - a length', 'function f(a: number) {}'))).toEqual([]);
  });

  it.each([
    ['export function f(a: number, b: number): void {', []],
    ['export function f({ a, b }: Sizes, c = [1, 2]): void {', []],
    ['export function f(\n  a: Map<string, number>,\n  b: (x: number, y: number) => void,\n): void {', []],
    ['export function f(a: number): void {', ['f']],
    ['export function f(a: number, b: number, c: number): void {', ['f']],
  ])('with two parameters of %j', (declares, expected) => {
    expect(incomplete(above(' * @param a - first [mm]\n * @param b - second [mm]', declares))).toEqual(expected);
  });

  it.each([
    [' * Source: plane-bending.', []],
    [' * Source: plane-bending, bead-section.\n * @example f(1) // → 1', []],
    [' * Source: plane-bending; root factor roark-17.1.', []],
    [' * Source: a book I saw.', ['saw']],
    [' * Source: plane-bendin.', ['plane-bendin']],
    [' * Source: plane-bending, toString.', ['toString']],
    [' * Source: plane-bending,\n *   nowhere-1999.', ['nowhere-1999']],
  ])('with sources: %j', (doc, expected) => {
    expect(unknownSources(above(doc))).toEqual(expected);
  });
});
