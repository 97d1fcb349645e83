import { useId, useMemo } from 'react';
import { layOut } from '../../../core/coupons/layOut.ts';
import type { Piece, PieceId, PlateSize } from '../../../core/coupons/piece.ts';
import { usePxPerMm } from '../../drawing/usePxPerMm.ts';
import { PLATE } from '../../text/pieceText.ts';
import { problemText } from '../../text/problemText.ts';
import './plate.css';
import { PlatePaper } from './PlatePaper.tsx';

interface Props {
  readonly pieces: readonly Piece[];
  readonly plate: PlateSize;
  readonly chosen: PieceId | undefined;
  readonly onChoose: (id: PieceId) => void;
  /** Number of the round corner that is in use. */
  readonly corner?: number | undefined;
  /** “Fig. 1”. */
  readonly figure?: string;
}

/** The test pieces as they stand on the plate, life size; on several plates where one does not hold them. */
export function PlateFigure({ pieces, plate, chosen, onChoose, corner, figure = 'Fig. 1' }: Props) {
  const laid = useMemo(() => layOut(pieces, plate), [pieces, plate]);
  const [pxPerMm] = usePxPerMm();
  const group = useId();
  if (!laid.ok)
    return (
      <p className="refusal" role="alert">
        {laid.problems.map((problem) => problemText(problem, 'mm')).join(' ')}
      </p>
    );
  const plates = laid.value;
  return (
    <fieldset className="plates">
      <legend className="vh">{PLATE.label}</legend>
      <div className="cap">
        <span>
          <b>{figure}</b> {PLATE.caption(pieces.length, plates.length)}, scale <b>1 : 1</b>, {PLATE.scale}
        </span>
        <span>{PLATE.aside}</span>
      </div>
      {plates.map((each, at) => (
        <figure key={each.map(({ piece }) => piece.id).join(' ')}>
          <PlatePaper
            {...{ plate: each, size: plate, pxPerMm, group, chosen, corner, onChoose }}
            first={1 + plates.slice(0, at).reduce((sum, { length }) => sum + length, 0)}
          />
          <figcaption className="cap">{PLATE.plate(at + 1, plates.length, plate.x, plate.y)}</figcaption>
        </figure>
      ))}
    </fieldset>
  );
}
