import fs from 'node:fs';
import type { Page } from '@playwright/test';
import { writeBattery } from '../../shared/exchange/batteryFile.ts';
import type { BatteryBody } from '../../shared/model/battery.ts';
import type { Edit } from '../../shared/model/edit.ts';
import type { CaseFile } from '../../shared/model/records.ts';
import { aCopy, anItem } from '../support/ownBattery.ts';
import { EXAMPLES } from '../conformance/examples.ts';
import { expectAccessible } from './expectAccessible.ts';
import { ask, expect, type Host, open, test } from './fixtures.ts';

// The athletes are invented; what is typed is written out here, and the store is read past the screen.

const ATHLETES = Array.from({ length: 20 }, (_, i) => `Athlete ${String(i + 1).padStart(2, '0')}`);
const ROSTER = `\uFEFFName;Date of birth;Mass (kg)\r\n${ATHLETES.map((name, i) => `${name};2003-01-${String(i + 1).padStart(2, '0')};${60 + i},5`).join('\r\n')}\r\n`;

type Held = Readonly<Record<string, Readonly<Record<string, unknown>>>>;
const GRADES = ['met', 'met-with-compensation', 'not-met'];

/** Each item in battery order: what is typed for the i-th athlete, and what the store must then hold by side, in SI. */
const TYPED: readonly (readonly [string, (i: number) => readonly [string, Held]])[] = [
  ['pain-bending-back', () => ['n', { none: { isPositive: false } }]],
  ['pain-raising-arm', () => ['nn', { left: { isPositive: false }, right: { isPositive: false } }]],
  ['overhead-squat', (i) => [['m', 'c', 'n'][i % 3] ?? '', { none: { grade: GRADES[i % 3] } }]],
  [
    'single-leg-squat',
    (i) => [
      `${['m', 'c', 'n'][i % 3]} ${['n', 'm', 'c'][i % 3]}`,
      { left: { grade: GRADES[i % 3] }, right: { grade: GRADES[(i + 2) % 3] } },
    ],
  ],
  [
    'weight-bearing-lunge',
    (i) => [
      `${8 + i / 2} ${9 + i / 2}`,
      { left: { valueSi: (8 + i / 2) / 100 }, right: { valueSi: (9 + i / 2) / 100 } },
    ],
  ],
  [
    'shoulder-internal-rotation',
    (i) => [
      `${40 + i} ${60 - i}`,
      { left: { valueSi: ((40 + i) * Math.PI) / 180 }, right: { valueSi: ((60 - i) * Math.PI) / 180 } },
    ],
  ],
  [
    'shoulder-external-rotation',
    (i) => [`${90 + i} 90`, { left: { valueSi: ((90 + i) * Math.PI) / 180 }, right: { valueSi: Math.PI / 2 } }],
  ],
  ['hands-behind-back', (i) => [`-${i + 1} 6,5`, { left: { valueSi: -(i + 1) / 100 }, right: { valueSi: 0.065 } }]],
  ['closed-chain-touches', (i) => [String(20 + i), { none: { valueSi: 20 + i } }]],
  ['groin-squeeze', () => ['1', { none: { valueSi: 1 } }]],
  ['single-leg-hop', (i) => [i === 19 ? '- 120+149+131' : `- ${130 + i}`, { right: { valueSi: (130 + i) / 100 } }]],
  ['plank-hold', (i) => [String(60 + i), { none: { valueSi: 60 + i } }]],
];

/** A copy of the battery of the program with an item of one's own. */
const OWN = { ...aCopy(), items: [...aCopy().items, anItem()] };

const run = (page: Page) => page.getByRole('table', { name: 'Athletes by test' });
const cell = (page: Page, item: string, athlete: string) =>
  page.getByRole('textbox', { name: `${labelOf(item)}, ${athlete}`, exact: true });
const labelOf = (id: string) => OWN.items.find((item) => item.id === id)?.label ?? '';

