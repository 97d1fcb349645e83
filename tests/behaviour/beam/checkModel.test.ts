import { describe, expect, it } from 'vitest';
import { checkModel } from '../../../src/core/beam/checkModel.ts';
import type { BeamModel, Member, Profile, Shape } from '../../../src/core/beam/model.ts';
import type { Problem } from '../../../src/core/problems.ts';
import { between, cantilever, HELD, network } from '../../support/beamModels.ts';

/** A sound network: two leaves from a held pad to a pad that is pushed across. */
const SOUND = between(
  [0, 10].map((y) => ({ from: { x: 0, y }, to: { x: 20, y } })),
  { x: 20, y: 5 },
  {},
  { motions: [{ at: 'moving', y: 2 }] },
);

function problemsOf(model: BeamModel): readonly Problem[] {
  const result = checkModel(model);
  return result.ok ? [] : result.problems;
}

/** The only problem of a network. */
function problemOf(model: BeamModel): Problem {
  const problems = problemsOf(model);
  expect(problems.map(({ message }) => message)).toHaveLength(1);
  return problems[0]!;
}

function withMember(change: Partial<Member>, index = 0): BeamModel {
  return { ...SOUND, members: SOUND.members.map((member, i) => (i === index ? { ...member, ...change } : member)) };
}

describe('a sound network', () => {
  it('passes as it is, without a note', () => {
    const result = checkModel(SOUND);
    expect(result).toEqual({ ok: true, value: SOUND, notes: [] });
    expect(result.ok && result.value).toBe(SOUND);
  });

  it.each([
    ['straight', { kind: 'straight' }],
    ['an arc', { kind: 'arc', turn: -1.5 }],
    ['an arc of almost a full turn', { kind: 'arc', turn: 6 }],
    ['a wave', { kind: 'wave', rise: -3 }],
    ['half a wave', { kind: 'rise', heading: 0.3 }],
    ['a spiral', { kind: 'spiral', centre: { x: 10, y: 0 }, turns: 0.5 }],
    ['a spiral the other way and once more round', { kind: 'spiral', centre: { x: 10, y: 0 }, turns: -1.5 }],
  ] as const)('may have %s member', (_, shape) => {
    expect(problemsOf(withMember({ shape }))).toEqual([]);
  });

  it.each<[string, Profile]>([
    ['a taper', { kind: 'taper', from: 0.4, to: 2 }],
    ['a notch', { kind: 'notch', least: 0.8, deep: 3, part: 'whole' }],
    ['a notch that is none', { kind: 'notch', least: 0.8, deep: 0, part: 'opening' }],
  ])('may have %s', (_, thickness) => {
    expect(problemsOf(withMember({ thickness }))).toEqual([]);
  });

  it('may be held by springs, ties and motions, or by supports in two places', () => {
    const spring = cantilever(
      { kind: 'straight' },
      { x: 10, y: 0 },
      {},
      {
        supports: [],
        springs: [{ at: 'root', x: 1, y: 1, twist: 1 }],
        loads: [{ at: 'tip', y: 1 }],
      },
    );
    expect(problemsOf(spring)).toEqual([]);
    const twoPins = {
      ...spring,
      springs: [],
      supports: [
        { at: 'root', x: true, y: true },
        { at: 'tip', y: true },
      ],
    };
    expect(problemsOf(twoPins)).toEqual([]);
    const driven = { ...twoPins, supports: [{ at: 'root', x: true, y: true }], motions: [{ at: 'tip', y: 1 }] };
    expect(problemsOf(driven)).toEqual([]);
    const nodes = [...spring.nodes, { id: 'post', x: 5, y: 5 }];
    const tied = {
      ...twoPins,
      nodes,
      supports: [{ at: 'post', ...HELD }],
      ties: [{ at: 'root', like: 'post', x: 1, y: 1, turn: 1 }],
    };
    expect(problemsOf(tied)).toEqual([]);
  });

  it('may have hinges that let a pad swing: that is the solver’s matter', () => {
    const swing = cantilever(
      { kind: 'straight' },
      { x: 10, y: 0 },
      { hinged: 'both' },
      { loads: [{ at: 'tip', y: 1 }] },
    );
    expect(problemsOf(swing)).toEqual([]);
  });
});

