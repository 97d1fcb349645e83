/** The verdict: a heading for every grade and reason, and the sentences under it. */
import { allowableNamed } from '../../core/design/allowables.ts';
import { feltEfforts } from '../../core/design/feltEffort.ts';
import type { Allowable, AllowableName, Assessment, Fit, Grade, VerdictReason } from '../../core/design/assessment.ts';
import { leastGap, secondRest } from '../../core/design/solvedPath.ts';
import { familyOf } from '../../core/flexures/known.ts';
import { isTouching } from '../../core/geometry/touching.ts';
import { softensAt, soundness } from '../../core/material/choose.ts';
import type { ProvenanceKind } from '../../core/material/types.ts';
import { amountText, effortText, roughAmount, setAmount } from './amountText.ts';
import { kindText } from './kindText.ts';
import { cycles, grouped, inHundred, length, MINUS, NO_BREAK, percent, share, type LengthUnit } from './numbers.ts';
import { figure, type Said } from './said.ts';

const CAUTION: Readonly<Record<VerdictReason, string>> = {
  life: 'it will probably last',
  held: 'it sags if kept bent',
  yield: 'it stays bent a little',
  single: 'it may stay bent a little',
  repeated: 'it wears with every flex',
  break: 'it is bent near breaking',
  printing: 'it will not print as whole lines',
  'first flex': 'the first flex may break it',
  'beyond data': 'past what has been counted',
  'within all limits': 'look closer',
  effort: 'it pushes back hard',
  stays: 'it may stay in its second place',
  'comes back': 'it may come back by itself',
  touches: 'it comes close to itself',
  warmth: 'it is used near where it softens',
};

const FAIL: Readonly<Record<VerdictReason, string>> = {
  ...CAUTION,
  life: 'it will probably break first',
  held: 'kept bent, it stays bent',
  yield: 'it stays bent',
  break: 'it is bent past breaking',
  printing: 'the thin section may not print',
  'first flex': 'the first flex breaks it',
  effort: 'it pushes back too hard',
  stays: 'it stays in its second place',
  'comes back': 'it comes back by itself',
  touches: 'it touches itself on the way',
  warmth: 'it softens where it is used',
};

const GRADES: Readonly<Record<Grade, string>> = {
  pass: 'Pass',
  caution: 'Caution',
  fail: 'Fail',
  beyond: 'Beyond the data',
};

/** One word for a list of joints: “Pass”, “Caution”, “Fail”, “Beyond the data”. */
export function gradeWord(grade: Grade): string {
  return GRADES[grade];
}

/** “Caution: it will probably last”. */
export function verdictHeading({ verdict, fit, warmth }: Assessment): string {
  const { grade, reason } = verdict;
  if (grade === 'pass' || grade === 'beyond') return GRADES[grade];
  if (reason === 'warmth' && warmth.isBrittle) return `${GRADES[grade]}: cold makes it brittle`;
  const layers = reason === 'printing' && fit.countOf === 'layers';
  const why = (grade === 'fail' ? FAIL : CAUTION)[reason];
  return `${GRADES[grade]}: ${layers ? why.replace('lines', 'layers') : why}`;
}

/** What the filament does at each limit, as it stands after the figure. */
const AT_LIMIT: Readonly<Record<Exclude<AllowableName, 'held'>, (filament: string) => string>> = {
  break: (filament) => `at which ${filament} breaks`,
  yield: (filament) => `at which ${filament} stays bent`,
  single: (filament) => `that ${filament} stands once in a while`,
  repeated: (filament) => `that ${filament} stands again and again`,
};

/** The highest limit that is passed; else the lowest, which is kept. */
function tellingLimit(a: Assessment): { readonly limit: Allowable; readonly over: boolean } {
  for (const name of ['break', 'yield', 'single', 'repeated'] as const) {
    const limit = allowableNamed(a.allowables, name);
    if (limit.strain > limit.limit) return { limit, over: true };
  }
  return { limit: allowableNamed(a.allowables, 'repeated'), over: false };
}

function strainPart(a: Assessment, unit: LengthUnit): Said {
  const { limit, over } = tellingLimit(a);
  const past = limit.name === 'break' || limit.name === 'yield';
  const relation = over ? (past ? 'past' : 'over') : 'within';
  const at = AT_LIMIT[limit.name === 'held' ? 'repeated' : limit.name];
  const lying = a.joint.profile.lying === 'upright' ? ' when bending pulls its layers apart' : '';
  // What snaps strains more on its way than where it comes to rest.
  const when = familyOf(a.joint).snaps ? 'On the way to' : 'At';
  const moved = setAmount(a.joint.movement.amount, a.drive.measure, unit);
  return [
    `${when} ${moved} the skin of the ${kindText(a.joint.family).piece} strains ${a.estimate ? 'about ' : ''}`,
    figure(percent(a.strain.peak), a.provenance.strain, 'strain'),
    `, ${relation} the ${percent(limit.limit)} ${at(a.filament.name)}${lying}, `,
  ];
}

