import { execFileSync, spawnSync } from 'node:child_process';

export const hasQpdf = spawnSync('qpdf', ['--version']).status === 0;

/** A PDF object as `qpdf --json` writes it: names begin with a stroke, texts with `u:` or `b:`, references end in ` R`. */
export type PdfObject = null | boolean | number | string | readonly PdfObject[] | PdfDictionary;
export interface PdfDictionary {
  readonly [key: string]: PdfObject | undefined;
}

type Objects = Readonly<Record<string, { value?: PdfObject; stream?: { dict: PdfDictionary; data?: string } }>>;

/** A name, a text or a reference; empty for anything else. */
export function textIn(object: PdfObject | undefined): string {
  return typeof object === 'string' ? object : '';
}

/** The objects of a PDF, read by a general-purpose library. */
export class Pdf {
  readonly #objects: Objects;
  readonly catalog: PdfDictionary;
  readonly info: PdfDictionary;

  constructor(path: string) {
    const asked = ['--json=2', '--json-key=qpdf', '--json-stream-data=inline', '--decode-level=generalized', path];
    const json = execFileSync('qpdf', asked, { encoding: 'utf8', maxBuffer: 2 ** 28 });
    this.#objects = (JSON.parse(json) as { qpdf: [unknown, Objects] }).qpdf[1];
    const trailer = this.#objects['trailer']?.value as PdfDictionary;
    this.catalog = this.dictionary(trailer['/Root']);
    this.info = this.dictionary(trailer['/Info']);
  }

  /** What a reference leads to; anything else as it is. */
  at(object: PdfObject | undefined): PdfObject {
    if (typeof object !== 'string' || !/^\d+ \d+ R$/.test(object)) return object ?? null;
    const found = this.#objects[`obj:${object}`];
    return found?.value ?? found?.stream?.dict ?? null;
  }

  dictionary(object: PdfObject | undefined): PdfDictionary {
    const found = this.at(object);
    if (found === null || typeof found !== 'object' || Array.isArray(found)) throw new Error('not a dictionary');
    return found as PdfDictionary;
  }

  /** What stands alone counts as a list of one. */
  list(object: PdfObject | undefined): readonly PdfObject[] {
    const found = this.at(object);
    return found === null ? [] : Array.isArray(found) ? (found as readonly PdfObject[]) : [object ?? null];
  }

  stream(reference: PdfObject | undefined): string {
    const data = this.#objects[`obj:${textIn(reference)}`]?.stream?.data ?? '';
    return Buffer.from(data, 'base64').toString('latin1');
  }

  /** References of the pages, in order (ISO 32000-1, 7.7.3). */
  pages(node: PdfObject | undefined = this.catalog['/Pages']): string[] {
    const { '/Kids': kids } = this.dictionary(node);
    return kids === undefined ? [textIn(node)] : this.list(kids).flatMap((kid) => this.pages(kid));
  }

  /** A number tree or a name tree as pairs (ISO 32000-1, 7.9.6 and 7.9.7). */
  tree(node: PdfObject | undefined, leaf: '/Nums' | '/Names'): Map<PdfObject, PdfObject> {
    const { [leaf]: own, '/Kids': kids } = this.dictionary(node);
    const flat = this.list(own);
    const pairs = flat.flatMap((key, i) => (i % 2 === 0 ? [[key, flat[i + 1] ?? null] as const] : []));
    return new Map([...pairs, ...this.list(kids).flatMap((kid) => [...this.tree(kid, leaf)])]);
  }
}

export interface StructureElement {
  readonly ref: string;
  readonly role: string;
  readonly dictionary: PdfDictionary;
  readonly children: readonly StructureElement[];
  /** Marked content it holds, by page. */
  readonly content: readonly { readonly page: string; readonly mcid: number }[];
  /** Annotations it holds. */
  readonly annotations: readonly string[];
}

