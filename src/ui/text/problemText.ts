/** The wording on screen of every problem, in the chosen unit. A test checks that no code is without one. */
import type { Problem, ProblemCode } from '../../core/problems.ts';
import { roughAmount } from './amountText.ts';
import { fieldName, fieldValue } from './fieldText.ts';
import { length, percent, type LengthUnit } from './numbers.ts';
import { takeProblemText } from './problemSaid.ts';
import { sentence } from './said.ts';

/** `name` is what the field is called where the problem is shown, when that is known better than from its path. */
type Wording = (problem: Problem, unit: LengthUnit, name?: string) => string;

const nameOf = (problem: Problem, name?: string) => name ?? fieldName(problem);
const given = (problem: Problem, unit: LengthUnit) => fieldValue(problem, problem.value, unit);
const limit = (problem: Problem, unit: LengthUnit) => fieldValue(problem, problem.limit, unit);
/** A limit that is a length whatever the field is; without one, words stand in its place. */
const mm = (value: number | string | undefined, unit: LengthUnit, without: string) =>
  typeof value === 'number' ? length(value, unit) : without;
/** What the core says has no lengths in it, or cannot be said better. */
const asSaid: Wording = (problem) => sentence(problem.message);

/** A wording that mentions the value, and one that mentions its limit too; without them the core's own words stand. */
const valued =
  (wording: Wording): Wording =>
  (problem, unit, name) =>
    (problem.value === undefined ? asSaid : wording)(problem, unit, name);
const complete = (wording: Wording): Wording =>
  valued((problem, unit, name) => (problem.limit === undefined ? asSaid : wording)(problem, unit, name));

