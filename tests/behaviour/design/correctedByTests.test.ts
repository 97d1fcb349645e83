/** A joint in a filament that tests have corrected: as thick as a ladder says, and in the doubt that counted strips leave. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Joint } from '../../../src/core/design/joint.ts';
import { doubtOf } from '../../../src/core/design/doubt.ts';
import { putOnShelf } from '../../../src/core/material/shelf.ts';
import { doubtSigma } from '../../../src/core/life/scatter.ts';
import { curveDoubt } from '../../../src/ui/text/curveDoubtText.ts';
import { sourceRows } from '../../../src/ui/text/sourceText.ts';
import { chanceText } from '../../../src/ui/text/verdictText.ts';
import { USUAL_SPREAD } from '../../../src/core/print/spread.ts';
import { expectClose } from '../../support/close.ts';
import { assessed, changed, CREASE, LEAF } from '../../support/joints.ts';
import { measuredPetg } from '../../support/ownFilaments.ts';

const ROUND_OFF = { rel: 1e-12, because: 'round-off' };
const ROW = measuredPetg();
const PRINTED = changed(LEAF, { profile: { filament: ROW.id } });

function thicknessShare(joint: Joint) {
  const told = doubtOf(joint, { spread: USUAL_SPREAD, samples: 512, how: 'quasi-random', seed: 1 });
  if (!told.ok) throw new Error(told.problems[0].message);
  return told.value.causes.find(({ cause }) => cause === 'thickness');
}

beforeAll(() => putOnShelf([ROW]));
afterAll(() => putOnShelf([]));

describe('thickness by a ladder', () => {
  it('is offset and factor on what the lines are set to, and strain follows it', () => {
    const [nominal, laid] = [assessed(LEAF), assessed(PRINTED)];
    expectClose(laid.section.thickness, 0.03 + 1.04 * nominal.section.thickness, ROUND_OFF);
    const because = 'strain of a bent leaf goes with its thickness; the fillet factor hardly changes';
    const ratio = laid.section.thickness / nominal.section.thickness;
    expectClose(laid.strain.nominal / nominal.strain.nominal, ratio, { rel: 1e-9, because });
    expect(laid.section.count).toBe(nominal.section.count);
  });

  it('of layers by the ladder of layers', () => {
    const [nominal, laid] = ['petg', ROW.id].map((filament) => assessed(changed(CREASE, { profile: { filament } })));
    expectClose(laid!.section.thickness, -0.02 + 0.97 * nominal!.section.thickness, ROUND_OFF);
  });

  it('gives way to calipers on the part itself', () => {
    expect(assessed({ ...PRINTED, measuredThickness: 0.8 }).section.thickness).toBe(0.8);
  });

  it('is as doubtful as the ladder leaves it', () => {
    const [usual, laid] = [LEAF, PRINTED].map((joint) => thicknessShare(joint));
    expect([usual?.provenance, laid?.provenance]).toEqual(['memory', 'measured']);
    // 4 % nine times in ten are a standard deviation of 0.0204 mm of 0.84, and the ladder leaves 0.012 of 0.90; the doubt of
    // the curve, which shares are of, is less as well.
    expect(laid!.life * (0.36 + 0.1 + 0.01)).toBeLessThan(usual!.life * (0.36 + 0.37 + 0.02));
  });
});

describe('a curve that strips have been counted for', () => {
  it('spreads by what is left of the doubt at the life that it foretells', () => {
    const { life } = assessed(PRINTED);
    const away = 0.15 * Math.log10(life.median / 1000);
    const sigma = Math.hypot(0.6, doubtSigma(2), away);
    const because = '1.2816 is printed to four places';
    expectClose(Math.log10(life.total.p90 / life.total.p50), 1.2816 * sigma, { rel: 1e-4, because });
  });

  it('says by whose tests, under the verdict and where numbers come from', () => {
    expect(chanceText(assessed(PRINTED))).toContain('by your tests of PETG, spool 3; 90 are wanted.');
    expect(chanceText(assessed(LEAF))).not.toContain('tests');
    const rows = JSON.stringify(sourceRows(assessed(PRINTED)));
    expect(rows).toContain(curveDoubt(ROW.life));
    expect(curveDoubt(ROW.life)).toMatch(
      /^2 about 1.000 cycles, where your tests tell most, and of [\d.]+ a hundred times/,
    );
  });
});
