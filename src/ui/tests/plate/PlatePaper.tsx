import { useId, useMemo } from 'react';
import type { PieceId, Plate, PlateSize } from '../../../core/coupons/piece.ts';
import type { Box } from '../../drawing/lettering.ts';
import { PIECE_WORDS, pieceSpoken } from '../../text/pieceText.ts';
import { PieceShape } from './PieceShape.tsx';
import { platePlan } from './platePlan.ts';

const placedAt = ({ x, y, width, height }: Box) => ({ left: x, top: y, width, height });

interface Props {
  readonly plate: Plate;
  readonly size: PlateSize;
  readonly pxPerMm: number;
  /** Number on the first balloon of this plate. */
  readonly first: number;
  /** Of the radio group that runs through all plates. */
  readonly group: string;
  readonly chosen: PieceId | undefined;
  readonly corner?: number | undefined;
  readonly onChoose: (id: PieceId) => void;
}

/** One plate, life size, from above: drawn underneath, with a radio button over every piece and its name beside it. */
export function PlatePaper({ plate, size, pxPerMm, first, group, chosen, corner, onChoose }: Props) {
  const plan = useMemo(() => platePlan(plate, size, pxPerMm), [plate, size, pxPerMm]);
  const id = useId();
  const { width, height, grid } = plan;
  return (
    <div className="plate-scroll">
      <div className="plate-paper" style={{ width, height }}>
        <svg width={width} height={height} viewBox={`0 0 ${width} ${height}`} aria-hidden="true">
          <path className="G" d={grid.fine} />
          <path className="G5" d={grid.heavy} />
          <path className="I" d={grid.bars} />
          <path className="L" d={grid.frame} />
          {plan.pieces.map(({ placed: { piece }, paper }) => (
            <g key={piece.id} className={`test-piece${piece.id === chosen ? ' on' : ''}`}>
              <PieceShape piece={piece} paper={paper} corner={corner} />
            </g>
          ))}
        </svg>
        {plan.pieces.map(({ placed: { piece }, box, label }, at) => (
          <div key={piece.id} className={piece.id === chosen ? 'on' : undefined}>
            <input
              type="radio"
              id={`${id}${piece.id}`}
              name={group}
              style={placedAt(box)}
              aria-label={pieceSpoken(piece, first + at)}
              checked={piece.id === chosen}
              onChange={() => onChoose(piece.id)}
            />
            <label htmlFor={`${id}${piece.id}`} style={placedAt(label)}>
              <b>{first + at}</b>
              <span>{PIECE_WORDS[piece.id].name}</span>
            </label>
          </div>
        ))}
      </div>
    </div>
  );
}
