import { createElement, type ReactNode } from 'react';
import { NO_BREAK } from '../../text/numbers.ts';
import type { FormulaSaid } from '../../text/exerciseWords.ts';

/** What stands between two things that are worked out, with its spaces. */
const SIGNS = / ([·×÷+−]) /;

/** Signs have odd places; what stands between them keeps its spaces, which mathematics would drop. */
const words = (text: string): readonly ReactNode[] =>
  text
    .split(SIGNS)
    .map((word, at) =>
      createElement(at % 2 === 1 ? 'mo' : 'mtext', { key: `${at} ${word}` }, word.replaceAll(' ', NO_BREAK)),
    );

const row = (text: string) => createElement('mrow', {}, ...words(text));

/** A formula as it is written by hand, built up, and read out as mathematics. */
export function Formula({ left, over, under }: FormulaSaid) {
  const right = under === undefined ? row(over) : createElement('mfrac', {}, row(over), row(under));
  return createElement(
    'math',
    { className: 'formula', displaystyle: 'true' },
    createElement('mrow', {}, row(left), createElement('mo', {}, '='), right),
  );
}
