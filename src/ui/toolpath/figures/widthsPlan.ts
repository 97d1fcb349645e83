/** Where everything of Fig. 2 lies: how wide each line of a layer is along the run [px]. */
import type { LayerLaid, PlaceAudit, Track } from '../../../core/inspect/toolpath/audit.ts';
import { THIN_UNDER } from '../../../core/inspect/toolpath/laidFacts.ts';
import type { WantedLaid } from '../../../core/inspect/toolpath/judgedPlace.ts';
import type { Mm } from '../../../core/units.ts';
import type { Box, Label } from '../../drawing/lettering.ts';
import { linear, type Linear } from '../../mesh/linear.ts';
import { MM_PER_INCH, type LengthUnit } from '../../text/numbers.ts';
import type { Lengthwise } from './lengthwise.ts';
import { halfStep } from './trackAt.ts';
import { widthsWords } from './widthsWords.ts';

/** The two at the sides, the second dashed; those between; one that is much too narrow, heavy. */
export type WidthLine = 'outer' | 'outer-second' | 'inner' | 'thin';

interface WidthCurve {
  readonly kind: WidthLine;
  readonly d: string;
}

interface AxisMark {
  readonly at: number;
  readonly text: string;
}

export interface WidthsPlan {
  readonly width: number;
  readonly height: number;
  readonly box: { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };
  readonly curves: readonly WidthCurve[];
  readonly wanted: { readonly y: number; readonly band: Box } | undefined;
  /** Open places, hatched. */
  readonly open: readonly Box[];
  readonly across: readonly AxisMark[];
  readonly along: readonly AxisMark[];
  /** Every millimetre, and every fifth. */
  readonly fine: readonly number[];
  readonly heavy: readonly number[];
  readonly labels: readonly Label[];
  /** Whether a place along the run is straight under the same place of Fig. 1. */
  readonly isSameScale: boolean;
  /** Whether lines are named at the right side. */
  readonly isNamed: boolean;
  readonly kinds: ReadonlySet<WidthLine>;
}

/** What is wanted within this share of its width is shaded [-]. */
const BAND = 0.1;
const NAMES = 104;
const TOP = 24;
const BOTTOM = 28;
const meanOf = (values: Float64Array) => values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length);

/** Which of the tracks lie outermost most of their way, and which are too narrow. */
function kindOf(track: Track, { tracks, widths }: LayerLaid, wanted: WantedLaid): WidthLine {
  const each = wanted.countOf === 'lines' ? wanted.each : (widths?.mean ?? 0);
  if (meanOf(track.width) < THIN_UNDER * each) return 'thin';
  const whole = tracks.filter(({ width }) => meanOf(width) >= THIN_UNDER * each);
  const offs = whole.map(({ off }) => meanOf(off));
  const [low, high] = [Math.min(...offs), Math.max(...offs)];
  const off = meanOf(track.off);
  const near = each / 2;
  return high - off < near ? 'outer' : off - low < near ? 'outer-second' : 'inner';
}

/** Level at each station, with steps half way between them: no more is known. */
function steps({ at, width }: Track, x: (along: Mm) => number, y: Linear, length: Mm): string {
  const half = halfStep(at);
  const end = (along: Mm) => x(Math.min(length, Math.max(0, along))).toFixed(1);
  const parts = Array.from(at, (along, i) => {
    const to = at[i + 1] === undefined ? along + half : (along + at[i + 1]!) / 2;
    return `${i === 0 ? `M${end(along - half)} ${y(width[0]!).toFixed(1)}` : `V${y(width[i]!).toFixed(1)}`}H${end(to)}`;
  });
  return parts.join('');
}

/** As many decimals as marks need to be told apart. */
function marksOf(scale: Linear, most: number, places: (value: number) => number): readonly AxisMark[] {
  const marks = scale.marks(most);
  const step = marks.length > 1 ? marks[1]! - marks[0]! : 1;
  const decimals = Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
  return marks.map((value) => ({ at: places(value), text: value === 0 ? '0' : value.toFixed(decimals) }));
}

export interface WidthsAsked {
  readonly layer: LayerLaid;
  readonly audit: PlaceAudit;
  readonly wanted: WantedLaid;
  readonly unit: LengthUnit;
}

/** The way along: under Fig. 1 where the run is straight, else drawn straight and made to fit. */
function alongOf({ frame, pxPerMm, rootX, width }: Lengthwise, length: Mm) {
  if (!frame.isCurved) return { by: pxPerMm, left: rootX, isSameScale: true };
  const left = 44;
  const by = Math.min(pxPerMm, (width - left - 24) / Math.max(length, 1e-6));
  return { by, left, isSameScale: false };
}

/** Every whole so many millimetres along the run. */
function wholes(length: Mm, x: (along: Mm) => number, by: number): Pick<WidthsPlan, 'fine' | 'heavy'> {
  const all = Array.from({ length: Math.floor(length + 1e-6) + 1 }, (_, n) => n);
  return {
    fine: by >= 3 ? all.filter((n) => n % 5 !== 0).map(x) : [],
    heavy: all.filter((n) => n % 5 === 0).map(x),
  };
}

export function widthsPlan(asked: WidthsAsked, page: Lengthwise): WidthsPlan {
  const { layer, audit, wanted, unit } = asked;
  const { length } = audit;
  const { by, left, isSameScale } = alongOf(page, length);
  const height = page.small ? 172 : 200;
  const box = { left, right: left + length * by, top: TOP, bottom: height - BOTTOM };
  const isLines = wanted.countOf === 'lines';
  const widest = Math.max(layer.widths?.most ?? 0, isLines ? wanted.each : 0);
  const top = Math.max(0.1, 1.35 * widest);
  const y = linear([0, top], [box.bottom, box.top]);
  const x = (along: Mm) => left + along * by;
  const per = unit === 'mm' ? 1 : MM_PER_INCH;
  const curves = layer.tracks.map((track): WidthCurve => ({
    kind: kindOf(track, layer, wanted),
    d: steps(track, x, y, length),
  }));
  const kinds = new Set(curves.map(({ kind }) => kind));
  const isNamed = page.width - box.right >= NAMES;
  const plan = {
    width: page.width,
    height,
    box,
    curves,
    wanted: isLines
      ? {
          y: y(wanted.each),
          band: {
            x: left,
            y: y((1 + BAND) * wanted.each),
            width: length * by,
            height: y((1 - BAND) * wanted.each) - y((1 + BAND) * wanted.each),
          },
        }
      : undefined,
    open: layer.open.map(({ from, to, kind }): Box => {
      const high = kind === 'along' ? box.top + 4 : y(0.55 * widest);
      return { x: x(from), y: high, width: Math.max(1.5, (to - from) * by), height: box.bottom - high };
    }),
    across: marksOf(linear([0, top / per], [box.bottom, box.top]), 4, (value) => y(value * per)),
    along: marksOf(
      linear([0, length / per], [0, 1]),
      Math.min(7, Math.max(1, Math.floor((length * by) / 44))),
      (value) => x(value * per),
    ),
    ...wholes(length, x, by),
    isSameScale,
    isNamed,
    kinds,
  };
  return { ...plan, labels: widthsWords(asked, plan, y) };
}
