import {
  AlignmentType,
  BorderStyle,
  Document,
  Footer,
  Header,
  HeadingLevel,
  ImageRun,
  LevelFormat,
  LineRuleType,
  Math as MathZone,
  type MathComponent,
  MathFraction,
  MathRadical,
  MathRun,
  MathSubScript,
  MathSuperScript,
  Packer,
  PageNumber,
  Paragraph,
  type ParagraphChild,
  Table,
  TableCell,
  TableLayoutType,
  TableRow,
  TextRun,
  WidthType,
} from 'docx';
import type { FormulaNode } from '../../shared/kernel/quantity/parseFormula.ts';
import type { Block } from '../../shared/report/blocks/block.ts';
import { readEquation } from '../../shared/report/blocks/equation.ts';
import { COLUMN_GAP, columnWidths, type Table as TableBlock } from '../../shared/report/blocks/table.ts';
import { composeReport, runningWords, type ReportRequest } from '../../shared/report/compose.ts';
import type { Evidence } from '../../shared/report/evidence.ts';
import type { FontMetrics } from '../../shared/report/metrics.ts';
import { plain, type Run, type Runs, strong } from '../../shared/report/runs.ts';
import { INK_ON_PAPER } from '../../shared/report/inks.ts';
import { sheetFor, STYLES } from '../../shared/report/sheet.ts';
import { isRightToLeft, withoutIsolates } from '../../shared/report/steps/bidi.ts';
import type { Substitution } from '../../shared/report/steps/setFormula.ts';
import { svgOf } from '../../shared/report/svg.ts';
import { CAUTION_LINE } from '../../shared/report/words.ts';
import { drawPng } from './drawPng.ts';
import { setZipDates } from './setZipDates.ts';

/**
 * The same report as an editable text document (Office Open XML, ECMA-376): headings, lists, tables with heads,
 * equations that can be edited, figures as vector drawings, with pictures for programs that draw none and words for
 * those who cannot see them.
 * The same request gives the same bytes.
 */
export async function writeDocx(request: ReportRequest): Promise<Uint8Array> {
  const composed = composeReport(request);
  const sheet = sheetFor(request.paper);
  const images = request.evidence?.images ?? {};
  const desk: Desk = { width: sheet.room.width, metrics: request.metrics, images, drawings: 0, lists: 0 };
  const children = composed.blocks.flatMap((block, i) => {
    request.onBlock?.(i + 1, composed.blocks.length);
    return docxOf(block, desk);
  });
  const { title } = composed;
  const author = composed.redact(request.file.case.practitioner);
  const running = runningWords(request, composed);
  const document = new Document({
    title,
    creator: author,
    styles: {
      default: {
        document: { run: { size: 21, font: 'Arial', language: { value: 'en-GB' } }, paragraph: { spacing: SPACING } },
        heading1: headingLike('title', { after: 160 }),
        heading2: headingLike('section', { before: 320, after: 100 }),
        heading3: headingLike('subsection', { before: 200, after: 80 }),
      },
      paragraphStyles: [
        {
          id: CELL,
          name: CELL,
          basedOn: 'Normal',
          run: { size: halfPoints(STYLES.cell.size) },
          paragraph: { spacing: { before: 20, after: 20, line: 240, lineRule: LineRuleType.AUTO } },
        },
      ],
    },
    numbering: {
      config: [
        {
          reference: NUMBERED,
          levels: [{ level: 0, format: LevelFormat.DECIMAL, text: '%1.', style: { paragraph: { indent: INDENT } } }],
        },
      ],
    },
    sections: [
      {
        properties: {
          page: {
            size: { width: twips(sheet.width), height: twips(sheet.height) },
            margin: {
              top: twips(sheet.top),
              bottom: twips(sheet.top),
              left: twips(sheet.left),
              right: twips(sheet.left),
            },
          },
        },
        headers: {
          default: new Header({
            children: [
              new Paragraph({
                children: [
                  new TextRun({ text: `${running} · Page `, size: 16 }),
                  new TextRun({ children: [PageNumber.CURRENT, ' of ', PageNumber.TOTAL_PAGES], size: 16 }),
                ],
              }),
            ],
          }),
        },
        footers: {
          default: new Footer({
            children: [new Paragraph({ children: [new TextRun({ text: CAUTION_LINE, bold: true, size: 16 })] })],
          }),
        },
        children,
      },
    ],
  });
  // The package writes the clock into the properties and into the archive; both get the report's own instant.
  const bytes = await Packer.toBuffer(document, undefined, [
    { path: 'docProps/core.xml', data: coreProperties(title, author, request.createdAt) },
  ]);
  return setZipDates(new Uint8Array(bytes), request.createdAt);
}

