import { useRef, type ReactNode } from 'react';

interface Chosen {
  readonly label: string;
  /** Endings or types that the chooser of the browser offers. */
  readonly accept: string;
  readonly take: (file: File) => unknown;
}

/** The chooser of the browser for one file: what stands for it on the page, out of sight, and what opens it. */
export function useChooser({ label, accept, take }: Chosen): {
  readonly chooser: ReactNode;
  readonly open: () => void;
} {
  const input = useRef<HTMLInputElement>(null);
  const chooser = (
    <input
      ref={input}
      className="vh"
      type="file"
      accept={accept}
      aria-label={label}
      tabIndex={-1}
      onChange={({ target }) => {
        const file = target.files?.[0];
        if (file !== undefined) take(file);
        // So that choosing the same file again is noticed.
        target.value = '';
      }}
    />
  );
  return { chooser, open: () => input.current?.click() };
}
