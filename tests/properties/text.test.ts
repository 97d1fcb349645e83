/** Laws of what is said: whatever the joint, no sentence shows a value that is none, or a sign the faces lack. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assess } from '../../src/core/design/assess.ts';
import type { Assessment } from '../../src/core/design/assessment.ts';
import { holdAnswer } from '../../src/core/design/hold.ts';
import { scaleToWhole } from '../../src/core/design/scalePart.ts';
import { roomToSpare } from '../../src/core/design/roomToSpare.ts';
import { waysOut } from '../../src/core/design/waysOut.ts';
import { FAMILIES } from '../../src/core/flexures/index.ts';
import type { LengthUnit } from '../../src/ui/text/numbers.ts';
import { kindText } from '../../src/ui/text/kindText.ts';
import { printNotes } from '../../src/ui/text/printNotesText.ts';
import { problemText } from '../../src/ui/text/problemText.ts';
import { remedyCosts, remedyDone, remedyResult, remedyTitle, spareText } from '../../src/ui/text/remedyText.ts';
import { plainly } from '../../src/ui/text/said.ts';
import { scalingRow } from '../../src/ui/text/scalingText.ts';
import { sourceRows } from '../../src/ui/text/sourceText.ts';
import { stripText } from '../../src/ui/text/stripText.ts';
import { asTabbed, outlineWaits, sizesToDraw, travelToDraw } from '../../src/ui/text/toDrawText.ts';
import { chanceText, verdictHeading, verdictSentences } from '../../src/ui/text/verdictText.ts';
import { ratioRulesOf } from '../../src/ui/life/ratioRules.ts';
import { heldSaid, pushReading } from '../../src/ui/text/heldText.ts';
import { afterBendSaid } from '../../src/ui/text/setText.ts';
import { swingAndCycles } from '../../src/ui/text/useText.ts';
import { ratioText, ruleLife, shareOf, swingsAbout, lifeFigure } from '../../src/ui/text/wearText.ts';
import { joint } from '../support/partGenerators.ts';

const units = fc.constantFrom<LengthUnit>('mm', 'inch');

function waysSaid(a: Assessment, unit: LengthUnit): readonly string[] {
  return waysOut(a).flatMap((remedy) => [
    remedyTitle(a, remedy, unit),
    remedyDone(a, remedy, unit),
    remedyResult(a, remedy),
    remedyCosts(a, remedy, unit),
  ]);
}

/** What is said of how it is used. */
function saidOfUse(a: Assessment, unit: LengthUnit): readonly string[] {
  const swings = [a.joint.movement, ...(a.joint.movement.also ?? [])];
  const held = holdAnswer(a);
  const rules = ratioRulesOf(a);
  return [
    ...swings.map((swing) => swingAndCycles(swing, a.drive.measure, unit)),
    ...a.life.wear.flatMap((wear) => [
      lifeFigure(wear.median, a.life.maxReportableCycles),
      ratioText(wear.ratio),
      shareOf(wear.share),
    ]),
    ...(rules?.rules.map(({ name, median }) => `${name} ${ruleLife(median, a.life)}`) ?? []),
    ...(rules ? [swingsAbout(rules.lives.mean, rules.lives.amplitude)] : []),
    ...afterBendSaid(a, unit).map(plainly),
    ...(held.ok ? heldSaid(a, held.value, unit).map(plainly) : held.problems.map((one) => problemText(one, unit))),
    ...(held.ok ? held.value.curve.map((point) => pushReading(point, a, unit)) : []),
  ];
}

/** Everything that is said of a joint, but for the titles of the documents behind it. */
function everythingSaid(a: Assessment, unit: LengthUnit): readonly string[] {
  const dimensions = [...sizesToDraw(a, unit), ...travelToDraw(a, unit)];
  return [
    verdictHeading(a),
    ...verdictSentences(a, unit).map(plainly),
    chanceText(a),
    ...waysSaid(a, unit),
    ...roomToSpare(a).flatMap((spare) => spareText(a, spare, unit)),
    ...scaleToWhole(a).flatMap((row) => scalingRow(row, 'line', unit)),
    ...a.notes.map((note) => problemText(note, unit)),
    ...printNotes(a, unit),
    ...dimensions.flatMap(({ label, shown }) => [label, shown]),
    asTabbed(a.joint.name, dimensions, unit).split('\n').slice(1).join(' '),
    outlineWaits(a, unit),
    stripText(a),
    ...saidOfUse(a, unit),
    ...sourceRows(a).flatMap(({ name, says }) => [name, says]),
  ];
}

/** Greek, arrows and the signs for about and at least are not in the faces of the screen. */
const LACKING = /[\u0370-\u03ff\u2190-\u21ff≈≥≤]/u;
const NO_VALUE = /NaN|undefined|Infinity|null|\[object|\be[+-]\d/;
/** Words that the screen has plainer ones for. */
const UNWANTED = /reliab|plastic deformation|outer fib/i;

describe('laws of what is said', () => {
  it('is sound for any joint, in either unit', () => {
    fc.assert(
      fc.property(joint, units, (any, unit) => {
        const assessment = assess(any);
        if (!assessment.ok) throw new Error('the generator gives joints that are understood');
        for (const text of everythingSaid(assessment.value, unit)) {
          expect(text).not.toMatch(NO_VALUE);
          expect(text).not.toMatch(LACKING);
          expect(text).not.toMatch(UNWANTED);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('every family has its words, and a name for every size', () => {
    for (const family of FAMILIES) {
      expect(Object.keys(kindText(family.id).sizes).toSorted()).toEqual(Object.keys(family.parameters).toSorted());
    }
  });
});
