/** Exercise pages of the first five demonstrations: what bends, and how far its skin strains. */
import type { Givens } from '../../core/lesson/exercises/exerciseOf.ts';
import { bare, degreesText, limitText, linesText, mm, modulusText } from './exerciseFigures.ts';
import type { AskedWords, FormulaSaid, PageWords } from './exerciseWords.ts';
import { inWords } from './numbers.ts';

type OfBends = 'three-lengths' | 'one-line-more' | 'scaled-part' | 'one-or-many-bends' | 'fillet-or-corner';

/** Skin strain of a leaf that bends evenly. */
export const STRAIN: FormulaSaid = { left: 'ε', over: 't · θ', under: '2 · L' };
export const TORQUE: FormulaSaid = { left: 'M', over: 'E · b · t³ · θ', under: '12 · L' };

/** An angle in degrees as arc over radius. */
function arcAsked(angle: number): AskedWords {
  return {
    says: `Write the angle of ${degreesText(angle)} as arc over radius. It has no unit.`,
    formulas: [{ left: 'θ', over: `${degreesText(angle)} × π`, under: '180°' }],
  };
}

const ruler = (length: string) => `Measure ${length} with a ruler, to half a millimetre.`;

export const EXERCISE_BENDS: { readonly [K in OfBends]: PageWords<Givens[K]> } = {
  'three-lengths': {
    setUp: (given) =>
      `Leaves P, Q and R are printed in ${given.filament.name}: ${linesText(given)}. All three are bent evenly by ${degreesText(given.angle)}.`,
    drawn: () => 'Leaves P, Q and R, life size. Boxes are thick and stay straight.',
    ask: {
      measure: () => ({ says: ruler('the thin part of each leaf') }),
      arc: ({ angle }) => arcAsked(angle),
      strain: ({ thickness }) => ({
        says: `Work out the skin strain of each leaf, in per cent; t is ${mm(thickness)}.`,
        formulas: [STRAIN],
      }),
      back: ({ filament }) => ({
        says: `${filament.name} stays bent past ${limitText(filament.yields)}. Which leaves spring back?`,
      }),
      shortest: ({ filament }) => ({
        says: `How short may a leaf be that just springs back, at ${limitText(filament.yields)}?`,
        formulas: [{ left: 'L', over: 't · θ', under: '2 · ε' }],
      }),
      plot: ({ readAt }) => ({
        says: `Mark your three strains over their lengths and join them with a curve. Read off the strain at ${mm(readAt)}.`,
      }),
      half: () => ({
        says: 'Another leaf is half as long as Q and bent as far. How much more does its skin strain? Why?',
      }),
    },
    why: {
      back: 'Those under the limit spring back.',
      plot: 'The curve falls as one over the length: steep at the left, flat at the right.',
      half: 'Twice as much: the same angle is shared by half the length.',
    },
  },
  'one-line-more': {
    setUp: ({ filament, length, depth, angle }) =>
      `Leaves A and B are printed in ${filament.name}, ${mm(length)} long and ${mm(depth)} deep, and bent evenly by ${degreesText(angle)}. B is one line thicker.`,
    drawn: () => 'Leaves A and B cut through, from above, ten times as large as they are. Each stripe is one line.',
    ask: {
      measure: () => ({ says: 'Measure how thick each leaf is drawn and divide by ten.' }),
      line: () => ({ says: 'Count the lines of leaf A. How wide is one line?' }),
      arc: ({ angle }) => arcAsked(angle),
      strain: ({ length, thin }) => ({
        says: `Take lines of ${mm(thin.lineWidth)}. Work out the skin strain of each leaf, in per cent; L is ${mm(length)}.`,
        formulas: [STRAIN],
      }),
      effort: ({ filament, depth }) => ({
        says: `Work out the effort that bends each leaf. E is ${modulusText(filament.modulus)}, b is ${mm(depth)}.`,
        formulas: [TORQUE],
      }),
      times: ({ thin, thick }) => ({
        says: 'How many times as hard is B to bend? Use the counts of lines alone.',
        formulas: [
          {
            left: 'times',
            over: `${thick.lines} × ${thick.lines} × ${thick.lines}`,
            under: `${thin.lines} × ${thin.lines} × ${thin.lines}`,
          },
        ],
      }),
      grows: () => ({ says: 'One line more: what grows faster, the strain or the effort? Why?' }),
    },
    why: {
      effort: 'A deep leaf is up to a sixth stiffer than this.',
      times: 'Effort grows by the cube of the count of lines.',
      grows: 'The effort: it goes with the cube of the thickness, the skin strain only with the thickness.',
    },
  },
  'scaled-part': {
    setUp: (given) =>
      `Part A has a leaf of ${linesText(given)}, in ${given.filament.name}. Part B is the same part, scaled up in every direction. Both are bent evenly by ${degreesText(given.angle)}.`,
    drawn: () => 'The leaves of parts A and B, life size. Boxes are thick and stay straight.',
    ask: {
      measure: () => ({ says: ruler('the thin part of each leaf') }),
      scale: () => ({
        says: 'How many times as large is part B? Round to the nearest quarter.',
        formulas: [{ left: 's', over: 'length of B', under: 'length of A' }],
      }),
      thick: ({ thickness, lineWidth }) => ({
        says: `Leaf A is ${mm(thickness)} thick. How thick is leaf B, and how many lines of ${mm(lineWidth)} would that be?`,
        labels: ['thick', 'lines'],
      }),
      strain: () => ({
        says: 'Work out the skin strain of each leaf, in per cent.',
        formulas: [STRAIN],
      }),
      effort: () => ({
        says: 'How many times as much effort bends B by the same angle?',
        formulas: [{ left: 'times', over: 's × s × s' }],
      }),
      whole: ({ lines }) => ({
        says: `By how much must part A be scaled so that its leaf is ${inWords(lines + 1)} whole lines, one more than now?`,
        formulas: [{ left: 's', over: `${lines + 1}`, under: `${lines}` }],
      }),
      longer: () => ({ says: '“Print it larger, then it lasts longer when it is bent as far.” Is that so? Why?' }),
    },
    why: {
      thick: 'A thickness that is no whole number of lines is laid unevenly.',
      strain: 'Both are the same: thickness and length have grown alike.',
      longer:
        'No: thickness and length grow alike, so at the same angle the skin strains the same. Only the effort grows.',
    },
  },
  'one-or-many-bends': {
    setUp: (given) =>
      `Strips P, Q and R are printed in ${given.filament.name}; each thin part is ${linesText(given)}. Each whole strip is bent by ${degreesText(given.angle)}, its thin parts alike.`,
    drawn: () => 'Strips P, Q and R, life size. Boxes are thick and stay straight; all thin parts are alike.',
    ask: {
      measure: () => ({ says: ruler('one thin part') }),
      share: () => ({ says: 'Count the thin parts. By how much does each one bend in Q and in R?' }),
      strain: ({ thickness }) => ({
        says: `Work out the skin strain in each strip, in per cent; t is ${mm(thickness)}, the angle is the share of one thin part.`,
        formulas: [{ left: 'θ', over: 'degrees × π', under: '180°' }, STRAIN],
      }),
      back: ({ filament }) => ({
        says: `${filament.name} stays bent past ${limitText(filament.yields)}. Which strips spring back?`,
      }),
      fewest: ({ filament }) => ({
        says: `${filament.name} stands ${limitText(filament.again)} again and again. How many thin parts must share the bend at least?`,
      }),
      room: ({ between }) => ({
        says: `Boxes between thin parts are ${mm(between)} long. How long is that strip, without the boxes at its ends?`,
      }),
      effort: () => ({ says: 'Which strip is the easiest to bend that far? Why?' }),
    },
    why: {
      fewest: 'The strain of P over what it stands, rounded up to a whole count.',
      effort: 'R: each thin part is bent least, and all feel the same effort.',
    },
  },
  'fillet-or-corner': {
    setUp: (given) =>
      `Leaves A and B are printed in ${given.filament.name}: ${linesText(given)}, ${mm(given.length)} long, on pads of ${mm(given.pad)}. Both are bent by ${degreesText(given.angle)}.`,
    drawn: ({ corner }) =>
      `Roots of A and B, ten times as large as they are; a cross marks the middle of the round of B. The corner of A is drawn sharp and comes out of the nozzle with about ${mm(corner)}.`,
    ask: {
      measure: () => ({
        says: 'Measure the radius of the fillet of B, from the cross to the edge, and divide by ten.',
      }),
      strain: ({ length, angle }) => ({
        says: `Work out the skin strain along the leaf, in per cent; L is ${mm(length)}, the angle ${degreesText(angle)}.`,
        formulas: [{ left: 'θ', over: 'degrees × π', under: '180°' }, STRAIN],
      }),
      table: () => ({ says: 'Read off the table how many times as high the strain peaks at each root.' }),
      felt: ({ felt }) => ({
        says: `A printed root is taken to feel ${felt === 0.5 ? 'half' : limitText(felt)} of what goes past one. What is the strain multiplied by?`,
        formulas: [{ left: 'k', over: `1 + ${bare(felt)} × (peak − 1)` }],
      }),
      root: () => ({
        says: 'Work out the strain at each root, in per cent.',
        formulas: [{ left: 'root', over: 'k · ε' }],
      }),
      within: ({ filament }) => ({
        says: `${filament.name} stands ${limitText(filament.again)} again and again. Which root stays within that?`,
      }),
      furthest: ({ filament }) => ({
        says: `At ${limitText(filament.yields)} it stays bent. By how much may each leaf be bent until its root does?`,
        formulas: [{ left: 'θ', over: '2 · ε · L', under: 't · k' }],
      }),
    },
    why: {
      table: 'The first tenths of a millimetre win most; more radius helps less and less.',
      felt: 'Half is a judgement: nobody has measured it on printed roots.',
      within: 'The fillet leads the strain into the pad; the corner gathers it.',
    },
  },
};
