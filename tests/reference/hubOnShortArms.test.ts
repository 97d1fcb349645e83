/**
 * Source [unit-load-method]: a hub on spiral arms at small movements. The rows H-ex of checkvalues/H.json give K·L/(E·I)
 * = 1 for one arm under a pure moment. The stiffness of three short arms was computed for the project’s drawings by
 * shooting each arm as an unstretched curve, 35.6 N·mm/rad for the worked example, and its peak over that of even
 * bending as 1.66; unit loads share neither equation nor method with that.
 */
import { describe, it } from 'vitest';
import { spiralLength } from '../../src/core/closedForms/spiralArm.ts';
import { hubMoved } from '../../src/core/closedForms/spiralHub.ts';
import { checkValues, input } from '../support/checkValues.ts';
import { expectClose } from '../support/close.ts';
import { noteResidual } from '../support/residuals.ts';

const SHORT = { inner: 3, outer: 11.5, turns: 1.25, arms: 3, thickness: 0.84 };
const EI = (2000 * 6 * 0.84 ** 3) / 12;

describe('one arm under a pure moment bends evenly', () => {
  it.each(checkValues('H', 'H-ex-'))('$id', (row) => {
    const [inner, outer, turns] = [input(row, 'r0_mm'), input(row, 'r1_mm'), input(row, 'turns')] as const;
    const thickness = input(row, 't_mm');
    const { effort, strain } = hubMoved({ inner, outer, turns, arms: 1, thickness }, 'turned');
    const [length = Number.NaN] = row.expected;
    noteResidual('even bending', effort * length, 1);
    expectClose(effort * length, 1, { rel: 1e-6, because: 'steps of a 64th of a turn' });
    expectClose(strain * length, thickness / 2, { rel: 1e-6, because: 'steps of a 64th of a turn' });
  });
});

describe('three short arms', () => {
  it('are as stiff as when shot as curves', () => {
    for (const drive of ['centred', 'turned'] as const) {
      const stiffness = EI * hubMoved(SHORT, drive).effort;
      noteResidual('short arms', stiffness, 35.6);
      expectClose(stiffness, 35.6, { rel: 0.005, because: 'told to three figures as 35.6 and 35.69' });
    }
  });

  it('strain most where hub and ring hold them', () => {
    const even = SHORT.thickness / (2 * spiralLength(SHORT.inner, SHORT.outer, SHORT.turns));
    const over = hubMoved(SHORT, 'centred').strain / even;
    noteResidual('peak over even', over, 1.66);
    expectClose(over, 1.66, { rel: 0.03, because: 'that is at 35°, where the arms have begun to straighten' });
  });

  it('give alike whichever way they are pushed', () => {
    const along = hubMoved(SHORT, 'shifted').effort;
    const more = hubMoved({ ...SHORT, arms: 6 }, 'shifted').effort;
    expectClose(more, 2 * along, { rel: 1e-9, because: 'two sets of three arms; round-off' });
  });
});
