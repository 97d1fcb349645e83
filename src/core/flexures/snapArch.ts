import { bistableRatio } from '../closedForms/snapArch.ts';
import { plain, type Problem } from '../problems.ts';
import type { Mm } from '../units.ts';
import { notePlainBending, noteSharpRoot } from './commonChecks.ts';
import { DEPTH, FILLET, SIDE_BY_SIDE } from './commonSizes.ts';
import type { Drive, FlexureFamily } from './family.ts';
import { FRAME_NOTE } from './frameNote.ts';
import { judgeRoom } from './roomChecks.ts';
import { flexing, formOf, type SnapArchSizes } from './snapArchSizes.ts';
import { ARCH_FORMS } from './snapArchHandForms.ts';
import { wallShoulder } from './wall.ts';
import { lineSection, linesUpTo } from './lineSection.ts';

/** Pushed by something that lets it go aside and turn, as a finger does. */
const PRESSED: Drive = {
  id: 'pressed',
  measure: 'travel',
  min: 0.05,
  max: 100,
  step: 0.05,
  typical: 5,
  because: 'less is within the play of a print, and more needs an arch that does not fit a usual plate',
};

/** Pushed by a stem that keeps the block from turning; it may still go aside. */
const GUIDED: Drive = { ...PRESSED, id: 'guided' };

/**
 * A cosine arch between two walls of a frame, or two with a block between their middles, pushed through to where it
 * may stay. A rigid block takes its width out of the arch: what bends are two half waves, level at wall and block.
 */
export const snapArch: FlexureFamily<SnapArchSizes> = {
  id: 'snapArch',
  lyings: ['flat'],
  countOf: 'lines',
  parameters: {
    lines: linesUpTo(8, 'make a block that no finger snaps'),
    arches: {
      kind: 'count',
      min: 1,
      max: 2,
      step: 1,
      typical: 2,
      because: 'one arch leans aside, two joined at the middle keep each other upright; more add nothing new',
    },
    span: {
      kind: 'length',
      min: 5,
      max: 250,
      step: 0.5,
      typical: 60,
      because: 'a shorter arch is too stiff to snap, a longer one does not fit a usual plate',
    },
    rise: {
      kind: 'length',
      min: 0.2,
      max: 50,
      step: 0.1,
      typical: 3,
      because: 'a lower arch is a straight leaf, a higher one does not fit a usual plate',
    },
    apart: {
      kind: 'length',
      min: 0.5,
      max: 50,
      step: 0.5,
      typical: 4,
      because: 'arches closer than a line fuse, further apart make a part for themselves',
    },
    block: {
      kind: 'length',
      min: 0,
      max: 100,
      step: 0.5,
      typical: 4,
      because: 'without a block the arch is pushed by a point; a wider one leaves no arch on a usual plate',
    },
    depth: DEPTH,
    fillet: { ...FILLET, typical: 0.6 },
    sideBySide: SIDE_BY_SIDE,
  },
  roles: { count: 'lines', length: 'span', depth: 'depth', fillet: 'fillet', sideBySide: 'sideBySide' },
  snaps: true,
  drives: [PRESSED, GUIDED],

  check: (sizes, thickness, { lineWidth }) => {
    const wide = refuseWideBlock(sizes, thickness);
    if (wide.length > 0) return wide;
    const tight = refuseTightCrown(sizes, thickness);
    if (tight.length > 0) return tight;
    return [
      ...refuseNarrowBlock(sizes),
      ...judgeArches(sizes, thickness, lineWidth),
      ...refuseMergedRoots(sizes, thickness),
      ...noteNoSecondRest(sizes, thickness),
      ...notePlainBending(thickness, flexing(sizes) / 2).map((note) => ({ ...note, field: 'sizes.span' })),
      ...noteSharpRoot(sizes.fillet),
      FRAME_NOTE,
    ];
  },

  section: lineSection,

  root: ({ fillet }, thickness) => ({ fillet, shoulder: wallShoulder(thickness, fillet) }),

  handForms: ARCH_FORMS,
};

