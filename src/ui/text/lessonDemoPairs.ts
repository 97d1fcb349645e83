/** Words of the demonstrations in which two different joints meet: filaments, shapes, springs side by side, held ones, arches. */
import type { Assessment } from '../../core/design/assessment.ts';
import { secondRest } from '../../core/design/solvedPath.ts';
import type { DemoId } from '../../core/lesson/demos/ids.ts';
import { countedLife } from '../../core/lesson/demos/goals.ts';
import { heldOf } from '../../core/lesson/demos/heldOrFlexed.ts';
import { effortText } from './amountText.ts';
import { effortStands, optionText, strainStands, timesText } from './lessonDemoText.ts';
import type { DemoWords } from './lessonDemoWords.ts';
import { counted, length, share, type LengthUnit } from './numbers.ts';
import { leftText } from './setText.ts';

type OfPairs = Extract<
  DemoId,
  'filament-against-filament' | 'short-or-long' | 'side-by-side' | 'held-or-flexed' | 'arch-springs-back'
>;

const TIMES = ['1min', '10min', '1h', '6h', '1day', '1week', '1month', '1year'];

/** Less than this is told as nothing [rad]. */
const NOTHING = 0.001;

function staysText(amount: number, { drive }: Assessment, unit: LengthUnit): string {
  return amount < NOTHING ? 'nothing stays bent' : `about ${leftText(amount, drive, unit)} stay bent`;
}

