import { twistsInRow } from '../../../core/flexures/slitPanel.ts';
import { wrapRadius } from '../../../core/flexures/wrapRadius.ts';
import { length } from '../numbers.ts';
import { USE, sizeOf, type KindText } from './kind.ts';

const radiusOf = (sizes: Parameters<NonNullable<KindText['told']>>[0], amount: number) =>
  wrapRadius(sizeOf(sizes, 'pitch'), twistsInRow({ rows: sizeOf(sizes, 'rows') }), amount);

const OVER =
  'with {sizes.rows} rows of slits {length} long, {sizes.pitch} from row to row, and bridges of {sizes.bridge} between them';

export const SLIT_PANEL: KindText = {
  name: 'slit panel',
  does: 'Strips between rows of slits twist, and a sheet wraps round a curve.',
  chooseFor: 'a cover that prints lying flat.',
  costs: 'strength: slits cut it nearly through and tear at their ends.',
  piece: 'strip',
  pieces: 'strips',
  thin: 'the sheet',
  unitOfCount: 'layer',
  sizes: {
    layers: 'Layers through',
    rows: 'Rows of slits',
    pitch: 'From row to row',
    slitWidth: 'Width of a slit',
    slit: 'Length of a slit',
    bridge: 'Bridge between slits',
    depth: 'Panel width',
  },
  room: {
    called: 'slit length',
    thing: 'slits',
    is: 'long',
    little: 'short',
    instead: 'fewer bridges across the panel',
  },
  uneven: true,
  padName: 'Bridge',
  fillets: 'none',
  deep: 'wide',
  drives: { wrapped: 'wraps' },
  lying: { crease: 'flat on the plate' },
  brief: `{drive}{by} {amount} {ways}{told}, {cycles} times, in {filament}, {sizes.depth} wide, printed flat on the plate in {count} {layers} of {layerHeight}, ${OVER}.`,
  measuredBrief: `Measured {thickness} thick: {drive}{by} {amount} {ways}{told}, {cycles} times, in {filament}, {sizes.depth} wide, printed flat on the plate in layers of {layerHeight}, ${OVER}.`,
  details: () =>
    `${USE} Each slit is {sizes.slitWidth} wide. Nozzle {nozzle}, lines {lineWidth} wide, the first layer {firstLayerHeight}.`,
  told: (sizes, amount, unit) => ` round a radius of ${length(radiusOf(sizes, amount), unit, unit === 'mm' ? 1 : 2)}`,
  follows: (sizes, _, amount) => [
    { label: 'Strip between two rows', value: sizeOf(sizes, 'pitch') - sizeOf(sizes, 'slitWidth') },
    { label: 'Radius of its middle when wrapped', value: radiusOf(sizes, amount) },
  ],
  starts: 'Start points on the edge of the panel or in the middle of a bridge, never at the end of a slit.',
  notes: () => [
    'Round the ends of the slits: a sharp end tears first.',
    'Lay contours along the slits, so that lines run along the strips that twist.',
    'Shift each row by half a slit against the next, bridges against the middles of slits.',
  ],
};