describe('numbers', () => {
  it.each<[string, (value: number) => BeamModel]>([
    ['modulus', (modulus) => ({ ...SOUND, modulus })],
    ['poisson', (poisson) => ({ ...SOUND, poisson })],
    ['nodes[1].x', (x) => ({ ...SOUND, nodes: SOUND.nodes.map((node, i) => (i === 1 ? { ...node, x } : node)) })],
    ['nodes[1].y', (y) => ({ ...SOUND, nodes: SOUND.nodes.map((node, i) => (i === 1 ? { ...node, y } : node)) })],
    [
      'pads[1].at.x',
      (x) => ({ ...SOUND, pads: SOUND.pads.map((pad, i) => (i === 1 ? { ...pad, at: { x, y: 0 } } : pad)) }),
    ],
    [
      'pads[1].at.y',
      (y) => ({ ...SOUND, pads: SOUND.pads.map((pad, i) => (i === 1 ? { ...pad, at: { x: 0, y } } : pad)) }),
    ],
    ['members[0].thickness', (thickness) => withMember({ thickness })],
    ['members[0].thickness.from', (from) => withMember({ thickness: { kind: 'taper', from, to: 1 } })],
    ['members[0].thickness.to', (to) => withMember({ thickness: { kind: 'taper', from: 1, to } })],
    [
      'members[0].thickness.least',
      (least) => withMember({ thickness: { kind: 'notch', least, deep: 1, part: 'whole' } }),
    ],
    [
      'members[0].thickness.deep',
      (deep) => withMember({ thickness: { kind: 'notch', least: 1, deep, part: 'whole' } }),
    ],
    ['members[0].width', (width) => withMember({ width })],
    ['members[0].widthRatio', (widthRatio) => withMember({ widthRatio })],
    ['members[0].plane', (plane) => withMember({ plane })],
    ['members[0].shape.turn', (turn) => withMember({ shape: { kind: 'arc', turn } })],
    ['members[0].shape.rise', (rise) => withMember({ shape: { kind: 'wave', rise } })],
    ['members[0].shape.heading', (heading) => withMember({ shape: { kind: 'rise', heading } })],
    ['members[0].shape.turns', (turns) => withMember({ shape: { kind: 'spiral', centre: { x: 10, y: 0 }, turns } })],
    ['members[0].shape.centre.x', (x) => withMember({ shape: { kind: 'spiral', centre: { x, y: 0 }, turns: 0.5 } })],
    ['members[0].shape.centre.y', (y) => withMember({ shape: { kind: 'spiral', centre: { x: 10, y }, turns: 0.5 } })],
    ['motions[0].y', (y) => ({ ...SOUND, motions: [{ at: 'moving', y }] })],
    ['motions[0].turn', (turn) => ({ ...SOUND, motions: [{ at: 'moving', turn }] })],
    ['loads[0].x', (x) => ({ ...SOUND, loads: [{ at: 'moving', x }] })],
    ['loads[0].moment', (moment) => ({ ...SOUND, loads: [{ at: 'moving', moment }] })],
    ['springs[0].x', (x) => ({ ...SOUND, springs: [{ at: 'moving', x }] })],
    ['springs[0].twist', (twist) => ({ ...SOUND, springs: [{ at: 'moving', twist }] })],
    ['ties[0].x', (x) => ({ ...SOUND, ties: [{ at: 'moving', like: 'fixed', x }] })],
  ])('%s must be finite and within reach', (field, of) => {
    for (const value of [Number.NaN, Infinity, -Infinity]) {
      expect(problemOf(of(value))).toMatchObject({ code: 'not-a-number', field, value: String(value) });
    }
    const far = problemOf(of(1e15));
    expect(far).toMatchObject({ code: 'above-maximum', field, value: 1e15 });
    expect(far.limit).toBeTypeOf('number');
  });

  it.each<[string, BeamModel]>([
    ['modulus', { ...SOUND, modulus: 0 }],
    ['poisson', { ...SOUND, poisson: -0.01 }],
    ['members[0].thickness', withMember({ thickness: 0 })],
    ['members[1].thickness', withMember({ thickness: -0.8 }, 1)],
    ['members[0].thickness.least', withMember({ thickness: { kind: 'notch', least: 0, deep: 1, part: 'whole' } })],
    ['members[0].thickness.deep', withMember({ thickness: { kind: 'notch', least: 1, deep: -0.1, part: 'whole' } })],
    ['members[0].width', withMember({ width: 0 })],
    ['members[0].widthRatio', withMember({ widthRatio: 0 })],
    ['springs[0].turn', { ...SOUND, springs: [{ at: 'moving', turn: -1 }] }],
  ])('%s cannot be so small', (field, model) => {
    const problem = problemOf(model);
    expect(problem).toMatchObject({ code: 'below-minimum', field });
    expect(problem.message).toContain('raise it');
  });

  it('of Poisson’s ratio go to 0.5', () => {
    expect(problemsOf({ ...SOUND, poisson: 0.5 })).toEqual([]);
    expect(problemOf({ ...SOUND, poisson: 0.51 })).toMatchObject({
      code: 'above-maximum',
      field: 'poisson',
      limit: 0.5,
    });
  });
});