/** `auto` in so many words: some programs take a bare number for a fixed height and cut figures and fractions off. */
const SPACING = { after: 100, line: 276, lineRule: LineRuleType.AUTO };
const NUMBERED = 'numbered';
const CELL = 'Cell';
/** The writer’s typeface is wider than ours by a tenth or more, and sets an uncertainty as large as its value. */
const WIDER = 1.22;
const INDENT = { left: 480, hanging: 360 };
/** As large and as dark as on the laid-out page. */
function headingLike(name: 'title' | 'section' | 'subsection', spacing: { before?: number; after: number }) {
  const { size, ink } = STYLES[name];
  return {
    run: { size: halfPoints(size), bold: true, color: INK_ON_PAPER[ink].slice(1) },
    paragraph: { spacing: { ...SPACING, ...spacing } },
  };
}
const halfPoints = (points: number): number => Math.round(points * 2);
/** Points to twentieths of a point. */
const twips = (points: number): number => Math.round(points * 20);

interface Desk {
  readonly width: number;
  readonly metrics: FontMetrics;
  readonly images: Evidence['images'];
  /** Counted here, because the package counts through all documents of a process. */
  drawings: number;
  lists: number;
}

function docxOf(block: Block, desk: Desk): (Paragraph | Table)[] {
  switch (block.block) {
    case 'heading':
      return [new Paragraph({ text: clean(block.text), heading: HEADINGS[block.level], keepNext: true })];
    case 'paragraph':
      return [new Paragraph({ children: runsOf(block.runs), keepNext: block.keepWithNext })];
    case 'list': {
      desk.lists += 1;
      const how = block.isNumbered
        ? { numbering: { reference: NUMBERED, level: 0, instance: desk.lists } }
        : { bullet: { level: 0 } };
      return block.items.map((item) => new Paragraph({ children: runsOf(item), ...how }));
    }
    case 'table':
      return [
        new Paragraph({ children: runsOf([{ text: block.caption, emphasis: 'italic' }]), keepNext: true }),
        tableOf(block, desk),
        new Paragraph({}),
      ];
    case 'beside':
      return [
        new Paragraph({ children: runsOf(block.label.map((run) => ({ ...run, emphasis: 'bold' }))), keepNext: true }),
        ...block.body.flatMap((one) => docxOf(one, desk)),
      ];
    case 'figure': {
      const { height, marks } = block.draw(desk.width, desk.metrics);
      desk.drawings += 1;
      const image = new ImageRun({
        type: 'svg',
        data: Buffer.from(svgOf({ height, marks }, desk.width, block.alt, desk.images), 'utf8'),
        transformation: { width: Math.round(desk.width * PX), height: Math.round(height * PX) },
        fallback: { type: 'png', data: drawPng({ height, marks }, desk.width) },
        altText: { id: String(desk.drawings), name: `Figure ${desk.drawings}`, description: clean(block.alt) },
      });
      const caption = block.caption === null ? [] : [new Paragraph({ children: runsOf(plain(block.caption)) })];
      return [new Paragraph({ children: [image], keepNext: caption.length > 0 }), ...caption];
    }
    case 'equation': {
      const { tree, values, outcome, linear } = readEquation(block);
      if (tree === null) return [new Paragraph({ children: runsOf(plain(linear)) })];
      const parts = [...mathOf(tree, values), ...(outcome === '' ? [] : [new MathRun(clean(outcome))])];
      return [new Paragraph({ children: [new MathZone({ children: parts })] })];
    }
    case 'page-break':
      return [new Paragraph({ pageBreakBefore: true })];
  }
}

const HEADINGS = { 1: HeadingLevel.HEADING_1, 2: HeadingLevel.HEADING_2, 3: HeadingLevel.HEADING_3 } as const;
const PX = 96 / 72;
const rule = { style: BorderStyle.SINGLE, size: 4, color: 'A59D91' };
const none = { style: BorderStyle.NONE, size: 0, color: 'auto' };
const BORDERS = { top: rule, bottom: rule, left: none, right: none, insideHorizontal: rule, insideVertical: none };

