import { openFile } from '../app/openFile.ts';
import { useChooser } from '../app/useChooser.tsx';
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

/** The last cell of the strip: another file is dropped here, or anywhere else. */
export function DropCell({ chooser: of }: { readonly chooser: Chooser }) {
  const { chooser, open } = useChooser({ ...of, take: openFile });
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
  const { chooser, open } = useChooser({ ...of, take: openFile });
  return (
    <>
      <button className="b" type="button" onClick={open}>
        {children}
      </button>
      {chooser}
    </>
  );
}
