/** The faces that letters of a picture are set in, to be carried along in it. */

interface Face {
  readonly family: string;
  readonly address: string;
  readonly weight: string;
  /** Letters that it is for; '' for all. Greek, for one, comes in a file of its own. */
  readonly letters: string;
}

const unquoted = (text: string) => text.trim().replaceAll(/["']/g, '');

/** Faces that the page has from files of its own origin. */
function facesOfPage(): readonly Face[] {
  return [...document.styleSheets].flatMap((sheet) =>
    [...sheet.cssRules].flatMap((rule) => {
      if (!(rule instanceof CSSFontFaceRule)) return [];
      const [, path] = /url\(["']?([^"')]+)["']?\)/.exec(rule.style.getPropertyValue('src')) ?? [];
      if (path === undefined) return [];
      const address = new URL(path, sheet.href ?? document.baseURI);
      if (address.origin !== location.origin && address.protocol !== 'data:') return [];
      const weight = rule.style.getPropertyValue('font-weight') || '400';
      const letters = rule.style.getPropertyValue('unicode-range');
      return [{ family: unquoted(rule.style.getPropertyValue('font-family')), address: address.href, weight, letters }];
    }),
  );
}

const fetched = new Map<string, Promise<string>>();

async function asData(address: string): Promise<string> {
  if (address.startsWith('data:')) return address;
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`no face at ${address}`);
  const bytes = new Uint8Array(await answer.arrayBuffer());
  // Long lists of arguments are refused, so it goes piece by piece.
  let text = '';
  for (let at = 0; at < bytes.length; at += 4096) text += String.fromCharCode(...bytes.subarray(at, at + 4096));
  return `data:font/woff2;base64,${btoa(text)}`;
}

/** Rules for the families in use; of one that does not come there is none, and others stand in for it. */
export async function facesFor(families: readonly string[]): Promise<string> {
  const faces = facesOfPage().filter(({ family }) => families.includes(family));
  const rules = faces.map(async ({ family, address, weight, letters }) => {
    const coming = fetched.get(address) ?? asData(address);
    fetched.set(address, coming);
    try {
      const data = await coming;
      const range = letters === '' ? '' : `;unicode-range:${letters}`;
      return `@font-face{font-family:'${family}';src:url(${data}) format('woff2');font-weight:${weight}${range}}`;
    } catch {
      // It may come the next time.
      fetched.delete(address);
      return '';
    }
  });
  const all = await Promise.all(rules);
  return `${all.join('')}text{font-variant-numeric:tabular-nums lining-nums;white-space:pre}`;
}
