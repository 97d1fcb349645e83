/** “Held bent”: what is left and what stays, as held and as if it were. */
import { describe, expect, it } from 'vitest';
import type { Assessment } from '../../../src/core/design/assessment.ts';
import { holdAnswer } from '../../../src/core/design/hold.ts';
import { heldSaid, pushReading } from '../../../src/ui/text/heldText.ts';
import { share } from '../../../src/ui/text/numbers.ts';
import { plainly } from '../../../src/ui/text/said.ts';
import { assessed, changed, LEAF } from '../../support/joints.ts';

const HELD = assessed(changed(LEAF, { movement: { held: true, heldHours: 720 } }));

function holdOf(a: Assessment) {
  const answer = holdAnswer(a);
  if (!answer.ok) throw new Error(answer.problems[0].message);
  return answer.value;
}

const plain = (text: string) => text.replaceAll(/[\u00a0\u2009]/g, ' ');
const said = (a: Assessment) => heldSaid(a, holdOf(a), 'mm').map((one) => plain(plainly(one)));

describe('held bent', () => {
  it('for as long as is set: what is left of the push, and what stays when it is let go', () => {
    const { held } = holdOf(HELD);
    const [first] = said(HELD);
    expect(first).toContain(`Held for a month it keeps ${plain(share(held.left.typical))} of its push, `);
    expect(first).toContain(`${plain(share(held.left.low))} to ${plain(share(held.left.high))}`);
    expect(first).toMatch(/let go, [\d.]+°, [\d.]+° to [\d.]+°, stay bent\.$/);
  });

  it('is told as if it were where it is not', () => {
    expect(said(assessed(LEAF))[0]).toMatch(/^If it were held for a day it would keep \d+ % .* would stay bent\.$/);
  });

  it('sags under a load that stays on', () => {
    const tpu = assessed(changed(LEAF, { profile: { filament: 'tpu95a' } }));
    expect(said(tpu)[1]).toBe(
      `Under a load that stays on it sags instead: ${plain(share(holdOf(tpu).sags.typical))} farther in a day, ${plain(
        share(holdOf(tpu).sags.low),
      )} to ${plain(share(holdOf(tpu).sags.high))}.`,
    );
  });

  it('is read at any time', () => {
    expect(plain(pushReading(holdOf(HELD).at(168), HELD, 'mm'))).toMatch(
      /^a week: \d+ % left, \d+ % to \d+ %; [\d.]+° stay bent$/,
    );
  });

  it('every figure that rests on the row has its mark', () => {
    for (const one of heldSaid(HELD, holdOf(HELD), 'mm')) {
      expect(one.filter((piece) => typeof piece !== 'string').every(({ mark }) => mark === 'memory')).toBe(true);
    }
  });
});