async function begin(page: Page, host: Host, battery: BatteryBody | null = null): Promise<void> {
  await open(page, host);
  if (battery !== null) {
    await ask(page, 'battery.import', { fileName: 'own.json', text: JSON.stringify(writeBattery(battery)) });
  }
  await page.getByRole('link', { name: 'Intake run' }).focus();
  await page.keyboard.press('Enter');
  await page
    .getByLabel('Athletes from a list (CSV)')
    .setInputFiles({ name: 'squad.csv', mimeType: 'text/csv', buffer: Buffer.from(ROSTER) });
  await page.getByRole('button', { name: 'Take in 20 athletes' }).focus();
  await page.keyboard.press('Enter');
  if (battery !== null) {
    await page.getByLabel('Battery').focus();
    await page.keyboard.type(battery.label);
  }
  await page.getByRole('button', { name: 'Begin with 20 athletes' }).focus();
  await page.keyboard.press('Enter');
  await expect(run(page).getByRole('row')).toHaveCount(21);
}

/** The cases as the store has them, by athlete. */
async function stored(page: Page): Promise<ReadonlyMap<string, CaseFile>> {
  await expect(page.getByText('All saved')).toBeVisible();
  return casesOf(page);
}

async function casesOf(page: Page): Promise<ReadonlyMap<string, CaseFile>> {
  const { rows } = await ask<{ rows: { caseId: string }[] }>(page, 'shelf.list', {
    search: '',
    archived: false,
    offset: 0,
    limit: 500,
  });
  const opened = await Promise.all(rows.map(({ caseId }) => ask<{ file: CaseFile }>(page, 'case.open', { caseId })));
  return new Map(opened.map(({ file }) => [file.athlete.name, file]));
}

function held(file: CaseFile | undefined, itemId: string): Held {
  const fields = ['valueSi', 'grade', 'isPositive', 'painNrs'] as const;
  const results = (file?.screeningResults ?? []).filter((result) => result.itemId === itemId);
  return Object.fromEntries(
    results.map((result) => [
      result.side,
      Object.fromEntries(fields.flatMap((field) => (result[field] === null ? [] : [[field, result[field]]]))),
    ]),
  );
}

function expectHeld(file: CaseFile | undefined, itemId: string, expected: Held): void {
  const found = held(file, itemId);
  expect(
    Object.keys(found).toSorted((a, b) => a.localeCompare(b)),
    itemId,
  ).toEqual(Object.keys(expected));
  for (const [side, fields] of Object.entries(expected)) {
    for (const [field, value] of Object.entries(fields)) {
      const got = found[side]?.[field];
      if (typeof value === 'number') expect(got, `${itemId}, ${side}`).toBeCloseTo(value, 9);
      else expect(got, `${itemId}, ${side}`).toBe(value);
    }
  }
}