export const DEMO_PAIRS: Readonly<Record<OfPairs, DemoWords>> = {
  'filament-against-filament': {
    name: 'Filament against filament',
    ask: 'The same leaf in two filaments: which lives longer?',
    claim: 'Same leaf, same strain; the filament decides its life.',
    sentence: 'A is PLA, B is {filament}; both leaves are bent {angle}.',
    handles: { filament: 'Filament of B', angle: 'Angle of both' },
    question: 'Which filaments live at least ten times as long as PLA in this leaf?',
    answer: ({ now, isMet }, { answers: [a, b] }) => {
      if (!a || !b) return '';
      const isCapped = countedLife(b) === b.life.maxReportableCycles;
      const says = `${b.filament.name} lasts ${isCapped ? 'at least ' : ''}${timesText(now)} times as long as PLA`;
      return isMet ? `Yes. ${says}.` : `Not yet. ${says}.`;
    },
    why: 'Both strain the same. What differs is how much of it each stands, and how hard it pushes back.',
    varies: ({ filament }) => filament.name,
    also: ({ effort }) => effortText(effort.effort, effort.measure),
    symbols: ['ε', 'θ', 't', 'L'],
    plot: { name: 'Life against angle', aid: 'half broken by then', across: 'bent by' },
    setUp: 'two lines of 0.42 mm, 12 mm long, one way',
  },
  'short-or-long': {
    name: 'Short and thick, long and thin',
    ask: 'Equally hard to bend: short and thick, or long and thin?',
    claim: 'Equally hard to bend, long and thin strains less.',
    sentence:
      'A is short and three lines thick. B is two lines thick, {length} long, and as deep as makes it push back as hard; both are bent {angle}.',
    handles: { length: 'Length of B', angle: 'Angle of both' },
    question: 'How long must B be to strain no more than PETG stands again and again?',
    answer: (goal, { answers: [, b], unit }) =>
      b ? `${strainStands(goal, b)} It is ${length(b.section.width, unit, 1)} deep to push back as hard.` : '',
    why: 'Thin and long, it strains less; what it loses in effort it wins back by depth, which strains nothing.',
    varies: (a, { unit }) =>
      `${counted(a.section.count, 'line')}, ${length(a.length, unit, 1)} long, ${length(a.section.width, unit, 1)} deep`,
    also: ({ effort }) => effortText(effort.effort, effort.measure),
    symbols: ['ε', 'M', 'E', 'b', 't', 'θ', 'L'],
    plot: { name: 'Strain against length', aid: 'every B pushes back like A', across: 'flexing length' },
    setUp: 'PETG, lines of 0.42 mm, one way',
  },
  'side-by-side': {
    name: 'Side by side for force',
    ask: 'More leaves side by side: do they strain more?',
    claim: 'More leaves side by side push harder, and none strains more.',
    sentence: 'A stands on two leaves, B on {leaves}; both are pushed {travel} aside in PETG.',
    handles: { leaves: 'Leaves of B', travel: 'Pushed aside' },
    question: 'How many leaves make B push back at least two and a half times as hard as A?',
    answer: (goal) => effortStands(goal),
    why: 'Each leaf is bent alike and pushes alike; the pushes add up, the strains do not.',
    varies: ({ sizes }) => counted(sizes['leaves'] ?? 0, 'leaf').replace('leafs', 'leaves'),
    also: ({ effort }) => effortText(effort.effort, effort.measure),
    symbols: ['F', 'n'],
    plot: { name: 'Effort against leaves', aid: 'straight: each adds as much', across: 'leaves side by side' },
    setUp: 'PETG, leaves 14 mm long and 0.84 mm thick, kept from turning',
  },
  'held-or-flexed': {
    name: 'Held bent or flexed',
    ask: 'Bent and let go, or bent and held: what comes back?',
    claim: 'Let go, it comes back; held bent, it slackens and stays.',
    sentence: 'Both are bent {angle} in PETG: A is let go at once, B is held for {time}.',
    handles: { time: 'B is held for', angle: 'Angle of both' },
    question: 'After how long has B lost a quarter of its push, though it never moved?',
    answer: ({ now, isMet }, { answers: [, b], values, unit }) => {
      const held = b && heldOf(b);
      if (!b || !held) return '';
      const after = optionText(TIMES[values['time'] ?? 0] ?? '');
      const says = `After ${after} B has ${share(now)} of its push left; let go then, ${staysText(held.stays.typical, b, unit)}`;
      return isMet ? `Yes. ${says}.` : `Not yet. ${says}.`;
    },
    why: 'Plastic that is kept bent creeps into its new shape: fast at first, then slower and slower.',
    varies: (a, { values }) =>
      a.joint.movement.held ? `held ${optionText(TIMES[values['time'] ?? 0] ?? '')}` : 'let go at once',
    also: (a, { unit }) => {
      const held = heldOf(a);
      if (!held) return staysText(a.set.amount, a, unit);
      return `${share(held.left.typical)} of its push left; ${staysText(held.stays.typical, a, unit)}`;
    },
    symbols: ['T', 'm'],
    plot: { name: 'Push left against time held', aid: 'of that after a minute', across: 'held for' },
    setUp: 'PETG, two lines, 24 mm long',
  },
  'arch-springs-back': {
    name: 'An arch that springs back',
    ask: 'A symmetric arch is pushed through: does it stay there?',
    claim: 'A lone arch leans aside and springs back.',
    sentence: 'Both rise {rise} and are pushed {push} of the way; A is one arch, B two joined.',
    handles: { rise: 'Rise of both', push: 'Pushed through' },
    question: 'What rise makes A, the arch that stands alone, stay pushed through?',
    answer: ({ isMet }, { answers: [, b] }) => {
      const other = b?.solved && secondRest(b.solved) ? 'B stays' : 'B comes back as well';
      if (isMet) return `Yes. Pushed through and let go, A stays there by itself; ${other}.`;
      return `Not yet. Its push has a limit, past which A gives way; let go, it comes back all the same. ${other}.`;
    },
    why: 'Alone it escapes sideways, in an S, and keeps too little of its squeeze. The block of B keeps both upright.',
    varies: (a) => (a.sizes['arches'] === 1 ? 'one arch alone' : 'two, joined'),
    also: (a) => {
      if (!a.solved) return undefined;
      return `${secondRest(a.solved) ? 'stays' : 'comes back'}; up to ${effortText(a.effort.effort, a.effort.measure)}`;
    },
    symbols: ['h', 't'],
    plot: { name: 'Effort against movement', aid: 'ball in a cup: it rests there', across: 'pushed by' },
    setUp: 'PETG, two lines of 0.42 mm, span 40 mm',
  },
};
