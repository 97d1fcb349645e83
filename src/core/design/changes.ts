import { everyFilament } from '../material/shelf.ts';
import { familyOf } from '../flexures/known.ts';
import { isAsked } from '../flexures/drives.ts';
import type { Parameter } from '../flexures/family.ts';
import { asRad, degrees, radians, type Mm } from '../units.ts';
import type { Assessment } from './assessment.ts';
import type { Judge } from './assess.ts';
import type { Joint } from './joint.ts';
import type { RemedyKind } from './remedy.ts';
import { scaleJoint, scaleToWhole } from './scalePart.ts';
import { isPassing, passes } from './passing.ts';
import { allowedPeakStrain, largestAmount, mostCount, shortestLength } from './sizeFor.ts';
import { stoppedAt } from './swing.ts';
import { understand } from './understand.ts';
import { withCount } from './withCount.ts';

/** A change of one kind that may help; whether it does is decided by assessing it. */
export interface Change {
  readonly kind: RemedyKind;
  readonly after: Joint;
  readonly scale?: number;
}

/** Proposes changes of one kind, gentlest first; none where the kind cannot help. */
type Proposer = (a: Assessment, judge: Judge) => readonly Change[];

/** A line set narrower than this share of the nozzle is stretched thin (common practice, no source). */
const NARROWEST_SHARE = 0.9;
const LINE_WIDTH_STEP = 0.01;
/** Longer rows than this are a panel of cells, which is another kind of joint. */
const LONGEST_ROW = 6;
/** Fillets are tried in steps that a drawing would carry. */
const FILLET_STEP = 0.2;
/** A part scaled beyond this is another part. */
const SCALE_RANGE = { least: 0.5, most: 3 } as const;

function withSize(joint: Joint, name: string, value: number): Joint {
  return { ...joint, sizes: { ...joint.sizes, [name]: value } };
}

/**
 * The first of these that passes, else the last that is not refused: as far as this kind goes. Once one passes, those after
 * it are taken to pass as well, so that few are looked at.
 */
function firstThatPasses(kind: RemedyKind, candidates: readonly Joint[], judge: Judge): readonly Change[] {
  const possible = candidates.filter((joint) => understand(joint).ok);
  const last = possible.at(-1);
  if (last === undefined) return [];
  if (!passes(last, judge)) return [{ kind, after: last }];
  let [fails, found] = [-1, possible.length - 1];
  while (found - fails > 1) {
    const middle = Math.floor((fails + found) / 2);
    if (passes(possible[middle] ?? last, judge)) found = middle;
    else fails = middle;
  }
  return [{ kind, after: possible[found] ?? last }];
}

function roundUp(value: number, step: number): number {
  // A part in 10⁹ keeps 15.000000001 from becoming 15.5; it is far below any printable step.
  return Number((Math.ceil(value / step - 1e-9) * step).toFixed(6));
}

/** So often a length is set anew by what came of the one before. */
const LENGTHS_TRIED = 3;
/** A length that passes is not worth another solve for less than this share of it. */
const CLOSE_ENOUGH = 0.1;

/**
 * The length at which what is allowed is reached: as the strain fell from one solved length to the next, else by hand form.
 */
function lengthFrom(known: Assessment, earlier: Assessment | undefined): Mm {
  const by = earlier && Math.log(earlier.strain.peak / known.strain.peak) / Math.log(known.length / earlier.length);
  if (!by || !(by > STEADY.least && by < STEADY.most)) return shortestLength(known);
  return known.length * (known.strain.peak / allowedPeakStrain(known)) ** (1 / by);
}

/** Powers with which strain falls with length; others mean that something else has changed on the way. */
const STEADY = { least: 0.3, most: 6 } as const;

/** Hand forms that only estimate miss the length at first; what is solved there tells the next guess better. */
const lengthen: Proposer = (a, judge) => {
  const name = familyOf(a.joint).roles.length;
  const { step, max } = familyOf(a.joint).parameters[name] as Parameter;
  let [earlier, known, best]: [Assessment | undefined, Assessment, Assessment | undefined] = [undefined, a, undefined];
  for (let i = 0; i < LENGTHS_TRIED; i += 1) {
    const length = Math.min(roundUp(lengthFrom(known, earlier), step), max);
    const isShort = best !== undefined && isPassing(best) && length > (1 - CLOSE_ENOUGH) * best.length;
    if (length <= a.length || length === known.length || isShort) break;
    const tried = judge(withSize(a.joint, name, length));
    if (!tried.ok) break;
    [earlier, known] = [a.solved ? known : undefined, tried.value];
    if (best && isPassing(best) && !isPassing(known)) break;
    best = known;
  }
  return best === undefined ? [] : [{ kind: 'lengthen', after: best.joint }];
};

const fewerLines: Proposer = (a, judge) => {
  const count = a.section.count - 1;
  if (count < 1) return [];
  const most = mostCount(a.joint, count, judge);
  return [{ kind: 'fewer lines', after: withCount(a.joint, most ?? count) }];
};

const moreLines: Proposer = (a) =>
  a.section.count === 1 ? [{ kind: 'more lines', after: withCount(a.joint, 2) }] : [];

const narrowerLine: Proposer = (a, judge) => {
  if (a.section.countOf !== 'lines' || a.joint.measuredThickness !== undefined) return [];
  const { profile } = a.joint;
  const narrowest = Math.max(NARROWEST_SHARE * profile.nozzle, profile.layerHeight);
  const steps = Math.floor((profile.lineWidth - narrowest) / LINE_WIDTH_STEP + 1e-9);
  const widths = Array.from({ length: Math.max(0, steps) }, (_, i) => profile.lineWidth - (i + 1) * LINE_WIDTH_STEP);
  const candidates = widths.map((width) => ({
    ...a.joint,
    profile: { ...profile, lineWidth: Number(width.toFixed(4)) },
  }));
  return firstThatPasses('line width', candidates, judge);
};

