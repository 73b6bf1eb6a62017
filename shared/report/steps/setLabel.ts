import { type FontMetrics, shows } from '../metrics.ts';
import type { Face, Mark } from '../page.ts';
import { scriptFaces } from '../sheet.ts';
import { isRightToLeft } from './bidi.ts';

/** Stands for a letter that none of the faces has; what is meant travels beside it. */
export const MISSING = '□';

/** No-break spaces as plain ones, so that copied text is plain. */
export function plainSpaces(text: string): string {
  return text.replaceAll(/[\u00a0\u202f]/g, ' ');
}

type TextMark = Extract<Mark, { mark: 'text' }>;
type SetLabel = Pick<TextMark, 'text' | 'face' | 'rightToLeft' | 'actual'>;

/**
 * A few words in one face on one line, as figures and formulas have them: in the face asked for, or that of another script
 * where it shows them all; else with boxes for what is not there. One mark has one direction: with a Latin letter in it, from
 * left to right.
 */
export function setLabel(words: string, face: Face, metrics: FontMetrics): SetLabel {
  const text = plainSpaces(words);
  const faces = [face, ...scriptFaces(face.endsWith('Bold') ? 'bold' : null)];
  const shown = faces.find((by) => shows(metrics, text, by));
  if (shown === undefined) {
    const boxed = Array.from(text, (c) => (shows(metrics, c, 'sans') ? c : MISSING)).join('');
    return { text: boxed, face: 'sans', actual: text };
  }
  const turned = isRightToLeft(text) && !/\p{Script=Latin}/u.test(text);
  return { text, face: shown, ...(turned ? { rightToLeft: true } : {}) };
}
