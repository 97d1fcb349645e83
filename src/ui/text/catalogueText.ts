/** Words of the catalogue of kinds: its question, and why a kind cannot do what is asked. */
import { LYINGS, type Lying } from '../../core/print/profile.ts';
import { kindText, lyingText } from './kindText.ts';
import { listed } from './said.ts';

/** What a joint should do, as the question has it. */
export type Doing = 'anything' | 'turn' | 'travel' | 'stay';

export const DOINGS: readonly { readonly value: Doing; readonly text: string }[] = [
  { value: 'anything', text: 'Anything' },
  { value: 'turn', text: 'Turn' },
  { value: 'travel', text: 'Move across' },
  { value: 'stay', text: 'Snap and stay' },
];

const ASKED_LYING: Readonly<Record<Lying, string>> = {
  flat: 'flat',
  crease: 'thin in the build direction',
  upright: 'upright',
};

/** Ways of lying as they are asked for, before a kind is known that has its own words. */
export const LYING_ASKED: readonly { readonly value: Lying | 'any'; readonly text: string }[] = [
  { value: 'any', text: 'any way' },
  ...LYINGS.map((value) => ({ value, text: ASKED_LYING[value] })),
];

export const CANNOT: Readonly<Record<Exclude<Doing, 'anything'>, string>> = {
  turn: 'It turns nothing: it only moves across.',
  travel: 'It moves nothing across: it only turns.',
  stay: 'It always comes back: it has no second place of rest.',
};

/** “Cannot be printed upright, only flat.” */
export function cannotLie(family: string, lying: Lying, lyings: readonly Lying[]): string {
  const only = listed(
    lyings.map((one) => lyingText(family, one)),
    'or',
  );
  return `Cannot be printed ${ASKED_LYING[lying]}, only ${only}.`;
}

export const CATALOGUE = {
  label: 'Kinds of flexure',
  question: 'What should it do?',
  printed: 'printed',
  doing: 'What it should do',
  lying: 'How it lies in the print',
  chooseFor: 'Choose for',
  costs: 'Costs',
  keys: 'Solid: what does not bend. Lines: what bends. Dashed: a second place of rest. Arrow keys move, Enter takes it, a letter jumps to a name, Esc goes back.',
  grey: 'Kinds that cannot do it turn grey and say why.',
  back: 'Back',
} as const;

/** What the catalogue is open for. */
export function catalogueFor(joint: string | undefined): string {
  return joint === undefined ? 'A new joint' : `Another kind for “${joint}”`;
}

export function kindChanged(name: string, now: string, was: string): string {
  return `“${name}” made ${kindText(now).name}, was ${kindText(was).name}`;
}