function crowd<T extends object>(count: number, of: (i: number) => T): readonly T[] {
  return Array.from({ length: count }, (_, i) => of(i));
}

describe('how many', () => {
  it.each([
    ['nodes', { nodes: crowd(201, (i) => ({ id: `n${i}`, x: i, y: 0 })) }],
    ['members', { members: crowd(201, (i) => ({ ...SOUND.members[0]!, id: `m${i}` })) }],
    ['pads', { pads: crowd(201, (i) => ({ id: `p${i}`, nodes: [`f${i}`] })) }],
    ['supports', { supports: crowd(201, () => ({ at: 'fixed', x: true })) }],
    ['ties', { ties: crowd(500, () => ({ at: 'moving', like: 'fixed', x: 1 })) }],
    ['pads[0].nodes', { pads: [{ id: 'p', nodes: Array.from({ length: 201 }, () => 'f0') }] }],
  ])('%s: more than 200 are too many, and nothing else is then said', (field, change) => {
    const problem = problemOf({ ...SOUND, ...change });
    expect(problem).toMatchObject({ code: 'too-large', field, limit: 200 });
    expect(problem.message).toContain('so that an answer comes within seconds');
  });

  it('no members at all is no network', () => {
    expect(problemOf({ ...SOUND, members: [] })).toMatchObject({ code: 'missing-field', field: 'members' });
  });
});

