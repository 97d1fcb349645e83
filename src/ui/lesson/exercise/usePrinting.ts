import { useEffect, useState } from 'react';

/** Which pages go to the printer: the one that is shown, or those of a class, which are made only then. */
export type Printed = 'one' | 'class';

/** Lays pages out, then prints them; afterwards the page that is shown is the one to print again. */
export function usePrinting(): { readonly printed: Printed; readonly print: (what: Printed) => void } {
  const [asked, setAsked] = useState<{ readonly what: Printed; readonly isNow: boolean }>({
    what: 'one',
    isNow: false,
  });
  useEffect(() => {
    if (!asked.isNow) return;
    setAsked({ ...asked, isNow: false });
    window.print();
  }, [asked]);
  useEffect(() => {
    const done = () => setAsked({ what: 'one', isNow: false });
    window.addEventListener('afterprint', done);
    return () => window.removeEventListener('afterprint', done);
  }, []);
  return { printed: asked.what, print: (what) => setAsked({ what, isNow: true }) };
}
