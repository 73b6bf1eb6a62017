import type { CaseCheck } from '../../assess/assessment.ts';
import type { Source } from '../../quantity.ts';
import { cannotTell, fine, questioned } from './answer.ts';

const SOURCE: Source = {
  cite: 'The parts make the whole: mass shares of one definition per segment sum to 1 (de Leva 1996: 1.0000 men, 0.9999 women). The tolerance is a convention',
  status: 'derived',
};

const BAND = 0.001;

/**
 * Mistake 27: was a limb counted once instead of twice, or a segment in two definitions? The shares then do not sum to
 * one. Asked of a list that comes from elsewhere; the kernel always divides by the mass it has summed.
 *
 * @param seen segments with their share of body mass and how many of them were counted
 * @source de Leva 1996, table 4; tolerance: convention
 */
export function segmentSharesDoNotSum(seen: {
  readonly segments: readonly { readonly name: string; readonly share: number; readonly count: number }[];
  readonly about: string | null;
}): CaseCheck {
  const base = { id: 'segment-shares-do-not-sum', about: seen.about, source: SOURCE };
  const { segments } = seen;
  if (segments.length === 0) return cannotTell(base, 'No segments are listed whose shares could be summed.');
  const sum = segments.reduce((total, { share, count }) => total + share * count, 0);
  if (Math.abs(sum - 1) <= BAND) return fine(base, 'The segments make up the whole body.');
  const names = segments.map(({ name }) => name);
  const twice = names.find((name, i) => names.indexOf(name) !== i);
  const single = segments.filter(({ count }) => count === 1).find(({ share }) => Math.abs(sum + share - 1) <= BAND);
  return questioned(
    base,
    `The shares of mass sum to ${sum.toFixed(3)}, not 1.${
      twice !== undefined
        ? ` ${twice} is listed twice.`
        : single !== undefined
          ? ` ${single.name} is counted once: there are two.`
          : sum < 1
            ? ' A limb is counted once, or a segment is missing.'
            : ' A segment is in it in two definitions.'
    }`,
    { label: 'Sum of shares', value: sum, unit: '1' },
    { label: 'Whole body', value: 1, unit: '1' },
  );
}
