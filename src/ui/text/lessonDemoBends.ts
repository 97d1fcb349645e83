/** Words of the demonstrations in which one leaf is compared with itself: its length, lines, scale, bends and roots. */
import type { DemoId } from '../../core/lesson/demos/ids.ts';
import { effortText } from './amountText.ts';
import { effortStands, strainStands, timesText } from './lessonDemoText.ts';
import type { DemoWords } from './lessonDemoWords.ts';
import { counted, length } from './numbers.ts';

type OfBends = Extract<
  DemoId,
  'three-lengths' | 'one-line-more' | 'scaled-part' | 'one-or-many-bends' | 'fillet-or-corner'
>;

const PETG_LEAF = 'PETG, 2 × 0.42 = 0.84 mm thick, one way';

export const DEMO_BENDS: Readonly<Record<OfBends, DemoWords>> = {
  'three-lengths': {
    name: 'Same angle, three lengths',
    ask: 'Same angle, three lengths: which strains most?',
    claim: 'Same angle, three lengths: the short one strains most.',
    sentence: 'All three are bent {angle} in PETG, two lines thick; B is {length} long.',
    handles: { length: 'Length of B', angle: 'Angle of all' },
    question: 'How long must B be to strain no more than PETG stands again and again?',
    answer: (goal, { answers: [, b] }) => (b ? strainStands(goal, b) : ''),
    why: 'Twice the length shares the angle among twice as much leaf: half the strain.',
    varies: (a, { unit }) => `${length(a.length, unit)} long`,
    symbols: ['ε', 'θ', 't', 'L'],
    plot: { name: 'Strain against length', aid: 'half the length, twice the strain', across: 'flexing length' },
    setUp: PETG_LEAF,
  },
  'one-line-more': {
    name: 'One line more',
    ask: 'One line more: how much harder does it push back?',
    claim: 'One line more: effort by the cube, strain by the lines.',
    sentence: 'A is two lines thick, B is {lines} thick; both are bent {angle} in PETG.',
    handles: { lines: 'Lines across B', angle: 'Angle of both' },
    question: 'How many lines must B have to push back at least five times as hard as A?',
    answer: (goal) => effortStands(goal),
    why: 'Thickness counts three times over in the effort, and once in the strain.',
    varies: (a, { unit }) => `${counted(a.section.count, 'line')}, ${length(a.section.thickness, unit)}`,
    also: ({ effort }) => effortText(effort.effort, effort.measure),
    symbols: ['M', 'E', 'b', 't', 'θ', 'L'],
    plot: { name: 'Effort against lines', aid: 'by the cube', across: 'lines across' },
    setUp: 'PETG, 12 mm long, lines of 0.42 mm, one way',
  },
  'scaled-part': {
    name: 'The whole part scaled',
    ask: 'The whole part scaled up: does it strain less?',
    claim: 'Scaled up whole, at the same angle it strains the same.',
    sentence: 'A is a part as drawn, B the same part at {scale} its size; both are bent {angle} in PETG.',
    handles: { scale: 'Scale of B', angle: 'Angle of both' },
    question: 'Bring B down to what PETG stands again and again. Which of the two handles does it?',
    answer: (goal, { answers: [a, b], values }) => {
      if (!a || !b) return '';
      const scaled = values['scale'] !== 1 && !goal.isMet;
      return `${strainStands(goal, b)}${scaled ? ` At ${timesText(values['scale'] ?? 1)} times the size that is just what A strains.` : ''}`;
    },
    why: 'Thickness and length grow together, so the strain stays. Only a smaller angle brings it down.',
    varies: (a, { unit }) => {
      const { exact, outcome } = a.fit;
      const lines = outcome === 'whole' ? counted(Math.round(exact), 'line') : `${exact.toFixed(1)} lines: not whole`;
      return `${length(a.length, unit)} long, ${lines}`;
    },
    also: ({ effort }) => effortText(effort.effort, effort.measure),
    symbols: ['ε', 'θ', 't', 'L', 's'],
    plot: { name: 'Strain against scale', aid: 'level: scaling changes nothing', across: 'times the size' },
    setUp: 'PETG, 0.84 mm thick and 8 mm long at its own size, one way',
  },
  'one-or-many-bends': {
    name: 'One bend or many',
    ask: 'One bend or many small ones: which strains less?',
    claim: 'Many small bends turn as far as one, and each strains a little.',
    sentence: 'Both turn {angle} in all: A in one bend, B shared among {bends}, in PETG.',
    handles: { bends: 'Bends of B', angle: 'Angle of both in all' },
    question: 'How many small bends bring B to what PETG stands again and again?',
    answer: (goal, { answers: [, b] }) => (b ? strainStands(goal, b) : ''),
    why: 'Each bend takes an equal share of the angle, and strains by its share.',
    varies: (a, { unit }) => `${counted(a.inRow, 'bend')} of ${length(a.length, unit)}`,
    symbols: ['ε', 'θ', 't', 'L', 'n'],
    plot: { name: 'Strain against bends', aid: 'twice the bends, half the strain', across: 'bends in a row' },
    setUp: 'PETG, each 4 mm long and 0.84 mm thick, one way',
  },
  'fillet-or-corner': {
    name: 'Fillet or sharp corner',
    ask: 'Fillet or sharp corner: where does it break first?',
    claim: 'A sharp corner strains the root; a fillet leads it into the pad.',
    sentence: 'A has sharp corners, B a fillet of {fillet}; both are bent {angle} in PETG.',
    handles: { fillet: 'Fillet of B', angle: 'Angle of both' },
    question: 'How large must the fillet be for the root of B to strain at most a tenth more than its leaf?',
    answer: ({ now, isMet }) => {
      const says = `the root of B strains ${now.toFixed(2)} times as much as the leaf between`;
      return isMet ? `Yes. Now ${says}.` : `Not yet. As it is, ${says}.`;
    },
    why: 'The first tenths of a millimetre win most; each further one wins less.',
    varies: (a, { unit }) => (a.fillet > 0 ? `fillet ${length(a.fillet, unit)}` : 'sharp corners'),
    also: ({ strain }) => `${strain.rootFactor.toFixed(2)} × the leaf between`,
    symbols: ['ε', 'θ', 't', 'L', 'k'],
    plot: { name: 'Strain at the root against fillet', aid: 'the first tenths win most', across: 'fillet' },
    setUp: PETG_LEAF,
  },
};
