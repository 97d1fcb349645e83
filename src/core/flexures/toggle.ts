import { plain, type Problem } from '../problems.ts';
import { radians } from '../units.ts';
import { notePlainBending, noteSharpRoot, refuseThinPad } from './commonChecks.ts';
import { DEPTH, FILLET, PAD, ROLES, SIDE_BY_SIDE } from './commonSizes.ts';
import type { Drive, FlexureFamily } from './family.ts';
import { FRAME_NOTE } from './frameNote.ts';
import { staysByHand, TOGGLE_FORMS } from './toggleHandForms.ts';
import { roofHeight, springThickness, type ToggleSizes } from './toggleSizes.ts';
import { lineSection } from './lineSection.ts';

const PRESSED: Drive = {
  id: 'pressed',
  measure: 'travel',
  min: 0.05,
  max: 100,
  step: 0.1,
  typical: 15,
  because: 'less is within the play of a print, and more needs links that do not fit a usual plate',
};

/**
 * Two stiff links in a shallow roof, joined by necks to the frame, to each other and to a spring leaf that stands along
 * the push. Pressed flat they push the leaf outwards; past the middle it pushes them on.
 */
export const toggle: FlexureFamily<ToggleSizes> = {
  id: 'toggle',
  lyings: ['flat'],
  countOf: 'lines',
  parameters: {
    lines: {
      kind: 'count',
      min: 1,
      max: 6,
      step: 1,
      typical: 1,
      because: 'at least one line is laid; necks of more than 6 straighten the toggle back',
    },
    springLines: {
      kind: 'count',
      min: 1,
      max: 20,
      step: 1,
      typical: 6,
      because: 'at least one line is laid; more than 20 make a post rather than a spring',
    },
    hinge: {
      kind: 'length',
      min: 0.5,
      max: 30,
      step: 0.5,
      typical: 5,
      because: 'a shorter neck is no longer than it is thick, a longer one bows out under the thrust',
    },
    link: {
      kind: 'length',
      min: 5,
      max: 120,
      step: 1,
      typical: 40,
      because: 'a shorter link is no stiffer than its necks, a longer one does not fit a usual plate',
    },
    incline: {
      kind: 'angle',
      min: radians(3),
      max: radians(40),
      step: radians(1),
      typical: radians(12),
      because: 'a flatter roof has no hump to speak of, a steeper one bends its necks too far',
    },
    spring: {
      kind: 'length',
      min: 3,
      max: 120,
      step: 0.5,
      typical: 20,
      because: 'a shorter leaf is a post, a longer one does not fit a usual plate',
    },
    depth: DEPTH,
    fillet: { ...FILLET, typical: 0.6 },
    pad: { ...PAD, typical: 4 },
    sideBySide: SIDE_BY_SIDE,
  },
  roles: { ...ROLES, length: 'hinge' },
  snaps: true,
  drives: [PRESSED],

  check: (sizes, thickness) => {
    const { hinge, fillet, pad, spring } = sizes;
    const leaf = springThickness(sizes, thickness);
    const refused = [
      ...refuseThinPad(pad, thickness, fillet, 2),
      ...refuseShortLink(sizes),
      ...refuseLowEnd(sizes),
      ...refuseTightNeck(sizes),
    ];
    if (refused.length > 0) return refused;
    return [
      ...notePlainBending(thickness, hinge).map((note) => ({ ...note, field: 'sizes.hinge' })),
      ...notePlainBending(leaf, spring).map((note) => ({ ...note, field: 'sizes.spring' })),
      ...noteSharpRoot(fillet),
      ...noteNoSecondRest(sizes, thickness),
      FRAME_NOTE,
    ];
  },

  section: lineSection,

  root: ({ fillet, pad }) => ({ fillet, shoulder: pad }),

  handForms: TOGGLE_FORMS,
};

/** How far past the mirror image of the roof links and necks still need room. */
const PAST_MIRRORED = 1.05;

function noRoom(message: string, field: string, value: number, limit: number): Problem {
  return { code: 'no-room', message, field, value, limit };
}

/** Links shorter than thick are no links. */
function refuseShortLink({ link, pad, fillet }: ToggleSizes): readonly Problem[] {
  const limit = pad + 2 * fillet;
  if (link >= limit * (1 - 1e-9)) return [];
  const message = `Links of ${plain(link)} mm have no room for their fillets and a body as long as the ${plain(pad)} mm they are thick; make them at least ${plain(limit)} mm`;
  return [noRoom(message, 'sizes.link', link, limit)];
}

/** The base carries the foot of the spring leaf; the links swing between it and the line of thrust. */
function refuseLowEnd(sizes: ToggleSizes): readonly Problem[] {
  const { spring, fillet } = sizes;
  const limit = PAST_MIRRORED * roofHeight(sizes) + 1 - 2 * fillet;
  if (spring >= limit * (1 - 1e-9)) return [];
  const message = `A spring leaf of ${plain(spring)} mm holds the base so near that the links hit it; make it at least ${plain(limit)} mm, or the roof flatter`;
  return [noRoom(message, 'sizes.spring', spring, limit)];
}

/**
 * Inner edges of the pads on either side of a neck of length h meet at a turn θ with h = θ·(D/2 − r·cot(θ/2)); outer
 * necks turn by twice the incline and the middle one, twice as long, by four times.
 */
function refuseTightNeck({ hinge, incline, pad, fillet }: ToggleSizes): readonly Problem[] {
  const turn = 2 * PAST_MIRRORED * incline;
  const least = (whole: number) => turn * (pad / 2 - fillet / Math.tan(whole / 2));
  const limit = Math.max(least(turn), least(2 * turn));
  if (hinge >= limit * (1 - 1e-9)) return [];
  const message = `Necks of ${plain(hinge)} mm let the links run into each other before the far side; make them at least ${plain(limit)} mm, or the links thinner`;
  return [noRoom(message, 'sizes.hinge', hinge, limit)];
}

function noteNoSecondRest(sizes: ToggleSizes, thickness: number): readonly Problem[] {
  if (staysByHand(sizes, thickness)) return [];
  return [
    {
      code: 'no-second-rest',
      message:
        'By the simple form its necks straighten it back from every place, so it does not stay; lengthen the links, steepen them, thin the necks or stiffen the spring leaf',
    },
  ];
}
