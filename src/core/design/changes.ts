import { everyFilament } from '../material/shelf.ts';
import { familyOf } from '../flexures/known.ts';
import { isAsked } from '../flexures/drives.ts';
import type { Parameter } from '../flexures/family.ts';
import { radians } from '../units.ts';
import type { Assessment } from './assessment.ts';
import type { Judge } from './assess.ts';
import type { Joint } from './joint.ts';
import type { RemedyKind } from './remedy.ts';
import { scaleJoint, scaleToWhole } from './scalePart.ts';
import { isByShape, leastChange } from './leastChange.ts';
import { amountAtEffort, largestAmount } from './sizeFor.ts';
import { touchesAt } from './solvedPath.ts';
import { lengthen, LONGEST_ROW, otherSize } from './sizeChanges.ts';
import { withSize } from './withSize.ts';
import { stoppedAt } from './swing.ts';
import { understand } from './understand.ts';
import { withCount } from './withCount.ts';

/** A change of one kind that may help; whether it does is decided by assessing it. */
export interface Change {
  readonly kind: RemedyKind;
  readonly after: Joint;
  /** As solved on the way, where it was. */
  readonly assessed?: Assessment;
  readonly scale?: number;
  /** Name of the size, for `other size`. */
  readonly size?: string;
}

/** Proposes changes of one kind, gentlest first, of one size only where that is named; none where the kind cannot help. */
type Proposer = (a: Assessment, judge: Judge, only?: string) => readonly Change[];

/** A line set narrower than this share of the nozzle is stretched thin (common practice, no source). */
const NARROWEST_SHARE = 0.9;
const LINE_WIDTH_STEP = 0.01;
/** So many lines or layers more are looked at; beyond it a section is a pad. */
const MOST_LINES = 4;
/** Fillets are tried in steps that a drawing would carry. */
const FILLET_STEP = 0.2;
/** A touch is known to within some thousandths of its amount. */
const JUST_BEFORE = 0.995;
/** A part scaled beyond this is another part. */
const SCALE_RANGE = { least: 0.5, most: 3 } as const;

/** The first of these that passes, else the last that is not refused: as far as this kind goes. */
function firstThatPasses(
  kind: RemedyKind,
  candidates: readonly Joint[],
  a: Assessment,
  judge: Judge,
): readonly Change[] {
  const possible = candidates.filter((joint) => understand(joint).ok);
  const last = possible.at(-1);
  if (last === undefined) return [];
  const found = leastChange(a, { most: possible.length, at: (step) => possible[step - 1] ?? last }, judge);
  return [{ kind, after: last, ...found }];
}

function roundUp(value: number, step: number): number {
  // A part in 10⁹ keeps 15.000000001 from becoming 15.5; it is far below any printable step.
  return Number((Math.ceil(value / step - 1e-9) * step).toFixed(6));
}

const fewerLines: Proposer = (a, judge) => {
  const count = a.section.count - 1;
  if (count < 1) return [];
  const found = leastChange(a, { most: count, at: (fewer) => withCount(a.joint, count + 1 - fewer) }, judge);
  return [{ kind: 'fewer lines', after: withCount(a.joint, count), ...found }];
};

/** A single line may tear; more stay in a second place less, and push back harder. */
const moreLines: Proposer = (a, judge) => {
  if (a.section.count === 1) return [{ kind: 'more lines', after: withCount(a.joint, 2) }];
  const found = leastChange(a, { most: MOST_LINES, at: (more) => withCount(a.joint, a.section.count + more) }, judge);
  return found ? [{ kind: 'more lines', ...found }] : [];
};

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
  return firstThatPasses('line width', candidates, a, judge);
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
    a,
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
    a,
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

/** Amounts that a drawing would carry: whole degrees, or steps of the travel. */
function unitOf({ measure, step }: Assessment['drive']): number {
  return measure === 'turn' ? radians(1) : step;
}

/** Where it strains, pushes and stays clear as it should, as far as the way that is known tells. */
function stopGuess(a: Assessment): number {
  const touch = a.solved ? touchesAt(a.solved) : Number.POSITIVE_INFINITY;
  return Math.min(largestAmount(a), amountAtEffort(a), touch * JUST_BEFORE);
}

const stopEarlier: Proposer = (a, judge) => {
  // Where it rests does not change with how far it is pushed.
  if (a.verdict.reason !== 'touches' && isByShape(a)) return [];
  const unit = unitOf(a.drive);
  const { movement } = a.joint;
  const first = Math.min(Math.floor(stopGuess(a) / unit + 1e-9), Math.ceil(movement.amount / unit - 1e-9) - 1);
  const amountAt = (count: number) => (a.drive.measure === 'turn' ? radians(count) : Number((count * unit).toFixed(6)));
  const most = first + 1 - Math.ceil(a.drive.min / unit - 1e-9);
  if (most < 1) return [];
  const at = (step: number): Joint => ({
    ...a.joint,
    movement: stoppedAt(movement, amountAt(first + 1 - step), a.drive.step),
  });
  return [{ kind: 'stop earlier', after: at(1), ...leastChange(a, { most, at }, judge, 1) }];
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
  { kind: 'other size', propose: otherSize },
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
