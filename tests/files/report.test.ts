import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { reportAssessment, reportPart } from '../../src/cli/report.ts';
import { assess } from '../../src/core/design/assess.ts';
import type { Assessment } from '../../src/core/design/assessment.ts';
import { doubtOf } from '../../src/core/design/doubt.ts';
import { holdAnswer } from '../../src/core/design/hold.ts';
import type { Part } from '../../src/core/design/joint.ts';
import { USUAL_SPREAD } from '../../src/core/print/spread.ts';
import { readPart } from '../../src/files/partFile.ts';
import { expectClose } from '../support/close.ts';
import { joint } from '../support/partGenerators.ts';

function savedPart(): Part {
  const read = readPart(readFileSync(new URL('saved/part-v1.json', import.meta.url), 'utf8'));
  if (!read.ok) throw new Error('the saved part must read');
  return read.value.part;
}

function assessed(index: number): Assessment {
  const result = assess(savedPart().joints[index] as Part['joints'][number]);
  if (!result.ok) throw new Error('the saved joint must be assessed');
  return result.value;
}

/** What stands at a path such as `life_cycles.p10`. */
function at(report: unknown, path: string): unknown {
  return path.split('.').reduce<unknown>((value, key) => (value as Record<string, unknown>)[key], report);
}

function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbersIn) : [];
}

