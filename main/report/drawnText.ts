import type { Mark } from '../../shared/report/page.ts';
import { isRightToLeft, turned } from '../../shared/report/steps/bidi.ts';

/**
 * What a mark's typeface is asked to draw. Layout turns letters of Hebrew and Arabic round by itself; spaces and brackets
 * between them, which the text's own typeface draws, it does not.
 */
export function drawnText({ text, rightToLeft }: Extract<Mark, { mark: 'text' }>): string {
  return rightToLeft === true && !isRightToLeft(text) ? turned(text) : text;
}
