import { memo } from 'react';
import { pictogramOf } from './pictograms.ts';

interface Props {
  /** Id of a family. */
  readonly family: string;
}

/** The sign of a kind of flexure, in the colour of the text around it; its name stands beside it. */
export const Pictogram = memo(function Pictogram({ family }: Props) {
  const { solid, bends, second } = pictogramOf(family);
  return (
    <svg
      viewBox="0 0 108 72"
      width={108}
      height={72}
      fill="none"
      stroke="currentColor"
      strokeWidth={3}
      aria-hidden="true"
    >
      <path d={solid} fill="currentColor" fillRule="evenodd" stroke="none" />
      {second !== undefined && <path d={second} strokeWidth={1.5} strokeDasharray="5 4" />}
      {bends !== '' && <path d={bends} strokeLinejoin="round" />}
    </svg>
  );
});
