/** What the counts make of one joint: before, after, and whether it is reckoned by them. */
import type { Assessment, Grade } from '../../core/design/assessment.ts';
import type { LearnedLife } from '../../core/tallies/learned.ts';
import type { ProvenanceKind } from '../../core/material/types.ts';
import { effortText } from './amountText.ts';
import { cycles, effortFigure, grouped, inHundred, percent } from './numbers.ts';
import { figure, type Said } from './said.ts';
import { countsText } from './testsTallyText.ts';
import { gradeWord } from './verdictText.ts';

const joint = ({ joint: { name } }: Assessment) => name.charAt(0).toLowerCase() + name.slice(1);

/** A hair more or less is neither better nor worse. */
const ALIKE = 0.005;

function turn(before: Assessment, after: Assessment): string {
  const [was, is] = [before.life.chance, after.life.chance];
  if (Math.abs(is - was) < ALIKE) return 'as before, and surer of it';
  return is > was ? 'better than before' : 'worse than before';
}

/** “Caution: better than before”. */
export function testsHeading(before: Assessment, after: Assessment | undefined, isCounted: boolean): string {
  const word = gradeWord((after ?? before).verdict.grade);
  if (!after || !isCounted) return `${word}, by what is published or remembered`;
  const { grade } = after.verdict;
  return `${word}: ${turn(before, after)}${grade === 'pass' ? '' : ', not yet sure'}`;
}

const most = ({ life }: Assessment) => life.maxReportableCycles;
const isPast = ({ life }: Assessment) => life.median > life.maxReportableCycles;

/** “by 43 000, not 24 000”; past the end of counting no number is given. */
function halfSaid(before: Assessment, after: Assessment): Said {
  const mark = after.provenance.life;
  if (after.life.breaksOnFirstFlex) return ['the first flex now breaks it'];
  if (isPast(after)) {
    const was: Said = isPast(before) ? [', as before'] : [', not ', figure(cycles(before.life.median))];
    return ['half now last past ', figure(grouped(most(after)), mark), ', where counting stops', ...was];
  }
  const now = cycles(after.life.median);
  const was: Said = isPast(before)
    ? ['where ', figure(grouped(most(before))), ' was passed before']
    : ['not ', figure(cycles(before.life.median))];
  if (!isPast(before) && cycles(before.life.median) === now) return ['half still break by ', figure(now, mark)];
  return ['half now break by ', figure(now, mark), ', ', ...was];
}

function chanceSaid(before: Assessment, after: Assessment): Said {
  const [was, is] = [inHundred(before.life.chance), inHundred(after.life.chance)];
  const wanted = grouped(after.joint.movement.cycles);
  return [
    ' and ',
    figure(`${is} in 100`, after.provenance.life),
    ' reach ',
    figure(wanted),
    was === is ? ', as before.' : `, not ${was}.`,
  ];
}

/** What stands before anything is counted. */
function nothingYet(before: Assessment): Said {
  const { life, provenance, strain, filament } = before;
  const at = `At your ${joint(before)}’s ${percent(strain.peak)} `;
  const half: Said = isPast(before)
    ? [`half last past ${grouped(life.maxReportableCycles)}`]
    : life.breaksOnFirstFlex
      ? ['the first flex breaks it']
      : ['half break by ', figure(cycles(life.median), provenance.life)];
  return [
    at,
    ...half,
    ' and ',
    figure(`${inHundred(life.chance)} in 100`, provenance.life),
    ' reach ',
    figure(grouped(before.joint.movement.cycles)),
    `, as far as ${filament.name} is known. Counts of your own would tell.`,
  ];
}

/** The verdict in sentences: what was counted, and what that makes of the joint. */
export function testsSaid(before: Assessment, after: Assessment | undefined, life: LearnedLife | undefined): Said {
  if (!after || !life) return nothingYet(before);
  const moved = after.strain.peak.toFixed(4) !== before.strain.peak.toFixed(4);
  const strain = `${percent(after.strain.peak)}${moved ? ` (not ${percent(before.strain.peak)}, as lines come out)` : ''}`;
  return [
    `${countsText(life.broke, life.whole)} At your ${joint(after)}’s ${strain} `,
    ...halfSaid(before, after),
    ...chanceSaid(before, after),
  ];
}

/** “2.31 % strain, not 2.25 %”: a figure that moved, and what it was. */
function movedSaid(now: string, was: string, behind: string, mark: ProvenanceKind): Said[] {
  return now === was ? [] : [[figure(now, mark), `${behind}, not ${was}`]];
}

const effortOf = ({ effort: { effort, measure } }: Assessment) => effortText(effort, measure);
const effortRange = ({ effort: { low, high, effort } }: Assessment) =>
  `${effortFigure(low, effort)} to ${effortFigure(high, effort)}`;
const chanceOf = ({ life }: Assessment) => `${inHundred(life.chance)} in 100`;

/** What tests other than counts have taught, where nothing was counted. */
export function taughtElse(before: Assessment, after: Assessment): Said {
  const { provenance } = after;
  const reach = ` reach ${grouped(after.joint.movement.cycles)}`;
  const moved = [
    ...movedSaid(percent(after.strain.peak), percent(before.strain.peak), ' strain', provenance.strain),
    ...movedSaid(effortOf(after), effortOf(before), ` (${effortRange(after)})`, provenance.effort),
    ...movedSaid(chanceOf(after), chanceOf(before), reach, provenance.life),
  ];
  if (moved.length === 0)
    return [
      `No strip is counted yet, and what was measured leaves your ${joint(after)} as it was. Counts would tell more.`,
    ];
  return [
    `No strip is counted yet, but what was measured already moves your ${joint(after)}: `,
    ...moved.flatMap((said, at) => (at === 0 ? said : [at === moved.length - 1 ? ', and ' : ', ', ...said])),
    '.',
  ];
}

export const RECKON = {
  by: (name: string) => `Reckon the ${name.charAt(0).toLowerCase()}${name.slice(1)} by these tests`,
  all: (count: number, filament: string) => `And all ${count} joints in ${filament}`,
  done: (name: string, spool: string) => `The ${name.charAt(0).toLowerCase()}${name.slice(1)} is reckoned by ${spool}.`,
  not: (name: string, filament: string) =>
    `The ${name.charAt(0).toLowerCase()}${name.slice(1)} is still reckoned by plain ${filament}.`,
  other: (name: string, filament: string) =>
    `The ${name.charAt(0).toLowerCase()}${name.slice(1)} is printed in ${filament}, which these tests say nothing of.`,
  refused: 'This joint cannot be reckoned as it is drawn; see what stands in its way under Joints.',
  none: 'There is no joint to reckon. Add one under Joints, or count for its own sake.',
  waits: 'Working out what this makes of the joint.',
} as const;

export const gradeOf = (before: Assessment | undefined, after: Assessment | undefined): Grade =>
  (after ?? before)?.verdict.grade ?? 'beyond';
