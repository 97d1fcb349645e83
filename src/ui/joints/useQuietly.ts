import { useEffect, useRef, useState } from 'react';

/** Long enough that a drag or a held key has ended. */
const QUIET_FOR_MS = 1000;

/** A text once it has stopped changing, and nothing for the text that was there from the start. */
export function useQuietly(text: string): string {
  const [said, setSaid] = useState('');
  const first = useRef(text);
  useEffect(() => {
    if (text === first.current) return undefined;
    // From now on the first text is worth saying too, when it comes back.
    first.current = '';
    const timer = setTimeout(() => setSaid(text), QUIET_FOR_MS);
    return () => clearTimeout(timer);
  }, [text]);
  return said;
}