function refuseWideBlock(sizes: SnapArchSizes, thickness: Mm): readonly Problem[] {
  const { span, block } = sizes;
  // Half a wave shorter than two thicknesses is a corner, no leaf.
  const least = block + 4 * thickness;
  if (span >= least * (1 - 1e-9)) return [];
  return [
    {
      code: 'no-room',
      message: `A span of ${plain(span)} mm has no room for a block of ${plain(block)} mm and an arch of ${plain(thickness)} mm on either side; make it at least ${plain(least)} mm`,
      field: 'sizes.span',
      value: span,
      limit: least,
    },
  ];
}

/** A crown, R = L²/(2π²·h), tighter than twice the thickness is a fold and no leaf. */
function refuseTightCrown(sizes: SnapArchSizes, thickness: Mm): readonly Problem[] {
  const { rise } = sizes;
  const limit = flexing(sizes) ** 2 / (4 * Math.PI ** 2 * thickness);
  if (rise <= limit * (1 + 1e-9)) return [];
  return [
    {
      code: 'no-room',
      message: `A rise of ${plain(rise)} mm bends the crown tighter than twice the ${plain(thickness)} mm of the arch; make it at most ${plain(limit)} mm, or the span longer`,
      field: 'sizes.rise',
      value: rise,
      limit,
    },
  ];
}

/** The fillets of the half arches lie within the width of the block. */
function refuseNarrowBlock({ block, fillet }: SnapArchSizes): readonly Problem[] {
  const least = 3 * fillet;
  if (block === 0 || block >= least * (1 - 1e-9)) return [];
  return [
    {
      code: 'no-room',
      message: `A block of ${plain(block)} mm has no room for fillets of ${plain(fillet)} mm on both sides; make it at least ${plain(least)} mm, or 0 for none`,
      field: 'sizes.block',
      value: block,
      limit: least,
    },
  ];
}

/** Two alike arches are nearest where they are steepest: apart·cos β − t, with tan β = π·h/L. */
function judgeArches(sizes: SnapArchSizes, thickness: Mm, line: Mm): readonly Problem[] {
  const { arches, apart, rise } = sizes;
  if (arches === 1) return [];
  const slant = Math.hypot(1, (Math.PI * rise) / flexing(sizes));
  const limit = (thickness + line) * slant;
  const cure = `set them at least ${plain(limit)} mm apart`;
  const room = apart / slant - thickness;
  return judgeRoom({ room, between: 'the two arches', field: 'sizes.apart', value: apart, limit, cure }, line);
}

/** Between the roots of two arches both their fillets need room; arches that touch anyway are spoken of before. */
function refuseMergedRoots({ arches, apart, fillet }: SnapArchSizes, thickness: Mm): readonly Problem[] {
  const least = thickness + 2 * fillet;
  if (arches === 1 || apart <= thickness || apart >= least * (1 - 1e-9)) return [];
  return [
    {
      code: 'roots-merge',
      message: `Arches ${plain(apart)} mm apart have no room for fillets of ${plain(fillet)} mm between them; set them at least ${plain(least)} mm apart, or make the fillets at most ${plain((apart - thickness) / 2)} mm`,
      field: 'sizes.apart',
      value: apart,
      limit: least,
    },
  ];
}

function noteNoSecondRest(sizes: SnapArchSizes, thickness: Mm): readonly Problem[] {
  const { rise, arches } = sizes;
  const ratio = bistableRatio(formOf(sizes));
  const limit = ratio * thickness;
  if (rise >= limit * (1 - 1e-9)) return [];
  const why =
    arches === 1
      ? 'one arch alone leans aside and springs back; join two by a block, or'
      : 'it is too flat for its thickness and springs back;';
  return [
    {
      code: 'no-second-rest',
      message: `A rise of ${plain(rise)} mm is ${plain(rise / thickness)} times the thickness, under the ${plain(ratio)} from which it stays: ${why} make the rise at least ${plain(limit)} mm`,
      field: 'sizes.rise',
      value: rise,
      limit,
    },
  ];
}
