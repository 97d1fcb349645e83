/** Sentences that all places say in which a file is checked. */
import { counted, grouped, NO_BREAK } from './numbers.ts';

const quoted = (name: string) => `“${name}”`;

export const CHECK = {
  choose: 'Choose a file',
  chooseOne: 'choose one',
  chooseAnother: 'Choose another file',
  stop: 'Stop',
  again: 'Check it again',
  dismiss: 'Dismiss',
  file: 'The file',
  looked: 'How it looked',
  lookedAside: 'and what it passed over',
  sources: 'Where the numbers come from',
  nothing: 'No thin section found',
  kept: 'Your settings are kept on this machine; the file is not, so drop it again after loading the page anew.',
} as const;

/** “2 thin sections so far; about 12 s left”. */
export function soFarText(found: number, secondsLeft: number | undefined): string {
  const far = found === 0 ? [] : [`${counted(found, 'thin section')} so far`];
  const left = secondsLeft === undefined ? [] : [`about ${Math.max(1, Math.round(secondsLeft))}${NO_BREAK}s left`];
  return [...far, ...left].join('; ');
}

/** `before`: what stays on the sheet, “part” or “toolpath”, where there is one. */
export function stoppedText(name: string, found: number, before: string | undefined): string {
  const so = found === 0 ? 'no thin section had been found yet' : `${counted(found, 'thin section')} had been found`;
  const stays = before === undefined ? '' : ` The ${before} before it stays on the sheet.`;
  return `The check of ${quoted(name)} was stopped; ${so}, and the rest of it has not been measured.${stays}`;
}

export function refusedText(name: string, bytes: number, why: string, before: string | undefined): string {
  const stays = before === undefined ? 'Nothing else was changed.' : `The ${before} before it stays on the sheet.`;
  return `${quoted(name)}, ${bytesText(bytes)}: ${why} ${stays}`;
}

export function brokeText(name: string, message: string): string {
  return `The check of ${quoted(name)} broke off: ${message}. Nothing was lost; try it again, or choose another file.`;
}

export function bytesText(bytes: number): string {
  return bytes < 100_000 ? `${grouped(bytes)} bytes` : `${(bytes / 1e6).toFixed(1)}${NO_BREAK}MB`;
}

/** A letter or report that is copied. */
export const COPYING = {
  copy: 'Copy as text',
  print: 'Print it',
  keep: 'Keep it as a file',
  copied: 'Copied.',
  notCopied: 'The browser did not let it be copied: mark the text and copy it by hand.',
} as const;

export function morePassed(count: number): string {
  return `The other ${grouped(count)}`;
}

export const LOOK_UP_TO = ['Look for anything up to', 'thick.'] as const;