test('a squad of 20 by the 12 items of a copy with an item of one’s own, by keyboard alone: every value in the store is what was typed, today and after going on', async ({
  page,
  host,
}) => {
  await begin(page, host, OWN);

  // Said once, kept with each result of that test, and of no other.
  await page.getByRole('button', { name: 'Device, position, shoes' }).click();
  await page.getByLabel('Device, Weight-bearing lunge').fill('tape measure');
  await page.getByLabel('Shoes, Weight-bearing lunge').selectOption('without shoes');
  await page.getByRole('dialog').screenshot({ path: 'out/e2e/taken-with.png' });
  await page.keyboard.press('Escape');

  // Every test of everybody, column by column: from the last row the focus goes on to the top of the next column.
  await cell(page, TYPED[0]?.[0] ?? '', 'Athlete 01').focus();
  for (const [itemId, of] of TYPED) {
    await expect(cell(page, itemId, 'Athlete 01')).toBeFocused();
    for (const [i] of ATHLETES.entries()) {
      await page.keyboard.type(of(i)[0]);
      await page.keyboard.press('Enter');
    }
  }
  const check = async () => {
    const files = await stored(page);
    expect(files.size).toBe(20);
    for (const [i, athlete] of ATHLETES.entries()) {
      for (const [itemId, of] of TYPED) expectHeld(files.get(athlete), itemId, of(i)[1]);
      const cells = TYPED.reduce((sum, [, of]) => sum + Object.keys(of(i)[1]).length, 0);
      expect(files.get(athlete)?.screeningResults).toHaveLength(cells);
    }
  };
  await check();
  // Each keeps the very battery it was taken with, so that another version cannot read it otherwise.
  for (const file of (await stored(page)).values()) {
    expect(file.screeningSessions[0]?.battery).toEqual(OWN);
    for (const { itemId, device, shoes } of file.screeningResults) {
      expect([device, shoes]).toEqual(itemId === 'weight-bearing-lunge' ? ['tape measure', false] : ['', null]);
    }
  }
  const hops = (await stored(page)).get('Athlete 20')?.screeningResults.find(({ trialsSi }) => trialsSi !== null);
  expect(hops?.trialsSi).toEqual([1.2, 1.49, 1.31]);

  // Left and found again by its day: what was typed stands there.
  await page.getByRole('link', { name: 'Add athletes or pause' }).click();
  await page.getByRole('link', { name: /^Afternoon battery/ }).click();
  await expect(cell(page, 'hands-behind-back', 'Athlete 02')).toHaveValue('-2 6.5');
  await expect(cell(page, 'single-leg-hop', 'Athlete 03')).toHaveValue('- 132');
  await check();

  // Afterwards: everybody who has a value is in the strip, found by the arrow keys.
  await page.getByRole('link', { name: 'Squad page' }).click();
  const strip = page.getByRole('slider', { name: 'Weight-bearing lunge, left: athletes by value' });
  await expect(strip).toHaveAttribute('max', '20');
  await strip.focus();
  await page.keyboard.press('End');
  await expect(strip).toHaveAttribute('aria-valuetext', /^Athlete 20, 17\.5/);
});

test('the reports of a squad in one go: stopped part of the way those made are kept, and all of them at last', async ({
  page,
  host,
}) => {
  test.setTimeout(180_000);
  await begin(page, host);
  await page.getByRole('link', { name: 'Squad page' }).click();
  const made = async () => [...(await casesOf(page)).values()].reduce((sum, { reports }) => sum + reports.length, 0);
  await page.getByRole('button', { name: 'Make a client report for each athlete' }).click();
  await page.getByRole('button', { name: 'Stop, and keep those made' }).click();
  const said = page.getByText(/^\d+ of 20\sreports made, then stopped\./);
  await expect(said).toBeVisible();
  const kept = Number.parseInt(await said.innerText(), 10);
  expect(kept).toBeLessThan(20);
  expect(await made()).toBe(kept);

  await page.getByRole('button', { name: 'Make a client report for each athlete' }).click();
  await expect(page.getByText(/^20 of 20\sreports made\./)).toBeVisible({ timeout: 120_000 });
  expect(await made()).toBe(kept + 20);
});

test('pain and a positive clearing test say stop and be seen at the keystroke, in the row and apart on top', async ({
  page,
  host,
}) => {
  await begin(page, host);
  const stops = page.getByRole('region', { name: 'Stop and be seen' });
  await expect(stops).toHaveCount(0);

  await cell(page, 'single-leg-squat', 'Athlete 07').focus();
  await page.keyboard.type('mc');
  await page.keyboard.press('p');
  await expect(page.getByRole('textbox', { name: 'Pain, Single-leg squat, Athlete 07', exact: true })).toBeFocused();
  // Read in the same task as the key is handled in, before anything else can be drawn or answered.
  const atOnce = await page.evaluate(() => {
    const field = document.activeElement as HTMLInputElement;
    Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set?.call(field, '- 2');
    field.dispatchEvent(new Event('input', { bubbles: true }));
    return new Promise<string>((resolve) => {
      requestAnimationFrame(() => resolve(document.querySelector('.run-stops')?.textContent ?? ''));
    });
  });
  expect(atOnce).toContain('Athlete 07 pain 2 of 10 in single-leg squat, right');
  const row = run(page).getByRole('row', { name: /^Athlete 07/ });
  await expect(row.getByRole('rowheader')).toContainText('Stop and be seen');

  await cell(page, 'pain-raising-arm', 'Athlete 12').focus();
  await page.keyboard.type('y');
  await expect(stops).toContainText('2 athletes');
  await expect(stops).toContainText('Athlete 12');

  const files = await stored(page);
  expectHeld(files.get('Athlete 07'), 'single-leg-squat', {
    left: { grade: 'met' },
    right: { grade: 'met-with-compensation', painNrs: 2 },
  });
  expectHeld(files.get('Athlete 12'), 'pain-raising-arm', { left: { isPositive: true } });

  // Taken back where it was typed: the row is free again.
  await page.keyboard.press('Backspace');
  await expect(stops).toContainText('1 athlete');
});

