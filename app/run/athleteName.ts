import type { CaseFile } from '../../shared/model/records.ts';

export function athleteName({ athlete, case: { number } }: CaseFile): string {
  return athlete.name.trim() === '' ? `Athlete of ${number}` : athlete.name;
}