/** Columns as wide as the laid-out page has them, over the whole width; ECMA-376, 17.18.87: a fixed grid is kept to. */
function tableOf(block: TableBlock, { width, metrics }: Desk): Table {
  const ofWriter: FontMetrics = { ...metrics, width: (...what) => WIDER * metrics.width(...what) };
  const own = columnWidths(block, width, ofWriter).map((one) => one + COLUMN_GAP);
  const scale = width / own.reduce((sum, one) => sum + one, 0);
  const grid = own.map((one) => twips(one * scale));
  const cell = (runs: Runs, c: number) =>
    new TableCell({
      width: { size: grid[c] ?? 0, type: WidthType.DXA },
      children: [
        new Paragraph({
          style: CELL,
          alignment: block.columns[c]?.align === 'right' ? AlignmentType.RIGHT : AlignmentType.LEFT,
          children: runsOf(runs),
        }),
      ],
    });
  return new Table({
    width: { size: grid.reduce((sum, one) => sum + one, 0), type: WidthType.DXA },
    columnWidths: grid,
    layout: TableLayoutType.FIXED,
    borders: BORDERS,
    rows: [
      new TableRow({
        tableHeader: true,
        cantSplit: true,
        children: block.columns.map(({ head }, c) => cell(strong(head), c)),
      }),
      ...block.rows.map((row) => new TableRow({ cantSplit: true, children: row.map(cell) })),
    ],
  });
}

function runsOf(runs: Runs): ParagraphChild[] {
  return runs.flatMap((run) =>
    run.text.split('\n').flatMap((text, i) => {
      const parts = byDirection(clean(withoutIsolates(text)));
      return parts.map(
        (part, j) =>
          new TextRun({
            text: part,
            ...(i > 0 && j === 0 ? { break: 1 } : {}),
            ...(isRightToLeft(part) ? { rightToLeft: true } : {}),
            ...looks(run),
          }),
      );
    }),
  );
}

/** Words written from right to left apart from the others: a program sets them in a typeface of their own. */
function byDirection(text: string): string[] {
  if (!isRightToLeft(text)) return [text];
  return text
    .split(/(\s+)/)
    .reduce<string[]>((parts, word) => {
      const last = parts.at(-1);
      const isSame = last !== undefined && (word.trim() === '' || isRightToLeft(last) === isRightToLeft(word));
      return isSame ? [...parts.slice(0, -1), last + word] : [...parts, word];
    }, [])
    .filter((part) => part !== '');
}

function looks({ emphasis, rise }: Run) {
  return {
    ...(emphasis === 'bold' ? { bold: true } : {}),
    ...(emphasis === 'italic' ? { italics: true } : {}),
    ...(rise === undefined ? {} : rise < 0 ? { subScript: true } : { superScript: true }),
  };
}

/** XML 1.0, 2.2: it has no room for control characters but tab and line ends, in whatever form. */
function clean(text: string): string {
  return text.toWellFormed().replace(/[\p{Cc}\ufffe\uffff]/gu, (c) => (/[\t\n\r]/.test(c) ? c : ''));
}

function xml(text: string): string {
  return clean(text).replace(/[&<>]/g, (c) => `&#${c.charCodeAt(0)};`);
}

function mathOf(node: FormulaNode, values: Substitution): MathComponent[] {
  switch (node.node) {
    case 'symbol': {
      const value = values(node.sub === null ? node.base : `${node.base}_${node.sub}`);
      if (value !== null) return [new MathRun(clean(value))];
      const base = new MathRun(clean(node.base));
      return node.sub === null
        ? [base]
        : [new MathSubScript({ children: [base], subScript: [new MathRun(clean(node.sub))] })];
    }
    case 'upright':
      return [new MathRun(clean(node.text))];
    case 'row':
      return node.parts.flatMap((part) => mathOf(part, values));
    case 'power':
      return [new MathSuperScript({ children: mathOf(node.base, values), superScript: mathOf(node.exponent, values) })];
    case 'fraction':
      return [new MathFraction({ numerator: mathOf(node.over, values), denominator: mathOf(node.under, values) })];
    case 'root':
      return [new MathRadical({ children: mathOf(node.of, values) })];
  }
}

/** ECMA-376 part 2, 11: what a document says of itself. */
function coreProperties(title: string, author: string, at: string): string {
  const instant = (name: string) =>
    `<dcterms:${name} xsi:type="dcterms:W3CDTF">${at.replace(/\.\d+/, '')}</dcterms:${name}>`;
  return [
    '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>',
    '<cp:coreProperties xmlns:cp="http://schemas.openxmlformats.org/package/2006/metadata/core-properties"',
    ' xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:dcterms="http://purl.org/dc/terms/"',
    ' xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">',
    `<dc:title>${xml(title)}</dc:title><dc:creator>${xml(author)}</dc:creator><dc:language>en-GB</dc:language>`,
    `${instant('created')}${instant('modified')}`,
    '</cp:coreProperties>',
  ].join('');
}
