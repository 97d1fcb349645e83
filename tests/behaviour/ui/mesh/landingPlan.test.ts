import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { loopArea } from '../../../../src/core/geometry/loop.ts';
import { checkPart, mendPart } from '../../../../src/core/inspect/checkPart.ts';
import { judgeAll } from '../../../../src/core/inspect/judge.ts';
import type { PrintedAs } from '../../../../src/core/inspect/judged.ts';
import { readMesh } from '../../../../src/files/mesh/readMesh.ts';
import { FIRST_VALUES } from '../../../../src/store/checking.ts';
import { landingPlan } from '../../../../src/ui/mesh/landingPlan.ts';
import { sectionPlan } from '../../../../src/ui/mesh/sectionPlan.ts';
import { expectClose } from '../../../support/close.ts';

/** A part of known thin sections, as checked: `truth.json` beside it says how thick they are. */
function checked(name: string) {
  const read = readMesh(new Uint8Array(readFileSync(`tests/files/mesh/parts/${name}`)), name);
  if (!read.ok) throw new Error(read.problems[0].message);
  return checkPart(mendPart(read.value), 2.6);
}

const leaves = checked('syn-leaves-042-084-126.stl');
const WINDOW = { left: -4, right: 4, bottom: -2, top: 2 };

function plans(lineWidth: number) {
  const as: PrintedAs = { ...FIRST_VALUES.as, profile: { ...FIRST_VALUES.as.profile, lineWidth } };
  const judged = judgeAll(leaves.findings.flexures, leaves.facts.box, as, FIRST_VALUES.asked, 'part.stl');
  return judged.map((one) => {
    const section = leaves.findings.sections[one.flexure.section];
    if (!section) throw new Error('a thin section was measured in no section');
    return landingPlan(one, section, as, WINDOW, 0);
  });
}

/** How wide the strips of what goes wrong are together, over the straight part of 3.8 mm and a little of its fillets. */
const wrongWidth = ({ wrong }: ReturnType<typeof plans>[number]) =>
  wrong.reduce((sum, strip) => sum + Math.abs(loopArea(strip)), 0) / spanOf(wrong);

function spanOf(wrong: readonly (readonly { readonly x: number }[])[]): number {
  const [strip = []] = wrong;
  const xs = strip.map(({ x }) => x);
  return Math.max(...xs) - Math.min(...xs);
}

describe('lines of 0.42 mm in leaves of 0.42, 0.84 and 1.26 mm', () => {
  it('fill them: nothing is amiss, and odd counts have a line along the middle', () => {
    const found = plans(0.42);
    expect(found.map(({ wrong }) => wrong.length)).toEqual([0, 0, 0]);
    expect(found.map(({ middle }) => middle.length > 0)).toEqual([true, false, true]);
  });
});

describe('lines of 0.56 mm in the same leaves', () => {
  const [thin, two, three] = plans(0.56);

  it('are not laid in the thinnest: all of it is amiss', () => {
    expectClose(wrongWidth(thin!), 0.42, { rel: 0.02, because: 'the mesh cuts its fillets into chords' });
  });

  it('lie 0.28 mm over one another in the second', () => {
    expectClose(wrongWidth(two!), 2 * 0.56 - 0.84, { rel: 0.02, because: 'the mesh cuts its fillets into chords' });
  });

  it('leave 0.14 mm between them in the third', () => {
    expectClose(wrongWidth(three!), 1.26 - 2 * 0.56, { rel: 0.02, because: 'the mesh cuts its fillets into chords' });
  });
});

describe('the sectional drawing', () => {
  it('lays the longer side across, at a scale that fits', () => {
    const gripper = checked('syn-four-hinge-gripper-084.stl');
    const judged = judgeAll(
      gripper.findings.flexures,
      gripper.facts.box,
      FIRST_VALUES.as,
      FIRST_VALUES.asked,
      'part.stl',
    );
    const [section] = gripper.findings.sections;
    const { box, sheet, boxes } = sectionPlan(section!, judged, 1, 797, 96 / 25.4);
    expect(sheet.scale).toBe(2);
    // 82 by 44 mm by truth.json, at 2 : 1.
    expectClose((box.right - box.left) / sheet.pxPerMm, 82, { rel: 1e-6, because: 'single precision of the file' });
    expectClose((box.bottom - box.top) / sheet.pxPerMm, 44, { rel: 1e-6, because: 'single precision of the file' });
    expect(boxes.map(({ number }) => number)).toEqual([1, 2, 3, 4]);
  });
});