describe('the report of a joint', () => {
  const leaf = assessed(0);
  const report = reportAssessment(leaf);

  it('says the inputs as understood, with units in the keys', () => {
    expect(report).toMatchObject({
      id: 'rain-flap',
      name: 'Rain-flap hinge',
      family: 'straightLeaf',
      inputs: {
        sizes: { lines: 2, length_mm: 12, depth_mm: 6, fillet_mm: 0.8, pad_mm: 4, in_row: 1 },
        movement: {
          drive: 'turned',
          amount_rad: leaf.joint.movement.amount,
          amount_deg: 35,
          ways: 'one way',
          cycles: 5000,
          held: false,
        },
        profile: { nozzle_mm: 0.4, line_width_mm: 0.42, layer_height_mm: 0.2, first_layer_height_mm: 0.2 },
      },
    });
    expect(report['inputs']).not.toHaveProperty('measured_thickness_mm');
    expect(at(reportAssessment(assessed(2)), 'inputs.measured_thickness_mm')).toBe(0.63);
  });

  it.each<[string, (a: Assessment) => unknown]>([
    ['thickness_mm', (a) => a.section.thickness],
    ['length_mm', (a) => a.length],
    ['lines.count', (a) => a.section.count],
    ['lines.exact', (a) => a.fit.exact],
    ['peak_strain.value', (a) => a.strain.peak],
    ['peak_strain.where', (a) => a.strain.where],
    ['peak_strain.nominal', (a) => a.strain.nominal],
    ['peak_strain.root_factor', (a) => a.strain.rootFactor],
    ['effort.torque_Nmm', (a) => a.effort.effort],
    ['effort.low_Nmm', (a) => a.effort.low],
    ['effort.high_Nmm', (a) => a.effort.high],
    ['effort.stiffness_Nmm_per_rad', (a) => a.effort.stiffness],
    ['set.amount_rad', (a) => a.set.amount],
    ['set.fraction', (a) => a.set.fraction],
    ['over_bend.at_single_rad', (a) => a.overBend.atSingle],
    ['over_bend.at_yield_rad', (a) => a.overBend.atYield],
    ['over_bend.at_break_rad', (a) => a.overBend.atBreak],
    ['over_bend.hard_stop_rad', (a) => a.overBend.hardStop],
    ['life_cycles.p10', (a) => a.life.total.p10],
    ['life_cycles.p50', (a) => a.life.total.p50],
    ['life_cycles.p90', (a) => a.life.total.p90],
    ['life_cycles.scatter_only.p10', (a) => a.life.scatter.p10],
    ['life_cycles.beyond', (a) => a.life.beyond],
    ['life_cycles.counted_up_to', (a) => a.life.maxReportableCycles],
    ['chance.reach_wanted', (a) => a.life.chance],
    ['chance.scatter_only', (a) => a.life.chanceScatterOnly],
    ['chance.wanted', (a) => a.joint.movement.chance],
    ['verdict.grade', (a) => a.verdict.grade],
    ['verdict.reason', (a) => a.verdict.reason],
    ['verdict.margin', (a) => a.verdict.margin],
  ])('has %s from the assessment', (path, expected) => {
    expect(expected(leaf)).toBeDefined();
    expect(at(report, path)).toBe(expected(leaf));
  });

  it('lists every allowable with where it comes from', () => {
    expect(report['allowables']).toEqual(leaf.allowables);
  });

  it('counts layers where the family is laid in layers', () => {
    expect(at(reportAssessment(assessed(1)), 'layers.count')).toBe(2);
  });

  it('says null and why, where JSON has no number', () => {
    const endless = {
      ...leaf,
      verdict: { ...leaf.verdict, margin: Infinity },
      set: { ...leaf.set, amount: NaN, fraction: 0 },
    };
    const said = reportAssessment(endless);
    expect(at(said, 'verdict.margin')).toBeNull();
    expect(at(said, 'set.amount_rad')).toBeNull();
    expect(said['notes']).toMatchObject([
      { code: 'no-answer', field: 'set.amount_rad' },
      { code: 'no-answer', field: 'set.amount_deg' },
      { code: 'no-answer', field: 'held_bent.stays.amount_rad' },
      { code: 'no-answer', field: 'held_bent.stays.amount_deg' },
      { code: 'no-answer', field: 'verdict.margin' },
    ]);
  });

  it('says of each kind of flex what it wears, and alone would last', () => {
    const { movement } = leaf.joint;
    const also = [{ amount: movement.amount / 2, ways: 'one way' as const, cycles: 100 }];
    const answer = assess({ ...leaf.joint, movement: { ...movement, also } });
    if (!answer.ok) throw new Error(answer.problems[0].message);
    const wear = at(reportAssessment(answer.value), 'life_cycles.wear') as readonly {
      readonly share: number;
      readonly alone_p50: number;
    }[];
    expect(wear).toMatchObject([{ cycles: movement.cycles }, { cycles: 100, ratio: 0 }]);
    expectClose(wear[0]!.share + wear[1]!.share, 1, { rel: 1e-12, because: 'round-off' });
    expect(wear.map((one) => one.alone_p50)).toEqual(answer.value.life.wear.map(({ median }) => median));
    expect(at(report, 'life_cycles.wear.0')).not.toHaveProperty('alone_p50');
  });

  it('says what stays, with its range; what holding leaves; and how it stands the warmth', () => {
    const { set } = leaf;
    expect(report['set']).toMatchObject({ amount_rad: set.amount, low_rad: set.low, high_rad: set.high });
    const held = holdAnswer(leaf);
    if (!held.ok) throw new Error('a room is not too warm');
    const { left, stays } = held.value.held;
    expect(report['held_bent']).toMatchObject({
      held_for_h: 24,
      effort_left: { share: left.typical, share_low: left.low },
      stays: { amount_rad: stays.typical },
    });
    expect(report['warmth']).toMatchObject({ temperature_C: 23, grade: 'pass' });
  });

  it('says nothing of holding where it is too warm, and why where it is held', () => {
    const warm = { ...leaf.joint, surroundings: { temperatureC: 90, moisture: 'damp' as const } };
    const answer = assess({ ...warm, movement: { ...warm.movement, held: true } });
    if (!answer.ok) throw new Error(answer.problems[0].message);
    const said = reportAssessment(answer.value);
    expect(said['held_bent']).toBeNull();
    expect(said['notes']).toContainEqual(expect.objectContaining({ code: 'too-warm-to-hold' }));
  });

  it('tells by which rule a swing that never rests lasts how long', () => {
    const { movement } = leaf.joint;
    const answer = assess({ ...leaf.joint, movement: { ...movement, ways: 'between', least: movement.amount / 2 } });
    if (!answer.ok) throw new Error(answer.problems[0].message);
    const said = reportAssessment(answer.value);
    expect(at(said, 'life_cycles.own_by_rule')).toHaveProperty('smith_watson_topper');
    expect(report['life_cycles']).not.toHaveProperty('own_by_rule');
  });

  it('withholds lives past what anyone has counted, and says so', () => {
    const counted = leaf.life.maxReportableCycles;
    const total = { p10: counted, p50: counted + 1, p90: counted * 10 };
    const said = reportAssessment({ ...leaf, life: { ...leaf.life, total } });
    expect(said['life_cycles']).toMatchObject({ p10: counted, p50: null, p90: null, counted_up_to: counted });
    expect(said['notes']).toMatchObject([
      { code: 'beyond-data', field: 'life_cycles.p50', limit: counted },
      { code: 'beyond-data', field: 'life_cycles.p90', limit: counted },
    ]);
  });

  it('of any joint survives JSON and holds only finite numbers', () => {
    fc.assert(
      fc.property(joint, (any) => {
        const byHand = assess(any);
        if (!byHand.ok) throw new Error('a joint that is understood is assessed by hand forms');
        const said = reportAssessment(byHand.value);
        expect(JSON.parse(JSON.stringify(said))).toEqual(said);
        expect(numbersIn(said).every(Number.isFinite)).toBe(true);
      }),
    );
  });
});

