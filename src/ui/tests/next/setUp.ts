/** Puts a test that was proposed into the sentence. */
import type { Piece } from '../../../core/coupons/piece.ts';
import type { Candidate } from '../../../core/tallies/nextTest.ts';
import { bentAs, useTests, withDoing, type Doing, type TestValues } from '../../../store/tests.ts';
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

/** The strip that is gone on with, with what the sentence says of it beside its bend. */
function goneOn(from: string | undefined, { spool }: Trial, piece: Piece | undefined): Partial<TestValues> {
  const tally = spool?.own.tests.tallies.filter(isFlexes).find(({ id }) => id === from);
  if (!tally) return { counting: undefined };
  const { id, cycles, ways, lying, thickness } = tally;
  const off = (strip: { readonly thickness: number }) => Math.abs(strip.thickness - thickness);
  const fold = piece?.id === 'creases' ? piece.strips.toSorted((one, other) => off(one) - off(other))[0] : undefined;
  return {
    counting: { cycles, from: id },
    ways,
    // A fold is of layers whatever the others are, and is told by how many.
    ...(piece?.id === 'creases' ? fold && { count: fold.count } : { lying }),
  };
}

export function setUp(candidate: Candidate, trial: Trial, pieces: readonly Piece[]): void {
  const { what, piece: wanted, bend, strips, from } = candidate;
  const { set, values } = useTests.getState();
  const piece = pieces.find(({ id }) => id === wanted);
  set({
    ...withDoing({ piece: wanted }, DOING[what]),
    ...asOnPiece(piece, values),
    ...(bend && bentAs(bend)),
    ...(strips !== undefined && { strips }),
    ...goneOn(from, trial, piece),
  });
  document.querySelector('.brief .v input')?.scrollIntoView({ block: 'center' });
}
