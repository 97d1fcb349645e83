import { createElement, type ReactNode } from 'react';
import type { FormulaSaid } from '../../text/exerciseWords.ts';

/** What stands between two things that are worked out. */
const SIGNS = /^[=·×÷+−]$/;

const words = (text: string): readonly ReactNode[] =>
  text.split(' ').map((word, at) =>
    // Words of a formula never change their places.
    createElement(SIGNS.test(word) ? 'mo' : 'mtext', { key: `${at} ${word}` }, word),
  );

const row = (text: string) => createElement('mrow', {}, ...words(text));

/** A formula as it is written by hand, built up, and read out as mathematics. */
export function Formula({ left, over, under }: FormulaSaid) {
  const right = under === undefined ? row(over) : createElement('mfrac', {}, row(over), row(under));
  return createElement(
    'math',
    { className: 'formula' },
    createElement('mrow', {}, row(left), createElement('mo', {}, '='), right),
  );
}
