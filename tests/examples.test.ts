/**
 * Every `@example call // → value` in the docstrings of the core is run and compared with what it says, number by
 * number, to the places printed. Scaling laws cannot see a lost factor of two; these can.
 */
import { describe, expect, it } from 'vitest';
import { degrees, radians } from '../src/core/units.ts';
import { sourceFiles } from './support/sourceFiles.ts';

type Names = Readonly<Record<string, unknown>>;
const modules = import.meta.glob<Names>('../src/core/**/*.ts');

interface Example {
  readonly call: string;
  readonly says: string;
}

/** The examples of a text, and those that are not in the one-line form. */
function examplesOf(text: string): { readonly examples: readonly Example[]; readonly malformed: readonly string[] } {
  const lines = text.split('\n').filter((line) => /^\s*\/?\*+\s*@example\b/.test(line));
  const read = lines.map((line) => /@example\s+(?<call>.+?)\s*\/\/ → (?<says>.+?)\s*(?:\*\/)?$/.exec(line)?.groups);
  return {
    examples: read.flatMap((found) =>
      found?.['call'] && found['says'] ? [{ call: found['call'], says: found['says'] }] : [],
    ),
    malformed: lines.filter((_, i) => read[i] === undefined).map((line) => line.trim()),
  };
}

/** A number as it stands in an example, with as many places as it must agree to. */
interface Printed {
  readonly printed: string;
}

function evaluate(expression: string, names: Names): unknown {
  // oxlint-disable-next-line typescript/no-implied-eval -- running the text of docstrings is what this test is for
  const run = new Function(...Object.keys(names), `return (${expression});`) as (...values: unknown[]) => unknown;
  return run(...Object.values(names));
}

/** What an example says, with its numbers kept as printed. */
function readSaid(says: string): unknown {
  const kept = says.replaceAll(/'[^']*'|"[^"]*"|[\w$]*[A-Za-z$_][\w$]*|-?\d+(?:\.\d+)?(?:e[+-]?\d+)?/g, (token) =>
    /^-?\d/.test(token) ? `{ printed: '${token}' }` : token,
  );
  return evaluate(kept, {});
}

/** Half a unit in the last printed place; a whole number is a count and must agree but for round-off. */
function room(printed: string): number {
  const [mantissa = '', power = '0'] = printed.split('e');
  const places = mantissa.split('.')[1]?.length ?? 0;
  return places === 0
    ? 1e-9 * Math.max(1, Math.abs(Number(printed)))
    : 0.5 * 10 ** (Number(power) - places) * (1 + 1e-9);
}

const isObject = (value: unknown): value is Names => typeof value === 'object' && value !== null;
const isPrinted = (value: unknown): value is Printed => isObject(value) && 'printed' in value;

/** Where a value differs from what was said of it; undefined when nowhere. An object may say only some of its fields. */
function difference(actual: unknown, said: unknown, at = 'it'): string | undefined {
  if (isPrinted(said)) {
    const isClose = typeof actual === 'number' && Math.abs(actual - Number(said.printed)) <= room(said.printed);
    return isClose ? undefined : `${at} is ${String(actual)}, not ${said.printed}`;
  }
  if (!isObject(said)) return Object.is(actual, said) ? undefined : `${at} is ${String(actual)}, not ${String(said)}`;
  if (!isObject(actual)) return `${at} is ${String(actual)}, not an object`;
  if (Array.isArray(said) && said.length !== (actual as unknown as unknown[]).length) return `${at} has another length`;
  // The value of a `Result` that is ok may be said without the wrapping.
  const value = actual['ok'] === true && !('ok' in said) ? actual['value'] : actual;
  return Object.keys(said)
    .map((key) => difference((value as Names)[key], said[key], `${at}.${key}`))
    .find((found) => found !== undefined);
}

/** What is wrong with an example, given what its module exports; undefined when nothing. */
function complaint({ call, says }: Example, exported: Names): string | undefined {
  const actual = evaluate(call, { radians, degrees, ...exported });
  const said = readSaid(says);
  const unwrapped = isPrinted(said) && isObject(actual) && actual['ok'] === true ? actual['value'] : actual;
  return difference(unwrapped, said);
}

const files = sourceFiles('core/').map(({ path, text }) => ({ path, ...examplesOf(text) }));
const cases = files.flatMap(({ path, examples }) => examples.map((example) => ({ path, ...example })));

describe('the examples in the docstrings of the core', () => {
  it('are all in the one-line form', () => {
    expect(files.flatMap(({ malformed }) => malformed)).toEqual([]);
    expect(cases.length).toBeGreaterThan(40);
  });

  it.each(cases)('$path: $call', async ({ path, ...example }) => {
    const exported = await modules[`../src/${path}`]?.();
    if (!exported) throw new Error(`${path} cannot be imported`);
    expect(complaint(example, exported)).toBeUndefined();
  });
});

describe('an example is caught', () => {
  const scope = {
    half: (x: number) => x / 2,
    pair: () => ({ count: 2, thickness: 0.84, tie: false }),
    list: () => [0.21, 0.63],
    good: () => ({ ok: true, value: { count: 2 }, notes: [] }),
    goodNumber: () => ({ ok: true, value: 0.5, notes: [] }),
    bad: () => ({ ok: false, problems: [] }),
  };

  it.each([
    ['half(1)', '0.6'],
    ['half(1)', '0.51'],
    ['half(1)', '-0.5'],
    ['half(5)', '3'],
    ['half(0 / 0)', '0.0'],
    ['pair()', '{ count: 3 }'],
    ['pair()', '{ count: 2, thickness: 0.85 }'],
    ['pair()', '{ thickness: 0.84, tie: true }'],
    ['pair()', '{ depth: 6 }'],
    ['list()', '[0.21]'],
    ['list()', '[0.21, 0.64]'],
    ['good()', '{ count: 3 }'],
    ['goodNumber()', '0.6'],
    ['bad()', '{ count: 2 }'],
    ["'lines'", "'layers'"],
    ['1e-9', '1.5e-9'],
  ])('when %s is said to be %s', (call, says) => {
    expect(complaint({ call, says }, scope)).toBeDefined();
  });

  it.each([
    ['half(1)', '0.5'],
    ['half(0.84)', '0.4'],
    ['half(4)', '2'],
    ['pair()', '{ count: 2, thickness: 0.840, tie: false }'],
    ['list()', '[0.21, 0.63]'],
    ['good()', '{ count: 2 }'],
    ['goodNumber()', '0.50'],
    ['half(radians(90))', '0.7853982'],
    ["'0.84 = 2 × 0.42'", "'0.84 = 2 × 0.42'"],
    ['1.52e-9', '1.5e-9'],
    ['undefined', 'undefined'],
  ])('but not when %s is said to be %s', (call, says) => {
    expect(complaint({ call, says }, scope)).toBeUndefined();
  });

  it('when it does not run', () => {
    expect(() => complaint({ call: 'missing(1)', says: '1' }, scope)).toThrow(ReferenceError);
  });

  it('when it is not in the one-line form', () => {
    const text =
      '/**\n * @example half(1) // → 0.5\n * @example half(1)\n *   // → 0.5\n */\n/** @example half(2) // → 1 */';
    expect(examplesOf(text)).toEqual({
      examples: [
        { call: 'half(1)', says: '0.5' },
        { call: 'half(2)', says: '1' },
      ],
      malformed: ['* @example half(1)'],
    });
  });
});