describe('the report of a part', () => {
  it('gives a joint that cannot be assessed its problems and leaves the others their answers', () => {
    const { joints } = savedPart();
    const bad = { ...(joints[0] as Part['joints'][number]), family: 'zigzag' };
    const said = reportPart({ name: 'x', invented: false, joints: [bad, ...joints] }, []);
    expect(said.joints[0]).toMatchObject({ id: 'rain-flap', problems: [{ code: 'unknown-family' }] });
    expect(said.joints.slice(1).every((one) => 'verdict' in one)).toBe(true);
  });

  it('leaves the figures of exact hand forms as they are', () => {
    const { joints } = reportPart(savedPart(), []);
    for (const [index, said] of joints.entries()) {
      expect(said).toMatchObject(reportAssessment(assessed(index)));
      expect(said).toHaveProperty('solver');
    }
  });

  it('gives a joint without a way that far its problem, and no figures of a form that only estimates', () => {
    const [leaf] = savedPart().joints as [Part['joints'][number]];
    const far = { ...leaf, movement: { ...leaf.movement, drive: 'pushed', amount: 40 } };
    const [said] = reportPart({ name: 'x', invented: false, joints: [far] }, []).joints;
    expect(said).toMatchObject({ problems: [{ field: 'movement.amount', value: 40 }] });
    expect(said).not.toHaveProperty('effort');
  });

  it('keeps what reading had to repair and leaves cautions to the joints', () => {
    const text = readFileSync(new URL('saved/part-v1.json', import.meta.url), 'utf8');
    const small = text.replace('"fillet": 0.8', '"fillet": 0.2');
    const read = readPart(small.replace('"id": "battery-door"', '"id": "rain-flap"'));
    if (!read.ok) throw new Error('a repeated id is repaired');
    expect(read.notes.length).toBeGreaterThan(1);
    expect(reportPart(read.value.part, read.notes).notes).toMatchObject([
      { code: 'repaired-id', field: 'joints[1].id' },
    ]);
  });

  it('says from as many prints as are asked for how sure each answer is, the same ones for the same seed', () => {
    const prints = { samples: 256, seed: 3 };
    const part = { ...savedPart(), joints: savedPart().joints.slice(0, 1) };
    const [said] = reportPart(part, [], { prints }).joints;
    const [again] = reportPart(part, [], { prints }).joints;
    const [bare] = reportPart(part, []).joints;
    expect(again).toEqual(said);
    expect(bare).not.toHaveProperty('how_sure');
    const sure = said!['how_sure'] as Readonly<Record<string, number>> & {
      readonly causes: readonly { readonly share_of_life: number }[];
    };
    const doubt = doubtOf(part.joints[0]!, { spread: USUAL_SPREAD, samples: 256, seed: 3, how: 'quasi-random' });
    if (!doubt.ok) throw new Error(doubt.problems[0].message);
    expect(sure['reach_wanted']).toBe(doubt.value.chance.share);
    expect(sure['sampling_error']).toBe(doubt.value.chance.error);
    expect(sure.causes.map((cause) => cause.share_of_life)).toEqual(doubt.value.causes.map(({ life }) => life));
  });

  it('gives no life past the data there either, and says so', () => {
    const part = { ...savedPart(), joints: savedPart().joints.slice(0, 1) };
    const easy = part.joints.map((one) => ({ ...one, movement: { ...one.movement, amount: 0.05 } }));
    const [said] = reportPart({ ...part, joints: easy }, [], { prints: { samples: 64, seed: 1 } }).joints;
    expect(said).toMatchObject({ how_sure: { life_cycles: { p90: null } } });
    expect((said!['notes'] as readonly { field?: string }[]).map(({ field }) => field)).toContain(
      'how_sure.life_cycles.p90',
    );
  });
});
