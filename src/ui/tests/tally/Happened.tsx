import type { ReactElement } from 'react';

type What = 'broke' | 'whole' | 'counting';

/** A split line, an arrow that goes on, a dashed ring: told apart without colour. */
const SHAPES: Readonly<Record<What, ReactElement>> = {
  broke: <path d="M0 6H5M10 6H15M4 2 6.4 10M8.8 2 11.2 10" />,
  whole: <path d="M0 6H14M10 2.5 14.2 6 10 9.5" />,
  counting: <circle cx="7" cy="6" r="4.6" strokeDasharray="3 1.9" />,
};

/** What happened to a strip, beside its word. */
export function Happened({ what }: { readonly what: What }) {
  return (
    <svg className="happened" viewBox="0 0 15 12" aria-hidden="true">
      {SHAPES[what]}
    </svg>
  );
}
