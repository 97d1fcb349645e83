/** How long the shapes of a lot last in a filament, and what else of their strain is too much. */
import { flexesOf } from '../design/flexesOf.ts';
import { lifeGrade } from '../design/verdict.ts';
import { assessLife, type Flex } from '../life/assessLife.ts';
import type { LifeAnswer } from '../life/lifeAnswer.ts';
import { BIT, type Screened } from './cell.ts';
import { partFor, ratioOf, type Row } from './rows.ts';
import { shapeAt } from './shapes.ts';
import { ROUND_OFF } from './shortfalls.ts';

/** What a shape in a filament falls short in, and its chance where that is known without it falling short in life. */
export interface Lasting {
  mask: number;
  chance: number;
}

/** Every kind of flex of a shape at a peak strain of 1: by hand forms strains grow in proportion. */
function flexesAt({ shapes, wanted }: Screened, at: number): readonly [Flex, ...Flex[]] {
  const { lot } = shapes;
  const { movement, family } = lot;
  const { amount, cycles, also } = movement;
  const ratio = ratioOf(lot);
  if (also === undefined && ratio !== undefined) return [{ amount, peakStrain: 1, ratio, cycles }];
  const { sizes, section } = shapeAt(lot, wanted.profile, at);
  return flexesOf({ joint: { movement }, family, sizes, section }, {}, { peak: 1, rootFactor: 1 });
}

/** Flexes of shapes that have been looked up: a lot is screened again and again while it is solved. */
const flexesOfShapes = new WeakMap<Float64Array, Map<number, readonly [Flex, ...Flex[]]>>();

/** The same, remembered by the shapes as hand forms made them. */
function flexesKept(screened: Screened, at: number): readonly [Flex, ...Flex[]] {
  // What is corrected by solved ones shares this array with what it was made from.
  const key = screened.shapes.rootFactor;
  const kept = flexesOfShapes.get(key) ?? new Map<number, readonly [Flex, ...Flex[]]>();
  flexesOfShapes.set(key, kept);
  const flexes = kept.get(at) ?? flexesAt(screened, at);
  kept.set(at, flexes);
  return flexes;
}

/** The life of a shape by the same steps as `assess`. */
function lifeOf(screened: Screened, at: number, { filament }: Row): LifeAnswer {
  const { shapes } = screened;
  const flexes = flexesKept(screened, at);
  const peak = shapes.peak[at] ?? 0;
  const strained = (flex: Flex): Flex => ({ ...flex, peakStrain: peak * flex.peakStrain });
  const [own, ...rest] = flexes;
  return assessLife({
    flexes: [strained(own), ...rest.map(strained)],
    acrossLayers: shapes.lot.lying === 'upright',
    thickness: shapes.thickness[at] ?? 0,
    filament,
  });
}

/** Fills in what a shape in a filament falls short in, by the limits of its strain and its life. */
export function lastingOf(screened: Screened, at: number, row: Row, lasting: Lasting): void {
  const { shapes } = screened;
  const { movement } = shapes.lot;
  const peak = shapes.peak[at] ?? 0;
  const side = partFor(shapes.thickness[at] ?? 0);
  let mask =
    (peak <= row.held ? 0 : BIT.sags) |
    (peak <= row.bends ? 0 : BIT['bends for good']) |
    (row.isWarm ? BIT.warmth : 0) |
    (row.sagsOut ? BIT['comes back'] : 0);
  lasting.chance = 0;
  if (peak > row.breaks || peak > row.breaksAtOnce[side] * (1 + ROUND_OFF)) mask |= BIT.breaks;
  else if (!row.isUncounted && peak > row.lasts[side] * (1 + ROUND_OFF)) mask |= BIT.life;
  else {
    const life = lifeOf(screened, at, row);
    lasting.chance = life.chance;
    if (life.breaksOnFirstFlex) mask |= BIT.breaks;
    else {
      const grade = lifeGrade(life, movement);
      if (grade === 'beyond') mask |= BIT.uncounted;
      else if (grade !== 'pass') mask |= BIT.life;
    }
  }
  lasting.mask = mask;
}
