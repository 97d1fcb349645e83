import { MM_PER_INCH } from '../../text/numbers.ts';
import { PAGE } from '../../text/testPageText.ts';
import { Scrolled } from './Scrolled.tsx';

/** Kept free beside the lines for their figures and units [mm]. */
const SIDE = { left: 4, right: 8 } as const;
const HIGH = 14.2;

/** How a line is divided: in how many parts, each how long [mm], what every tenth of them is called, and where it lies [mm]. */
interface Line {
  readonly unit: 'mm' | 'in';
  readonly parts: number;
  readonly part: number;
  readonly figure: (at: number) => number;
  readonly y: number;
  /** To which side its ticks go, and where its figures stand. */
  readonly up: 1 | -1;
  readonly foot: number;
}

/** Back to back, so that one check tells of both. */
const LINES: readonly Line[] = [
  { unit: 'mm', parts: 100, part: 1, figure: (at) => at, y: 6.6, up: 1, foot: 2.4 },
  { unit: 'in', parts: 40, part: MM_PER_INCH / 10, figure: (at) => at / 10, y: 7.6, up: -1, foot: 14 },
];
const LONGEST = Math.max(...LINES.map(({ parts, part }) => parts * part));

const high = (at: number) => (at % 10 === 0 ? 3.4 : at % 5 === 0 ? 2.5 : 1.5);

function TrueLine({ line: { unit, parts, part, figure, y, up, foot } }: { readonly line: Line }) {
  const all = Array.from({ length: parts + 1 }, (_, at) => at);
  return (
    <g>
      <path className={`true-line in-${unit}`} d={`M0 ${y}H${parts * part}`} />
      <path className="true-ticks" d={all.map((at) => `M${at * part} ${y}v${-up * high(at)}`).join('')} />
      {all
        .filter((at) => at % 10 === 0)
        .map((at) => (
          <text key={at} x={at * part} y={foot} textAnchor="middle">
            {figure(at)}
          </text>
        ))}
      <text x={parts * part + 3} y={foot}>
        {unit}
      </text>
    </g>
  );
}

/** Lines by which a print-out shows whether it was scaled: all their sizes are in mm, on screen and on paper. */
export function TrueRuler({ then = PAGE.enter }: { readonly then?: string }) {
  const wide = LONGEST + SIDE.left + SIDE.right;
  return (
    <div className="true-ruler">
      <Scrolled className="of-ruler" label={PAGE.rulerLabel}>
        <svg
          width={`${wide}mm`}
          height={`${HIGH}mm`}
          viewBox={`${-SIDE.left} 0 ${wide} ${HIGH}`}
          role="img"
          aria-label={PAGE.rulerLabel}
        >
          {LINES.map((line) => (
            <TrueLine key={line.unit} line={line} />
          ))}
        </svg>
      </Scrolled>
      <p>
        <b>{PAGE.ruler}</b> {PAGE.rulerElse} {then}
      </p>
    </div>
  );
}
