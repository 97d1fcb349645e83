/** The barred square that stands for what goes wrong, on a drawing. */
export function FailSquare({ x, y }: { readonly x: number; readonly y: number }) {
  return (
    <g className="fail-square" transform={`translate(${x.toFixed(1)} ${y.toFixed(1)})`}>
      <rect x="-5.4" y="-5.4" width="10.8" height="10.8" />
      <path d="M-3-3 3 3M3-3-3 3" />
    </g>
  );
}