/** Why the life follows from the strain: “so”, or that it is bent hard but seldom. */
function joining(a: Assessment, unit: LengthUnit): string {
  const { limit, over } = tellingLimit(a);
  if (limit.name === 'break' && over && !a.life.breaksOnFirstFlex) {
    return 'so the first flex may break it; by the life curve alone ';
  }
  if (limit.name === 'yield' && over && !a.life.breaksOnFirstFlex) {
    const { amount, low, high } = a.set;
    const say = (left: number) => roughAmount(left, a.drive.measure, unit);
    const left = amount > 0 ? ` of about ${say(amount)}, ${say(low)} to ${say(high)}` : '';
    return `so it takes a set${left}; `;
  }
  const lasts = a.life.beyond !== 'wanted' && a.life.chance >= a.joint.movement.chance;
  return over && lasts && !a.life.breaksOnFirstFlex ? 'but few enough times: ' : 'so ';
}

function reachPart(a: Assessment, mark?: ProvenanceKind): Said {
  const wanted = a.joint.movement.cycles;
  const chance = figure(`${inHundred(a.life.chance)} in 100`, mark, 'life');
  return wanted === 1 ? [chance, ' stand their one flex.'] : [chance, ` reach your ${grouped(wanted)}.`];
}

/** What else wears it, as it stands between the life and the chance; nothing where there is one kind of flex. */
function othersPart([own, ...others]: Assessment['life']['wear']): string {
  if (others.length === 0) return '';
  const rest = 1 - own.share;
  const much = rest < 0.005 ? 'hardly any' : rest > 0.995 ? 'nearly all' : share(rest);
  return `, the smaller ${others.length === 1 ? 'one' : 'ones'} doing ${much} of the wear,`;
}

function lifePart(a: Assessment): Said {
  const { life, provenance } = a;
  const counted = grouped(life.maxReportableCycles);
  const others = othersPart(life.wear);
  const what = others === '' ? 'cycles' : 'of the full flexes';
  const most = grouped(Math.max(...life.wear.map(({ cycles: wanted }) => wanted)));
  if (life.breaksOnFirstFlex) return ['the first flex breaks it.'];
  if (life.median > life.maxReportableCycles) {
    if (life.beyond === 'wanted') {
      return [`half last past ${counted} ${what}, where counting stops. You want ${most}, so no life is given.`];
    }
    return [`half last past ${counted} ${what}, where counting stops, and `, ...reachPart(a, provenance.life)];
  }
  const half: Said = ['half break by ', figure(cycles(life.median), provenance.life, 'life'), ` ${what}`];
  if (life.beyond === 'wanted') {
    return [...half, `. You want ${most}, more than the ${counted} that anyone has counted.`];
  }
  return [...half, `${others} and `, ...reachPart(a)];
}

/** How a measured section lands on the lines of this printer, when it does not come out whole. */
function printPart(fit: Fit, thickness: number, unit: LengthUnit): Said {
  const what = fit.countOf === 'lines' ? 'line' : 'layer';
  const count = `${fit.exact.toFixed(1)} ${what}s`;
  if (fit.outcome === 'vanishes') {
    return [figure(length(thickness, unit)), ` is under one ${what}: it is left out, or laid as one broken ${what}.`];
  }
  return [
    figure(length(thickness, unit)),
    ` is ${count}: the gap between whole ${what}s is left open, or filled by ${what}s of changing ${
      what === 'line' ? 'width' : 'height'
    }, which makes a weak joint.`,
  ];
}

function heldPart(a: Assessment): Said {
  const held = allowableNamed(a.allowables, 'held');
  if (!held.applies) return [];
  const relation = held.strain > held.limit ? 'over' : 'within';
  const does = held.strain > held.limit ? 'it sags' : 'it keeps its push';
  return [`Held bent, ${does}: that is ${relation} the ${percent(held.limit)} that ${a.filament.name} holds for long.`];
}

/** How hard it pushes back, where that is wished for. */
function effortPart({ joint, effort, estimate, provenance }: Assessment): Said {
  const { effortAtMost } = joint.movement;
  // Of what snaps a hand form knows the effort at the end only, not the hardest push before it.
  if (effortAtMost === undefined || (estimate && familyOf(joint).snaps)) return [];
  const relation = effort.effort > effortAtMost ? 'over' : 'within';
  return [
    `It takes up to ${estimate ? 'about ' : ''}`,
    figure(effortText(effort.effort, effort.measure), provenance.effort, 'effort'),
    `, ${relation} your ${effortText(effortAtMost, effort.measure)}.`,
  ];
}

