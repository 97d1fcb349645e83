import { useEffect, useState } from 'react';

/** Which pages go to the printer: the one that is shown, or those of a class, which are made only then. */
export type Printed = 'one' | 'class';

/** Lays pages out, then prints them; afterwards the page that is shown is the one to print again. */
export function usePrinting(): { readonly printed: Printed; readonly print: (what: Printed) => void } {
  const [printed, setPrinted] = useState<Printed>('one');
  const [times, setTimes] = useState(0);
  useEffect(() => {
    if (times > 0) window.print();
  }, [times]);
  useEffect(() => {
    const done = () => setPrinted('one');
    window.addEventListener('afterprint', done);
    return () => window.removeEventListener('afterprint', done);
  }, []);
  const print = (what: Printed) => {
    setPrinted(what);
    setTimes(times + 1);
  };
  return { printed, print };
}
