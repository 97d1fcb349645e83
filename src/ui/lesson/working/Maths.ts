import { createElement } from 'react';
import type { Markup } from './mathMarkup.ts';

/** A piece of mathematics in a line of text, or on a line of its own. */
export function Maths({ of, isBlock = false }: { readonly of: Markup; readonly isBlock?: boolean }) {
  return createElement('math', { display: isBlock ? 'block' : 'inline' }, createElement('mrow', undefined, of));
}
