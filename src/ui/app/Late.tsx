import { Component, Suspense, type ReactNode } from 'react';
import { NOT_COME } from '../text/shellText.ts';

interface Props {
  /** What stands there until it has come. */
  readonly fallback?: ReactNode;
  readonly children: ReactNode;
}

/** As browsers say that a file of script or style was not to be had. */
const IS_NOT_COME = /dynamically imported|module script|preload/i;

/** What comes in files of its own. Where one does not come, it says so, and what is there already stands. */
export class Late extends Component<Props, { readonly error: unknown }> {
  override state = { error: undefined };

  static getDerivedStateFromError(error: unknown): { error: unknown } {
    return { error };
  }

  override render(): ReactNode {
    const { error } = this.state;
    const { fallback, children } = this.props;
    if (error === undefined) return <Suspense fallback={fallback}>{children}</Suspense>;
    // Anything else is a mistake of the program, for which the whole screen has its words.
    if (!IS_NOT_COME.test(String(error))) throw error;
    return (
      <p className="refusal" role="alert">
        {NOT_COME}
      </p>
    );
  }
}