export const PROBLEM_TEXT: Readonly<Record<ProblemCode, Wording>> = {
  'not-a-number': (p, _, name) => `${nameOf(p, name)} must be a number.`,
  'not-whole': valued((p, unit, name) => `${nameOf(p, name)} must be whole, not ${given(p, unit)}.`),
  'below-minimum': complete(
    (p, unit, name) => `${nameOf(p, name)} cannot be under ${limit(p, unit)}; ${given(p, unit)} is.`,
  ),
  'above-maximum': complete(
    (p, unit, name) => `${nameOf(p, name)} cannot be over ${limit(p, unit)}; ${given(p, unit)} is.`,
  ),
  'not-one-of': valued(
    (p, unit, name) =>
      `${nameOf(p, name)} cannot be ${given(p, unit)}${p.limit === undefined ? '' : `; choose from ${p.limit}`}.`,
  ),

  'layer-above-line-width': complete(
    (p, unit) =>
      `Layers of ${given(p, unit)} are higher than the lines are wide (${limit(p, unit)}), so lines do not lie flat; lower the layers or widen the lines.`,
  ),
  'layer-above-nozzle-share': complete(
    (p, unit) =>
      `Layers of ${given(p, unit)} are over ${limit(p, unit)}, 0.8 of the nozzle, where they bond weakly; lower them.`,
  ),
  'line-narrow-for-nozzle': complete(
    (p, unit) => `Lines of ${given(p, unit)} are narrow for this nozzle: under ${limit(p, unit)} they come out uneven.`,
  ),
  'line-wide-for-nozzle': complete(
    (p, unit) =>
      `Lines of ${given(p, unit)} are wide for this nozzle: over ${limit(p, unit)} they are pressed together poorly.`,
  ),
  'first-layer-differs': complete(
    (p, unit) =>
      `The first layer of ${given(p, unit)} is not between one and two layers of ${limit(p, unit)}, so what lies on the plate is not as thick as its layers suggest; bring them together.`,
  ),
  'lying-not-possible': complete((p) => `This kind of flexure cannot be printed ${p.value}; choose ${p.limit}.`),

  'thinner-than-one-line': complete(
    (p, unit) =>
      `${given(p, unit)} is thinner than one line of ${limit(p, unit)}, so nothing is laid; thicken it or set narrower lines.`,
  ),

  'single-line': () =>
    'One line alone has no neighbour to carry it where it is thin, and no closed contour can lay it: it tears easily from the side. Two lines are safer (common practice).',
  'odd-lines': valued(
    (p, unit) =>
      `${given(p, unit)} lines across are contours with one more line along the middle, laid on its own; an even count is laid by contours alone (common practice).`,
  ),
  'single-layer': () =>
    'One layer folds well, but has no second layer to bridge a gap between its lines, and is as thick as the first layer comes out; two layers are safer (common practice).',
  'not-whole-lines': (p) => notWhole(p, 'line'),
  'not-whole-layers': (p) => notWhole(p, 'layer'),
  'tie-rounded-down': () =>
    'It lies half-way between two whole counts; the lower was taken, because one more would stiffen it and raise the strain.',
  'width-not-layable': complete(
    (p, unit) =>
      `Lines of ${given(p, unit)} cannot be laid by this nozzle, whose limit is ${limit(p, unit)}; take another number of lines.`,
  ),

  'leaf-too-thick-for-length': complete(
    (p, unit) =>
      `A flexing length of ${given(p, unit)} is under five times the thickness, so strain and effort are rougher than they look; make it ${limit(p, unit)} or longer, or thinner.`,
  ),
  'thicker-than-long': complete(
    (p, unit, name) =>
      `${nameOf(p, name)} of ${given(p, unit)} leaves a thin section that is thicker than long and does not bend; make it ${limit(p, unit)} or more, or the section thinner.`,
  ),
  'pad-thinner-than-leaf': complete(
    (p, unit) =>
      `A pad ${given(p, unit)} thick has no room for the thin section and its fillets; make it ${limit(p, unit)} or thicker, or the fillets smaller.`,
  ),
  'sharp-root': () => 'The root has no fillet, and sharp inner corners break first; give it at least one line width.',
  'fillet-outside-table': valued((p, unit) =>
    typeof p.limit === 'number' && typeof p.value === 'number' && p.value < p.limit
      ? `A root fillet of ${given(p, unit)} is sharper than the table of root factors reaches, so the strain at the root is at least what is said; enlarge it.`
      : `A root fillet of ${given(p, unit)} is wider than the table of root factors reaches; the factor at its edge is used, which errs on the safe side.`,
  ),
  'fillet-under-one-line': valued(
    (p, unit) =>
      `A root fillet of ${given(p, unit)} is under one line of ${mm(p.limit, unit, 'this width')}, so it prints as little more than a corner; make it at least as large as a line is wide.`,
  ),
  'fillet-in-steps': valued(
    (p, unit) =>
      `A root fillet of ${given(p, unit)} is under two layers, so it prints as one square step; make it ${mm(p.limit, unit, 'two layers')} or larger.`,
  ),
  'neck-too-thick': complete(
    (p, unit, name) =>
      `${nameOf(p, name)} of ${given(p, unit)} makes the neck so stubby that its pads bend along: it comes out 5 to 20 % softer than said, or more; make it ${limit(p, unit)} or larger, or the neck thinner.`,
  ),
  'notch-too-sharp': complete(
    (p, unit) =>
      `A notch that reaches ${given(p, unit)} to either side is rounded by less than one line where it is deepest, so it prints as a corner and breaks first there; make it ${limit(p, unit)} or longer.`,
  ),
  'planes-fuse': complete(
    (p, unit) =>
      `A gap of ${given(p, unit)} between the planes is under one layer of ${limit(p, unit)}, so the leaves fuse where they cross; leave one layer or better two, or call them fused.`,
  ),
  'roots-merge': complete(
    (p, unit) =>
      `Leaves ${given(p, unit)} apart have no room for their root fillets; space them ${limit(p, unit)} apart or more, or make the fillets smaller.`,
  ),
  'turn-too-tight': complete(
    (p, unit) =>
      `Runs ${given(p, unit)} apart turn so tightly that the inside of the turn strains over a fifth more than said; space them ${limit(p, unit)} apart or more.`,
  ),
  'no-room': complete((p, unit, name) =>
    p.limit !== undefined && Number(p.limit) < Number(p.value)
      ? `${nameOf(p, name)} of ${given(p, unit)} leaves no room for what is beside it; make it ${limit(p, unit)} or less.`
      : `${nameOf(p, name)} of ${given(p, unit)} leaves no room for what is beside it; make it ${limit(p, unit)} or more.`,
  ),
  'nearly-touch': complete((p, unit, name) =>
    p.limit !== undefined && Number(p.limit) < Number(p.value)
      ? `${nameOf(p, name)} of ${given(p, unit)} leaves less than one line of room somewhere, so that it may fuse in the print; ${limit(p, unit)} or less keeps it open (common practice).`
      : `${nameOf(p, name)} of ${given(p, unit)} leaves less than one line of room somewhere, so that it may fuse in the print; ${limit(p, unit)} or more keeps it open (common practice).`,
  ),
  'slits-must-overlap': complete(
    (p, unit) =>
      `Slits of ${given(p, unit)} hardly overlap those of the next row, so nothing can twist; make them ${limit(p, unit)} or longer.`,
  ),
  'strip-too-short': complete(
    (p, unit) =>
      `Between slits of ${given(p, unit)} the strips are short for their width, so the panel is stiffer than said; ${limit(p, unit)} or longer slits are safer (common practice).`,
  ),
  'no-second-rest': asSaid,
  'frame-must-be-stiff': () =>
    'The frame is taken as rigid. One that gives when the ends push outwards weakens the snap and may take the second rest away; make it much thicker than what bends.',

  'takes-a-set': valued(
    (p, unit) =>
      `Up to about ${roughAmount(Number(p.value), p.unit === 'mm' ? 'travel' : 'turn', unit)} may stay after one bend, by the yield stress; most plastics spring back further, and a held bend leaves more.`,
  ),

  'beyond-data': () => 'More flexes than anyone has counted, so no life is given.',
  'across-layers': () =>
    'Layers stack along the flexure, so that bending pulls them apart; lay it so that lines run along it.',
  'thick-pp': () =>
    'This filament lasts as a thin hinge because bending draws it out; a section this thick is not drawn out and lasts less.',
  'sags-when-held': (p) =>
    `This filament sags under a load that stays on${typeof p.value === 'number' ? ` (${percent(p.value)} here)` : ''}; use it where the joint is let go between flexes.`,

  softens: asSaid,
  'brittle-cold': asSaid,
  'warmer-than-counted': asSaid,
  'nylon-dry': asSaid,
  'too-warm-to-hold': asSaid,
  'held-past-yield': asSaid,

  'stands-in': asSaid,

  'none-ticked': asSaid,
  'none-can': asSaid,
  'no-depth-between': asSaid,
  'no-answer': () => 'No answer was found for these values; change one of them a little.',

  'does-not-snap': asSaid,
  'effort-out-of-reach': asSaid,

  'no-convergence': asSaid,
  cancelled: asSaid,
  'over-budget': asSaid,

  'no-such-id': asSaid,
  'network-shape': asSaid,
  'network-conflict': asSaid,
  'network-loose': asSaid,
  'network-idle': asSaid,

  unreadable: asSaid,
  'not-our-file': asSaid,
  'newer-version': complete(
    (p) =>
      `This was written by a newer version of the program (${p.value}); this one reads up to ${p.limit}. Reload the page to get the newest.`,
  ),
  'missing-field': (p, _, name) => `${nameOf(p, name)} is missing.`,
  'wrong-type': asSaid,
  'unknown-filament': valued((p, unit) =>
    // One of somebody's own is in no list; the file reader says how to come by it.
    String(p.value).startsWith('own-')
      ? asSaid(p, unit)
      : `There is no filament called ${given(p, unit)}; choose one from the list.`,
  ),
  'unknown-family': valued(
    (p, unit) => `There is no kind of flexure called ${given(p, unit)}; choose one from the list.`,
  ),
  'too-large': asSaid,
  'unknown-field': asSaid,
  'repaired-id': asSaid,
  'changed-name': asSaid,
  'given-twice': asSaid,

  'file-damaged': asSaid,
  'left-out': asSaid,
};

function notWhole(problem: Problem, what: 'line' | 'layer'): string {
  const exact = typeof problem.value === 'number' ? problem.value : Number.NaN;
  const count = Number.isFinite(exact) ? `${exact.toFixed(2)} ${what}s` : `no whole number of ${what}s`;
  if (exact < 1) {
    return `The thin section is ${count}: it will be left out or laid as one broken line; scale the part up or set narrower lines.`;
  }
  return `The thin section is ${count}: the gap is left open or filled by lines of changing width; make it a whole number.`;
}

/** A problem in the words of the screen. */
export function problemText(problem: Problem, unit: LengthUnit, name?: string): string {
  return PROBLEM_TEXT[problem.code](problem, unit, name);
}

takeProblemText(problemText);
