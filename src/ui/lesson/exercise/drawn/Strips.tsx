import { Paper } from './Paper.tsx';

export interface DrawnStrip {
  readonly letter: string;
  /** Of each thin part [mm]. */
  readonly length: number;
  readonly count: number;
  /** Of each thick part between two thin ones [mm]. */
  readonly between: number;
  readonly thickness: number;
}

/** Ends of a strip, and how thick its thick parts are [mm]. */
const END = 9;
const THICK = 7;
const LETTER = 6;
const APART = { x: 7, y: 4 } as const;
/** Room of the page; lines need a little beside them [mm]. */
const ROOM = 184;
const BESIDE = 0.5;

const widthOf = ({ length, count, between }: DrawnStrip) => LETTER + 2 * END + count * length + (count - 1) * between;

interface Placed {
  readonly strip: DrawnStrip;
  readonly x: number;
  readonly y: number;
}

/** One after another, a new row where the page ends. */
function placed(strips: readonly DrawnStrip[]): readonly Placed[] {
  const found: Placed[] = [];
  let [x, y] = [0, 0];
  for (const strip of strips) {
    const wide = widthOf(strip);
    if (x > 0 && x + wide > ROOM) [x, y] = [0, y + THICK + APART.y];
    found.push({ strip, x, y });
    x += wide + APART.x;
  }
  return found;
}

/** The outline all round; each thin part is two lines of its own length. */
function outline({ length, count, between, thickness }: DrawnStrip): string {
  const [over, under] = [(THICK - thickness) / 2, (THICK + thickness) / 2];
  const parts = Array.from({ length: count }, (_, at) => (at === count - 1 ? END : between));
  const there = parts.map((thick) => `V${over}h${length}V0h${thick}`).join('');
  const back = parts
    .toReversed()
    .map((_, at) => `V${under}h${-length}V${THICK}h${at === count - 1 ? -END : -between}`)
    .join('');
  return `M0 0h${END}${there}V${THICK}h${-END}${back}Z`;
}

/** Leaves between their thick ends, and strips of several, life size. */
export function Strips({ strips, label }: { readonly strips: readonly DrawnStrip[]; readonly label: string }) {
  const places = placed(strips);
  const wide = Math.max(...places.map(({ strip, x }) => x + widthOf(strip)));
  const high = Math.max(...places.map(({ y }) => y + THICK));
  return (
    <Paper wide={wide + 2 * BESIDE} high={high + 2 * BESIDE} left={-BESIDE} top={-BESIDE} label={label}>
      {places.map(({ strip, x, y }) => (
        <g key={strip.letter} transform={`translate(${x} ${y})`}>
          <text className="letter" x={0} y={THICK / 2 + 1.3}>
            {strip.letter}
          </text>
          <path className="solid" d={outline(strip)} transform={`translate(${LETTER} 0)`} />
        </g>
      ))}
    </Paper>
  );
}
