/** What is wanted of a thin section beside what is laid. */
import type { Grade } from '../../design/assessment.ts';
import type { AsLaid, LaidFinding, LaidFindingKind, LaidRow } from './judgedPlace.ts';
import { THIN_UNDER, type LayerFacts } from './laidFacts.ts';
import { isThicknessKnown, UNEVEN_OVER, worstGrade, type Judging } from './laidFindings.ts';

/** Effort may be so far off [-]: a twentieth in thickness makes more. Ours. */
const EFFORT_WITHIN = 0.1;

/** The worst of what is said under some heads. */
function gradeOf(findings: readonly LaidFinding[], ...kinds: readonly LaidFindingKind[]): Grade {
  return worstGrade(findings.filter(({ kind }) => kinds.includes(kind)).map(({ grade }) => grade));
}

/** How many there are of something that there should be none of, and in how many layers. */
function noneOf(
  what: 'starts' | 'stops' | 'open',
  grade: Grade,
  layers: readonly LayerFacts[],
  of: (layer: LayerFacts) => number,
): LaidRow {
  const having = layers.filter((layer) => of(layer) > 0);
  if (having.length === 0) return { what, grade: 'pass', wanted: 'none', laid: 'none' };
  const laid = having.reduce((sum, layer) => sum + of(layer), 0);
  return { what, grade, wanted: 'none', laid, layers: having.length };
}

function spreadGrade({ wanted, facts }: Judging): Grade {
  if (!facts.widths) return 'fail';
  const { least, most } = facts.widths;
  if (least < THIN_UNDER * wanted.each) return 'fail';
  const isEven = least >= (1 - UNEVEN_OVER) * wanted.each && most <= (1 + UNEVEN_OVER) * wanted.each;
  return isEven ? 'pass' : 'caution';
}

function assessedRows(asLaid: AsLaid | undefined): readonly LaidRow[] {
  if (!asLaid?.before.ok || !asLaid.after.ok) return [];
  const [before, after] = [asLaid.before.value, asLaid.after.value];
  const effortOff = Math.abs(after.effort.effort / before.effort.effort - 1);
  const isSame = Math.abs(after.strain.peak / before.strain.peak - 1) <= EFFORT_WITHIN / 2;
  return [
    {
      what: 'strain',
      grade: isSame ? 'pass' : worstGrade(['caution', after.verdict.grade]),
      wanted: before.strain.peak,
      laid: after.strain.peak,
    },
    {
      what: 'effort',
      grade: effortOff <= EFFORT_WITHIN ? 'pass' : 'caution',
      wanted: before.effort.effort,
      laid: after.effort.effort,
    },
  ];
}

/**
 * Rows of what is wanted beside what is laid.
 *
 * @param judging - the section, what is wanted and what is laid [mm]
 * @param findings - what is said of it [-]
 * @param asLaid - what its joint comes to [-]
 * @returns rows; lengths [mm], strain [-], effort [N·mm] or [N]
 */
export function laidRows(
  judging: Judging,
  findings: readonly LaidFinding[],
  asLaid: AsLaid | undefined,
): readonly LaidRow[] {
  const { place, wanted, facts } = judging;
  const { layers } = facts;
  const grade = (...kinds: readonly LaidFindingKind[]) => gradeOf(findings, ...kinds);
  const stops = place.lying === 'upright' ? 'caution' : 'fail';
  const open = grade('open-all-along', 'open-places');
  // Of what is not there at all nothing is as wanted.
  const isEmpty = facts.counts.most === 0;
  const size = (laid: number, of: Grade): Pick<LaidRow, 'grade' | 'laid'> =>
    isEmpty ? { grade: 'fail', laid: 'none' } : { grade: of, laid };
  return [
    {
      what: 'lines',
      grade: grade('nothing-laid', 'too-few', 'too-many', 'thin-line'),
      wanted: wanted.count,
      laid: facts.counts,
    },
    {
      what: 'thickness',
      ...(isThicknessKnown(judging) && { wanted: wanted.thickness }),
      ...size(facts.thickness, grade('thickness')),
    },
    { what: 'line-width', wanted: wanted.each, ...size(facts.each, grade('uneven')) },
    { what: 'spread', grade: spreadGrade(judging), wanted: UNEVEN_OVER, laid: facts.widths ?? 'none' },
    noneOf('starts', grade('starts-on-it'), layers, ({ laid }) => laid.starts.length),
    noneOf('stops', stops, layers, ({ stops: all }) => all.length),
    noneOf(
      'open',
      worstGrade(['caution', open]),
      layers,
      (layer) => layer.openAllAlong.length + layer.openElsewhere.length,
    ),
    ...(facts.depth === undefined
      ? []
      : [
          {
            what: 'depth' as const,
            ...(wanted.depth !== undefined && { wanted: wanted.depth }),
            ...size(facts.depth, grade('depth')),
          },
        ]),
    ...assessedRows(asLaid),
  ];
}
