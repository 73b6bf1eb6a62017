import { useState } from 'react';
import { DropDoor } from './DropDoor.tsx';

export interface TakenFile {
  readonly name: string;
  readonly text: string;
}

/** The contract takes no more in one request. */
const MOST_CHARACTERS = 24_000_000;

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
    if (file.size > MOST_CHARACTERS) {
      setRefusal(`${file.name} is larger than 24 MB. Cut it to the part that matters, then choose it again.`);
      return;
    }
    try {
      const text = await file.text();
      setRefusal(null);
      props.onFile({ name: file.name, text });
    } catch {
      setRefusal(`${file.name} could not be read. Check that it still exists and may be opened, then choose it again.`);
    }
  };
  const { onFile: _onText, ...door } = props;
  return <DropDoor {...door} refusal={refusal} onFile={(file) => void take(file)} />;
}