const wholeByLineWidth: Proposer = (a) => {
  if (a.joint.measuredThickness === undefined || a.fit.outcome === 'whole') return [];
  return scaleToWhole(a).flatMap(({ count, lineWidthInstead }) =>
    lineWidthInstead === undefined
      ? []
      : [
          {
            kind: 'line width' as const,
            after: {
              ...a.joint,
              sizes: { ...a.joint.sizes, [familyOf(a.joint).roles.count]: count },
              profile: { ...a.joint.profile, lineWidth: Number(lineWidthInstead.toFixed(4)) },
            },
          },
        ],
  );
};

const share: Proposer = (a, judge) => {
  const { roles, parameters } = familyOf(a.joint);
  const { inRow } = roles;
  if (inRow === undefined || !isAsked(parameters[inRow] as Parameter, a.drive.id)) return [];
  const counts = Array.from({ length: Math.max(0, LONGEST_ROW - a.inRow) }, (_, i) => a.inRow + 1 + i);
  return firstThatPasses(
    'share the angle',
    counts.map((count) => withSize(a.joint, inRow, count)),
    judge,
  );
};

const largerFillet: Proposer = (a, judge) => {
  const name = familyOf(a.joint).roles.fillet;
  if (name === undefined || a.padThickness === undefined) return [];
  const room = (a.padThickness - a.section.thickness) / 2;
  const steps = Math.max(0, Math.floor((room - a.fillet) / FILLET_STEP + 1e-9));
  const fillets = Array.from({ length: steps }, (_, i) => roundUp(a.fillet + 1e-6, FILLET_STEP) + i * FILLET_STEP);
  return firstThatPasses(
    'larger fillet',
    fillets.filter((fillet) => fillet <= room).map((fillet) => withSize(a.joint, name, Number(fillet.toFixed(3)))),
    judge,
  );
};

const otherFilament: Proposer = (a) =>
  everyFilament()
    .filter((filament) => filament.printable && filament.id !== a.filament.id)
    .map((filament) => ({
      kind: 'other filament',
      after: { ...a.joint, profile: { ...a.joint.profile, filament: filament.id } },
    }));

const turn: Proposer = (a) => {
  const flat = familyOf(a.joint).lyings.includes('flat');
  if (a.joint.profile.lying !== 'upright' || !flat) return [];
  return [{ kind: 'turn the part', after: { ...a.joint, profile: { ...a.joint.profile, lying: 'flat' } } }];
};

/** Down to a figure that a drawing would carry: a whole degree, or a step of the travel. */
function roundDown(amount: number, { measure, step }: Assessment['drive']): number {
  if (measure === 'turn') return radians(Math.floor(degrees(asRad(amount)) + 1e-9));
  return Number((Math.floor(amount / step + 1e-9) * step).toFixed(6));
}

const stopEarlier: Proposer = (a) => {
  const amount = roundDown(largestAmount(a), a.drive);
  if (!(amount >= a.drive.min && amount < a.joint.movement.amount)) return [];
  return [{ kind: 'stop earlier', after: { ...a.joint, movement: stoppedAt(a.joint.movement, amount, a.drive.step) } }];
};

const scaleUp: Proposer = (a) => {
  if (a.joint.measuredThickness === undefined || a.fit.outcome === 'whole') return [];
  const { roles } = familyOf(a.joint);
  return scaleToWhole(a)
    .filter(({ scale }) => scale >= SCALE_RANGE.least && scale <= SCALE_RANGE.most)
    .map(({ count, scale }) => ({
      kind: 'scale the part',
      after: withSize(scaleJoint(a.joint, scale), roles.count, count),
      scale,
    }));
};

const drawWhole: Proposer = (a) => {
  if (a.joint.measuredThickness === undefined) return [];
  const counts = new Set([Math.max(1, Math.floor(a.fit.exact)), Math.ceil(a.fit.exact)]);
  return [...counts].map((count) => ({ kind: 'draw whole lines', after: withCount(a.joint, count) }));
};

/** A kind of change, and what proposes it. */
export interface KindOfChange {
  readonly kind: RemedyKind;
  readonly propose: Proposer;
}

/** For a joint that is still to be drawn: everything may change. */
export const DESIGN_CHANGES: readonly KindOfChange[] = [
  { kind: 'lengthen', propose: lengthen },
  { kind: 'fewer lines', propose: fewerLines },
  { kind: 'more lines', propose: moreLines },
  { kind: 'line width', propose: narrowerLine },
  { kind: 'share the angle', propose: share },
  { kind: 'larger fillet', propose: largerFillet },
  { kind: 'other filament', propose: otherFilament },
  { kind: 'turn the part', propose: turn },
  { kind: 'stop earlier', propose: stopEarlier },
];

/** For a part that somebody else drew: what a person with the file and a printer can change. */
export const MEASURED_CHANGES: readonly KindOfChange[] = [
  { kind: 'scale the part', propose: scaleUp },
  { kind: 'line width', propose: wholeByLineWidth },
  { kind: 'draw whole lines', propose: drawWhole },
  { kind: 'other filament', propose: otherFilament },
  { kind: 'turn the part', propose: turn },
  { kind: 'stop earlier', propose: stopEarlier },
];
