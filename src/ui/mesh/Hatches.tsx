/** Cut plastic: lines at 45 degrees, so far apart [px]. */
export function CutHatch({ id, pitch }: { readonly id: string; readonly pitch: number }) {
  return (
    <pattern id={id} patternUnits="userSpaceOnUse" width={pitch} height={pitch} patternTransform="rotate(45)">
      <path className="cut-line" d={`M0 0V${pitch}`} />
    </pattern>
  );
}

/** What goes wrong. */
export function FailHatch({ id }: { readonly id: string }) {
  return (
    <pattern id={id} patternUnits="userSpaceOnUse" width={4.6} height={4.6} patternTransform="rotate(45)">
      <path className="fail-line" d="M0 0V4.6" />
    </pattern>
  );
}