test('a test that an injury on file forbids says so, and a value out of range is refused and not stored', async ({
  page,
  host,
}) => {
  await begin(page, host);
  const injured = (await stored(page)).get('Athlete 02');
  const injury: Edit = {
    op: 'create',
    kind: 'injury',
    record: { ...EXAMPLES.injury, athleteId: injured?.athlete.id ?? '', condition: 'anterior-shoulder-instability' },
  };
  await ask(page, 'case.edit', { caseId: injured?.case.id, edits: [injury] });
  const forbidden = cell(page, 'shoulder-external-rotation', 'Athlete 02');
  await expect(forbidden).toHaveAttribute('placeholder', 'leave out');
  await forbidden.focus();
  await expect(page.locator('#run-now')).toContainText('leave this out unless a clinician asks for it');

  const lunge = cell(page, 'weight-bearing-lunge', 'Athlete 02');
  await lunge.focus();
  await page.keyboard.type('12 300');
  await expect(lunge).toHaveAttribute('aria-invalid', 'true');
  await expect(run(page)).toContainText('right: must lie between 0 and 35');
  expectHeld((await stored(page)).get('Athlete 02'), 'weight-bearing-lunge', { left: { valueSi: 0.12 } });
});

for (const colorScheme of ['light', 'dark'] as const) {
  test(`no screen of the run breaks WCAG 2.2 AA as far as a program can tell, ${colorScheme}`, async ({
    page,
    host,
  }) => {
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    const clean = (where: string) => expectAccessible(page, where);
    await begin(page, host);
    await cell(page, 'weight-bearing-lunge', 'Athlete 05').focus();
    await page.keyboard.type('9 14');
    await page.keyboard.press('p');
    await page.keyboard.type('6');
    await clean('run');
    await page.getByRole('button', { name: 'Stations' }).click();
    await clean('stations');
    await page.keyboard.press('Escape');
    await page.getByRole('link', { name: 'Squad page' }).click();
    await expect(page.getByRole('slider').first()).toBeVisible();
    await clean('squad');
    await page.goto(`${host.origin}/#/run`);
    await page
      .getByLabel('Athletes from a list (CSV)')
      .setInputFiles({ name: 'bad.csv', mimeType: 'text/csv', buffer: Buffer.from('Name,Weight\nA,70\nB,heavy\n') });
    await expect(page.getByText('needs a unit')).toBeVisible();
    await clean('start, with a roster at fault');
  });
}

