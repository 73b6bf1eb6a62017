import type { Unit } from '../../shared/units.ts';
import { personName } from './samePerson.ts';

const UNIT_WORDS: Readonly<Record<string, Unit>> = {
  kg: 'kg',
  kilograms: 'kg',
  g: 'g',
  lb: '[lb_av]',
  lbs: '[lb_av]',
  pounds: '[lb_av]',
  s: 's',
  sec: 's',
  seconds: 's',
  ms: 'ms',
  m: 'm',
  metres: 'm',
  meters: 'm',
  cm: 'cm',
  mm: 'mm',
  in: '[in_i]',
  inch: '[in_i]',
  inches: '[in_i]',
  ft: '[ft_i]',
  feet: '[ft_i]',
};

/** A unit by what people call it; null for any other word. */
export function unitNamed(word: string): Unit | null {
  return Object.hasOwn(UNIT_WORDS, word.toLowerCase()) ? (UNIT_WORDS[word.toLowerCase()] ?? null) : null;
}

/** `Body mass [kg]`, `height_cm` and `Größe in cm` as words, in lower case without accents, and unit. */
export function columnHead(head: string): { readonly words: string; readonly unit: Unit | null } {
  const spaced = head
    .replaceAll('ß', 'ss')
    .replaceAll(/[_.]/g, ' ')
    .replaceAll(/([a-z])([A-Z])/g, '$1 $2');
  const plain = personName(spaced);
  const parts = /^(.*?)\s*(?:[[(]\s*(\p{L}+)\s*[\])]|[\s,/](?:in )?(\p{L}+))$/u.exec(plain);
  const unit = unitNamed(parts?.[2] ?? parts?.[3] ?? '');
  return unit === null ? { words: plain, unit } : { words: (parts?.[1] ?? '').replace(/[\s,/]+(in)?$/, ''), unit };
}
