import type { Piece, PieceId } from '../../core/coupons/piece.ts';
import { useTests, withPiece, type TestValues } from '../../store/tests.ts';
import { VerdictShape } from '../app/VerdictShape.tsx';
import { asOnPiece } from './fitted.ts';
import type { LengthUnit } from '../text/numbers.ts';
import { pieceNotesText, unfitText } from '../text/plateText.ts';
import { problemText } from '../text/problemText.ts';
import { PieceSays } from './pages/PieceSays.tsx';
import { TESTS } from '../text/testsText.ts';
import type { Made } from './pieces.ts';
import { PlateFigure } from './plate/PlateFigure.tsx';
import type { Trial } from './trial.ts';

interface Props {
  readonly trial: Trial;
  readonly made: Made;
  readonly unit: LengthUnit;
}

function choose(id: PieceId, pieces: readonly Piece[], values: TestValues): void {
  const piece = pieces.find((one) => one.id === id);
  useTests.getState().set({ ...withPiece(values, id), ...asOnPiece(piece, values) });
}

/** Fig. 3: the pieces on the plate, and what the chosen one is for. */
export function Plate({ trial: { values }, made, unit }: Props) {
  const { pieces, unfit, chosen, notes, asked, corner, problems } = made;
  const [problem] = problems;
  return (
    <section className="plate-of-tests" id="test-pieces" aria-label={TESTS.pieces}>
      {problem && (
        <p className="refusal" role="alert">
          {problemText(problem, unit)}
        </p>
      )}
      {pieces.length > 0 && (
        <PlateFigure
          {...{ pieces, corner }}
          figure="Fig. 3"
          plate={values.plate}
          chosen={values.piece}
          onChoose={(id) => choose(id, pieces, values)}
        />
      )}
      {unfit.map((piece) => (
        <p key={piece.id} className="refusal" role="alert">
          <VerdictShape grade="fail" />
          {unfitText(piece)}
        </p>
      ))}
      {chosen && <PieceSays {...{ asked, pieces, corner }} piece={chosen} plate={values.plate} />}
      {notes.length > 0 && (
        <p className="caution-line">
          <span className="caution">
            <VerdictShape grade="caution" />
          </span>
          <span>{pieceNotesText(notes)}</span>
        </p>
      )}
    </section>
  );
}
