/** Hands a text to the browser as a file to save. */
export function download(name: string, text: string, type = 'application/json'): void {
  const url = URL.createObjectURL(new Blob([text], { type }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  // Some browsers read the address only after the click has been handled.
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}
