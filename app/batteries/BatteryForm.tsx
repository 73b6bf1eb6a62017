import { useState } from 'react';
import { counted } from '../../shared/format/number.ts';
import { batteryProblems } from '../../shared/knowledge/screening/batteryProblems.ts';
import { blankItem, copyItem } from '../../shared/knowledge/screening/copyBattery.ts';
import { readBattery } from '../../shared/knowledge/screening/readBattery.ts';
import { BATTERIES } from '../../shared/knowledge/screening/shipped.ts';
import type { BatteryBody, OwnItem } from '../../shared/model/battery.ts';
import { Button } from '../parts/Button.tsx';
import { TextField } from '../parts/TextField.tsx';
import { Pick } from '../rules/inline.tsx';
import { ItemForm } from './ItemForm.tsx';

/** One battery as it is being written: its name, and its items in order. Every change is stored, sound or not. */
export function BatteryForm({ body, onChange }: { body: BatteryBody; onChange: (body: BatteryBody) => void }) {
  const [openId, setOpenId] = useState<string | null>(null);
  const { items } = body;
  const problems = batteryProblems(body);
  const read = readBattery(body).items;
  const put = (next: readonly OwnItem[]) => onChange({ ...body, items: [...next] });
  const add = (item: OwnItem) => {
    put([...items, item]);
    setOpenId(item.id);
  };
  const others = BATTERIES.flatMap((battery) =>
    battery.items
      .filter((item) => !items.some(({ from, id }) => from?.itemId === item.id || id === item.id))
      .map((item) => ({ battery, item })),
  );

  return (
    <div className="battery-form">
      <div className="form">
        <TextField
          label="Name"
          neededFor="the battery"
          value={body.label}
          onChange={(label) => onChange({ ...body, label })}
        />
        <TextField
          label="Description"
          value={body.description}
          onChange={(description) => onChange({ ...body, description })}
        />
      </div>
      <ol className="rule-list battery-items">
        {items.map((item, i) => {
          const own = problems.filter(({ path }) => path[1] === i);
          const shown = read[i];
          const name = item.label === '' ? 'item without a name' : item.label;
          const move = (by: number) => {
            const other = items[i + by];
            if (other !== undefined) put(items.with(i, other).with(i + by, item));
          };
          return (
            <li key={item.id}>
              <div className="battery-row">
                <button
                  type="button"
                  className="rule-open"
                  aria-expanded={item.id === openId}
                  onClick={() => setOpenId(item.id === openId ? null : item.id)}
                >
                  {name} <span className="quiet">{stateWords(item, shown?.own?.link ?? null, own.length)}</span>
                </button>
                <Button look="quiet" disabled={i === 0} aria-label={`${name} earlier`} onClick={() => move(-1)}>
                  earlier
                </Button>
                <Button
                  look="quiet"
                  disabled={i === items.length - 1}
                  aria-label={`${name} later`}
                  onClick={() => move(1)}
                >
                  later
                </Button>
                <Button
                  look="quiet"
                  aria-label={`Drop ${name}`}
                  onClick={() => put(items.filter((one) => one !== item))}
                >
                  drop
                </Button>
              </div>
              {item.id === openId && shown !== undefined && (
                <ItemForm item={item} read={shown} problems={own} onChange={(next) => put(items.with(i, next))} />
              )}
            </li>
          );
        })}
      </ol>
      <div className="rule-start">
        <Button onClick={() => add(blankItem(freeId(items)))}>Add an item of your own</Button>
        {others.length > 0 && (
          <>
            <span>or one of the program:</span>
            <Pick
              label="Add an item of the program"
              value=""
              choices={others.map(({ item }) => ({ value: item.id, label: item.label }))}
              onChange={(id) => {
                const found = others.find(({ item }) => item.id === id);
                if (found !== undefined) add(copyItem(found.battery, found.item));
              }}
            />
          </>
        )}
      </div>
    </div>
  );
}

function stateWords({ from }: OwnItem, link: string | null, faults: number): string {
  const origin = from === null ? 'of your own' : link === null ? 'no longer the item of the program' : 'of the program';
  return faults === 0 ? origin : `${origin}, ${counted(faults, 'thing')} to put right`;
}

function freeId(items: readonly OwnItem[]): string {
  for (let n = items.length + 1; ; n++) {
    const id = `item-${n}`;
    if (!items.some((one) => one.id === id)) return id;
  }
}
