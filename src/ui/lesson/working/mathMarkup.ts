/** Elements of MathML, which every browser and screen reader of today reads. React's types know only `math` of them. */
import { createElement, Fragment, type ReactNode } from 'react';
import type { WorkingUnit } from '../../../core/working/step.ts';
import { MINUS } from '../../text/numbers.ts';
import { UNIT_PARTS, writtenFigure } from '../../text/working/figures.ts';

export type Markup = ReactNode;

/** One element; children side by side. */
export function element(name: string, ...children: readonly Markup[]): Markup {
  return createElement(name, undefined, ...children);
}

/** What stands side by side as one. */
export function row(...children: readonly Markup[]): Markup {
  return createElement('mrow', undefined, ...children);
}

/** Letters upright, as they stand in the faces of the page. */
function letters(text: string): Markup {
  return createElement('mi', { mathvariant: 'normal' }, text);
}

export function sign(text: string): Markup {
  return createElement('mo', undefined, text);
}

export function number(text: string): Markup {
  return createElement('mn', undefined, text);
}

export function bracketed(inside: Markup): Markup {
  return row(sign('('), inside, sign(')'));
}

/** `ε_peak` with what follows the mark below the line. */
export function symbolMarkup(symbol: string): Markup {
  const [letter = '', below] = symbol.split('_', 2);
  return below === undefined ? letters(letter) : element('msub', letters(letter), letters(below));
}

function superscript(base: Markup, power: number): Markup {
  return element('msup', base, number(String(power).replace('-', MINUS)));
}

/** A figure with its unit. */
export function quantityMarkup(value: number, unit: WorkingUnit, places: number): Markup {
  const { digits, power } = writtenFigure(value, places);
  const figure =
    power === undefined ? number(digits) : row(number(digits), sign('×'), superscript(number('10'), power));
  const parts = UNIT_PARTS[unit].map(({ unit: name, power: raised }) =>
    raised === undefined ? letters(name) : superscript(letters(name), raised),
  );
  if (parts.length === 0) return figure;
  const space = unit === 'deg' ? null : createElement('mspace', { width: '0.2em' });
  const dotted = parts.map((part, at) => createElement(Fragment, { key: at }, at > 0 ? sign('·') : null, part));
  return row(figure, space, ...dotted);
}