describe('names', () => {
  const renamed = (list: 'nodes' | 'members' | 'pads', index: number, id: string): BeamModel => ({
    ...SOUND,
    [list]: SOUND[list].map((entry, i) => (i === index ? { ...entry, id } : entry)),
  });

  it.each([
    ['members', 1, 'leaf0'],
    ['nodes', 2, 'f0'],
    ['pads', 1, 'fixed'],
  ] as const)('of %s may not be given twice', (list, index, id) => {
    const [problem] = problemsOf(renamed(list, index, id));
    expect(problem).toMatchObject({ code: 'given-twice', field: `${list}[${index}].id`, value: id });
    expect(problem?.message).toContain(`${list}[0] is called too`);
  });

  it.each([
    ['', 'missing-field'],
    ['__proto__', 'network-conflict'],
    ['x'.repeat(81), 'too-large'],
  ])('%j is refused', (id, code) => {
    expect(problemOf(renamed('members', 0, id))).toMatchObject({ code, field: 'members[0].id' });
  });

  it.each(['constructor', 'toString', 'Höhe 3', 'x'.repeat(80)])('%j is a name like any other', (id) => {
    expect(problemsOf(renamed('members', 0, id))).toEqual([]);
  });

  it('of a pad may not be that of a node of no pad, but may be that of its own', () => {
    const nodes = [...SOUND.nodes, { id: 'post', x: 5, y: 5 }];
    const pads = [...SOUND.pads, { id: 'post', nodes: ['post'] }];
    const supports = [...SOUND.supports, { at: 'post', ...HELD }];
    expect(problemsOf({ ...SOUND, nodes, pads, supports })).toEqual([]);
    const other = { ...SOUND, nodes: [...SOUND.nodes, { id: 'fixed', x: 5, y: 5 }] };
    expect(problemOf(other)).toMatchObject({ code: 'given-twice', field: 'pads[0].id', value: 'fixed' });
  });

  it.each<[string, BeamModel]>([
    ['members[0].from', withMember({ from: 'nobody' })],
    ['members[1].to', withMember({ to: 'nobody' }, 1)],
    ['pads[1].nodes[2]', { ...SOUND, pads: [SOUND.pads[0]!, { ...SOUND.pads[1]!, nodes: ['m0', 'm1', 'nobody'] }] }],
    ['supports[1].at', { ...SOUND, supports: [...SOUND.supports, { at: 'nobody', x: true }] }],
    ['motions[1].at', { ...SOUND, motions: [...SOUND.motions, { at: 'nobody', x: 1 }] }],
    ['loads[0].at', { ...SOUND, loads: [{ at: 'nobody', x: 1 }] }],
    ['springs[0].at', { ...SOUND, springs: [{ at: 'nobody', x: 1 }] }],
    ['springs[0].to', { ...SOUND, springs: [{ at: 'moving', to: 'nobody', x: 1 }] }],
    ['ties[0].at', { ...SOUND, ties: [{ at: 'nobody', like: 'moving', x: 1 }] }],
    ['ties[0].like', { ...SOUND, ties: [{ at: 'moving', like: 'nobody', x: 1 }] }],
  ])('%s must name something that is there, and is told what there is', (field, model) => {
    const problem = problemOf(model);
    expect(problem).toMatchObject({ code: 'no-such-id', field, value: 'nobody' });
    expect(problem.message).toMatch(/there are “/);
  });

  it('of a node that a pad carries are answered with the pad', () => {
    const problem = problemOf({ ...SOUND, loads: [{ at: 'm1', x: 1 }] });
    expect(problem).toMatchObject({ code: 'no-such-id', field: 'loads[0].at', value: 'm1', limit: 'moving' });
    expect(problem.message).toBe('loads[0].at is “m1”, a node that the pad “moving” carries; name the pad');
  });
});

describe('pads', () => {
  it('without nodes are refused', () => {
    const pads = [...SOUND.pads, { id: 'empty', nodes: [] }];
    expect(problemOf({ ...SOUND, pads })).toMatchObject({ code: 'network-shape', field: 'pads[2].nodes' });
  });

  it('do not share a node, nor name one twice', () => {
    const shared = [SOUND.pads[0]!, { ...SOUND.pads[1]!, nodes: ['m0', 'm1', 'f0'] }];
    const problem = problemOf({ ...SOUND, pads: shared });
    expect(problem).toMatchObject({ code: 'network-conflict', field: 'pads[1].nodes[2]', value: 'f0' });
    expect(problem.message).toContain('the pad “fixed” carries already');
    const twice = [SOUND.pads[0]!, { ...SOUND.pads[1]!, nodes: ['m0', 'm1', 'm0'] }];
    expect(problemOf({ ...SOUND, pads: twice })).toMatchObject({ field: 'pads[1].nodes[2]', value: 'm0' });
  });
});

function shaped(shape: Shape): Problem {
  return problemOf(withMember({ shape }));
}

