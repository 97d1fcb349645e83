/** What is said of kinds other than a leaf and a crease: the brief as it reads, wishes, verdict, drawing and print notes. */
import { describe, expect, it } from 'vitest';
import { assess } from '../../../src/core/design/assess.ts';
import type { Assessment } from '../../../src/core/design/assessment.ts';
import { bySolver } from '../../../src/core/design/bySolver.ts';
import type { Joint } from '../../../src/core/design/joint.ts';
import { FAMILIES } from '../../../src/core/flexures/index.ts';
import { familyOf } from '../../../src/core/flexures/known.ts';
import { radians } from '../../../src/core/units.ts';
import { newJoint } from '../../../src/store/newJoint.ts';
import { briefParts, type BriefPart } from '../../../src/ui/joints/briefSpecs.ts';
import { kindText } from '../../../src/ui/text/kindText.ts';
import type { LengthUnit } from '../../../src/ui/text/numbers.ts';
import { printNotes } from '../../../src/ui/text/printNotesText.ts';
import { plainly } from '../../../src/ui/text/said.ts';
import { sourceRows } from '../../../src/ui/text/sourceText.ts';
import { sizesToDraw, travelToDraw } from '../../../src/ui/text/toDrawText.ts';
import { verdictHeading, verdictSentences } from '../../../src/ui/text/verdictText.ts';
import { changed } from '../../support/joints.ts';

const plain = (text: string) => text.replaceAll(/[\u00a0\u2009]/g, ' ');
const kind = (family: string) => newJoint(familyOf({ family }), 'New');

function spoken(part: BriefPart): string {
  if (part.is === 'text') return part.text;
  const { spec, stop } = part;
  if (part.is === 'value') return `${part.spec.figure}${part.spec.suffix}${stop}`;
  return `${part.spec.options.find(({ value }) => value === spec.value)?.text}${stop}`;
}

function parts(joint: Joint, unit: LengthUnit = 'mm', put: (next: Joint, said: string) => void = () => undefined) {
  const { brief, details } = kindText(joint.family);
  const of = {
    joint,
    family: familyOf(joint),
    unit,
    put: (next: Joint, said: string) => {
      put(next, said);
      return undefined;
    },
  };
  return { brief: briefParts(brief, of), details: briefParts(details(joint.movement.drive, joint.sizes), of) };
}

const read = (all: readonly BriefPart[]) => plain(all.map(spoken).join(''));

function solved(joint: Joint): Assessment {
  const result = assess(joint, bySolver());
  if (!result.ok) throw new Error(result.problems[0].message);
  return result.value;
}

const verdict = (a: Assessment) => verdictSentences(a, 'mm').map((said) => plain(plainly(said)));

const drawn = (family: string) => {
  const a = solved(kind(family));
  return new Map([...sizesToDraw(a, 'mm'), ...travelToDraw(a, 'mm')].map(({ label, shown }) => [label, plain(shown)]));
};

const notesOf = (family: string, sizes = {}) =>
  printNotes(solved(changed(kind(family), { sizes })), 'mm')
    .map(plain)
    .join(' ');

const says = (a: Assessment) => sourceRows(a)[0]?.says;

