/** What is kept in the joint along the way: hollows are rests, and hills part them. */
import type { LengthUnit } from '../../text/numbers.ts';
import {
  ENERGY_NOTE,
  ENERGY_UNIT,
  ENERGY_WORDS,
  energyReading,
  signedAmount,
  SOLVED_AIDS,
  SOLVED_NAMES,
  solvedTables,
} from '../../text/solvedChartText.ts';
import type { Px } from '../frame.ts';
import type { LabelWish } from '../labels.ts';
import { around, clearPaper } from '../spots.ts';
import type { Hollow, WayMark } from './marks.ts';
import { energyLevel } from './spans.ts';
import { readWay, runsOf, type Answered, type Way } from './way.ts';
import type { DrawnCurve, WayCurve } from './wayCurve.ts';

/** A ball lies on the curve, not in it [px]. */
const ON_TOP = 5;

export function energyCurve(a: Answered, way: Way, hollows: readonly Hollow[], unit: LengthUnit): WayCurve {
  const { measure } = a.drive;
  return {
    name: SOLVED_NAMES.energy,
    aid: SOLVED_AIDS.energy,
    level: energyLevel(way, hollows),
    counts: ENERGY_UNIT,
    lines: [...runsOf(way.back), ...runsOf(way.forward)].map(({ holds, points }) => ({
      isGuided: !holds,
      points: points.map(({ amount, energy }) => ({ amount, value: energy })),
    })),
    limits: [],
    valueAt: (amount) => readWay(way, amount).energy,
    reading: (amount, energy = 0) => energyReading(amount, energy, measure, unit),
    renderUnder: () => null,
    renderOver: (drawn) =>
      hollows.map(({ hill, rest }) => (
        <ComeBack key={rest.amount} hill={placeOf(drawn, hill)} rest={placeOf(drawn, rest)} />
      )),
    balls: (drawn) => hollows.flatMap(({ hill, rest }) => [onTop(drawn, hill), onTop(drawn, rest)]),
    wishes: (drawn) => hollows.flatMap((hollow, i) => wishesOf(drawn, hollow, i)),
    note: { says: ENERGY_NOTE, kind: a.provenance.effort },
    table: {
      caption: solvedTables.energy,
      heads: solvedTables.energyHeads,
      first: hollows.flatMap((hollow) => rowsOf(hollow, (amount) => signedAmount(amount, measure, unit))),
      cell: (energy = 0) => solvedTables.energyCell(energy),
    },
  };
}

const placeOf = ({ place }: DrawnCurve, { amount, energy }: WayMark) => place(amount, energy);

function onTop(drawn: DrawnCurve, mark: WayMark) {
  const { x, y } = placeOf(drawn, mark);
  return { kind: mark.kind, x, y: y - ON_TOP };
}

function rowsOf({ hill, rest, kept, toComeBack }: Hollow, say: (amount: number) => string) {
  return [
    [`${ENERGY_WORDS.hill(hill.energy)}, ${say(hill.amount)}`, solvedTables.energyCell(hill.energy)],
    [
      `${ENERGY_WORDS.kept(kept)}, ${ENERGY_WORDS.comeBack(toComeBack)}, ${say(rest.amount)}`,
      solvedTables.energyCell(kept),
    ],
  ];
}

/** The level of the hill carried over to the rest, and the height between them. */
function ComeBack({ hill, rest }: { readonly hill: Px; readonly rest: Px }) {
  const tall = rest.y - hill.y > 18;
  return (
    <path
      className="chart-comeback"
      d={`M${hill.x} ${hill.y}H${rest.x + 14}M${rest.x + 9} ${hill.y}V${rest.y}${
        tall ? `M${rest.x + 6} ${rest.y - 7}l3 7l3 -7M${rest.x + 6} ${hill.y + 7}l3 -7l3 7` : ''
      }M${rest.x} ${rest.y}h14`}
    />
  );
}

function wishesOf(drawn: DrawnCurve, { hill, rest, kept, toComeBack }: Hollow, i: number): readonly LabelWish[] {
  const { box } = drawn.frame;
  const [top, foot] = [placeOf(drawn, hill), placeOf(drawn, rest)];
  const middle = { x: foot.x + 9, y: (top.y + foot.y) / 2 };
  return [
    {
      key: `hill${i}`,
      text: ENERGY_WORDS.hill(hill.energy),
      look: 'ink',
      spots: [{ x: top.x, y: top.y - 14, anchor: 'middle' }, ...around(top, 14)],
    },
    {
      key: `kept${i}`,
      text: ENERGY_WORDS.kept(kept),
      look: 'ink',
      spots: [{ x: foot.x, y: foot.y + 16, anchor: 'middle' }, ...around(foot, 12)],
      far: () => clearPaper(foot, 8, box),
    },
    {
      key: `back${i}`,
      text: ENERGY_WORDS.comeBack(toComeBack),
      look: 'ink',
      spots: [
        { x: middle.x - 16, y: middle.y + 34, anchor: 'end', leader: middle },
        { x: middle.x - 8, y: middle.y + 4, anchor: 'end' },
        { x: middle.x + 5, y: middle.y + 4, anchor: 'start' },
      ],
      far: () => clearPaper(middle, 4, box),
    },
  ];
}
