import { FRAME, type Sheet } from './sheet.ts';

/** The 1 mm grid, its heavier lines every 5 mm, the frame that is the millimetre scale, and its figures. */
export interface Grid {
  readonly fine: string;
  readonly heavy: string;
  readonly bars: string;
  readonly frame: string;
  readonly figures: readonly { readonly x: number; readonly text: string }[];
}

/** Lines closer together than this are a tint, not a grid [px]. */
const CLOSEST = 3;
/** Figures on the frame are at least this far apart [px]. */
const FIGURES_APART = 46;
const FIGURE_WIDTH = 26;

const f = (value: number) => value.toFixed(1);

export function gridOf({ pxPerMm, width, rootX, top, bottom }: Sheet): Grid {
  const [foot, head] = [bottom - FRAME, top];
  const columns = places(FRAME, width, rootX, pxPerMm);
  const rows = places(-foot, -head, 0, pxPerMm);
  const line = ({ at, n }: Place, isColumn: boolean) => ({
    n,
    d: isColumn ? `M${f(at)} ${head}V${foot}` : `M${FRAME} ${f(-at)}H${width}`,
  });
  const lines = [...columns.map((c) => line(c, true)), ...rows.map((r) => line(r, false))];
  const of = (isHeavy: boolean) =>
    lines
      .filter(({ n }) => (n % 5 === 0) === isHeavy)
      .map(({ d }) => d)
      .join('');
  return {
    fine: pxPerMm >= CLOSEST ? of(false) : '',
    heavy: of(true),
    bars: bars(columns, rows, { pxPerMm, width, top, bottom }),
    frame: `M${FRAME} ${head}V${foot}H${width}M.5 ${head}V${bottom - 0.5}H${width}`,
    figures: figures(columns, pxPerMm, width),
  };
}

interface Place {
  readonly at: number;
  readonly n: number;
}

/** Every whole millimetre between two places. */
function places(from: number, to: number, zero: number, pxPerMm: number): Place[] {
  const first = Math.ceil((from - zero) / pxPerMm);
  const count = Math.max(0, Math.floor((to - zero) / pxPerMm) - first + 1);
  return Array.from({ length: count }, (_, i) => ({ n: first + i, at: zero + (first + i) * pxPerMm }));
}

/** One bar a millimetre, every other one inked; at small scales one every five. */
function bars(
  columns: readonly Place[],
  rows: readonly Place[],
  { pxPerMm, width, top, bottom }: Pick<Sheet, 'pxPerMm' | 'width' | 'top' | 'bottom'>,
): string {
  const every = pxPerMm >= CLOSEST ? 1 : 5;
  const isInked = ({ n }: Place) => n % (2 * every) === 0;
  const long = every * pxPerMm;
  const across = columns.filter(isInked).map(({ at }) => {
    const end = Math.min(width, at + long);
    return `M${f(at)} ${bottom - FRAME + 1.5}H${f(end)}V${bottom - 1.5}H${f(at)}Z`;
  });
  const up = rows.filter(isInked).map(({ at }) => {
    const end = Math.max(top, -at - long);
    return `M1.5 ${f(-at)}V${f(end)}H${FRAME - 1.5}V${f(-at)}Z`;
  });
  return [...across, ...up].join('');
}

function figures(columns: readonly Place[], pxPerMm: number, width: number): Grid['figures'] {
  const step = [1, 5, 10, 20, 50, 100].find((mm) => mm % 5 === 0 && mm * pxPerMm >= FIGURES_APART) ?? 100;
  return columns
    .filter(({ n, at }) => n >= 0 && n % step === 0 && at < width - FIGURE_WIDTH)
    .map(({ at, n }) => ({ x: at + 3, text: n === 0 ? '0 mm' : String(n) }));
}
