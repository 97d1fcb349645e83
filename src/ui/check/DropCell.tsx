import { useRef, type ChangeEvent } from 'react';
import { openFile } from '../app/openFile.ts';
import { CHECK } from '../text/checkText.ts';

/** What can be chosen, and how that is said. */
export interface Chooser {
  readonly label: string;
  /** Endings that the chooser of the browser offers. */
  readonly accept: string;
  /** “Drop another part file, or ”. */
  readonly another: string;
  readonly formats: string;
}

function onChange(event: ChangeEvent<HTMLInputElement>): void {
  const file = event.target.files?.[0];
  if (file !== undefined) void openFile(file);
  // So that choosing the same file again is noticed.
  event.target.value = '';
}

/** Opens the chooser of the browser; what is chosen goes the way of what is dropped. */
function useChooser({ label, accept }: Chooser) {
  const input = useRef<HTMLInputElement>(null);
  const chooser = (
    <input
      ref={input}
      className="vh"
      type="file"
      accept={accept}
      aria-label={label}
      tabIndex={-1}
      onChange={onChange}
    />
  );
  return { chooser, open: () => input.current?.click() };
}

/** The last cell of the strip: another file is dropped here, or anywhere else. */
export function DropCell({ chooser: of }: { readonly chooser: Chooser }) {
  const { chooser, open } = useChooser(of);
  return (
    <div className="drop-cell">
      <button type="button" onClick={open}>
        <span>
          {of.another}
          <u>{CHECK.chooseOne}</u>
        </span>
        <small>{of.formats}</small>
      </button>
      {chooser}
    </div>
  );
}

export function ChooseButton({ chooser: of, children }: { readonly chooser: Chooser; readonly children: string }) {
  const { chooser, open } = useChooser(of);
  return (
    <>
      <button className="b" type="button" onClick={open}>
        {children}
      </button>
      {chooser}
    </>
  );
}
