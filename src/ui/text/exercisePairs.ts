/** Exercise pages of the last five demonstrations: filaments, lives, efforts, held bends and arches. */
import { snapsAt } from '../../core/lesson/exercises/archSpringsBack.ts';
import type { Givens } from '../../core/lesson/exercises/exerciseOf.ts';
import { STRAIN, TORQUE } from './exerciseBends.ts';
import { bare, degreesText, limitText, linesText, mm, modulusText, timeText } from './exerciseFigures.ts';
import type { PageWords } from './exerciseWords.ts';
import { effortFigure, grouped, NO_BREAK } from './numbers.ts';

type OfPairs = 'filament-against-filament' | 'short-or-long' | 'side-by-side' | 'held-or-flexed' | 'arch-springs-back';

const THETA = { left: 'θ', over: 'degrees × π', under: '180°' } as const;
const ruler = (length: string) => `Measure ${length} with a ruler, to half a millimetre.`;

export const EXERCISE_PAIRS: { readonly [K in OfPairs]: PageWords<Givens[K]> } = {
  'filament-against-filament': {
    setUp: (given) =>
      `One leaf of ${linesText(given)} and ${mm(given.depth)} deep is printed in each of four filaments and bent evenly by ${degreesText(given.angle)}.`,
    drawn: () => 'The leaf, life size. Boxes are thick and stay straight.',
    ask: {
      measure: () => ({ says: ruler('the thin part of the leaf') }),
      strain: ({ angle }) => ({
        says: `Work out its skin strain at ${degreesText(angle)}, in per cent. Does it matter which filament it is?`,
        formulas: [THETA, STRAIN],
      }),
      back: () => ({ says: 'In which of the filaments of the table does it spring back?' }),
      furthest: () => ({
        says: 'By how much may it be bent in each until it stays bent?',
        formulas: [{ left: 'degrees', over: '2 · ε · L × 180°', under: 't × π' }],
      }),
      effort: ({ angle }) => ({
        says: `What effort bends each by ${degreesText(angle)}? b is how deep the leaf is.`,
        formulas: [TORQUE],
      }),
      choose: () => ({ says: 'You want a soft hinge that springs back. Which filament do you take?' }),
    },
    why: {
      strain: 'No: strain is a matter of shape. The filament says what strain it stands.',
      effort: 'Each effort to its E is the same; a deep leaf is up to a sixth stiffer.',
      choose: 'Of those that spring back, the one with the lowest E.',
    },
  },
  'short-or-long': {
    setUp: ({ filament, across: [thick, thin], angle }) =>
      `Leaf P is short, ${linesText(thick)}; leaf Q is long, ${linesText(thin)}. Both are printed in ${filament.name} and bent evenly by ${degreesText(angle)} and let go, over and over.`,
    drawn: () => 'Leaves P and Q, life size. Boxes are thick and stay straight.',
    ask: {
      measure: () => ({ says: ruler('the thin part of each leaf') }),
      strain: () => ({ says: 'Work out the skin strain of each, in per cent.', formulas: [THETA, STRAIN] }),
      life: () => ({ says: 'Read off the curve how many bends half of the leaves last.', labels: ['P', 'Q'] }),
      chance: ({ wanted }) => ({
        says: `${grouped(wanted)} bends are wanted. Divide what half last by that, and read off the table how many of 100 leaves get there.`,
      }),
      needed: ({ last }) => ({
        says: `Half are to last ${grouped(last)} bends. Read off the strain for that. How long must a leaf as thick as Q be?`,
        formulas: [{ left: 'L', over: 't · θ', under: '2 · ε' }],
      }),
      deep: ({ depth }) => ({
        says: `P is ${mm(depth)} deep. How deep must Q be to push back as hard?`,
        formulas: [{ left: 'b of Q', over: 'b · t³ · (L of Q)', under: '(t of Q)³ · L' }],
      }),
      why: () => ({ says: 'Equally hard to bend: which would you print, and what does it cost?' }),
    },
    why: {
      life: 'Either axis goes up by tens: one step is ten times as much.',
      deep: 'Effort goes with depth and with the cube of thickness, and falls with length.',
      why: 'The long thin one lasts far longer; it costs length and depth.',
    },
  },
  'side-by-side': {
    setUp: (given) =>
      `Leaves side by side join two bars, all alike: ${linesText(given)} and ${mm(given.depth)} deep, in ${given.filament.name}. The bars are turned against each other by ${degreesText(given.angle)}; each leaf bends evenly.`,
    drawn: () =>
      'The leaves between their bars, seen flat and life size; they bend out of the page, all by the same angle.',
    ask: {
      measure: () => ({ says: 'Count the leaves, and measure the thin part of one.', labels: ['leaves', 'long'] }),
      strain: ({ angle }) => ({
        says: `Work out the skin strain of one leaf at ${degreesText(angle)}, in per cent.`,
        formulas: [THETA, STRAIN],
      }),
      one: ({ filament }) => ({
        says: `What effort bends one leaf that far? E is ${modulusText(filament.modulus)}; b is how deep it is.`,
        formulas: [TORQUE],
      }),
      all: () => ({ says: 'What effort bends all of them? How much more does each one strain for it?' }),
      thick: () => ({
        says: 'One thick leaf, as long and as deep, is to push as hard as the whole row. How thick is it, and what does its skin strain?',
        formulas: [{ left: 't of one', over: 't · ∛(how many leaves)' }],
        labels: ['thick', 'strain'],
      }),
      back: ({ filament }) => ({
        says: `${filament.name} stays bent past ${limitText(filament.yields)}. Which springs back: the row or the thick leaf?`,
      }),
      needed: ({ wanted }) => ({
        says: `At least ${grouped(wanted)}${NO_BREAK}N·mm are wanted. How many leaves side by side give that?`,
      }),
    },
    why: {
      all: 'Efforts add up, and no leaf strains more: none knows of its neighbours.',
      back: 'Thickness strains the skin; leaves beside each other do not.',
      needed: 'What is wanted over the effort of one, rounded up to a whole count.',
    },
  },
  'held-or-flexed': {
    setUp: (given) =>
      `A leaf of ${linesText(given)} is printed in ${given.filament.name} and bent by ${degreesText(given.angle)}. One minute after it was bent it pushes back with ${effortFigure(given.push)}${NO_BREAK}N·mm; then it is left bent.`,
    drawn: () => 'The leaf, life size. Boxes are thick and stay straight.',
    ask: {
      measure: () => ({ says: ruler('the thin part of the leaf') }),
      strain: ({ angle }) => ({
        says: `Work out its skin strain at ${degreesText(angle)}, in per cent.`,
        formulas: [THETA, STRAIN],
      }),
      limits: ({ filament }) => ({
        says: `${filament.name} stands ${limitText(filament.again)} again and again, but only ${limitText(filament.held)} held bent. Which does this leaf stand?`,
      }),
      left: ({ exponent, hours }) => ({
        says: `The push falls as a power of time. How much of it is left, in per cent, after each of these times?`,
        formulas: [{ left: 'left', over: `minutes to the power −${bare(exponent, 3)}` }],
        labels: hours.map(timeText),
      }),
      push: ({ hours }) => ({ says: `With what effort does it still push after ${timeText(hours[2])}?` }),
      plot: ({ readAt }) => ({
        says: `Mark the three shares over their times and join them. Read off what is left after ${timeText(readAt)}.`,
      }),
      stays: ({ stays, angle }) => ({
        says: `Let go after a day, ${limitText(stays)} of the bend stays. By how many degrees is it still bent, of ${degreesText(angle)}?`,
      }),
    },
    why: {
      limits: 'What is flexed comes back each time; what is held gives way slowly, at far less strain.',
      left: 'Each tenfold of time takes the same share of what is left.',
      stays: 'So print it bent the other way, or let it rest straight.',
    },
  },
  'arch-springs-back': {
    setUp: (given) =>
      `Arches P, Q and R stand between two walls; each is a pair joined at its middle, ${linesText(given)} each, both together ${mm(given.depth)} deep, in ${given.filament.name}. They are pushed through at the middle.`,
    drawn: () =>
      'One line of each arch, twice as large as it is, as printed. Measure from the straight line up to the arch.',
    ask: {
      measure: () => ({
        says: 'Measure how far the walls are apart and how high each arch rises, and halve what you read.',
        labels: ['walls', 'P', 'Q', 'R'],
      }),
      ratio: ({ thickness }) => ({
        says: `How many times its own thickness of ${mm(thickness)} does each arch rise?`,
        formulas: [{ left: 'times', over: 'h', under: 't' }],
      }),
      stays: ({ staysFrom }) => ({
        says: `A pair joined at the middle stays where it was pushed from ${bare(staysFrom.double)} times on. Which stay?`,
      }),
      least: () => ({ says: 'How high must an arch of this thickness rise at least to stay?' }),
      rest: () => ({
        says: 'How far has the middle of R gone when it rests in its second place? Draw it there.',
        formulas: [{ left: 'gone', over: 'h · (1.5 + √(0.25 − 1.333 ÷ times²))' }],
      }),
      force: (given) => ({
        says: `What push snaps R? E is ${modulusText(given.filament.modulus)}, L the distance of the walls, b and t as above.`,
        formulas: [{ left: 'F', over: `${snapsAt(given)} · E · b · t³ · h`, under: '12 · L³' }],
      }),
      alone: ({ staysFrom }) => ({
        says: `One arch alone leans aside and springs back unless it rises ${bare(staysFrom.free)} times its thickness. Which would stay alone?`,
      }),
    },
    why: {
      stays: 'The rest are squeezed too little on the way through and spring back.',
      rest: 'Just short of its mirror image, which would be twice the rise.',
      alone: 'Alone it can dodge sideways, so it must rise higher.',
    },
  },
};
