import type { ReactNode } from 'react';

interface Props {
  readonly children: ReactNode;
  /** Why it is not possible now; the button stays where focus can find it and says so. */
  readonly cannot?: string | false;
  /** What it would do, in more words. */
  readonly hint?: string | undefined;
  readonly onClick: () => void;
}

/** An action written as plain underlined words. */
export function QuietButton({ children, cannot = false, hint, onClick }: Props) {
  const possible = cannot === false;
  return (
    <button
      className="b quiet"
      type="button"
      aria-disabled={possible ? undefined : true}
      title={possible ? hint : cannot}
      onClick={possible ? onClick : undefined}
    >
      {children}
    </button>
  );
}