test('two laptops: the run saved as a file; another’s results added, and a conflict decided side by side', async ({
  page,
  host,
}) => {
  await begin(page, host);
  await cell(page, 'weight-bearing-lunge', 'Athlete 03').focus();
  await page.keyboard.type('9 14');
  await stored(page);
  await page.getByRole('link', { name: 'Squad page' }).click();
  const saved = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save this run as a file' }).click();
  const text = fs.readFileSync(await (await saved).path(), 'utf8');

  // What the other laptop took: another left, with pain, for one athlete, and a first result of the next.
  const theirs = JSON.parse(text) as { athletes: { name: string; results: { side: string }[] }[] };
  const results = theirs.athletes.find(({ name }) => name === 'Athlete 03')?.results ?? [];
  const left = results.find(({ side }) => side === 'left');
  const other = { ...left, valueSi: 0.11, painNrs: 5 };
  const edited = theirs.athletes.map((athlete) => ({
    ...athlete,
    results:
      athlete.name === 'Athlete 03'
        ? [other, ...results.filter(({ side }) => side !== 'left')]
        : athlete.name === 'Athlete 04'
          ? [{ ...left, valueSi: 0.08 }]
          : athlete.results,
  }));
  await page.getByLabel('Merge the run of another laptop').setInputFiles({
    name: 'other.json',
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify({ ...theirs, athletes: edited })),
  });
  await expect(page.getByText('1 result only there, 1 alike, 1 conflict.')).toBeVisible();
  const row = page.getByRole('row', { name: /Athlete 03/ }).filter({ hasText: 'Weight-bearing lunge' });
  await expect(row).toContainText('9.0 cm');
  await expect(row).toContainText('11.0 cm, pain 5');
  const merge = page.getByRole('button', { name: 'Merge into this run' });
  await expect(merge).toBeDisabled();
  await row.getByRole('combobox').selectOption('there');
  await page.getByRole('region', { name: 'Two laptops' }).screenshot({ path: 'out/e2e/merge.png' });
  await merge.click();
  await expect(page.getByText('1 result added, 1 replaced by the other laptop’s.')).toBeVisible();
  await expect(page.getByRole('heading', { name: 'Stop and be seen: 1 athlete' })).toBeVisible();
  await page.getByRole('link', { name: 'Back to the run' }).click();
  const held = await stored(page);
  const of = (name: string) => held.get(name)?.screeningResults.map(({ side, valueSi }) => [side, valueSi]);
  expect(of('Athlete 03')).toEqual([
    ['left', 0.11],
    ['right', 0.14],
  ]);
  expect(of('Athlete 04')).toEqual([['left', 0.08]]);
});

test('a list taken in is taken back after the page was left: who was worked on is named and stays', async ({
  page,
  host,
}) => {
  await begin(page, host);
  await page.getByRole('link', { name: 'Add athletes or pause' }).click();
  await page
    .getByLabel('Athletes from a list (CSV)')
    .setInputFiles({ name: 'guests.csv', mimeType: 'text/csv', buffer: Buffer.from('Name\nGuest A\nGuest B\n') });
  await page.getByRole('button', { name: 'Take in 2 athletes' }).click();
  await expect(page.getByRole('button', { name: 'Go on with 2 athletes more' })).toBeVisible();
  const shelf = { search: '', archived: false, offset: 0, limit: 500 };
  const onShelf = async () =>
    (await ask<{ rows: { caseId: string; athleteName: string }[] }>(page, 'shelf.list', shelf)).rows;
  const guest = (await onShelf()).find(({ athleteName }) => athleteName === 'Guest B')?.caseId ?? '';
  await page.goto(`${host.origin}/#/case/${guest}`);
  await page.getByRole('textbox', { name: 'Name or pseudonym' }).fill('Guest Bea');
  await stored(page);

  await page.goto(`${host.origin}/#/run`);
  await page.getByText('Lists taken in').click();
  const guests = page.getByRole('listitem').filter({ hasText: 'guests.csv' });
  await expect(guests).toContainText('Something was entered since for Guest Bea: this one stays.');
  await expect(page.getByRole('listitem').filter({ hasText: 'squad.csv' })).toContainText('and 12 more: these stay.');
  await page.locator('.taken-rosters').screenshot({ path: 'out/e2e/taken-rosters.png' });
  await guests.getByRole('button', { name: 'Take the other 1 back' }).click();
  await expect(page.getByText('guests.csv taken back: 1 case archived; nothing is deleted.')).toBeVisible();
  await expect(page.getByRole('checkbox', { name: /^Guest A/ })).toHaveCount(0);
  await expect(page.getByRole('checkbox', { name: /^Guest Bea/ })).toBeVisible();
  expect((await onShelf()).map(({ athleteName }) => athleteName)).not.toContain('Guest A');
});
