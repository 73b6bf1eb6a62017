import type { AriaRole } from 'react';
import type { Ink, Mark, Page, Placed, Role } from '../../shared/report/page.ts';

/** One placed page as SVG: the very marks the PDF gets, at the same coordinates (points, y down). */
export function PageDrawing({ page, count, widthPx }: { page: Page; count: number; widthPx: number }) {
  return (
    <svg
      className="report-page"
      viewBox={`0 0 ${page.width} ${page.height}`}
      width={widthPx}
      height={(widthPx * page.height) / page.width}
      aria-label={`Page ${page.number} of ${count}`}
    >
      <rect className="page-fill-paper" width={page.width} height={page.height} />
      {page.content.map((placed) => (
        <Element key={placed.id} placed={placed} />
      ))}
    </svg>
  );
}

const HEADING_LEVEL: Partial<Record<Role, number>> = { H1: 1, H2: 2, H3: 3 };
const ARIA_ROLE: Partial<Record<Role, AriaRole>> = {
  H1: 'heading',
  H2: 'heading',
  H3: 'heading',
  L: 'list',
  LI: 'listitem',
  Table: 'table',
  TR: 'row',
  TD: 'cell',
  Figure: 'img',
  Note: 'note',
};

function Element({ placed }: { placed: Placed }) {
  const role = placed.role === 'TH' ? (placed.scope === 'Row' ? 'rowheader' : 'columnheader') : ARIA_ROLE[placed.role];
  return (
    <g
      role={role}
      aria-level={HEADING_LEVEL[placed.role]}
      aria-label={placed.alt}
      aria-hidden={placed.role === 'Artifact' ? true : undefined}
    >
      {placed.marks.map((mark, i) => (
        // Marks never move within an element, so their place is their identity.
        // oxlint-disable-next-line react/no-array-index-key
        <MarkDrawing key={i} mark={mark} />
      ))}
      {placed.children.map((child) => (
        <Element key={child.id} placed={child} />
      ))}
    </g>
  );
}

const fillOf = (ink: Ink | null) => (ink === null ? 'page-fill-none' : `page-fill-${ink}`);
const strokeOf = (ink: Ink | null) => (ink === null ? '' : ` page-stroke-${ink}`);

function MarkDrawing({ mark }: { mark: Mark }) {
  switch (mark.mark) {
    case 'text':
      return (
        <text
          x={mark.rightToLeft === true ? mark.x + mark.width : mark.x}
          y={mark.baseline}
          {...(mark.rightToLeft === true ? { direction: 'rtl', unicodeBidi: 'bidi-override' } : {})}
          fontSize={mark.size}
          className={`page-face-${mark.face} ${fillOf(mark.ink)}${mark.tabular === true ? ' page-tabular' : ''}`}
          // The layout's width rules, so that a line ends where it ends on paper whatever the browser's shaping does.
          {...(mark.width > 0 && mark.text.trim().length > 1
            ? { textLength: mark.width, lengthAdjust: 'spacing' as const }
            : {})}
        >
          {mark.text}
        </text>
      );
    case 'image':
      return (
        <image x={mark.x} y={mark.y} width={mark.width} height={mark.height} href={`/files/${mark.sha256}/still.png`} />
      );
    case 'line':
      return (
        <line
          x1={mark.x1}
          y1={mark.y1}
          x2={mark.x2}
          y2={mark.y2}
          strokeWidth={mark.weight}
          strokeDasharray={mark.dash?.join(' ')}
          className={strokeOf(mark.ink).trim()}
        />
      );
    case 'rect':
      return (
        <rect
          x={mark.x}
          y={mark.y}
          width={mark.width}
          height={mark.height}
          strokeWidth={mark.weight}
          className={fillOf(mark.fill) + strokeOf(mark.stroke)}
        />
      );
    case 'path':
      return (
        <path
          d={mark.d}
          strokeWidth={mark.weight}
          strokeDasharray={mark.dash?.join(' ')}
          className={fillOf(mark.fill) + strokeOf(mark.stroke)}
        />
      );
  }
}
