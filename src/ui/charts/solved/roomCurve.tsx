/** The least clear distance between what may touch, along the way. */
import { leastOf } from '../../../core/design/joint.ts';
import type { Mm } from '../../../core/units.ts';
import { length, MM_PER_INCH, type LengthUnit } from '../../text/numbers.ts';
import {
  oneLine,
  roomNote,
  roomReading,
  SOLVED_AIDS,
  SOLVED_NAMES,
  solvedTables,
  TOUCHES,
} from '../../text/solvedChartText.ts';
import { onAxis } from '../amountAxis.ts';
import type { Span } from '../frame.ts';
import type { LabelWish, Spot } from '../labels.ts';
import { levelsOver } from '../levels.ts';
import { alongLimit, around, clearPaper } from '../spots.ts';
import { roomAt, touchesPast, type Room } from './room.ts';
import { Stretches } from './Stretches.tsx';
import type { Answered } from './way.ts';
import type { DrawnCurve, WayCurve } from './wayCurve.ts';

export function roomCurve(a: Answered, room: Room, unit: LengthUnit): WayCurve {
  const { measure } = a.drive;
  const { lineWidth } = a.joint.profile;
  const most = Math.max(...room.stretches.flat().map(({ gap }) => gap), 2 * lineWidth);
  const say = (gap: Mm) => (gap > 0 ? length(gap, unit) : TOUCHES);
  const { amount: wanted } = a.joint.movement;
  const least = leastOf(a.joint.movement);
  const marked = least === 0 ? [wanted] : [least, wanted];
  const touching = room.touching.map(([from, to]): Span => [onAxis(from, measure), onAxis(to, measure)]);
  return {
    name: SOLVED_NAMES.room,
    aid: SOLVED_AIDS.room,
    level: levelsOver(0, most * 1.05, unit === 'mm' ? 1 : MM_PER_INCH),
    counts: unit === 'mm' ? 'mm' : 'in',
    lines: room.stretches.map((stretch) => ({
      isGuided: false,
      points: stretch.map(({ amount, gap }) => ({ amount, value: gap })),
    })),
    limits: [lineWidth],
    valueAt: (amount) => roomAt(room, amount),
    reading: (amount, gap) => roomReading(amount, gap, measure, unit),
    renderUnder: ({ frame, place }) => {
      const { box, y } = frame;
      const upright = marked.map((amount) => `M${place(amount, 0).x} ${box.top}V${box.bottom}`);
      return (
        <>
          <Stretches frame={frame} spans={touching} />
          <path className="chart-limit" d={`M${box.left} ${y(lineWidth)}H${box.right}`} />
          <path className="chart-wanted" d={upright.join('')} />
        </>
      );
    },
    renderOver: () => null,
    balls: () => [],
    wishes: (drawn) => [
      ...(drawn.now ? [nowWish(drawn, drawn.now, say(drawn.now.value))] : []),
      lineWish(drawn, lineWidth, unit),
      ...room.touching.map((span, i) => touchesWish(drawn, span, i)),
    ],
    note: { says: roomNote(room.least.gap, touchesPast(room), measure, unit), kind: 'computed' },
    table: {
      caption: solvedTables.room,
      heads: solvedTables.roomHeads,
      first: [],
      cell: (gap) => (gap === undefined ? '–' : say(gap)),
    },
  };
}

function nowWish({ frame: { box } }: DrawnCurve, at: NonNullable<DrawnCurve['now']>, text: string): LabelWish {
  return { key: 'now', text, look: 'pencil', spots: around(at, 15), far: () => clearPaper(at, 9, box) };
}

function lineWish({ frame: { box, y } }: DrawnCurve, lineWidth: Mm, unit: LengthUnit): LabelWish {
  return { key: 'line', text: oneLine(lineWidth, unit), look: 'quiet', spots: alongLimit(box, y(lineWidth)) };
}

function touchesWish({ frame: { box }, place }: DrawnCurve, [from, to]: Span, i: number): LabelWish {
  const middle = (place(from, 0).x + place(to, 0).x) / 2;
  const spots = [12, 27, 42].map((down): Spot => ({ x: middle, y: box.top + down, anchor: 'middle' }));
  return { key: `touches${i}`, text: TOUCHES, look: 'quiet', spots, spare: true };
}