/** The structure tree from an element down (ISO 32000-1, 14.7.2); a `/P` that leads elsewhere than up is named in `faults`. */
export function readStructure(pdf: Pdf, ref: string, parent: string, faults: string[]): StructureElement {
  const dictionary = pdf.dictionary(ref);
  if (dictionary['/P'] !== parent) faults.push(`${ref}: /P is not its parent ${parent}`);
  const children: StructureElement[] = [];
  const content: { page: string; mcid: number }[] = [];
  const annotations: string[] = [];
  for (const kid of pdf.list(dictionary['/K'])) {
    if (typeof kid === 'number') content.push({ page: textIn(dictionary['/Pg']), mcid: kid });
    else {
      const found = pdf.dictionary(kid);
      if (found['/Type'] === '/MCR') content.push({ page: textIn(found['/Pg']), mcid: Number(found['/MCID']) });
      else if (found['/Type'] === '/OBJR') annotations.push(textIn(found['/Obj']));
      else children.push(readStructure(pdf, textIn(kid), ref, faults));
    }
  }
  return { ref, role: textIn(dictionary['/S']).slice(1), dictionary, children, content, annotations };
}

export function elementsUnder(element: StructureElement): StructureElement[] {
  return [element, ...element.children.flatMap(elementsUnder)];
}

const TOKEN =
  /<<(?:\((?:\\[\s\S]|[^\\)])*\)|[^>(]|>(?!>))*>>|\((?:\\[\s\S]|[^\\)])*\)|<[0-9a-f\s]*>|[[\]]|\/?[^\s/<>[\]()]+/gi;
const SHOWS_TEXT = new Set(['Tj', 'TJ', "'", '"']);
const PAINTS = new Set([...SHOWS_TEXT, 'S', 's', 'f', 'F', 'f*', 'B', 'B*', 'b', 'b*', 'sh', 'Do']);

export interface ContentWalk {
  /** In the order in which they are opened. */
  readonly mcids: readonly number[];
  /** What is drawn outside of all marks, artifacts in tagged content or the other way round, marks left open. */
  readonly faults: readonly string[];
  /** Glyphs of composite fonts that are shown, two bytes each (ISO 32000-1, 9.7.4). */
  readonly glyphs: readonly number[];
}

/** One page's content operator by operator. */
export function walkContent(content: string): ContentWalk {
  const [mcids, faults, glyphs]: [number[], string[], number[]] = [[], [], []];
  const open: ('artifact' | 'tagged' | 'span')[] = [];
  let operands: string[] = [];
  for (const [token] of content.matchAll(TOKEN)) {
    const isOperator = /^[A-Za-z'"][A-Za-z0-9*'"]*$/.test(token) && !['true', 'false', 'null'].includes(token);
    if (!isOperator) {
      operands.push(token);
      continue;
    }
    if (token === 'BDC' || token === 'BMC') {
      const mcid = /\/MCID\s+(\d+)/.exec(operands.at(-1) ?? '')?.[1];
      const kind = operands[0] === '/Artifact' ? 'artifact' : mcid === undefined ? 'span' : 'tagged';
      if (kind !== 'span' && open.some((one) => one !== 'span')) faults.push(`${kind} inside of ${open.join(', ')}`);
      if (mcid !== undefined) mcids.push(Number(mcid));
      open.push(kind);
    } else if (token === 'EMC') {
      if (open.pop() === undefined) faults.push('EMC without a beginning');
    } else if (PAINTS.has(token)) {
      if (!open.some((one) => one !== 'span')) faults.push(`${token} outside of all marked content`);
      if (SHOWS_TEXT.has(token)) {
        for (const shown of operands.filter((operand) => operand.startsWith('<') && !operand.startsWith('<<')))
          for (const [code] of shown.matchAll(/[0-9a-f]{4}/gi)) glyphs.push(Number.parseInt(code, 16));
      }
    }
    operands = [];
  }
  if (open.length > 0) faults.push(`${open.length} marks left open`);
  return { mcids, faults, glyphs };
}
