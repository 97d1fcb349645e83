import type { Box, Px } from './frame.ts';

/** Where the reading is taken: thin lines to both axes, and a dot on the curve that is read. */
export function Crosshair({ at, box }: { readonly at: Px; readonly box: Box }) {
  const seen = at.y >= box.top && at.y <= box.bottom;
  return (
    <g className="chart-cross">
      <path d={`M${at.x} ${box.top}V${box.bottom}${seen ? `M${box.left} ${at.y}H${at.x}` : ''}`} />
      {seen && <circle cx={at.x} cy={at.y} r="3.2" />}
    </g>
  );
}
