import { useState } from 'react';
import type { Piece, PiecesAsked, PlateSize } from '../../../core/coupons/piece.ts';
import { wholeRow } from '../../../core/material/wholeRow.ts';
import { useChoices } from '../../../store/choices.ts';
import { SaidText } from '../../joints/SaidText.tsx';
import { PIECE_FILES, pieceSaid } from '../../text/pieceSaysText.ts';
import { PIECE_WORDS } from '../../text/pieceText.ts';
import './pieceSays.css';
import { pageAddress } from './route.ts';
import { savePiece, savePlates } from './saveFiles.ts';

export interface PieceSaysProps {
  readonly piece: Piece;
  readonly asked: PiecesAsked;
  /** All that stand on the plate with it. */
  readonly pieces: readonly Piece[];
  readonly plate: PlateSize;
  /** Number of the round corner that is in use. */
  readonly corner?: number | undefined;
}

/** What the chosen piece is for, what it strains and weighs, and the way to its files and its page. */
export function PieceSays({ piece, asked, pieces, plate, corner }: PieceSaysProps) {
  const [trouble, setTrouble] = useState('');
  const unit = useChoices((state) => state.unit);
  const { name } = asked.filament;
  const density = wholeRow(asked.filament).properties.density;
  const inUse = piece.corners.find(({ number }) => number === corner);
  const saving = (save: () => Promise<string>) => () => void save().then(setTrouble);
  return (
    <section className="piece-says" aria-label={PIECE_WORDS[piece.id].name}>
      <p className="says">
        <b>{PIECE_WORDS[piece.id].name}.</b> <SaidText said={pieceSaid(piece, asked, density, unit, inUse)} />
      </p>
      <fieldset className="files">
        <legend className="vh">{PIECE_FILES.label}</legend>
        <button type="button" className="b" onClick={saving(() => savePiece(piece, '3mf', name))}>
          {PIECE_FILES.threemf}
        </button>
        <button type="button" className="b" onClick={saving(() => savePiece(piece, 'stl', name))}>
          {PIECE_FILES.stl}
        </button>
        <button type="button" className="b" onClick={saving(() => savePlates(pieces, plate, name))}>
          {PIECE_FILES.plate}
        </button>
        <a className="b" href={pageAddress(piece.id)}>
          {PIECE_FILES.page}
        </a>
      </fieldset>
      <p className="refusal" role="alert" hidden={trouble === ''}>
        {trouble}
      </p>
    </section>
  );
}
