import type { Problem } from '../core/problems.ts';

/** Long enough for a sentence, short enough for a tab and a drawing title. */
export const MAX_NAME = 80;

/**
 * A name that any screen, drawing and link can carry: control characters and line ends become spaces, half
 * surrogates the replacement character, the ends are trimmed, and it stops after `MAX_NAME` characters.
 */
export function cleanName(name: string): string {
  return oneLine(name, MAX_NAME);
}

/** A sentence or two about a value: cleaned as a name is, only longer. */
export const MAX_WORDS = 400;

export function words(text: string): string {
  return oneLine(text, MAX_WORDS);
}

function oneLine(text: string, most: number): string {
  const plain = text.replaceAll(/[\p{Cc}\p{Zl}\p{Zp}]/gu, ' ').replaceAll(/\p{Cs}/gu, '\uFFFD');
  return Array.from(plain.trim()).slice(0, most).join('').trim();
}

/** The cleaned name, or what to call it when nothing is left, with a note when it had to change. */
export function readName(given: string, field: string, whenEmpty: string): { name: string; notes: readonly Problem[] } {
  const name = cleanName(given) || whenEmpty;
  if (name === given) return { name, notes: [] };
  const message = `${field} was trimmed to “${name}”; names are one line of at most ${MAX_NAME} characters`;
  return { name, notes: [{ code: 'changed-name', message, field, value: name, limit: MAX_NAME }] };
}
