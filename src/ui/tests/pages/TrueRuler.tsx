import { MM_PER_INCH, type LengthUnit } from '../../text/numbers.ts';
import { PAGE } from '../../text/pieceStepsText.ts';
import { Scrolled } from './Scrolled.tsx';

/** Kept free beside the line for its figures [mm]. */
const SIDE = 4;
const HIGH = 9;
/** Where the line itself lies, from the top [mm]. */
const FOOT = 4;

const high = (at: number) => (at % 10 === 0 ? 3.4 : at % 5 === 0 ? 2.5 : 1.5);

/** How a line is divided: in how many parts, each how long [mm], and what every tenth of them is called. */
interface Line {
  readonly parts: number;
  readonly part: number;
  readonly figure: (at: number) => number;
  readonly label: string;
  readonly says: string;
}

const LINES: Readonly<Record<LengthUnit, Line>> = {
  mm: { parts: 100, part: 1, figure: (at) => at, label: PAGE.rulerLabel, says: PAGE.ruler },
  inch: {
    parts: 40,
    part: MM_PER_INCH / 10,
    figure: (at) => at / 10,
    label: PAGE.rulerLabelInch,
    says: PAGE.rulerInch,
  },
};

/** A line by which a print-out shows whether it was scaled: all its sizes are in mm, on screen and on paper. */
export function TrueRuler({ unit }: { readonly unit: LengthUnit }) {
  const { parts, part, figure, label, says } = LINES[unit];
  const long = parts * part;
  const all = Array.from({ length: parts + 1 }, (_, at) => at);
  return (
    <div className="true-ruler">
      <Scrolled className="of-ruler" label={label}>
        <svg
          width={`${long + 2 * SIDE}mm`}
          height={`${HIGH}mm`}
          viewBox={`${-SIDE} 0 ${long + 2 * SIDE} ${HIGH}`}
          role="img"
          aria-label={label}
        >
          <path className="true-line" d={`M0 ${FOOT}H${long}`} />
          <path className="true-ticks" d={all.map((at) => `M${at * part} ${FOOT}v${-high(at)}`).join('')} />
          {all
            .filter((at) => at % 10 === 0)
            .map((at) => (
              <text key={at} x={at * part} y={FOOT + 3.6} textAnchor="middle">
                {figure(at)}
              </text>
            ))}
        </svg>
      </Scrolled>
      <p>
        <b>{says}</b> {PAGE.rulerElse} {PAGE.enter}
      </p>
    </div>
  );
}