describe('shapes', () => {
  it('of a member from a node to itself, or without length, are refused', () => {
    expect(problemOf(withMember({ to: 'f0' }))).toMatchObject({
      code: 'network-shape',
      field: 'members[0].to',
      value: 'f0',
    });
    const nodes = SOUND.nodes.map((node) => (node.id === 'm0' ? { id: 'm0', x: 0, y: 0 } : node));
    expect(problemOf({ ...SOUND, nodes })).toMatchObject({
      code: 'network-shape',
      field: 'members[0]',
      value: 0,
      limit: 1e-3,
    });
  });

  it.each([2 * Math.PI, -7, 100])('of an arc cannot turn by %d', (turn) => {
    const problem = shaped({ kind: 'arc', turn });
    expect(problem).toMatchObject({
      code: 'above-maximum',
      field: 'members[0].shape.turn',
      value: turn,
      limit: 2 * Math.PI,
    });
    expect(problem.message).toContain('make two of it');
  });

  it('of half a wave must come on along its heading', () => {
    const problem = shaped({ kind: 'rise', heading: 2 });
    expect(problem).toMatchObject({ code: 'network-shape', field: 'members[0].shape.heading' });
    expect(problem.value).toBeCloseTo(20 * Math.cos(2), 12);
  });

  it('of a spiral must end at its node; the turns that would are told', () => {
    const problem = shaped({ kind: 'spiral', centre: { x: 10, y: 0 }, turns: 1.4 });
    expect(problem).toMatchObject({ code: 'network-shape', field: 'members[0].shape.turns', value: 1.4, limit: 1.5 });
    expect(problem.message).toContain('give 1.5, or move a node');
    expect(shaped({ kind: 'spiral', centre: { x: 10, y: -4 }, turns: 1 }).limit).toBeCloseTo(
      1 - (2 * Math.atan(10 / 4)) / (2 * Math.PI),
      9,
    );
  });

  it('of a spiral that is told its own limit pass', () => {
    const spiral = { kind: 'spiral', centre: { x: 7, y: -3.7 } } as const;
    const told = shaped({ ...spiral, turns: -1.234 }).limit as number;
    expect(Math.abs(told + 1.234)).toBeLessThanOrEqual(0.5);
    expect(problemsOf(withMember({ shape: { ...spiral, turns: told } }))).toEqual([]);
  });

  it('of a spiral need a centre away from its nodes, and turns', () => {
    expect(shaped({ kind: 'spiral', centre: { x: 20, y: 0 }, turns: 1 })).toMatchObject({
      field: 'members[0].shape.centre',
      value: 0,
    });
    expect(shaped({ kind: 'spiral', centre: { x: -5, y: 0 }, turns: 0 })).toMatchObject({
      field: 'members[0].shape.turns',
      value: 0,
    });
    expect(shaped({ kind: 'spiral', centre: { x: 10, y: 0 }, turns: 25.5 })).toMatchObject({
      code: 'above-maximum',
      limit: 20,
    });
  });

  it('of a notch must be straight', () => {
    const thickness = { kind: 'notch', least: 1, deep: 1, part: 'whole' } as const;
    const problem = problemOf(withMember({ thickness, shape: { kind: 'arc', turn: 1 } }));
    expect(problem).toMatchObject({
      code: 'network-shape',
      field: 'members[0].thickness',
      value: 'arc',
      limit: 'straight',
    });
  });

  it('that bend sharper than half the thickness fold over', () => {
    const problem = problemOf(withMember({ shape: { kind: 'wave', rise: 12 }, thickness: 5 }));
    expect(problem).toMatchObject({ code: 'network-shape', field: 'members[0].shape', limit: 2.5 });
    expect(problem.value).toBeLessThan(2.5);
  });

  it('longer than 100 m are refused', () => {
    // Almost a full turn: the circle through both ends becomes huge.
    const problem = shaped({ kind: 'arc', turn: 2 * Math.PI - 1e-5 });
    expect(problem).toMatchObject({ code: 'network-shape', field: 'members[0]', limit: 1e5 });
  });

  it.each([
    ['members[0].shape.kind', { shape: { kind: 'zigzag' } }],
    ['members[0].shape.kind', { shape: { kind: 'toString' } }],
    ['members[0].thickness.kind', { thickness: { kind: 'lens' } }],
    ['members[0].thickness.part', { thickness: { kind: 'notch', least: 1, deep: 1, part: 'half' } }],
    ['members[0].hinged', { hinged: 'maybe' }],
  ])('%s must be a known one', (field, change) => {
    expect(problemOf(withMember(change as unknown as Partial<Member>))).toMatchObject({ code: 'not-one-of', field });
  });
});

