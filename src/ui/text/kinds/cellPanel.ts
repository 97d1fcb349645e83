import { wrapRadius } from '../../../core/flexures/wrapRadius.ts';
import { length } from '../numbers.ts';
import { briefs, LINES, USE, sizeOf, type KindText } from './kind.ts';

const radiusOf = (sizes: Parameters<NonNullable<KindText['told']>>[0], amount: number) =>
  wrapRadius(sizeOf(sizes, 'cell'), sizeOf(sizes, 'cells'), amount);

export const CELL_PANEL: KindText = {
  name: 'cell panel',
  does: 'Many small cells, each bending a little, wrap a sheet round a curve.',
  chooseFor: 'a cover, a cuff, a lid round a 25 mm radius.',
  costs: 'strength: it is soft in every way, and prints slowly.',
  piece: 'leaf',
  pieces: 'leaves',
  thin: 'each leaf',
  unitOfCount: 'line',
  sizes: {
    lines: 'Lines across',
    cells: 'Cells',
    cell: 'Length of a cell',
    leaf: 'Leaf length',
    depth: 'Panel width',
    fillet: 'Root fillet',
    pad: 'Slat thickness',
  },
  drawn: { leaf: 'Leaf length, between fillets' },
  room: { called: 'leaf length', thing: 'leaves', is: 'long', little: 'short', instead: 'slats as much shorter' },
  padName: 'Slat',
  fillets: 'four at each leaf',
  deep: 'wide',
  drives: { wrapped: 'wraps' },
  lying: { flat: 'on its edge', upright: 'on its end' },
  ...briefs(
    '{drive}{by} {amount} {ways}{told}, {cycles} times, in {filament}, {sizes.depth} wide, printed {lying} with {lineWidth} lines',
    'as {sizes.cells} cell{s.cells} of {sizes.cell}, each with a leaf {length} long',
  ),
  details: () => `${USE} Leaves filleted {fillet} into slats {pad} thick. ${LINES}`,
  told: (sizes, amount, unit) => ` round a radius of ${length(radiusOf(sizes, amount), unit, unit === 'mm' ? 1 : 2)}`,
  follows: (sizes, _, amount) => [
    { label: 'Whole panel, all cells', value: sizeOf(sizes, 'cell') * sizeOf(sizes, 'cells') },
    { label: 'Radius of its middle when wrapped', value: radiusOf(sizes, amount) },
  ],
  starts: 'Start points on the slats, never on a leaf.',
  notes: () => [
    'Stand it on a brim: a long edge on the plate lifts at its ends.',
    'Bend it over the curve it was made for, not tighter: one leaf that is bent past its share breaks first.',
  ],
};
