// oxlint-disable-next-line import/no-named-as-default -- the named export has no type of its own
import PDFDocument from 'pdfkit';
import type { Ink, Mark, Page, Placed, PlacedReport } from '../../shared/report/page.ts';
import type { Evidence } from '../../shared/report/evidence.ts';
import { INK_ON_PAPER } from '../../shared/report/inks.ts';
import { boundsOf, marksOf } from '../../shared/report/placed.ts';
import { APP_VERSION } from '../../shared/versions.ts';
import { drawnText } from './drawnText.ts';
import { fontForDocument } from './openFonts.ts';
import { TABULAR } from './fontMetrics.ts';

type StructureElement = PDFKit.PDFStructureElement;

/** A file inside the PDF. */
export interface Attached {
  readonly name: string;
  readonly description: string;
  readonly mediaType: string;
  readonly bytes: Uint8Array;
  readonly at: string;
}

/**
 * Draws placed pages as a tagged PDF 1.7, built to PDF/A-3a and PDF/UA-1. Only draws: where everything stands is decided
 * already. The same report gives the same bytes: the only instant in the file is the report's own.
 */
export async function drawPdf(
  report: PlacedReport,
  {
    attached = [],
    images = {},
    onPage,
  }: {
    readonly attached?: readonly Attached[];
    readonly images?: Evidence['images'];
    readonly onPage?: ((done: number, of: number) => void) | undefined;
  } = {},
): Promise<Uint8Array> {
  const doc = new PDFDocument({
    pdfVersion: '1.7',
    tagged: true,
    lang: report.language,
    displayTitle: true,
    autoFirstPage: false,
    // No start font: pdfkit would open it by its path and then, not knowing it by its name, again for every word set in it.
    font: null as unknown as string,
    subset: 'PDF/A-3a',
    info: {
      Title: report.title,
      Author: report.author,
      Subject: report.subject,
      Keywords: report.keywords,
      Producer: `Caseframe ${APP_VERSION}`,
      Creator: `Caseframe ${APP_VERSION}`,
      CreationDate: new Date(report.createdAt),
    },
  });
  escapeMetadata(doc);
  const marks = report.pages.flatMap((page) => page.content.flatMap(marksOf));
  for (const face of new Set(marks.flatMap((mark) => (mark.mark === 'text' ? [mark.face] : [])))) {
    // pdfkit takes an opened font as well as a file; its type list knows of files only.
    doc.registerFont(face, fontForDocument(face) as unknown as string);
  }
  const chunks: Uint8Array[] = [];
  const done = new Promise<void>((resolve, reject) => {
    doc.on('data', (chunk: Uint8Array) => chunks.push(chunk));
    doc.on('end', resolve);
    doc.on('error', reject);
  });

  const root = doc.struct('Document');
  doc.addStructure(root);
  const drawing: Drawing = { doc, elements: new Map(), anchors: anchorsOf(marks), images };
  const bookmarks = new Bookmarks(doc);
  for (const page of report.pages) {
    doc.addPage({ size: [page.width, page.height], margin: 0 });
    for (const placed of page.content) {
      drawElement(placed, root, drawing);
      bookmarks.add(placed, page);
    }
    onPage?.(page.number, report.pages.length);
  }
  for (const { name, description, mediaType, bytes, at } of attached) {
    const day = new Date(at);
    const about = { name, description, type: mediaType, creationDate: day, modifiedDate: day, relationship: 'Data' };
    doc.file(Buffer.from(bytes), about);
  }
  root.end();
  doc.end();
  await done;
  return concatenate(chunks);
}

interface Drawing {
  readonly doc: PDFKit.PDFDocument;
  /** By id, so that what continues on the next page is one element. */
  readonly elements: Map<string, StructureElement>;
  /** Ids that some text leads to. */
  readonly anchors: ReadonlySet<string>;
  readonly images: Evidence['images'];
}

