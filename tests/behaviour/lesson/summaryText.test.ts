/** Words and figures of the summary: those of the core, said as they are elsewhere. */
import { describe, expect, it } from 'vitest';
import { assess } from '../../../src/core/design/assess.ts';
import type { Assessment } from '../../../src/core/design/assessment.ts';
import type { Joint } from '../../../src/core/design/joint.ts';
import { demoPart } from '../../../src/store/demoPart.ts';
import { saidBrief } from '../../../src/ui/lesson/summary/saidBrief.ts';
import { drawingSays, profileLine, summaryFigures } from '../../../src/ui/text/summaryText.ts';
import { expectClose } from '../../support/close.ts';
import { DRIVEN } from '../../support/families.ts';
import { newJoint } from '../../../src/store/newJoint.ts';

function of(joint: Joint): Assessment {
  const answer = assess(joint);
  if (!answer.ok) throw new Error(answer.problems[0].message);
  return answer.value;
}

function flap(movement: Partial<Joint['movement']> = {}): Joint {
  const [joint] = demoPart().joints;
  if (!joint) throw new Error('the demonstration part is empty');
  return { ...joint, movement: { ...joint.movement, ...movement } };
}

const plain = (text: string) => text.replaceAll(/[\u00a0\u2009]/g, ' ');
const row = (a: Assessment, name: string) => {
  const found = summaryFigures(a, 'mm').find((one) => plain(one.name) === name);
  return found && { text: plain(found.text), mark: found.mark };
};

describe('the brief on paper', () => {
  it('is the sentence of the kind with its values in it', () => {
    expect(plain(saidBrief(flap(), 'mm'))).toBe(
      'Bends 35° one way, 5 000 times, in PETG, 6 mm deep, printed flat with 0.42 mm lines, 2 across, over a leaf 12.00 mm long.',
    );
    expect(plain(saidBrief(flap(), 'inch'))).toContain('over a leaf 0.4724 in long.');
  });

  it('is a sentence for every kind in every way it is moved, with no field left open', () => {
    for (const { kind, drive } of DRIVEN) {
      const said = saidBrief(newJoint(kind.family, 'x', undefined, drive), 'mm');
      expect(said, drive.id).toMatch(/^[A-Z].*\.$/);
      expect(said, drive.id).not.toMatch(/[{}]|undefined|NaN| {2}/);
    }
  });
});

describe('the table of figures', () => {
  const a = of(flap());

  it('says strain, life and effort as the core has them, with where they come from', () => {
    expect(row(a, 'Strain of the skin')).toEqual({
      text: `${(a.strain.peak * 100).toFixed(2)} %`,
      mark: a.provenance.strain,
    });
    expect(row(a, 'Thickness')).toEqual({ text: '0.84 = 2 × 0.42', mark: 'computed' });
    // E·b·t³/(12·L), by hand from the sizes of the demonstration part, times a degree.
    const perRadian = (a.effort.modulus * a.effort.widthRatio * 6 * 0.84 ** 3) / (12 * 12);
    expectClose(Number.parseFloat(row(a, 'Stiffness')?.text ?? ''), (perRadian * Math.PI) / 180, { printedTo: 2 });
    expect(row(a, 'Reach 5 000')?.text).toMatch(/^\d+ in 100; 95 wanted$/);
  });

  it('gives no life where nobody has counted so far, and none to what breaks at once', () => {
    const far = of(flap({ cycles: 5_000_000 }));
    expect(row(far, 'Life, half broken by')?.text).toBe('none given: counted to 1 000 000 only');
    expect(summaryFigures(far, 'mm').some(({ name }) => name.startsWith('Reach'))).toBe(false);
    const broken = { ...a, life: { ...a.life, breaksOnFirstFlex: true } };
    expect(row(broken, 'Life, half broken by')?.text).toBe('the first flex');
  });

  it('names the limit of what is held only where it is held', () => {
    expect(row(a, 'Held for long')).toBeUndefined();
    expect(row(of(flap({ held: true })), 'Held for long')?.text).toMatch(/^\d\.\d\d %$/);
  });

  it('has a figure in every row for every kind', () => {
    for (const { kind, drive } of DRIVEN) {
      for (const { name, text } of summaryFigures(of(newJoint(kind.family, 'x', undefined, drive)), 'mm')) {
        expect(text, `${kind.family.id}: ${name}`).not.toMatch(/NaN|undefined|Infinity|^$/);
      }
    }
  });
});

describe('what is said of drawings', () => {
  it('says why a drawing is not at true size', () => {
    expect(plain(drawingSays('along', '1 : 1', false))).toBe('Plan, as it lies on the plate, scale 1 : 1, true size.');
    expect(plain(drawingSays('along', '1 : 2', true))).toBe(
      'Plan, as it lies on the plate, scale 1 : 2, as 1 : 1 has no room on this page; dashed: moved as far as wanted.',
    );
  });

  it('says the print profile in one line, in the unit of the sheet', () => {
    expect(plain(profileLine(of(flap()), 'mm'))).toBe(
      '0.4 mm nozzle, lines 0.42 mm, layers 0.20 mm, first 0.20 mm; flat',
    );
    expect(plain(profileLine(of(flap()), 'inch'))).toContain('lines 0.0165 in');
  });
});
