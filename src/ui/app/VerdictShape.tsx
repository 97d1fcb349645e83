import type { ReactElement } from 'react';
import type { Grade } from '../../core/design/assessment.ts';

/** Ring, triangle, barred square, broken diamond: told apart without colour, on a box of 12 by 12 about the origin. */
const SHAPES: Readonly<Record<Grade, ReactElement>> = {
  pass: <circle r="4.6" fill="none" stroke="currentColor" strokeWidth="2.2" />,
  caution: (
    <>
      <path d="M0-5.4 5.8 5H-5.8Z" fill="none" stroke="currentColor" strokeWidth="2" />
      <path d="M-3.2 2.1H3.2L4.4 4.2H-4.4Z" fill="currentColor" />
    </>
  ),
  fail: (
    <>
      <rect x="-5.4" y="-5.4" width="10.8" height="10.8" fill="currentColor" />
      <path d="M-3-3 3 3M3-3-3 3" stroke="var(--sheet)" strokeWidth="1.8" />
    </>
  ),
  beyond: (
    <path d="M0-5.6 5.6 0 0 5.6-5.6 0Z" fill="none" stroke="currentColor" strokeWidth="1.7" strokeDasharray="3 1.6" />
  ),
};

/** The shape that goes with the word of a verdict; decoration for the ear, since the word always stands beside it. */
export function VerdictShape({ grade }: { grade: Grade }) {
  return (
    <svg className="sh" viewBox="-6 -6 12 12" aria-hidden="true">
      {SHAPES[grade]}
    </svg>
  );
}
