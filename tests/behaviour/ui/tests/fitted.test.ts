/** The sentence of a trial takes over what its piece has, and what tests other than counts moved is said. */
import { describe, expect, it } from 'vitest';
import { withOnShelf } from '../../../../src/core/material/shelf.ts';
import type { Tally } from '../../../../src/core/material/tally.ts';
import { learnRow, newTests, withTally } from '../../../../src/core/tallies/learnRow.ts';
import { strainOfBend } from '../../../../src/core/tallies/strainOfBend.ts';
import { bendOf, FIRST_TESTS, withPiece } from '../../../../src/store/tests.ts';
import { asOnPiece, bentLike } from '../../../../src/ui/tests/fitted.ts';
import { taughtElse } from '../../../../src/ui/text/testsVerdictText.ts';
import { expectClose } from '../../../support/close.ts';
import { ASKED, made } from '../../../support/coupons.ts';
import { filament } from '../../../support/filament.ts';
import { assessed, LEAF } from '../../../support/joints.ts';

const PIECES = (['ladder', 'comb', 'radii', 'bar', 'hold', 'creases'] as const).map((id) => made(id));
const piece = (id: string) => PIECES.find((one) => one.id === id)!;

describe('what a trial takes over from its piece', () => {
  it('is the weight of a bar and where it hangs', () => {
    const { arm, grams } = piece('bar');
    expect(asOnPiece(piece('bar'), FIRST_TESTS)).toEqual({ arm, grams });
  });

  it('is a strip of the comb that strains as the piece says', () => {
    for (const strip of piece('comb').strips) {
      const values = { ...FIRST_TESTS, turn: ASKED.turn, length: strip.length + 0.1 };
      const bend = bendOf({ ...values, ...asOnPiece(piece('comb'), values) });
      expect(bend).toEqual({ way: 'to', turn: ASKED.turn, length: strip.length });
      expectClose(strainOfBend(bend, strip.thickness), strip.strain ?? 0, {
        rel: 1e-9,
        because: 'both are t·θ/(2L)',
      });
    }
  });

  it('is the fold of as many layers, with its own length', () => {
    for (const { count, length } of piece('creases').strips)
      expect(asOnPiece(piece('creases'), { ...FIRST_TESTS, count })).toEqual({ way: 'to', count, length });
    expect(asOnPiece(piece('creases'), { ...FIRST_TESTS, count: 8 })).toMatchObject({ count: 6 });
  });

  it('is the nearest round corner, and the slot of the hold piece', () => {
    expect(asOnPiece(piece('radii'), { ...FIRST_TESTS, way: 'to', radius: 5.4 })).toEqual({ way: 'over', radius: 5 });
    // To a tenth of a millimetre, as the radius is told beside the piece.
    expect(asOnPiece(piece('hold'), FIRST_TESTS)).toEqual({ radius: 19.6, held: piece('hold').slotTurn });
  });

  it('is another piece when strips are bent another way', () => {
    const first = { ...FIRST_TESTS, ...withPiece(FIRST_TESTS, 'radii') };
    const turned = bentLike('to', first, PIECES);
    expect(turned).toMatchObject({ piece: 'comb', way: 'to' });
    expect(bentLike('over', { ...first, ...turned }, PIECES)).toEqual({ piece: 'radii', way: 'over', radius: 5 });
    expect(bentLike('to', { ...first, piece: 'creases' }, PIECES)).toMatchObject({ piece: 'creases', way: 'to' });
    // On a plate that holds no comb only the way changes.
    expect(bentLike('to', first, [])).toEqual({ way: 'to' });
  });
});

describe('what was measured and not counted', () => {
  const petg = filament('petg');
  const joint = { ...LEAF, name: 'Rain-flap hinge' };
  const by = (tally: Tally) => {
    const { row } = learnRow(withTally(newTests(petg, 'PETG, mine', 'own-mine', '', 'mine'), tally), petg);
    const tested = { ...joint, profile: { ...joint.profile, filament: row.id } };
    const after = withOnShelf([row], () => assessed(tested));
    return taughtElse(assessed(joint), after)
      .map((said) => (typeof said === 'string' ? said : said.figure))
      .join('');
  };
  const common = { id: 'a', date: '2026-11-25', seen: '' } as const;

  it('says which figures moved, and what they were', () => {
    const said = by({ ...common, kind: 'pull', direction: 'along lines', strength: 44, modulus: 2600 });
    expect(said).toMatch(
      /already moves your rain-flap hinge: [\d.]+\u00a0N·mm \([\d.]+ to [\d.]+\), not [\d.]+\u00a0N·mm\.$/,
    );
  });

  it('says that nothing moved', () => {
    expect(by({ ...common, kind: 'pull', direction: 'along lines', strength: 44 })).toBe(
      'No strip is counted yet, and what was measured leaves your rain-flap hinge as it was. Counts would tell more.',
    );
  });
});