function drawElement(placed: Placed, parent: StructureElement, drawing: Drawing): void {
  const { doc, elements, anchors } = drawing;
  if (placed.role === 'Artifact') {
    doc.markContent('Artifact', { type: 'Layout' });
    for (const mark of marksOf(placed)) drawMark(drawing, mark);
    doc.endMarkedContent();
    return;
  }
  const known = elements.get(placed.id);
  const own = known ?? doc.struct(placed.role, optionsOf(placed));
  if (known === undefined) {
    elements.set(placed.id, own);
    parent.add(own);
    if (anchors.has(placed.id)) {
      const { left, top } = boundsOf(placed);
      doc.addNamedDestination(placed.id, 'XYZ', left, top - 4, 0);
    }
  }
  for (const [isLink, marks] of groupByLink(placed.marks)) {
    if (isLink) for (const mark of marks) drawLink(drawing, own, mark);
    else drawContent(drawing, own, placed.role, marks);
  }
  for (const child of placed.children) drawElement(child, own, drawing);
}

function optionsOf(placed: Placed): object {
  const { left, top, right, bottom } = boundsOf(placed);
  return {
    ...(placed.alt === undefined ? {} : { alt: placed.alt }),
    ...(placed.scope === undefined ? {} : { scope: placed.scope }),
    ...(placed.role === 'Figure' || placed.role === 'Formula'
      ? { bbox: [left, top, right, bottom], placement: 'Block' }
      : {}),
  };
}

function drawContent(drawing: Drawing, own: StructureElement, role: string, marks: readonly Mark[]): void {
  const { doc } = drawing;
  const content = doc.markStructureContent(role);
  for (const mark of marks) drawMark(drawing, mark);
  doc.endMarkedContent();
  own.add(content);
}

/** Text that leads somewhere is an element of its own, tied to the annotation that does it. */
function drawLink(drawing: Drawing, parent: StructureElement, mark: Mark): void {
  if (mark.mark !== 'text' || mark.goTo === undefined) return;
  const { doc } = drawing;
  const link = doc.struct('Link');
  parent.add(link);
  drawContent(drawing, link, 'Link', [mark]);
  doc.goTo(mark.x, mark.baseline - mark.size, mark.width, mark.size * 1.3, mark.goTo, {
    // A plain string would be written as a name: pdfkit takes String objects for text.
    // oxlint-disable-next-line unicorn/new-for-builtins, no-new-wrappers
    Contents: new String(`Go to ${mark.text.trim()}`),
    structParent: link,
  } as unknown as PDFKit.Mixins.AnnotationOption);
}

/** Marks in drawing order, links apart. */
function groupByLink(marks: readonly Mark[]): [boolean, Mark[]][] {
  const groups: [boolean, Mark[]][] = [];
  for (const mark of marks) {
    const isLink = mark.mark === 'text' && mark.goTo !== undefined;
    const last = groups.at(-1);
    if (last?.[0] === isLink) last[1].push(mark);
    else groups.push([isLink, [mark]]);
  }
  return groups;
}

function drawMark({ doc, images }: Drawing, mark: Mark): void {
  switch (mark.mark) {
    case 'text': {
      const drawn = drawnText(mark);
      const actual = mark.actual ?? (isMirrored(mark.text, drawn) ? mark.text : undefined);
      if (actual !== undefined) doc.markContent('Span', { actual });
      doc.font(mark.face).fontSize(mark.size).fillColor(INK_ON_PAPER[mark.ink]);
      const features = mark.tabular === true ? { features: [...TABULAR] as PDFKit.Mixins.OpenTypeFeatures[] } : {};
      doc.text(drawn, mark.x, mark.baseline, { lineBreak: false, baseline: 'alphabetic', ...features });
      if (actual !== undefined) doc.endMarkedContent();
      return;
    }
    case 'image': {
      const { dataUri } = images[mark.sha256] ?? {};
      if (dataUri !== undefined) doc.image(dataUri, mark.x, mark.y, { width: mark.width, height: mark.height });
      return;
    }
    case 'line':
      doc.moveTo(mark.x1, mark.y1).lineTo(mark.x2, mark.y2);
      return paint(doc, null, mark.ink, mark.weight, mark.dash);
    case 'rect':
      doc.rect(mark.x, mark.y, mark.width, mark.height);
      return paint(doc, mark.fill, mark.stroke, mark.weight);
    case 'path':
      doc.path(mark.d);
      return paint(doc, mark.fill, mark.stroke, mark.weight, mark.dash);
  }
}

