import { plain, type Problem } from '../problems.ts';
import { radians, type Mm } from '../units.ts';
import { notePlainBending, noteSharpRoot } from './commonChecks.ts';
import { DEPTH, FILLET } from './commonSizes.ts';
import type { Drive, FlexureFamily } from './family.ts';
import { judgeRoom } from './roomChecks.ts';
import { SPIRAL_FORMS } from './spiralHandForms.ts';
import { armLength, type SpiralSizes } from './spiralSizes.ts';
import { wallShoulder } from './wall.ts';
import { lineSection, linesUpTo } from './lineSection.ts';

const CENTRED: Drive = {
  id: 'centred',
  measure: 'turn',
  min: radians(0.1),
  max: radians(720),
  step: radians(1),
  typical: radians(35),
  because: 'less is no movement, and two turns wind most spirals that fit a plate until their arms touch',
};
const TURNED: Drive = { ...CENTRED, id: 'turned' };
const SHIFTED: Drive = {
  id: 'shifted',
  measure: 'travel',
  min: 0.01,
  max: 50,
  step: 0.05,
  typical: 0.5,
  because: 'less is within the play of a print, and more brings the hub to the ring in most spirals',
};

/** Arms of a flat spiral from a hub in the middle to a ring round it; the ring stays, the hub moves. */
export const spiral: FlexureFamily<SpiralSizes> = {
  id: 'spiral',
  lyings: ['flat'],
  countOf: 'lines',
  parameters: {
    lines: linesUpTo(8, 'make spokes rather than springs'),
    arms: {
      kind: 'count',
      min: 1,
      max: 6,
      step: 1,
      typical: 3,
      because: 'one arm holds the hub; more than six leave little room between them',
    },
    hub: {
      kind: 'length',
      min: 1,
      max: 150,
      step: 0.5,
      typical: 6,
      because: 'a smaller hub is no thicker than an arm, a larger one leaves no room for a ring on a usual plate',
    },
    ring: {
      kind: 'length',
      min: 4,
      max: 250,
      step: 0.5,
      typical: 23,
      because: 'a smaller ring has no room for arms, a larger one does not fit a usual plate',
    },
    turns: {
      kind: 'ratio',
      min: 0.25,
      max: 20,
      step: 0.05,
      typical: 1.25,
      because: 'shorter arms are spokes that stretch, longer ones hang through under their own weight',
    },
    depth: DEPTH,
    fillet: { ...FILLET, typical: 0.6 },
  },
  roles: { count: 'lines', length: 'ring', depth: 'depth', fillet: 'fillet', sideBySide: 'arms' },
  drives: [CENTRED, TURNED, SHIFTED],

  check: (sizes, thickness, { lineWidth }) => {
    const wide = [...refuseThinHub(sizes, thickness), ...refuseHubOverRing(sizes, thickness)];
    if (wide.length > 0) return wide;
    return [
      ...judgeArms(sizes, thickness, lineWidth),
      ...notePlainBending(thickness, armLength(sizes)).map((note) => ({ ...note, field: 'sizes.ring' })),
      ...noteSharpRoot(sizes.fillet),
    ];
  },

  section: lineSection,

  /** Arms leave at a slant, nearly along hub and ring; the root is taken as one square to a thick wall. */
  root: ({ fillet }, thickness) => ({ fillet, shoulder: wallShoulder(thickness, fillet) }),

  handForms: SPIRAL_FORMS,
};

/**
 * Room between neighbouring arms as printed, where it is least: at the hub.
 *
 *     p = 2π·a·r/(m·√(r² + a²)) − t,   a = (R − r)/(2π·n)
 *
 * the distance along the radius between arms, times the cosine of their slant. One arm that does not come round to
 * itself has no neighbour.
 *
 * @param sizes - arms and turns [-], hub and ring [mm], the ring larger
 * @param thickness - of an arm, t [mm], > 0
 * @returns room [mm], below 0 where they overlap, infinite without a neighbour
 *
 * Source: spiral-arm.
 */
export function roomBetweenArms({ arms, hub, ring, turns }: SpiralSizes, thickness: Mm): Mm {
  if (arms === 1 && turns < 1) return Infinity;
  const a = (ring - hub) / (4 * Math.PI * turns);
  const r = hub / 2;
  return (2 * Math.PI * a * r) / (arms * Math.hypot(r, a)) - thickness;
}

/** A hub no thicker than twice its arms bends along with them. */
function refuseThinHub({ hub }: SpiralSizes, thickness: Mm): readonly Problem[] {
  const least = 2 * thickness;
  if (hub >= least * (1 - 1e-9)) return [];
  return [
    {
      code: 'no-room',
      message: `A hub of ${plain(hub)} mm is under twice the ${plain(thickness)} mm of its arms, so it bends too; make it at least ${plain(least)} mm`,
      field: 'sizes.hub',
      value: hub,
      limit: least,
    },
  ];
}

function refuseHubOverRing({ hub, ring }: SpiralSizes, thickness: Mm): readonly Problem[] {
  const least = hub + 4 * thickness;
  if (ring >= least * (1 - 1e-9)) return [];
  return [
    {
      code: 'no-room',
      message: `A ring of ${plain(ring)} mm round a hub of ${plain(hub)} mm leaves no room for arms of ${plain(thickness)} mm; make it at least ${plain(least)} mm`,
      field: 'sizes.ring',
      value: ring,
      limit: least,
    },
  ];
}

/** Where the circumference of the hub is too short for all arms no ring helps; otherwise fewer turns open the arms. */
function judgeArms(sizes: SpiralSizes, thickness: Mm, line: Mm): readonly Problem[] {
  const { arms, hub, ring, turns } = sizes;
  const room = roomBetweenArms(sizes, thickness);
  const pitch = (arms * (thickness + line)) / (2 * Math.PI);
  const between = 'neighbouring arms';
  const r = hub / 2;
  // From p = one line: a·r/√(r² + a²) = pitch has an answer only for r above the pitch.
  const a = r > pitch ? (pitch * r) / Math.sqrt(r * r - pitch * pitch) : Infinity;
  const most = (ring / 2 - r) / (2 * Math.PI * a);
  if (most >= spiral.parameters.turns.min) {
    const cure = `take at most ${plain(most)} turns, or a larger ring`;
    return judgeRoom({ room, between, field: 'sizes.turns', value: turns, limit: most, cure }, line);
  }
  const limit = Math.max(4 * pitch, hub * (1 + 1e-3));
  const cure = `make the hub at least ${plain(limit)} mm with a ring to match, or take fewer arms`;
  return judgeRoom({ room, between, field: 'sizes.hub', value: hub, limit, cure }, line);
}
