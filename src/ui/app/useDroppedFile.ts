import { useEffect, useState } from 'react';

function holdsFile(event: DragEvent): boolean {
  return event.dataTransfer?.types.includes('Files') ?? false;
}

/** Takes a file dropped anywhere on the page; returns whether one is held over it now. */
export function useDroppedFile(take: (file: File) => void): boolean {
  const [over, setOver] = useState(false);
  useEffect(() => {
    const hold = (event: DragEvent) => {
      if (!holdsFile(event)) return;
      event.preventDefault();
      setOver(true);
    };
    const leave = (event: DragEvent) => {
      // Leaving one part of the page for another is not leaving the page.
      if (event.relatedTarget === null) setOver(false);
    };
    const drop = (event: DragEvent) => {
      if (!holdsFile(event)) return;
      event.preventDefault();
      setOver(false);
      const file = event.dataTransfer?.files[0];
      if (file !== undefined) take(file);
    };
    document.addEventListener('dragover', hold);
    document.addEventListener('dragleave', leave);
    document.addEventListener('drop', drop);
    return () => {
      document.removeEventListener('dragover', hold);
      document.removeEventListener('dragleave', leave);
      document.removeEventListener('drop', drop);
    };
  }, [take]);
  return over;
}
