import { useCallback, useState } from 'react';

const ROOT_FONT_AT_DESIGN = 16;

/**
 * Width of an element, as it changes, in units of a sixteenth of the root font size (pixels at the browser's default).
 * A drawing with this as its viewBox width keeps its text at reading size however wide it is and however large the
 * reader has set the type.
 */
export function useWidth(fallback: number): readonly [(element: Element | null) => (() => void) | undefined, number] {
  const [width, setWidth] = useState(fallback);
  const attach = useCallback((element: Element | null) => {
    if (element === null) return undefined;
    const observer = new ResizeObserver((entries) => {
      const seen = entries[0]?.contentRect.width ?? 0;
      const rootFont = Number.parseFloat(getComputedStyle(document.documentElement).fontSize) || ROOT_FONT_AT_DESIGN;
      if (seen > 0) setWidth((seen * ROOT_FONT_AT_DESIGN) / rootFont);
    });
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return [attach, width];
}