describe('members that are no beams', () => {
  it('are noted when under five times as long as thick', () => {
    const result = checkModel(withMember({ thickness: 5 }));
    expect(result).toMatchObject({
      ok: true,
      notes: [{ code: 'leaf-too-thick-for-length', field: 'members[0].thickness', value: 20, limit: 25 }],
    });
  });

  it('are refused when over ten times as thick as long', () => {
    expect(problemOf(withMember({ thickness: 201 }))).toMatchObject({
      code: 'above-maximum',
      field: 'members[0].thickness',
      value: 201,
      limit: 200,
    });
  });

  it('count with what they run on into: a short fillet belongs to its leaf', () => {
    const nodes = [0, 0.05, 12].map((x, i) => ({ id: `n${i}`, x, y: 0 }));
    const fillet = { kind: 'notch', least: 0.8, deep: 0.05, part: 'closing' } as const;
    const plain = { shape: { kind: 'straight' }, width: 6 } as const;
    const model = network({
      nodes,
      members: [
        { ...plain, id: 'fillet', from: 'n0', to: 'n1', thickness: fillet },
        { ...plain, id: 'leaf', from: 'n1', to: 'n2', thickness: 0.8 },
      ],
      supports: [{ at: 'n0', ...HELD }],
      loads: [{ at: 'n2', y: 1 }],
    });
    expect(checkModel(model)).toMatchObject({ ok: true, notes: [] });
    // On a pad they are two, and the fillet alone is a block.
    const apart = { ...model, pads: [{ id: 'block', nodes: ['n1'] }] };
    expect(problemOf(apart)).toMatchObject({ code: 'above-maximum', field: 'members[0].thickness' });
  });
});

describe('what acts', () => {
  it.each<[string, Partial<BeamModel>, string]>([
    [
      'motions[1].y',
      {
        motions: [
          { at: 'moving', y: 2 },
          { at: 'moving', y: 3 },
        ],
      },
      'motions[0]',
    ],
    [
      'motions[1].turn',
      {
        motions: [
          { at: 'moving', y: 2 },
          { at: 'fixed', turn: 1 },
        ],
      },
      'supports[0]',
    ],
    ['ties[0].y', { ties: [{ at: 'moving', like: 'fixed', y: 1 }] }, 'motions[0]'],
    ['ties[0].x', { ties: [{ at: 'fixed', like: 'moving', x: 1 }] }, 'supports[0]'],
    [
      'ties[1].x',
      {
        ties: [
          { at: 'moving', like: 'fixed', x: 1 },
          { at: 'moving', like: 'fixed', x: 2 },
        ],
      },
      'ties[0]',
    ],
  ])('%s may not ask for what another has the say over', (field, change, by) => {
    const problem = problemOf({ ...SOUND, ...change });
    expect(problem).toMatchObject({ code: 'network-conflict', field });
    expect(problem.message).toContain(`over which ${by} has the say already`);
  });

  it('ties and springs do not lead back to where they start', () => {
    expect(problemOf({ ...SOUND, ties: [{ at: 'moving', like: 'moving', x: 1 }] })).toMatchObject({
      code: 'network-conflict',
      field: 'ties[0].like',
    });
    expect(problemOf({ ...SOUND, springs: [{ at: 'moving', to: 'moving', x: 1 }] })).toMatchObject({
      code: 'network-conflict',
      field: 'springs[0].to',
    });
  });

  it('ties do not follow what is tied in the same direction', () => {
    const nodes = [...SOUND.nodes, { id: 'post', x: 5, y: 5 }];
    const supports = [...SOUND.supports, { at: 'post', y: true }];
    const ties = [
      { at: 'moving', like: 'post', x: 1, turn: 1 },
      { at: 'post', like: 'fixed', x: 1 },
    ];
    const problem = problemOf({ ...SOUND, nodes, supports, ties });
    expect(problem).toMatchObject({ code: 'network-conflict', field: 'ties[0].like', value: 'post' });
    expect(problem.message).toContain('ties[1] ties in x');
  });

  it('held twice is held', () => {
    expect(problemsOf({ ...SOUND, supports: [...SOUND.supports, ...SOUND.supports] })).toEqual([]);
  });

  it('must be something, and not 0', () => {
    expect(problemOf({ ...SOUND, motions: [] })).toMatchObject({ code: 'network-idle', field: 'motions' });
    const still = { ...SOUND, motions: [{ at: 'moving', y: 0 }], loads: [{ at: 'moving', x: 0, moment: 0 }] };
    expect(problemOf(still).message).toContain('is 0');
    expect(problemOf({ ...SOUND, motions: [{ at: 'moving' }] }).message).toContain('Nothing moves or loads');
    expect(problemsOf({ ...SOUND, motions: [], loads: [{ at: 'moving', moment: 1 }] })).toEqual([]);
  });
});

