import { useRef, useState } from 'react';
import type { PlacedReport } from '../../../shared/report/page.ts';
import { PageDrawing } from '../../plots/PageDrawing.tsx';
import { useWidth } from '../../plots/useWidth.ts';

/** CSS pixels to a point: 96 to 72 to the inch. */
const PX_PER_PT = 96 / 72;
/** As many as stand in one row; more are a list to choose from. */
const MOST_BUTTONS = 15;
const ZOOMS = [50, 75, 100, 150, 200] as const;

/** The pages of a report, one below the other, with a list to jump by and a choice of size. */
export function PagesPreview({ report }: { report: PlacedReport }) {
  const [zoom, setZoom] = useState<(typeof ZOOMS)[number] | null>(null);
  /** The page last chosen from the list. */
  const [went, setWent] = useState(1);
  const [attach, room] = useWidth(640);
  const pages = useRef(new Map<number, HTMLLIElement>());
  const { pages: placed } = report;
  const show = (number: number) => pages.current.get(number)?.scrollIntoView({ block: 'start' });
  const widthOf = (pointsWide: number) => (zoom === null ? room : (pointsWide * PX_PER_PT * zoom) / 100);

  return (
    <section className="pages" aria-label="Preview of the pages">
      <div className="pages-bar">
        {placed.length > MOST_BUTTONS ? (
          <label className="pages-zoom">
            Page
            <select
              className="input"
              value={Math.min(went, placed.length)}
              onChange={({ target }) => {
                setWent(Number(target.value));
                show(Number(target.value));
              }}
            >
              {placed.map(({ number }) => (
                <option key={number} value={number}>
                  {number} of {placed.length}
                </option>
              ))}
            </select>
          </label>
        ) : (
          <nav aria-label="Pages">
            <ol>
              {placed.map(({ number }) => (
                <li key={number}>
                  <button
                    type="button"
                    className="page-jump"
                    aria-label={`Show page ${number}`}
                    onClick={() => show(number)}
                  >
                    {number}
                  </button>
                </li>
              ))}
            </ol>
          </nav>
        )}
        <label className="pages-zoom">
          Size
          <select
            className="input"
            value={zoom ?? 'fit'}
            onChange={({ target }) => setZoom(ZOOMS.find((one) => String(one) === target.value) ?? null)}
          >
            <option value="fit">fit the width</option>
            {ZOOMS.map((one) => (
              <option key={one} value={one}>
                {one} %
              </option>
            ))}
          </select>
        </label>
      </div>
      {/* Focusable, so that the pages can be scrolled by keyboard. */}
      {/* oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex */}
      <section className="pages-view" tabIndex={0} aria-label="Pages">
        <ol className="pages-list" ref={attach}>
          {placed.map((page) => (
            <li
              key={page.number}
              ref={(element) => {
                if (element !== null) pages.current.set(page.number, element);
              }}
            >
              <PageDrawing page={page} count={placed.length} widthPx={widthOf(page.width)} />
            </li>
          ))}
        </ol>
      </section>
    </section>
  );
}
