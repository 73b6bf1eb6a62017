import { BALL } from '../model/trial.ts';

/**
 * Words by which people name the markers of a body part, first those of the place itself, then those near it, which count
 * only where none of the first is there. Cut to four letters, as many files have them, and in full. Common practice, no
 * source.
 */
const SIDED: readonly (readonly [part: string, here: RegExp, near: RegExp | null])[] = [
  ['shoulder', /^(sho|acr)/, null],
  ['elbow', /^(elb|arm(lat|med)epi)/, /^(olecranon)/],
  ['wrist', /^(wri|ulnarsty|radialsty)/, null],
  ['knuckle', /^(knu|mcp)/, /^(han|topofhand|fin)/],
  ['hip', /^(hip|troch|greatertroch|gtr)/, /^hi$/],
  ['knee', /^(kne(?!ecap)|kneelat|kneemed)/, /^kn$/],
  ['ankle', /^(ank|mal|(lat|med)mal)/, /^an$/],
  ['heel', /^(hee|cal)/, /^he$/],
  ['toe', /^(toe|to$)/, /^(met|mt|(first|second|fifth)met)/],
];
const MIDDLE: readonly (readonly [point: string, here: RegExp])[] = [
  ['vertex', /^(vertex|crown|thea|tophea|topofhead|headtop)/],
  ['cervicale', /^(c7|cerv)/],
  [BALL, /^ball\d*$/],
];

/**
 * Which point each marker most likely is, by its label; null where that says nothing. Only for a person to look over: a
 * marker on the skin is not the joint.
 *
 * @returns as many as there are labels
 */
export function suggestPoints(labels: readonly string[]): (string | null)[] {
  const found = labels.map((label) => suggested(plainLabel(label)));
  const certain = new Set(found.flatMap((one) => (one?.isNear === false ? [one.point] : [])));
  return found.map((one) => (one === null || (one.isNear && certain.has(one.point)) ? null : one.point));
}

/** A label without the name of the person before its colon, which is no part of it. */
export function plainLabel(label: string): string {
  return label.slice(label.lastIndexOf(':') + 1).trim();
}

function suggested(label: string): { point: string; isNear: boolean } | null {
  // Some programs put a small letter before a name in capitals.
  const name = label.replace(/^[a-z](?=[A-Z])/, '');
  const middle = MIDDLE.find(([, here]) => here.test(letters(name)));
  if (middle !== undefined) return { point: middle[0], isNear: false };
  const sided =
    /^(v)?(right|left|r|l)(.*)$/i.exec(name) ?? turned(/^(.*?)[ _.-]?(right|left|(?<=[ _.-])[rl])$/i.exec(name));
  if (sided === null) return null;
  const [, computed, side = '', rest = ''] = sided;
  const part = SIDED.find(([, here, near]) => here.test(letters(rest)) || near?.test(letters(rest)) === true);
  if (part === undefined) return null;
  const isNear = computed !== undefined || !part[1].test(letters(rest));
  return { point: `${part[0]}-${side.toLowerCase().startsWith('r') ? 'right' : 'left'}`, isNear };
}

/** A side named last, put first. */
function turned(match: RegExpExecArray | null): readonly (string | undefined)[] | null {
  return match === null ? null : [match[0], undefined, match[2], match[1]];
}

function letters(text: string): string {
  return text.toLowerCase().replaceAll(/[^a-z0-9]/g, '');
}
