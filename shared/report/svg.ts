import type { Drawing } from './blocks/figure.ts';
import type { Evidence } from './evidence.ts';
import { INK_ON_PAPER } from './inks.ts';
import type { Face, Ink, Mark } from './page.ts';

const FONTS: Readonly<Record<Face, string>> = {
  sans: 'font-family="Source Sans 3, sans-serif"',
  sansItalic: 'font-family="Source Sans 3, sans-serif" font-style="italic"',
  sansBold: 'font-family="Source Sans 3, sans-serif" font-weight="600"',
  serif: 'font-family="Source Serif 4, serif"',
  serifBold: 'font-family="Source Serif 4, serif" font-weight="600"',
  hebrew: 'font-family="Noto Sans Hebrew, sans-serif"',
  hebrewBold: 'font-family="Noto Sans Hebrew, sans-serif" font-weight="600"',
  arabic: 'font-family="Vazirmatn, sans-serif"',
  arabicBold: 'font-family="Vazirmatn, sans-serif" font-weight="600"',
};

/** A drawing as a file of its own, on white, with its alternative text as title. */
export function svgOf({ height, marks }: Drawing, width: number, alt: string, images: Evidence['images'] = {}): string {
  const size = `width="${n(width)}pt" height="${n(height)}pt" viewBox="0 0 ${n(width)} ${n(height)}"`;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" role="img" ${size}>`,
    `<title>${escaped(alt)}</title>`,
    `<rect width="${n(width)}" height="${n(height)}" fill="${INK_ON_PAPER.paper}"/>`,
    ...marks.map((mark) => svgMark(mark, images)),
    '</svg>',
    '',
  ].join('\n');
}

function svgMark(mark: Mark, images: Evidence['images']): string {
  switch (mark.mark) {
    case 'image':
      return `<image x="${n(mark.x)}" y="${n(mark.y)}" width="${n(mark.width)}" height="${n(mark.height)}" href="${images[mark.sha256]?.dataUri ?? ''}"/>`;
    case 'text':
      return `<text x="${n(mark.rightToLeft === true ? mark.x + mark.width : mark.x)}"${mark.rightToLeft === true ? TURNED : ''} y="${n(mark.baseline)}" font-size="${n(mark.size)}" ${FONTS[mark.face]} fill="${INK_ON_PAPER[mark.ink]}">${escaped(mark.actual ?? mark.text)}</text>`;
    case 'line':
      return `<line x1="${n(mark.x1)}" y1="${n(mark.y1)}" x2="${n(mark.x2)}" y2="${n(mark.y2)}" ${painted(null, mark.ink, mark.weight, mark.dash)}/>`;
    case 'rect':
      return `<rect x="${n(mark.x)}" y="${n(mark.y)}" width="${n(mark.width)}" height="${n(mark.height)}" ${painted(mark.fill, mark.stroke, mark.weight)}/>`;
    case 'path':
      return `<path d="${mark.d}" ${painted(mark.fill, mark.stroke, mark.weight, mark.dash)}/>`;
  }
}

/** From its right end, brackets turned round. */
const TURNED = ' direction="rtl" unicode-bidi="bidi-override"';

function painted(fill: Ink | null, stroke: Ink | null, weight: number, dash?: readonly number[]): string {
  return [
    `fill="${fill === null ? 'none' : INK_ON_PAPER[fill]}"`,
    ...(stroke === null ? [] : [`stroke="${INK_ON_PAPER[stroke]}" stroke-width="${n(weight)}"`]),
    ...(dash === undefined ? [] : [`stroke-dasharray="${dash.join(' ')}"`]),
  ].join(' ');
}

function n(value: number): string {
  return String(Number(value.toFixed(2)));
}

function escaped(text: string): string {
  return text.replace(/[&<>"]/g, (c) => `&#${c.charCodeAt(0)};`);
}
