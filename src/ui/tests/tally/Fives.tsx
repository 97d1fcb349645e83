const STEP = 5.4;
const GAP = 8;
const HEIGHT = 18;

/** Where each stroke of this hundred stands, fifty to a row. */
function strokes(count: number): string {
  return Array.from({ length: count }, (_, at) => {
    const [row, inRow] = [Math.floor(at / 50), at % 50];
    const [five, within] = [Math.floor(inRow / 5), inRow % 5];
    const left = 2 + five * (3 * STEP + GAP + 3);
    const top = 2 + row * (HEIGHT + 8);
    if (within === 4) return `M${left - 3} ${top + HEIGHT - 4}L${left + 3 * STEP + 3} ${top + 4}`;
    return `M${left + within * STEP} ${top}v${HEIGHT}`;
  }).join('');
}

const WIDTH = 10 * (3 * STEP + GAP + 3);

/** The last hundred in strokes, every fifth across the four before it. */
export function Fives({ count }: { readonly count: number }) {
  return (
    <svg className="fives" viewBox={`-2 0 ${WIDTH} ${2 * HEIGHT + 12}`} aria-hidden="true">
      <path d={strokes(count)} />
    </svg>
  );
}
