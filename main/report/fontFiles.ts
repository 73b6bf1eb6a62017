import { fileURLToPath } from 'node:url';
import type { Face } from '../../shared/report/page.ts';

/** Source Sans 3, Source Serif 4, Noto Sans Hebrew and Vazirmatn, SIL Open Font License 1.1; licences beside the files. */
const FILES: Readonly<Record<Face, string>> = {
  sans: 'SourceSans3_400Regular.ttf',
  sansItalic: 'SourceSans3_400Regular_Italic.ttf',
  sansBold: 'SourceSans3_600SemiBold.ttf',
  serif: 'SourceSerif4_400Regular.ttf',
  serifBold: 'SourceSerif4_600SemiBold.ttf',
  hebrew: 'NotoSansHebrew_400Regular.ttf',
  hebrewBold: 'NotoSansHebrew_600SemiBold.ttf',
  arabic: 'Vazirmatn_400Regular.ttf',
  arabicBold: 'Vazirmatn_600SemiBold.ttf',
};

export function fontFile(face: Face): string {
  return fileURLToPath(new URL(`../../assets/fonts/${FILES[face]}`, import.meta.url));
}
