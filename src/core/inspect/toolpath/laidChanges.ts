/** What to do about what is laid across a thin section. */
import type { AsLaid, LaidChange, LaidFinding, LaidFindingKind } from './judgedPlace.ts';
import type { Judging } from './laidFindings.ts';

/** Another line width is worth setting from a hundredth off on, and can be laid from half to twice the wanted one [-]. Ours. */
const ANOTHER_WIDTH = 0.01;
const LAYABLE = { least: 0.5, most: 2 } as const;

/** What shows that what is drawn is no whole count. */
const NOT_WHOLE: readonly LaidFindingKind[] = [
  'nothing-laid',
  'too-few',
  'too-many',
  'thin-line',
  'open-all-along',
  'thickness',
];

/** Drawn as thick as wanted is within this [-]: what the finder is right to, and more. */
const DRAWN_SO = 0.02;

/** Of a part that was checked it is known how thick it is drawn: as wanted, it is for the lines to follow it. */
function drawAgain({ place, wanted }: Judging, isMissing: boolean): readonly LaidChange[] {
  const { count, countOf, each, from } = wanted;
  const thickness = from === 'joint' ? wanted.thickness : count * each;
  const isDrawnSo = place.from === 'carried' && Math.abs(place.thickness / thickness - 1) < DRAWN_SO;
  if (!isDrawnSo) return [{ kind: 'draw', thickness, count, of: countOf }];
  return isMissing && countOf === 'lines' ? [{ kind: 'contours', count: Math.ceil(count / 2) }] : [];
}

/** Lines so wide that the wanted count of them fills what is there. */
function layWider({ place, wanted, facts }: Judging, asLaid: AsLaid | undefined): readonly LaidChange[] {
  const thickness = facts.thickness > 0 ? facts.thickness : place.thickness;
  const lineWidth = thickness / wanted.count;
  const share = lineWidth / wanted.each;
  const isLayable = share >= LAYABLE.least && share <= LAYABLE.most && Math.abs(share - 1) > ANOTHER_WIDTH;
  if (wanted.countOf === 'layers' || !isLayable) return [];
  if (!asLaid?.before.ok || !asLaid.after.ok) return [{ kind: 'lay', lineWidth, count: wanted.count }];
  const [before, after] = [asLaid.before.value, asLaid.after.value];
  const effort = after.effort.effort / before.effort.effort;
  return [{ kind: 'lay', lineWidth, count: wanted.count, strain: after.strain.peak, effort }];
}

/**
 * What to do, most telling first.
 *
 * @param judging - the section, what is wanted and what is laid [mm]
 * @param findings - what is said of it [-]
 * @param asLaid - what its joint comes to [-]
 * @returns changes
 */
export function laidChanges(
  judging: Judging,
  findings: readonly LaidFinding[],
  asLaid: AsLaid | undefined,
): readonly LaidChange[] {
  const said = (kind: LaidFindingKind) => findings.find((finding) => finding.kind === kind);
  const isWhole = !NOT_WHOLE.some(said);
  const isMissing = said('nothing-laid') !== undefined || said('too-few') !== undefined;
  const starts = said('starts-on-it');
  const crossed = said('crossed');
  const runsAcross = said('runs-across');
  const { lying } = judging.place;
  return [
    ...(isWhole ? [] : [...drawAgain(judging, isMissing), ...layWider(judging, asLaid)]),
    ...(starts && lying !== 'upright' ? [{ kind: 'start-elsewhere', layers: starts.count } as const] : []),
    ...(said('thin-line') ? [{ kind: 'leave-gaps' } as const] : []),
    ...(runsAcross && lying === 'flat'
      ? [{ kind: 'contours', count: Math.ceil(judging.wanted.count / 2) } as const]
      : []),
    ...(said('no-direction') || (runsAcross && lying === 'crease') ? [{ kind: 'turn' } as const] : []),
    ...(crossed ? [{ kind: 'travel-round', crossings: (crossed.places ?? 0) - (crossed.lifted ?? 0) } as const] : []),
  ];
}
