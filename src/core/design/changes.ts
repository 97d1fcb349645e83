import { FILAMENTS } from '../material/filaments.ts';
import { familyOf } from '../flexures/known.ts';
import { isAsked } from '../flexures/drives.ts';
import type { Parameter } from '../flexures/family.ts';
import { asRad, degrees, radians } from '../units.ts';
import type { Assessment } from './assessment.ts';
import type { Judge } from './assess.ts';
import type { Joint } from './joint.ts';
import type { RemedyKind } from './remedy.ts';
import { scaleJoint, scaleToWhole } from './scalePart.ts';
import { largestAmount, mostCount, shortestLength, withCount } from './sizeFor.ts';

/** A change of one kind that may help; whether it does is decided by assessing it. */
export interface Change {
  readonly kind: RemedyKind;
  readonly after: Joint;
  readonly scale?: number;
}

/** Proposes changes of one kind, gentlest first; none where the kind cannot help. */
export type Proposer = (a: Assessment, judge: Judge) => readonly Change[];

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

function passes(joint: Joint, judge: Judge): boolean {
  const tried = judge(joint);
  return tried.ok && tried.value.verdict.grade === 'pass';
}

/** The first of these that passes, else the last that can be assessed: as far as this kind goes. */
function firstThatPasses(kind: RemedyKind, candidates: readonly Joint[], judge: Judge): readonly Change[] {
  const after = candidates.find((joint) => passes(joint, judge)) ?? candidates.at(-1);
  return after === undefined ? [] : [{ kind, after }];
}

function roundUp(value: number, step: number): number {
  // A part in 10⁹ keeps 15.000000001 from becoming 15.5; it is far below any printable step.
  return Number((Math.ceil(value / step - 1e-9) * step).toFixed(6));
}

const lengthen: Proposer = (a) => {
  const { roles, parameters } = familyOf(a.joint);
  const limits = parameters[roles.length] as Parameter;
  const length = Math.min(roundUp(shortestLength(a), limits.step), limits.max);
  return length > a.length ? [{ kind: 'lengthen', after: withSize(a.joint, roles.length, length) }] : [];
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
  FILAMENTS.filter((filament) => filament.printable && filament.id !== a.filament.id).map((filament) => ({
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
  return [{ kind: 'stop earlier', after: { ...a.joint, movement: { ...a.joint.movement, amount } } }];
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

/** For a joint that is still to be drawn: everything may change. */
export const DESIGN_CHANGES: readonly Proposer[] = [
  lengthen,
  fewerLines,
  moreLines,
  narrowerLine,
  share,
  largerFillet,
  otherFilament,
  turn,
  stopEarlier,
];

/** For a part that somebody else drew: what a person with the file and a printer can change. */
export const MEASURED_CHANGES: readonly Proposer[] = [
  scaleUp,
  wholeByLineWidth,
  drawWhole,
  otherFilament,
  turn,
  stopEarlier,
];
