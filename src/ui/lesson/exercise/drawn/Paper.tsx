import type { ReactNode } from 'react';

interface Props {
  /** Size [mm], on screen and on paper. */
  readonly wide: number;
  readonly high: number;
  readonly label: string;
  /** Where the drawing has its left edge and its top [mm]. */
  readonly left?: number;
  readonly top?: number;
  readonly children: ReactNode;
}

/** A drawing whose unit is the millimetre of the page, so that a ruler can be laid on it. */
export function Paper({ wide, high, label, left = 0, top = 0, children }: Props) {
  return (
    <svg
      width={`${wide}mm`}
      height={`${high}mm`}
      viewBox={`${left} ${top} ${wide} ${high}`}
      role="img"
      aria-label={label}
    >
      {children}
    </svg>
  );
}
