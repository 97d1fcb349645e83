import { standOff } from '../../../core/flexures/commonNetwork.ts';
import { inWords, setLength, unitAfter } from '../numbers.ts';
import { LINES, USE, sizeOf, type KindText } from './kind.ts';

export const CROSSED_LEAVES: KindText = {
  name: 'crossed leaves',
  does: 'Turns about a centre that hardly moves.',
  chooseFor: 'a pivot that swings both ways, many times.',
  costs: 'two planes, one bridging over the other; more room.',
  piece: 'leaf',
  pieces: 'leaves',
  thin: 'each leaf',
  unitOfCount: 'line',
  sizes: {
    lines: 'Lines across',
    length: 'Leaf length',
    depth: 'Depth of each leaf',
    between: 'Angle between the leaves',
    crossing: 'Crossing, share of the length',
    fused: 'How they pass each other',
    gap: 'Gap between the planes',
    fillet: 'Root fillet',
    pad: 'Pad thickness',
    sideBySide: 'Pivots side by side',
  },
  drawn: { length: 'Leaf length, between fillets', pad: 'Pads, thick' },
  room: { called: 'leaf length', thing: 'leaves', is: 'long', little: 'short' },
  padName: 'Pad',
  fillets: 'eight',
  deep: 'deep',
  drives: { turned: 'turns', centred: 'turns about a pin' },
  choices: { fused: { 0: 'in two planes', 1: 'in one plane, grown together,' } },
  brief:
    '{drive}{by} {amount} {ways}, {cycles} times, in {filament}, printed flat with {lineWidth} lines, {count} across, on leaves {length} long and {depth} deep that cross {sizes.fused} at {sizes.crossing} and {sizes.between}.',
  measuredBrief:
    'Measured {thickness} thick: {drive}{by} {amount} {ways}, {cycles} times, in {filament}, printed flat with {lineWidth} lines, on leaves {length} long and {depth} deep that cross {sizes.fused} at {sizes.crossing} and {sizes.between}.',
  details: (_, { fused }) =>
    `${USE} Roots filleted {fillet} into pads {pad} thick${fused === 1 ? '' : ', the planes {sizes.gap} apart'}, {sideBySide} side by side. ${LINES}`,
  follows: (sizes, thickness) => {
    const lean = sizeOf(sizes, 'between') / 2;
    const gap = Math.cos(lean) * (sizeOf(sizes, 'length') + 2 * standOff(sizeOf(sizes, 'fillet'), thickness, lean));
    return [{ label: 'Between the pads', value: gap }];
  },
  starts: 'Start points on the pads only, never on a leaf.',
  notes: ({ sizes, joint }, unit) =>
    sizes['fused'] === 1
      ? [
          'The leaves grow together where they cross: let the lines of one run through, and those of the other end at it.',
        ]
      : [
          `The leaves never touch: leave ${layersOpen(sizeOf(sizes, 'gap'), joint.profile.layerHeight)} open between the planes, ${setLength(sizeOf(sizes, 'gap'), unit)}${unitAfter(unit)}.`,
          'The upper leaf bridges from pad to pad: print it slowly, or on a support of another filament.',
        ],
};

function layersOpen(gap: number, layer: number): string {
  const layers = Math.round(gap / layer);
  return layers === 1 ? 'one layer' : `${inWords(layers)} layers`;
}
