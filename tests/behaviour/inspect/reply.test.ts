import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { UnitRead } from '../../../src/core/inspect/checkedPart.ts';
import type { Flexure } from '../../../src/core/inspect/flexure.ts';
import { judgeAll } from '../../../src/core/inspect/judge.ts';
import type { PrintedAs } from '../../../src/core/inspect/judged.ts';
import { redrawn } from '../../../src/core/inspect/redraw.ts';
import { replyFor, type Reply, type ReplyItem } from '../../../src/core/inspect/reply.ts';
import { isLasting, isWhole } from '../../../src/core/inspect/verdicts.ts';
import { radians } from '../../../src/core/units.ts';
import { plainLetter } from '../../../src/ui/text/letterText.ts';
import { replySaid } from '../../../src/ui/text/replyText.ts';
import {
  anyFlexures,
  AS_DROPPED,
  ASKED,
  BOX,
  creaseOf,
  straight,
  THREE_LEAVES,
  THREE_LEAVES_BOX,
  THREE_LEAVES_FILE,
} from '../../support/flexures.ts';

const IN_MM: UnitRead = { unit: 'millimetre', by: 'sized', orElse: ['inch'] };
const reply = (flexures: readonly Flexure[], as: PrintedAs = AS_DROPPED, asked = ASKED): Reply =>
  replyFor({ fileName: 'part.stl', box: BOX, unit: IN_MM, flexures }, as, asked);

/** The section of an item drawn anew by the figures that are told, judged anew. */
function putBack({ judged, advice }: ReplyItem, as: PrintedAs, asked = ASKED) {
  if (advice.kind !== 'make') throw new Error('nothing is asked for');
  return judgeAll([redrawn(judged.flexure, advice.make.drawn)], BOX, as, asked, 'part.stl')[0]!;
}

describe('the reply about the three leaves of the look notes', () => {
  const part = { fileName: THREE_LEAVES_FILE, box: THREE_LEAVES_BOX, unit: IN_MM, flexures: THREE_LEAVES };
  const { items, size } = replyFor(part, AS_DROPPED, ASKED);

  it('asks for two lines each, and for the length at which they last', () => {
    expect(size).toEqual({ x: 63, y: 10, z: 6 });
    for (const item of items) {
      if (item.advice.kind !== 'make') throw new Error('something is asked for');
      expect(item.advice.make.drawn.thickness).toBe(1.12);
      expect(item.advice.make.drawn.fillet).toBe(0.6);
      expect(item.advice.make.changes).toEqual(['thickness', 'length']);
      const drawn = { ...item.advice.make.drawn, length: item.advice.make.drawn.length - 0.1 };
      const shorter = judgeAll([redrawn(item.judged.flexure, drawn)], THREE_LEAVES_BOX, AS_DROPPED, ASKED, '')[0]!;
      expect(isLasting(shorter)).toBe(false);
      expect(isLasting(putBack(item, AS_DROPPED))).toBe(true);
    }
  });
});

describe('every figure of any reply', () => {
  it('makes its section whole and last when it is drawn so; what is fine is both already', () => {
    const wanted = fc.record({
      flexures: anyFlexures(3),
      scale: fc.constantFrom(1, 1.333, 2),
      turnDeg: fc.constantFrom(5, 30, 90),
      filament: fc.constantFrom('petg', 'pp', 'pla'),
      up: fc.constantFrom('+z', '+x'),
    });
    fc.assert(
      fc.property(wanted, ({ flexures, scale, turnDeg, filament, up }) => {
        const as: PrintedAs = { scale, up, profile: { ...AS_DROPPED.profile, filament } };
        const asked = { ...ASKED, turn: radians(turnDeg) };
        for (const item of reply(flexures, as, asked).items) {
          const told = item.advice.kind === 'make' ? putBack(item, as, asked) : item.judged;
          if (item.advice.kind === 'none') expect(isLasting(item.advice.judged)).toBe(false);
          else expect([isWhole(told.landing), isLasting(told)]).toEqual([true, true]);
          if (item.advice.kind === 'make') {
            const { drawn, judged } = item.advice.make;
            expect(judged).toEqual(told);
            expect(drawn.length).toBeGreaterThanOrEqual(item.drawn.length);
            expect(drawn.fillet).toBeGreaterThanOrEqual(item.drawn.fillet);
          }
        }
      }),
      { numRuns: 30 },
    );
  });

  it('is in the size of the file, whatever the scale of the print', () => {
    const [item] = reply([straight({ thickness: 0.63, length: 40 })], { ...AS_DROPPED, scale: 2 }).items;
    if (item?.advice.kind !== 'make') throw new Error('something is asked for');
    // 2.25 lines of 0.56 mm at twice the size: two of them are 0.56 mm in the file.
    expect(item.advice.make.drawn.thickness).toBe(0.56);
  });

  it('leaves what is whole as thick as it is, odd or even', () => {
    const [item] = reply([straight({ thickness: 1.68, length: 5 })]).items;
    expect(item?.advice.kind === 'make' && item.advice.make.changes).toEqual(['length']);
  });

  it('asks for fillets of one line, and of two layers in a crease, as far as there is room', () => {
    const fillets = [
      straight({ number: 1, fillet: 0, thickness: 1.12, length: 30 }),
      straight({ number: 2, fillet: 0, thickness: 1.12, length: 30, shoulder: 1.8 }),
      creaseOf({ number: 3, length: 20 }),
    ];
    const told = reply(fillets).items.map(({ advice }) => advice.kind === 'make' && advice.make.drawn.fillet);
    expect(told).toEqual([0.6, 0.3, 0.4]);
  });

  it('says that no length helps where more is wanted than anyone has counted', () => {
    const [item] = reply([straight()], AS_DROPPED, { ...ASKED, cycles: 1e9 }).items;
    expect(item?.advice.kind).toBe('none');
  });
});

describe('the words of a reply', () => {
  it('are few for a part without thin sections, and ask for the unit', () => {
    const text = plainLetter(replySaid(reply([]), 'mm'));
    expect(text).toContain('I found no thin sections');
    expect(text).toContain('Please tell me if you did not draw it in millimetres.');
    expect(text).toContain('It may as well be in inches.');
  });

  it('say that one is fine', () => {
    const fine = straight({ thickness: 1.12, length: 40 });
    const said = replySaid(reply([fine]), 'mm');
    expect(said.opening).toContain('It is fine as drawn.');
    expect(said.items.map(({ please }) => please)).toEqual([[]]);
  });

  it('tell forty alike ones at once', () => {
    const forty = Array.from({ length: 40 }, (_, i) => straight({ number: i + 1, length: 4 }));
    const said = replySaid(reply(forty), 'mm');
    expect(said.items).toHaveLength(1);
    expect(said.items[0]?.title).toContain('1 to 40: 40 alike, each a leaf');
    expect(said.items[0]?.please[0]).toMatch(/^Please make each 1\.12\u00A0mm thick, /);
  });

  it('ask for no unit that the file states, and say lengths in inches where those are shown', () => {
    const stated = { ...reply([straight({ length: 4 })]), unit: { unit: 'inch', by: 'stated', orElse: [] } as const };
    const text = plainLetter(replySaid(stated, 'inch'));
    expect(text).toContain('The file says inches.');
    expect(text).not.toContain('Please tell me');
    expect(text).toContain('0.0331\u00A0in thick');
    expect(text).not.toMatch(/undefined|NaN|\[object|\bmm\b/);
  });
});