/** Where it rests by itself and what brings it back, or that nothing keeps it there; only the solver can tell. */
function restPart(a: Assessment, unit: LengthUnit): Said {
  const { joint, solved, effort, drive, verdict, filament } = a;
  const { stays } = joint.movement;
  if (!solved || (stays === undefined && !familyOf(joint).snaps)) return [];
  const rest = secondRest(solved);
  if (!rest) return [`It has no second rest on the way, so it comes back by itself${stays ? '; it should stay' : ''}.`];
  const { points, events } = solved.forward;
  const felt = feltEfforts(a);
  const back = -Math.min(...[...points, ...events].map((state) => felt(state).typical));
  return [
    'It comes to rest at ',
    figure(amountText(rest.amount, drive.measure, unit), 'computed'),
    `, and ${effortText(back, effort.measure)} bring it back from there${stays === false ? '; it should come back by itself' : ''}.`,
    // A rest that is as wanted and still a matter is one that the filament does not keep.
    verdict.reason === 'comes back' ? ` ${filament.name} sags out of it in time (common practice).` : '',
  ];
}

/** Where it comes nearer to itself than a line is wide, or touches. */
function gapPart({ joint, solved, drive }: Assessment, unit: LengthUnit): Said {
  const met = solved && leastGap(solved, joint.movement.amount);
  if (!met || met.gap >= joint.profile.lineWidth) return [];
  const at = amountText(met.amount, drive.measure, unit).replace('-', '\u2212');
  if (isTouching(met.gap)) return [`At ${at} it touches itself.`];
  return [`At ${at} it comes within `, figure(length(met.gap, unit), 'computed'), ' of itself.'];
}

const degrees = (value: number, mark?: ProvenanceKind) =>
  figure(`${Math.round(value)}${NO_BREAK}°C`.replace('-', MINUS), mark, 'warmth');

/** How near it is used to where its filament softens, or turns brittle; nothing where it is far from either. */
function warmthPart({ warmth, filament }: Assessment): Said {
  const { grade, isBrittle, temperatureC, softensAt: at, spare } = warmth;
  if (grade === 'pass') return [];
  if (isBrittle) {
    const glass = filament.properties.glassTransition;
    const turns = degrees(glass.typical, soundness(glass.provenance));
    return [`${filament.name} turns brittle under `, turns, ', and it gets as cold as ', degrees(temperatureC), '.'];
  }
  const softens = degrees(at, soundness(softensAt(filament).provenance));
  const where = `${spare > 0 ? 'close under' : 'past'} the `;
  const follows = grade === 'fail' ? 'it sags out of shape.' : 'it bends more easily and may sag.';
  return [
    'Used at ',
    degrees(temperatureC),
    ` it is ${where}`,
    softens,
    ` at which ${filament.name} softens, so ${follows}`,
  ];
}

type Part = 'warmth' | 'bending' | 'printing' | 'effort' | 'rest' | 'gap';
/** What is said first, where that is not the bending. */
const GOVERNS: Partial<Readonly<Record<VerdictReason, Part>>> = {
  printing: 'printing',
  effort: 'effort',
  stays: 'rest',
  'comes back': 'rest',
  touches: 'gap',
  warmth: 'warmth',
};

/** The sentences of the verdict, the governing matter first. */
export function verdictSentences(a: Assessment, unit: LengthUnit): readonly Said[] {
  const parts: Readonly<Record<Part, Said>> = {
    bending: [...strainPart(a, unit), joining(a, unit), ...lifePart(a)],
    printing: a.fit.outcome === 'whole' ? [] : printPart(a.fit, a.section.thickness, unit),
    effort: effortPart(a),
    rest: restPart(a, unit),
    gap: gapPart(a, unit),
    warmth: warmthPart(a),
  };
  const first = GOVERNS[a.verdict.reason] ?? 'bending';
  const others = (Object.keys(parts) as Part[]).filter((part) => part !== first).map((part) => parts[part]);
  return [parts[first], ...others, heldPart(a)].filter((said) => said.length > 0);
}

const capital = (text: string) => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

/** The two parts of the chance; empty where no chance is given. */
export function chanceText(a: Assessment): string {
  const { life } = a;
  if (life.breaksOnFirstFlex || life.beyond === 'wanted') return '';
  const [scatter, total] = [inHundred(life.chanceScatterOnly), inHundred(life.chance)];
  const tests = a.provenance.life === 'measured' ? `by your tests of ${a.filament.name}; ` : '';
  const wanted = `${tests}${inHundred(a.joint.movement.chance)} are wanted`;
  if (scatter === total) return `${capital(total)} in 100 with and without the doubt of the curve; ${wanted}.`;
  return `${capital(scatter)} in 100 by specimen scatter alone, ${total} with the doubt of the curve; ${wanted}.`;
}

/** For a joint that cannot be assessed as it stands. */
export const REFUSED_HEADING = 'It cannot be worked out as it stands';