/** Whether a bracket is drawn by its counterpart; turning round alone leaves every sign what it is. */
function isMirrored(text: string, drawn: string): boolean {
  return drawn !== text && Array.from(drawn).toReversed().join('') !== text;
}

function paint(
  doc: PDFKit.PDFDocument,
  fill: Ink | null,
  stroke: Ink | null,
  weight: number,
  dash?: readonly number[],
): void {
  doc.lineWidth(weight);
  if (dash === undefined) doc.undash();
  else doc.dash(dash[0] ?? 1, { space: dash[1] ?? dash[0] ?? 1 });
  if (fill !== null && stroke !== null) doc.fillAndStroke(INK_ON_PAPER[fill], INK_ON_PAPER[stroke]);
  else if (fill !== null) doc.fill(INK_ON_PAPER[fill]);
  else if (stroke !== null) doc.stroke(INK_ON_PAPER[stroke]);
}

function anchorsOf(marks: readonly Mark[]): Set<string> {
  return new Set(marks.flatMap((mark) => (mark.mark === 'text' && mark.goTo !== undefined ? [mark.goTo] : [])));
}

/** The headings again, as the reader's table of contents. */
class Bookmarks {
  readonly #doc: PDFKit.PDFDocument;
  readonly #open: PDFKit.PDFOutline[];
  readonly #seen = new Set<string>();

  constructor(doc: PDFKit.PDFDocument) {
    this.#doc = doc;
    this.#open = [doc.outline];
  }

  add(placed: Placed, page: Page): void {
    const level = { H1: 1, H2: 2, H3: 3 }[placed.role as 'H1'] as number | undefined;
    if (level === undefined || this.#seen.has(placed.id)) return;
    this.#seen.add(placed.id);
    const title = marksOf(placed)
      .map((mark) => (mark.mark === 'text' ? (mark.actual ?? mark.text) : ''))
      .join('');
    const parent = this.#open[Math.min(level, this.#open.length) - 1] ?? this.#doc.outline;
    // pdfkit counts `left` from the right edge; the type list of the package knows `expanded` only.
    const where = { top: boundsOf(placed).top - 4, left: page.width, fit: false, expanded: level < 2 };
    const item = parent.addItem(title.trim(), where);
    this.#open.splice(level, this.#open.length, item);
  }
}

/** pdfkit puts the document information into XML as it stands; a title with `&` would break the file's metadata. */
function escapeMetadata(doc: PDFKit.PDFDocument): void {
  const endMetadata = doc.endMetadata.bind(doc);
  doc.endMetadata = () => {
    const escaped = Object.entries(doc.info).map(([key, value]) => [
      key,
      typeof value === 'string' ? value.replace(/[&<>]/g, (c) => `&#${c.charCodeAt(0)};`) : value,
    ]);
    doc.info = Object.fromEntries(escaped);
    // PDF/UA-1 beside PDF/A: pdfkit writes the mark of one of them only.
    (doc as unknown as { appendXML(xml: string): void }).appendXML(
      '<rdf:Description xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/" rdf:about=""><pdfuaid:part>1</pdfuaid:part></rdf:Description>',
    );
    endMetadata();
  };
}

function concatenate(chunks: readonly Uint8Array[]): Uint8Array {
  const bytes = new Uint8Array(chunks.reduce((sum, chunk) => sum + chunk.length, 0));
  let offset = 0;
  for (const chunk of chunks) {
    bytes.set(chunk, offset);
    offset += chunk.length;
  }
  return bytes;
}
