/** Holds what is laid across a thin section against what its joint, or the file itself, wants. */
import { assess } from '../../design/assess.ts';
import type { Joint } from '../../design/joint.ts';
import '../../flexures/index.ts';
import { familyOf, findFamily } from '../../flexures/known.ts';
import type { Mm } from '../../units.ts';
import type { PlaceAudit } from './audit.ts';
import type { AsLaid, JudgedPlace, WantedLaid } from './judgedPlace.ts';
import { laidChanges } from './laidChanges.ts';
import { laidFacts, middleOf, usualWidth } from './laidFacts.ts';
import { laidFindings, worstGrade, type Judging } from './laidFindings.ts';
import { laidRows } from './laidRows.ts';
import type { Place } from './place.ts';

/**
 * What a joint wants to be laid.
 *
 * @param joint - of a known kind [mm]
 * @returns count of lines or layers, width or height of each, thickness, depth [mm]
 */
export function wantedOfJoint(joint: Joint): WantedLaid {
  const { count, countOf, thickness, width } = familyOf(joint).section(joint.sizes, joint.profile);
  const { lineWidth, layerHeight } = joint.profile;
  return {
    from: 'joint',
    count,
    countOf,
    each: countOf === 'lines' ? lineWidth : layerHeight,
    thickness: joint.measuredThickness ?? thickness,
    depth: width,
  };
}

/** The value that most have; of equals the greatest. */
function most(counts: readonly number[]): number {
  const often = new Map<number, number>();
  for (const count of counts) often.set(count, (often.get(count) ?? 0) + 1);
  return [...often].toSorted((a, b) => b[1] - a[1] || b[0] - a[0])[0]?.[0] ?? 0;
}

/**
 * What a toolpath itself lays most: its usual line, and how many whole ones of it most layers have.
 *
 * @param audit - what is laid across the section [mm]
 * @param place - the section [mm]
 * @returns count of lines, of a crease of layers; width or height of each; thickness as it stands [mm]
 */
export function wantedOfFile(audit: PlaceAudit, place: Place): WantedLaid {
  const { thickness } = place;
  if (place.lying === 'crease') {
    const each = middleOf(audit.layers.map(({ height }) => height));
    return { from: 'file', count: Math.max(1, audit.layers.length), countOf: 'layers', each, thickness };
  }
  const each = usualWidth(audit) || thickness;
  const { layers } = laidFacts(place, audit, { countOf: 'lines', each });
  const count = most(layers.flatMap((layer) => (layer.isLaid && layer.count > 0 ? [layer.count] : [])));
  return { from: 'file', count: Math.max(1, count), countOf: 'lines', each, thickness };
}

/** Thickness to a micron: finer than anything measures. */
const micron = (value: Mm) => Number(value.toFixed(3));

/** A joint as it is, and as thick as it is laid. */
function asLaidOf(joint: Joint, thickness: Mm): AsLaid {
  const laid = { ...joint, measuredThickness: micron(thickness) };
  return { joint, before: assess(joint), after: assess(laid) };
}

/**
 * Judges what is laid across a thin section: whole, equal lines from end to end, no starts and no stops, as thick and as deep as wanted.
 *
 * Problems of the joint are those of `assess`, in `asLaid`.
 *
 * @param place - the section [mm]
 * @param audit - what is laid across it [mm]
 * @param wanted - of its joint, or of the file [mm]
 * @param joint - where it is held against one [-]
 * @returns findings with grades, rows, what to change; strain [-] and effort of the joint as laid
 *
 * Source: common-practice, bead-section.
 */
export function judgePlace(place: Place, audit: PlaceAudit, wanted: WantedLaid, joint?: Joint): JudgedPlace {
  const facts = laidFacts(place, audit, wanted);
  const judging: Judging = { place, wanted, facts };
  const asLaid = joint && facts.thickness > 0 ? asLaidOf(joint, facts.thickness) : undefined;
  const findings = laidFindings(judging);
  return {
    place,
    audit,
    wanted,
    grade: worstGrade(findings.map(({ grade }) => grade)),
    findings,
    rows: laidRows(judging, findings, asLaid),
    changes: laidChanges(judging, findings, asLaid),
    ...(asLaid && { asLaid }),
  };
}

/** A joint may be the section where their lengths differ by no more than this [-]: fillets count in one and not in the other. Ours. */
const SAME_LENGTH = 0.25;
/** And their thicknesses by no more than half a line or layer: then the nearest whole count is the same. */
const SAME_THICKNESS = 0.5;

/** From root to root. */
function lengthOf({ lying, run, bottom, top, flexure }: Place): Mm {
  if (flexure) return flexure.bendingLength;
  if (lying === 'upright') return top - bottom;
  return run.slice(1).reduce((sum, point, i) => sum + Math.hypot(point.x - run[i]!.x, point.y - run[i]!.y), 0);
}

/** How far a joint is from a section, in what may differ; above 1 it is another. */
function farFrom(place: Place, joint: Joint): number {
  const family = findFamily(joint.family);
  if (!family || joint.profile.lying !== place.lying) return Infinity;
  const { thickness, each } = wantedOfJoint(joint);
  const length = joint.sizes[family.roles.length] ?? Number.NaN;
  const thick = Math.abs(place.thickness - thickness) / (SAME_THICKNESS * each);
  const long = Math.abs(lengthOf(place) / length - 1) / SAME_LENGTH;
  return thick <= 1 && long <= 1 ? thick + long : Infinity;
}

/**
 * Which joint a section most likely is.
 *
 * @param place - the section [mm]
 * @param joints - the user's [mm]
 * @returns the nearest in thickness and length that lies alike; undefined where none is near
 */
export function jointMatching(place: Place, joints: readonly Joint[]): Joint | undefined {
  const far = joints.map((joint) => ({ joint, far: farFrom(place, joint) }));
  const nearest = far.toSorted((a, b) => a.far - b.far)[0];
  return nearest && Number.isFinite(nearest.far) ? nearest.joint : undefined;
}