describe('the brief of every kind', () => {
  it('of an arch, with a push that is wished for, reads as one sentence', () => {
    const arch = changed(kind('snapArch'), { sizes: { span: 30 }, movement: { effortAtMost: 20, cycles: 5000 } });
    expect(read(parts(arch).brief)).toBe(
      'Under a push of at most 20 N it snaps through by 5 mm and stays there, 5 000 times, in PETG, 6 mm deep, printed flat with 0.42 mm lines, 2 across, as a double arch 30.00 mm long and 3.00 mm high, 1 side by side.',
    );
  });

  it('of a spiral, held for long', () => {
    const spiral = changed(kind('spiral'), { movement: { ways: 'both ways', cycles: 20_000, held: true } });
    expect(read(parts(spiral).brief)).toBe(
      'Turns on a pin 35° both ways, 20 000 times and held bent, in PETG, 6 mm deep, printed flat with 0.42 mm lines, 2 across, on 3 arms of 1.25 turns from a hub of 6.00 mm to a ring of 23.00 mm.',
    );
    expect(read(parts(changed(spiral, { sizes: { arms: 1, turns: 1 } })).brief)).toContain('on 1 arm of 1 turn from');
  });

  it('of crossed leaves, shares in per cent and angles in degrees, and inches where they are chosen', () => {
    expect(read(parts(kind('crossedLeaves')).brief)).toContain('that cross in two planes at 50 % and 90°.');
    expect(read(parts(kind('crossedLeaves'), 'inch').brief)).toContain('on leaves 0.6299 in long and 0.1181 in deep');
  });

  it('of a panel, with the radius it comes to', () => {
    expect(read(parts(kind('cellPanel')).brief)).toContain(
      'Wraps 180° one way round a radius of 30.6 mm, 1 000 times, in PETG, 40 mm wide, printed on its edge',
    );
    expect(read(parts(kind('slitPanel')).brief)).toContain('printed flat on the plate in 6 layers of 0.20 mm');
  });
});

const taken = (joint: Joint, key: string, value: string) => {
  const puts: { next: Joint; said: string }[] = [];
  const { brief, details } = parts(joint, 'mm', (next, said) => puts.push({ next, said }));
  const choice = [...brief, ...details].find((part) => part.is === 'choice' && part.spec.key === key);
  if (choice?.is !== 'choice') throw new Error(`no choice of ${key}`);
  choice.spec.take(value);
  const [put] = puts;
  if (!put) throw new Error('nothing was put');
  return { ...put, said: plain(put.said) };
};

describe('wishes', () => {
  const arch = kind('snapArch');
  it('for the effort begins with what it takes now, is in the unit of the drive, and is taken out again', () => {
    const leaf = kind('straightLeaf');
    const wished = taken(leaf, 'effort', 'most');
    // 24.3 N·mm by hand, rounded up to two figures.
    expect(wished.next.movement.effortAtMost).toBe(25);
    expect(wished.said).toBe('Effort at most 25.0 N·mm, was of any size');
    expect(read(parts(wished.next).details)).toContain('it may push back with at most 25 N·mm.');
    expect(taken(wished.next, 'effort', 'any').next.movement).toEqual(leaf.movement);
  });

  it('for a second rest may be either way or none', () => {
    expect(taken(arch, 'stays', 'back').next.movement.stays).toBe(false);
    expect(taken(arch, 'stays', 'back').said).toBe('Now it comes back, was: stays there');
    expect('stays' in taken(arch, 'stays', 'either').next.movement).toBe(false);
  });

  it('of a size that is chosen in words changes that size', () => {
    const single = taken(arch, 'sizes.arches', '1');
    expect(single.next.sizes['arches']).toBe(1);
    expect(single.said).toBe('Made a single arch, was a double arch');
    expect(taken(kind('crossedLeaves'), 'sizes.fused', '1').said).toBe(
      'Made in one plane, grown together, was in two planes',
    );
  });
});

