/** Notches as they are cut beside a strip, a long one for each five [mm]. */
const SHORT = 1.2;
const LONG = 3;
const PITCH = 1.6;

/** A number as it stands on the piece, life size as near as makes no difference to the eye; read out with the figure beside it. */
export function Notches({ number }: { readonly number: number }) {
  const fives = Math.floor(number / 5);
  const count = fives + (number % 5);
  const ticks = Array.from(
    { length: count },
    (_, at) => `M${0.6 + at * PITCH} ${LONG}v${-(at < fives ? LONG : SHORT)}`,
  );
  const wide = 1.2 + (count - 1) * PITCH;
  return (
    <svg
      className="notches"
      width={`${wide}mm`}
      height={`${LONG}mm`}
      viewBox={`0 0 ${wide} ${LONG}`}
      aria-hidden="true"
    >
      <path d={ticks.join('')} />
    </svg>
  );
}
