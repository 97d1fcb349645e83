import { FILAMENTS } from '../../material/filaments.ts';
import { radians } from '../../units.ts';
import type { Demo } from './demo.ts';
import { countedLife, timesAsMuch } from './goals.ts';
import { leaf } from './leaves.ts';

const COMPARED = 'pla';
const OTHERS = FILAMENTS.filter(({ id, printable }) => printable && id !== COMPARED).map(({ id }) => id);
const TIMES = 10;

/** Filament against filament: the same leaf strains the same, and lives by what the filament stands. */
export const FILAMENT_AGAINST_FILAMENT: Demo = {
  id: 'filament-against-filament',
  handles: [
    {
      key: 'filament',
      kind: 'choice',
      min: 0,
      max: OTHERS.length - 1,
      step: 1,
      start: OTHERS.indexOf('abs'),
      options: OTHERS,
    },
    { key: 'angle', kind: 'angle', min: radians(20), max: radians(45), step: radians(1), start: radians(30) },
  ],
  joints: ({ filament = 0, angle = 0 }) => [
    leaf(angle, { filament: COMPARED }),
    leaf(angle, { filament: OTHERS[filament] ?? COMPARED }),
  ],
  goal: ([a, b]) => a && b && timesAsMuch(countedLife(b), countedLife(a), TIMES),
  law: { figure: 'life', along: 'angle', curves: [0, 1], places: ({ angle }) => [angle, angle] },
};