describe('the verdict of what the solver has answered', () => {
  it('of an arch names the way, the push, the second rest and what brings it back', () => {
    const a = solved(changed(kind('snapArch'), { movement: { effortAtMost: 8, cycles: 10 } }));
    expect(verdictHeading(a)).toBe('Fail: it pushes back too hard');
    const said = verdict(a);
    expect(said[0]).toMatch(/^It takes up to 11\.\d N, over your 8\.00 N\.$/);
    expect(said[1]).toMatch(/^On the way to 5 mm the skin of the arch strains [\d.]+ %/);
    // Within a fifth of the 4.19 N of an arch that nothing strains past yield.
    const back = /^It comes to rest at 5\.6\d mm, and (\d\.\d\d) N bring it back from there\.$/.exec(said[2] ?? '');
    expect(Math.abs(Number(back?.[1]) / 4.19 - 1)).toBeLessThan(0.2);
  });

  it('of one that its filament does not keep says so', () => {
    const tpu = changed(kind('snapArch'), { movement: { cycles: 10 }, profile: { filament: 'tpu95a' } });
    const a = solved(tpu);
    expect(verdictHeading(a)).toBe('Caution: it may come back by itself');
    expect(verdict(a)[0]).toContain('TPU 95A sags out of it in time (common practice).');
  });

  it('of one too flat for its thickness says that nothing keeps it there', () => {
    const a = solved(changed(kind('snapArch'), { sizes: { rise: 1 }, movement: { amount: 1.5, cycles: 10 } }));
    expect(verdictHeading(a)).toBe('Fail: it comes back by itself');
    expect(verdict(a)[0]).toBe('It has no second rest on the way, so it comes back by itself; it should stay.');
  });

  it('of a spiral says how near it comes to itself', () => {
    const said = verdict(solved(kind('spiral')));
    expect(said[0]).toContain('the skin of the arm strains');
    expect(said[1]).toMatch(/^At 35° it comes within 0\.\d\d mm of itself\.$/);
  });
});

describe('drawing and printing', () => {
  it('what follows from the sizes stands beside them', () => {
    // The length of a spiral arm in polar co-ordinates: 57.66 in the look’s worked example.
    expect(drawn('spiral').get('Length of each arm')).toBe('57.66');
    expect(drawn('snapArch').get('Single or double')).toBe('a double arch');
    expect(drawn('snapArch').get('Second rest, by itself')).toMatch(/^5\.6\d$/);
    expect(drawn('toggle').get('Spring leaf, thick')).toBe('2.52');
    expect(drawn('crossedLeaves').get('Angle between the leaves')).toBe('90°');
    expect(drawn('crossedLeaves').get('Crossing, share of the length')).toBe('50 %');
  });

  it.each(FAMILIES.map(({ id }) => [id] as const))(
    'of a %s no two rows have one label, and no two notes are alike',
    (id) => {
      const result = assess(kind(id));
      if (!result.ok) throw new Error(result.problems[0].message);
      const labels = [...sizesToDraw(result.value, 'mm'), ...travelToDraw(result.value, 'mm')].map(
        ({ label }) => label,
      );
      expect(new Set(labels).size).toBe(labels.length);
      const notes = printNotes(result.value, 'mm');
      expect(new Set(notes).size).toBe(notes.length);
      for (const note of notes) expect(note).toMatch(/^\p{Lu}.*\.$/u);
      expect(notes.join(' ')).toContain(kindText(id).starts);
    },
  );

  it('start points, bridges, frames and eyes are named where they matter', () => {
    expect(notesOf('spiral')).toContain('Start points on the ring or hub, never on an arm.');
    expect(notesOf('crossedLeaves')).toContain('leave two layers open between the planes, 0.40 mm.');
    expect(notesOf('crossedLeaves')).toContain('The upper leaf bridges');
    expect(notesOf('crossedLeaves', { fused: 1 })).not.toContain('bridges');
    expect(notesOf('snapArch')).toContain('Print the frame round it in one piece');
    expect(notesOf('snapArch')).toContain('fingers clear');
  });

  it('the source of the strain is the solver’s, a form that is exact, or a form that estimates', () => {
    expect(says(solved(kind('spiral')))).toContain('by exact curves');
    expect(says(solved(kind('cellPanel')))).toContain('by an exact hand form');
    const estimate = assess(kind('spiral'));
    expect(estimate.ok && says(estimate.value)).toContain('by a hand form');
  });

  it('a turn of both ways is set against itself the other way', () => {
    const both = solved(changed(kind('spiral'), { movement: { ways: 'both ways', amount: radians(50) } }));
    expect(verdict(both).join(' ')).toMatch(/At −?\d+° it (comes within|touches)/);
  });
});
