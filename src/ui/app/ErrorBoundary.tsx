import { Component, type ReactNode } from 'react';
import { writePart } from '../../files/partText.ts';
import { useSession } from '../../store/session.ts';
import { CRASH_TEXT, partFileName } from '../text/shellText.ts';
import { download } from './download.ts';

interface Props {
  readonly children: ReactNode;
}

function downloadPart(): void {
  const { part } = useSession.getState();
  download(partFileName(part.name), writePart(part));
}

/** When the screen breaks, the work can still be carried away, and the last change taken back. */
export class ErrorBoundary extends Component<Props, { readonly broken: string | undefined }> {
  override state = { broken: undefined };

  static getDerivedStateFromError(error: unknown): { broken: string } {
    return { broken: error instanceof Error ? error.message : String(error) };
  }

  takeBack(): void {
    useSession.getState().undo();
    this.setState({ broken: undefined });
  }

  override render(): ReactNode {
    const { broken } = this.state;
    if (broken === undefined) return this.props.children;
    return (
      <main className="sheet wrong" role="alert">
        <h1>{CRASH_TEXT.head}</h1>
        <p>{CRASH_TEXT.body}</p>
        <p>
          <small>{broken}</small>
        </p>
        <div className="row">
          <button className="b" type="button" onClick={downloadPart}>
            Download the part
          </button>
          <button className="b" type="button" onClick={() => this.takeBack()}>
            Undo the last change
          </button>
        </div>
      </main>
    );
  }
}
