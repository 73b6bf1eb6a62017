import { SECTIONS } from '../../shared/assess/assessment.ts';
import { SECTION_TITLES } from '../case/sectionTitles.ts';
import { FINDING_KEYS } from '../case/findings/keys.ts';
import { Dialog } from '../parts/Dialog.tsx';
import { chordWords, REDO_WORDS, UNDO_WORDS } from './keys.ts';

const KEYS: readonly (readonly [string, string])[] = [
  ...SECTIONS.map((section, index) => [chordWords(index + 1), SECTION_TITLES[section]] as const),
  [chordWords(9), 'Margin: what stands behind the thing selected'],
  [chordWords(0), 'Shelf'],
  [UNDO_WORDS, 'Undo the last change'],
  [REDO_WORDS, 'Redo it'],
  ['/', 'Search the shelf'],
  ['Arrow up, arrow down', 'From case to case on the shelf'],
  ['Enter', 'Open the case'],
  ...FINDING_KEYS,
  ['?', 'This list'],
];

export function KeysDialog({ onClose }: { onClose: () => void }) {
  return (
    <Dialog title="Keys" onClose={onClose}>
      <table className="table">
        <caption>Work anywhere, also while typing; / and ? only outside a field.</caption>
        <thead>
          <tr>
            <th scope="col">Key</th>
            <th scope="col">Leads to</th>
          </tr>
        </thead>
        <tbody>
          {KEYS.map(([key, meaning]) => (
            <tr key={key}>
              <th scope="row">
                <kbd>{key}</kbd>
              </th>
              <td>{meaning}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Dialog>
  );
}
