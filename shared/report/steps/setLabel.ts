import type { FontMetrics } from '../metrics.ts';
import type { Face, Mark } from '../page.ts';
import { scriptFaces } from '../sheet.ts';
import { isRightToLeft } from './bidi.ts';

/** Stands for a letter that none of the faces has; what is meant travels beside it. */
export const MISSING = '□';

type TextMark = Extract<Mark, { mark: 'text' }>;
type SetLabel = Pick<TextMark, 'text' | 'face' | 'rightToLeft' | 'actual'>;

/**
 * A few words in one face on one line, as figures and formulas have them: in the face asked for, or that of another script
 * where it shows them all; else with boxes for what is not there. One mark has one direction: with a Latin letter in it, from
 * left to right.
 */
export function setLabel(words: string, face: Face, metrics: FontMetrics): SetLabel {
  const text = words.replaceAll(/[\u00a0\u202f]/g, ' ');
  const has = (by: Face) => (c: string) => metrics.covers(c.codePointAt(0) ?? 0, by);
  const letters = Array.from(text);
  const shown = [face, ...scriptFaces(face.endsWith('Bold') ? 'bold' : null)].find((by) => letters.every(has(by)));
  if (shown === undefined) {
    return { text: letters.map((c) => (has('sans')(c) ? c : MISSING)).join(''), face: 'sans', actual: text };
  }
  const turned = isRightToLeft(text) && !/\p{Script=Latin}/u.test(text);
  return { text, face: shown, ...(turned ? { rightToLeft: true } : {}) };
}
