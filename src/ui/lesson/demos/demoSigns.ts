/** A little drawing of each demonstration, on a box of 56 by 24; heavy strokes bend, thin ones are the rest. */
import type { DemoId } from '../../../core/lesson/demos/ids.ts';

interface DemoSign {
  readonly heavy: string;
  readonly thin?: string;
  readonly dashed?: string;
}

export const DEMO_SIGNS: Readonly<Record<DemoId, DemoSign>> = {
  'three-lengths': { heavy: 'M3 20Q8 20 10 14M16 20Q26 20 30 11M36 20Q48 20 54 6', thin: 'M3 16V23M16 16V23M36 16V23' },
  'one-line-more': { heavy: 'M6 8H50M6 17H50M6 20.5H50', thin: 'M6 5V11M6 14V23M50 5V11M50 14V23' },
  'scaled-part': { heavy: 'M4 20Q10 20 13 13M24 21Q42 21 52 4', thin: 'M4 17V23M24 15V23.5' },
  'one-or-many-bends': { heavy: 'M4 20Q12 20 12 8M24 21L33 20M37 18.5L43 14M46 11L49 4', thin: 'M4 17V23M24 18V23.5' },
  'fillet-or-corner': { heavy: 'M4 4V12H24M32 4V6Q32 12 38 12H54', thin: 'M4 12V20M32 12V20' },
  'filament-against-filament': {
    heavy: 'M5 20Q18 20 24 8',
    dashed: 'M32 20Q45 20 51 8',
    thin: 'M5 16V23M32 16V23',
  },
  'short-or-long': { heavy: 'M5 14H17M5 17H17M5 20H17M26 20H53', thin: 'M5 11V23M17 11V23M26 16V23M53 16V23' },
  'side-by-side': { heavy: 'M10 6V20M17 6V20M32 6V20M39 6V20M46 6V20', thin: 'M6 6H21M6 20H21M28 6H50M28 20H50' },
  'held-or-flexed': { heavy: 'M6 20Q30 20 44 8', dashed: 'M6 20Q32 19 50 15', thin: 'M6 16V23M44 8L50 3' },
  'arch-springs-back': {
    heavy: 'M6 18Q18 18 28 8T50 18',
    dashed: 'M6 18Q22 18 24 21T38 15T50 18',
    thin: 'M6 13V22M50 13V22M28 0V5',
  },
};
