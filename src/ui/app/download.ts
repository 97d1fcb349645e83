/** Hands a text or bytes to the browser as a file to save. */
export function download(name: string, content: BlobPart, type = 'application/json'): void {
  const url = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  // Some browsers read the address only after the click has been handled.
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}
