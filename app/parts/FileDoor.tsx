import { useState } from 'react';
import { base64Of } from './base64Of.ts';
import { DropDoor } from './DropDoor.tsx';

export interface TakenFile {
  readonly name: string;
  readonly text: string;
  /** True for a file that is not text, by its ending: `text` is then its bytes in base64. */
  readonly isBase64: boolean;
}

/** The contract takes no more in one request; base64 writes three bytes in four characters. */
const MOST_CHARACTERS = 24_000_000;
const BINARY = /\.c3d$/i;

/** Takes in one text file: chosen, or dropped on it. Reads nothing else of the machine. */
export function FileDoor(props: {
  label: string;
  /** File name endings, `.csv,.txt`. */
  accept: string;
  hint: string;
  isBusy: boolean;
  onFile: (file: TakenFile) => void;
}) {
  const [refusal, setRefusal] = useState<string | null>(null);

  const take = async (file: File) => {
    const isBase64 = BINARY.test(file.name);
    const most = isBase64 ? MOST_CHARACTERS * 0.75 : MOST_CHARACTERS;
    if (file.size > most) {
      setRefusal(
        `${file.name} is larger than ${most / 1_000_000} MB. Cut it to the part that matters, then choose it again.`,
      );
      return;
    }
    try {
      const text = isBase64 ? await base64Of(file) : await file.text();
      setRefusal(null);
      props.onFile({ name: file.name, text, isBase64 });
    } catch {
      setRefusal(`${file.name} could not be read. Check that it still exists and may be opened, then choose it again.`);
    }
  };
  const { onFile: _onText, ...door } = props;
  return <DropDoor {...door} refusal={refusal} onFile={(file) => void take(file)} />;
}
