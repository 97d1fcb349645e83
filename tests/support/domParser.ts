/** As much of a browser's XML document as loaders of others ask for, read by the XML reader of the project. */
import { SaxesParser } from 'saxes';

class XmlElement {
  readonly nodeName: string;
  readonly attributes: readonly { readonly name: string; readonly nodeName: string; readonly value: string; readonly nodeValue: string }[]; // prettier-ignore
  readonly children: XmlElement[] = [];
  textContent = '';

  constructor(name: string, attributes: Readonly<Record<string, string>>) {
    this.nodeName = name;
    this.attributes = Object.entries(attributes).map(([key, value]) => ({ name: key, nodeName: key, value, nodeValue: value })); // prettier-ignore
  }

  getAttribute(name: string): string | null {
    return this.attributes.find((attribute) => attribute.name === name)?.value ?? null;
  }

  #all(name: string): XmlElement[] {
    return this.children.flatMap((child) => [...(child.nodeName === name ? [child] : []), ...child.#all(name)]);
  }

  /** Names with blanks between them: each inside the one before. */
  querySelectorAll(selector: string): readonly XmlElement[] {
    return selector.split(' ').reduce<readonly XmlElement[]>((found, name) => found.flatMap((each) => each.#all(name)), [this]); // prettier-ignore
  }

  querySelector(selector: string): XmlElement | null {
    return this.querySelectorAll(selector)[0] ?? null;
  }

  /** Names without a namespace before them are in none but the core's. */
  getElementsByTagNameNS(): readonly XmlElement[] {
    return [];
  }

  get documentElement(): XmlElement | undefined {
    return this.children[0];
  }
}

/** Stands in for `DOMParser`; `vi.stubGlobal` puts it there. */
export class TestDomParser {
  parseFromString(text: string): XmlElement {
    const root = new XmlElement('#document', {});
    const open = [root];
    const parser = new SaxesParser();
    parser.on('error', (error) => {
      throw error;
    });
    parser.on('opentag', ({ name, attributes }) => {
      const element = new XmlElement(name, attributes);
      open.at(-1)!.children.push(element);
      open.push(element);
    });
    parser.on('text', (piece) => {
      for (const element of open) element.textContent += piece;
    });
    parser.on('closetag', () => {
      open.pop();
    });
    parser.write(text).close();
    return root;
  }
}
