/** All demonstrations; a new one is its id, its own file and a line here. */
import { ARCH_SPRINGS_BACK } from './archSpringsBack.ts';
import type { Demo } from './demo.ts';
import { FILAMENT_AGAINST_FILAMENT } from './filamentAgainstFilament.ts';
import { FILLET_OR_CORNER } from './filletOrCorner.ts';
import { HELD_OR_FLEXED } from './heldOrFlexed.ts';
import type { DemoId } from './ids.ts';
import { ONE_LINE_MORE } from './oneLineMore.ts';
import { ONE_OR_MANY_BENDS } from './oneOrManyBends.ts';
import { SCALED_PART } from './scaledPart.ts';
import { SHORT_OR_LONG } from './shortOrLong.ts';
import { SIDE_BY_SIDE } from './sideBySide.ts';
import { THREE_LENGTHS } from './threeLengths.ts';

export const DEMOS: Readonly<Record<DemoId, Demo>> = {
  'three-lengths': THREE_LENGTHS,
  'one-line-more': ONE_LINE_MORE,
  'scaled-part': SCALED_PART,
  'one-or-many-bends': ONE_OR_MANY_BENDS,
  'fillet-or-corner': FILLET_OR_CORNER,
  'filament-against-filament': FILAMENT_AGAINST_FILAMENT,
  'short-or-long': SHORT_OR_LONG,
  'side-by-side': SIDE_BY_SIDE,
  'held-or-flexed': HELD_OR_FLEXED,
  'arch-springs-back': ARCH_SPRINGS_BACK,
};