describe('what floats', () => {
  const loaded = { motions: [], loads: [{ at: 'moving', x: 1 }] };

  it('is told when nothing is held at all', () => {
    expect(problemOf({ ...SOUND, ...loaded, supports: [] })).toMatchObject({
      code: 'network-loose',
      field: 'supports',
    });
  });

  it.each([
    ['turning', [{ at: 'fixed', x: true, y: true }]],
    ['moving along x', [{ at: 'fixed', y: true, turn: true }]],
    ['moving along y and turning', [{ at: 'fixed', x: true }]],
    [
      'moving along y',
      [
        { at: 'fixed', x: true },
        { at: 'post', x: true },
      ],
    ],
  ])('by %s is told with the way', (way, supports) => {
    const nodes = [...SOUND.nodes, { id: 'post', x: 20, y: 15 }];
    const members = [...SOUND.members, { ...SOUND.members[0]!, id: 'third', from: 'm1', to: 'post' }];
    const problem = problemOf({ ...SOUND, ...loaded, nodes, members, supports });
    expect(problem).toMatchObject({ code: 'network-loose', value: 'fixed' });
    expect(problem.message).toContain(`from ${way};`);
  });

  it('three supports that all meet in one point leave it turning about that point', () => {
    const ring = [0, 120, 240].map((deg) => ({
      x: 10 * Math.cos((deg * Math.PI) / 180),
      y: 10 * Math.sin((deg * Math.PI) / 180),
    }));
    // Two pads held in x and y at the same place are one pin.
    const model = between(
      [{ from: ring[0]!, to: ring[1]! }],
      { x: 0, y: 0 },
      {},
      {
        supports: [
          { at: 'fixed', x: true, y: true },
          { at: 'moving', x: true, y: true },
        ],
        loads: [{ at: 'moving', moment: 1 }],
      },
    );
    expect(problemOf(model).message).toContain('turning');
  });

  it('a part of its own is told by name, and one that no member joins as such', () => {
    const nodes = [...SOUND.nodes, { id: 'a', x: 50, y: 0 }, { id: 'b', x: 60, y: 0 }, { id: 'lost', x: 70, y: 0 }];
    const members = [...SOUND.members, { ...SOUND.members[0]!, id: 'apart', from: 'a', to: 'b' }];
    const problems = problemsOf({ ...SOUND, nodes, members });
    expect(problems.map(({ code, value }) => [code, value])).toEqual([
      ['network-loose', 'a'],
      ['network-loose', 'lost'],
    ]);
    expect(problems[1]?.message).toContain('No member joins “lost”');
    const spring = { at: 'a', to: 'moving', x: 1, y: 1, turn: 1 };
    const held = {
      ...SOUND,
      nodes,
      members,
      springs: [spring],
      supports: [...SOUND.supports, { at: 'lost', ...HELD }],
    };
    expect(problemsOf(held)).toEqual([]);
  });
});
