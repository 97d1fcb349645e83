/**
 * Judges the shape of a document that came from outside: which fields are missing, which hold the wrong kind of
 * thing, which are not known. Ranges and physics are judged afterwards by the core.
 */
import * as v from 'valibot';
import type { Problem } from '../core/problems.ts';

/** More problems than this help nobody; the last one then says how many were left out. */
const MAX_PROBLEMS = 20;

const LONGEST_VALUE = 40;
const LONGEST_PATH = 80;

const EXPECTED: Readonly<Record<string, string>> = {
  number: 'a number',
  finite: 'a finite number',
  string: 'a text',
  boolean: 'true or false',
  Object: 'an object',
  Array: 'a list',
};

type Issue = v.BaseIssue<unknown>;

/** An object with these fields; a missing one is reported with what should stand there. */
export function fields<const E extends v.ObjectEntries>(entries: E) {
  return v.object(entries, (issue) => {
    const key = issue.path?.at(-1)?.key;
    return (typeof key === 'string' && entries[key]?.expects) || 'Object';
  });
}

/** Whether something has fields by name, of any kind. */
export function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** JSON may write 1e999, which is read as infinity. */
export const number = v.pipe(v.number(), v.finite());

/** The count is judged first, so that a list of a million strangers is one problem and not a million. */
export function listOf<S extends v.GenericSchema>(entry: S, most: number) {
  return v.pipe(v.array(v.unknown()), v.maxLength(most), v.array(entry));
}

/** `("flat" | "crease")` as the schema says it becomes “one of flat, crease”. */
function inWords(expected: string): string {
  const words = EXPECTED[expected];
  if (words !== undefined) return words;
  const options = expected.replaceAll(/[()"]/g, '').split(' | ');
  return options.length > 1 ? `one of ${options.join(', ')}` : options.join('');
}

function cut(text: string): string {
  return text.length > LONGEST_VALUE ? `${text.slice(0, LONGEST_VALUE)}…` : text;
}

/** A value from outside for a problem's `value`; nested ones are named only, since they may be deep or huge. */
export function brief(value: unknown): number | string {
  if (typeof value === 'number' && Number.isFinite(value)) return value;
  if (typeof value === 'string') return cut(value);
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'object' && value !== null) return 'an object';
  return String(value);
}

/** The same for a sentence: texts in quotes. */
export function shown(value: unknown): string {
  return typeof value === 'string' ? `“${cut(value)}”` : String(brief(value));
}

/** Path of a field in the project's form, `joints[2].profile.nozzle`; fields of the part stand without `part.`. */
function pathOf(issue: Issue): string {
  const path = (issue.path ?? [])
    .map(({ key }) => (typeof key === 'number' ? `[${key}]` : `.${String(key)}`))
    .join('')
    .slice(1);
  return path.replace(/^part\./, '');
}

/** One fault of shape as a problem that names the field, the value and what was expected. */
export function shapeProblem(issue: Issue): Problem {
  const field = pathOf(issue);
  const what = field || 'the document';
  if (issue.type === 'max_length') {
    const message = `${what} holds ${issue.received} entries, at most ${issue.requirement as number} are read`;
    return { code: 'too-large', message, field, value: Number(issue.received), limit: issue.requirement as number };
  }
  if (issue.received === 'undefined') {
    const expected = inWords(issue.type === 'object' ? issue.message : (issue.expected ?? ''));
    return { code: 'missing-field', message: `${what} is missing, expected ${expected}`, field, limit: expected };
  }
  // JSON can hold 1e999, which reads as Infinity; such a check states no kind of its own.
  const expected = inWords(issue.expected ?? 'finite');
  const code =
    issue.type === 'finite'
      ? 'not-a-number'
      : issue.type === 'picklist' || issue.type === 'literal'
        ? 'not-one-of'
        : 'wrong-type';
  return {
    code,
    message: `${what} is ${shown(issue.input)}, expected ${expected}`,
    field,
    value: brief(issue.input),
    limit: expected,
  };
}

/** At most `MAX_PROBLEMS` of these; the last then says how many more there were. */
export function capped(problems: readonly Problem[]): readonly Problem[] {
  const last = problems[MAX_PROBLEMS - 1];
  if (problems.length <= MAX_PROBLEMS || last === undefined) return problems;
  const more = problems.length - MAX_PROBLEMS;
  return [...problems.slice(0, MAX_PROBLEMS - 1), { ...last, message: `${last.message} (and ${more} more)` }];
}

/**
 * Fields of `raw` that were not taken over into `kept`: a later or a foreign program wrote them.
 * Walks only as deep as `kept` goes, so a deeply nested stranger costs nothing.
 */
export function ignoredFields(raw: unknown, kept: unknown, path = ''): readonly Problem[] {
  if (typeof raw !== 'object' || raw === null || typeof kept !== 'object' || kept === null) return [];
  const inList = Array.isArray(raw);
  return Object.entries(raw).flatMap(([key, value]) => {
    const field = inList ? `${path}[${key}]` : path === '' ? key : `${path}.${key}`;
    if (Object.hasOwn(kept, key)) return ignoredFields(value, (kept as Record<string, unknown>)[key], field);
    const named = field.slice(0, LONGEST_PATH);
    return [{ code: 'unknown-field', message: `${named} is not known here and was left out`, field: named } as const];
  });
}

/** A problem of something that stands at this place of a document. */
export function within(place: string, problem: Problem): Problem {
  return { ...problem, field: problem.field === undefined ? place : `${place}.${problem.field}` };
}
