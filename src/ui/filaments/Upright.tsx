import { pct } from './axes.ts';

interface Props {
  /** Share of the width at which it stands. */
  readonly at: number;
  readonly className: string;
  /** From top to bottom [px]. */
  readonly y: readonly [top: number, bottom: number];
}

/** An upright line at a place of an axis. */
export function Upright({ at, className, y: [y1, y2] }: Props) {
  const x = pct(at);
  return <line {...{ className, y1, y2 }} x1={x} x2={x} />;
}
