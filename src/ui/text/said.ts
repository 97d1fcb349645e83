import type { ProvenanceKind } from '../../core/material/types.ts';

/** What a figure is about, as far as it has a row of its own among the sources. */
export type About =
  'strain' | 'thickness' | 'effort' | 'life' | 'wear' | 'ratio' | 'set' | 'push' | 'held' | 'warmth' | 'printer';

/** A figure in a sentence: set strong, and marked with where it comes from. */
interface Figure {
  readonly figure: string;
  readonly mark?: ProvenanceKind;
  readonly about?: About;
}

/** A sentence in pieces, so that its figures can be set strong on screen and read plainly by ear. */
export type Said = readonly (string | Figure)[];

export function figure(text: string, mark?: ProvenanceKind, about?: About): Figure {
  return { figure: text, ...(mark && { mark }), ...(about && { about }) };
}

/** The sentence as plain text. */
export function plainly(said: Said): string {
  return said.map((piece) => (typeof piece === 'string' ? piece : piece.figure)).join('');
}

/** Words as they begin a line. */
export function capital(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
}

/** A message of the core, which has no full stop and may begin small, as a sentence. */
export function sentence(message: string): string {
  const text = message.trim();
  return `${capital(text)}${/[.!?]$/.test(text) ? '' : '.'}`;
}

/** “a”, “a and b”, “a, b and c”. */
export function listed(items: readonly string[], word = 'and'): string {
  const last = items.at(-1) ?? '';
  return items.length < 2 ? last : `${items.slice(0, -1).join(', ')} ${word} ${last}`;
}
