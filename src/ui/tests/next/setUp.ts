/** Puts a test that was proposed into the sentence. */
import type { Piece } from '../../../core/coupons/piece.ts';
import type { Candidate } from '../../../core/tallies/nextTest.ts';
import { bentAs, useTests, withDoing, type Doing } from '../../../store/tests.ts';
import { asOnPiece } from '../fitted.ts';
import { isFlexes } from '../tally/counting.ts';
import type { Trial } from '../trial.ts';

const DOING: Readonly<Record<Candidate['what'], Doing>> = {
  flexes: 'flexes',
  goOn: 'flexes',
  thickness: 'thickness',
  mark: 'mark',
  sag: 'sag',
  hold: 'hold',
};

export function setUp({ what, piece, bend, strips }: Candidate, { spool }: Trial, pieces: readonly Piece[]): void {
  const { set, values } = useTests.getState();
  const whole = spool?.own.tests.tallies.filter(isFlexes).find(({ ended, leftOut }) => ended === 'whole' && !leftOut);
  set({
    ...withDoing({ piece }, DOING[what]),
    ...asOnPiece(
      pieces.find(({ id }) => id === piece),
      values,
    ),
    ...(bend && bentAs(bend)),
    ...(strips !== undefined && { strips }),
    // The first of those still whole is taken up again where it stands.
    counting: what === 'goOn' && whole ? { cycles: whole.cycles, from: whole.id } : undefined,
  });
  document.querySelector('.brief .v input')?.scrollIntoView({ block: 'center' });
}
