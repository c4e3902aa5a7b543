// What the parts do wherever they stand: fields, tables, messages, questions, switches, files.
import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import { test } from 'node:test';
import { useSite } from './support/fixture.mjs';
import { Wellwright } from './support/wellwright.mjs';

const { open } = useSite();
const plain = Wellwright.plain;
const job = 'Brindle Wash 7';

async function start(t, { at, ...options } = {}) {
  const opened = await open(t, { viewport: { width: 1280, height: 800 }, reducedMotion: 'reduce', ...options });
  const app = new Wellwright(opened.page);
  await app.newJobButton.waitFor();
  const id = opened.page.url().endsWith('?gallery') ? undefined : await app.idOf(job);
  if (at) await app.goTo(id, at);
  const stored = () =>
    opened.page.evaluate((id) => JSON.parse(localStorage.getItem(`wellwright.job.${id}`)).job, id);
  return { ...opened, app, id, stored };
}

test('a field reads sums, fractions, a decimal comma and a unit, and shows what comes out', async (t) => {
  const { page, app, stored } = await start(t, { at: 'water' });
  const field = app.field('Pump setting');
  for (const [typed, shown, kept] of [
    ['430+41.7', '= 471.7 ft', { value: 471.7, unit: 'ft' }],
    ['12.5*2', '= 25 ft', { value: 25, unit: 'ft' }],
    ['3/4', '= 0.75 ft', { value: 0.75, unit: 'ft' }],
    ['7 1/2', '= 7.5 ft', { value: 7.5, unit: 'ft' }],
    ['(430 + 42) × 1.25', '= 590 ft', { value: 590, unit: 'ft' }],
    ['12,5', '', { value: 12.5, unit: 'ft' }],
    ['1,234.5', '', { value: 1234.5, unit: 'ft' }],
    ['620 ft', '', { value: 620, unit: 'ft' }],
    ['189 m', '= 620.08 ft', { value: 189, unit: 'm' }],
  ]) {
    await field.fill(typed);
    if (shown) await page.getByText(shown, { exact: true }).waitFor();
    else assert.equal(await page.getByText(/^= /).count(), 0, typed);
    assert.deepEqual((await stored()).site.pump_setting, kept, typed);
    assert.equal(await field.inputValue(), typed, 'the text stays while it is typed');
  }
  await field.blur();
  assert.equal(await field.inputValue(), '620.08');
});

test('the unit beside a field switches that field alone, and the job only when it is typed in', async (t) => {
  const { page, app, stored } = await start(t, { at: 'water' });
  const before = await app.kept();
  const [depth, level] = [app.field('Pump setting'), app.field('Static level')];
  await page.getByRole('button', { name: 'Pump setting in ft; switch to m' }).click();
  assert.equal(await depth.inputValue(), '188.98');
  assert.equal(await level.inputValue(), '430');
  assert.match(await app.savingTitle(), /at 620 ft$/);
  assert.deepEqual(await app.kept(), before);
  await depth.fill('190');
  assert.deepEqual((await stored()).site.pump_setting, { value: 190, unit: 'm' });
  await page.getByRole('button', { name: 'Pump setting in m; switch to ft' }).click();
  assert.equal(await depth.inputValue(), '623.36');
});

test('an emptied field falls back to what is assumed, and says so', async (t) => {
  const { app } = await start(t, { at: 'cable' });
  const field = app.field('Highest ambient');
  assert.equal(await field.inputValue(), '113');
  await field.fill('');
  // 40 °C.
  assert.equal(await field.getAttribute('placeholder'), '104');
  await app.field(/Highest ambient.*assumed/).waitFor();
  assert.match(await app.savingTitle(), /480 V saves/);
});

test('a table sorts by any column, up, down and back', async (t) => {
  const { page, app } = await start(t, { at: 'cost' });
  const head = app.table('Every size and how deep it reaches').getByRole('columnheader', { name: 'To', exact: true });
  const depths = async () => {
    const rows = (await app.steps.allInnerTexts()).slice(1).map(plain);
    return rows.map((row) => Number(row.match(/([\d,]+) ft (?:= )?(?:ampacity|voltage)/)[1].replaceAll(',', '')));
  };
  const asItWas = await depths();
  const up = [...asItWas].sort((a, b) => a - b);
  assert.notDeepEqual(asItWas, up, 'the order shows nothing');
  for (const [said, order] of [['ascending', up], ['descending', [...up].reverse()], [null, asItWas]]) {
    await head.getByRole('button').click();
    assert.equal(await head.getAttribute('aria-sort'), said);
    assert.deepEqual(await depths(), order, said);
  }
  await head.getByRole('button').click();
  await page.getByRole('columnheader', { name: 'Way', exact: true }).getByRole('button').click();
  assert.equal(await head.getAttribute('aria-sort'), null, 'one column sorts at a time');
});

test('a table is copied as figures parted by tabs, their units in the heads', async (t) => {
  const { page, app } = await start(t, { at: 'cost', permissions: ['clipboard-read', 'clipboard-write'] });
  await page.getByRole('button', { name: 'Copy “Every size and how deep it reaches” for a spreadsheet' }).click();
  await app.messages.getByText('Copied.').waitFor();
  const copied = await page.evaluate(() => navigator.clipboard.readText());
  const lines = copied.split('\n').map((line) => line.split('\t'));
  assert.deepEqual(lines[0], [
    'Way', 'Size', 'Ground', 'From (ft)', 'To (ft)', 'Why', 'Cost at its top ($)', 'Cost at its end ($)',
  ]);
  assert.equal(lines.length, await app.steps.count());
  for (const line of lines.slice(1)) {
    assert.equal(line.length, 8);
    for (const place of [3, 4, 6, 7]) assert.match(line[place], /^\d+$/, line.join(' | '));
  }
  const twelve = lines.find((line) => plain(line[0]) === '480 V' && plain(line[1]) === '12 AWG');
  assert.deepEqual(twelve.slice(3, 5), ['435', '709']);
});

test('a browser that lets nothing be copied is not blamed on the user', async (t) => {
  const { page, app } = await start(t, { at: 'cost' });
  await page.evaluate(() => {
    navigator.clipboard.writeText = () => Promise.reject(new DOMException('no', 'NotAllowedError'));
  });
  await page.getByRole('button', { name: /^Copy “What each way costs”/ }).click();
  await app.messages.getByText('This browser does not let the page copy.').waitFor();
});

test('the switch tells its state in a word, and the answer follows', async (t) => {
  const { page, app, stored } = await start(t, { at: 'cable' });
  const marked = page.getByRole('switch', { name: /^Terminals marked 75 °C/ });
  assert.ok(await marked.isChecked());
  await marked.click();
  assert.equal(await marked.isChecked(), false);
  assert.equal((await stored()).cable.terminals_marked_75, false);
  await app.undo.click();
  assert.ok(await marked.isChecked());
});

test('a choice falls back to the assumed one', async (t) => {
  const { app, stored } = await start(t, { at: 'cable' });
  const metal = app.choice('Metal');
  await metal.selectOption({ label: 'Aluminum' });
  assert.equal((await stored()).cable.metal, 'aluminum');
  await app.page.getByText('Aluminum does not belong down a well. Use copper.').waitFor();
  await metal.selectOption({ label: 'Copper, assumed' });
  assert.equal((await stored()).cable.metal ?? null, null);
});

test('a question is left by Escape or Cancel with nothing done, and the focus goes back', async (t) => {
  const { page } = await start(t, { path: '?gallery' });
  const asks = page.getByRole('button', { name: 'Open a dialog' });
  const dialog = page.getByRole('dialog', { name: 'Delete for good' });
  for (const leave of [() => page.keyboard.press('Escape'), () => dialog.getByRole('button', { name: 'Cancel' }).click()]) {
    await asks.click();
    await dialog.waitFor();
    assert.ok(await dialog.getByRole('button', { name: 'Cancel' }).evaluate((at) => at === document.activeElement));
    await leave();
    await dialog.waitFor({ state: 'hidden' });
    assert.ok(await asks.evaluate((at) => at === document.activeElement), 'the focus goes back');
  }
});

test('a stored text that can’t be read is deleted only when the question is answered so', async (t) => {
  const { page, app } = await start(t);
  await page.evaluate(() => localStorage.setItem('wellwright.job.broken', '{'));
  await page.reload();
  const dialog = page.getByRole('dialog');
  const there = () => page.evaluate(() => localStorage.getItem('wellwright.job.broken'));
  await app.alerts.getByRole('button', { name: 'Delete' }).click();
  await dialog.getByRole('button', { name: 'Cancel' }).click();
  assert.equal(await there(), '{');
  await app.alerts.getByRole('button', { name: 'Delete' }).click();
  await dialog.getByRole('button', { name: 'Delete for good' }).click();
  await app.alerts.waitFor({ state: 'hidden' });
  assert.equal(await there(), null);
  assert.equal(await app.jobs.count(), 3);
});

test('a message passes by itself', async (t) => {
  const { page, app } = await start(t, { path: '?gallery' });
  await page.clock.install();
  await page.getByRole('button', { name: 'Show a message' }).click();
  const message = app.messages.getByText('Invented figures');
  await message.waitFor();
  await page.clock.runFor(11_000);
  await message.waitFor({ state: 'hidden' });
});

test('a job that was saved on Papers opens again as a new job with equal figures', async (t) => {
  const { page, app, stored } = await start(t, { at: 'water' });
  await app.field('Pump setting').fill('190 m');
  await app.turn('papers');
  const saving = page.waitForEvent('download');
  await page.getByText('Save as files').click();
  await page.getByRole('button', { name: 'Save the file' }).click();
  const file = await saving;
  assert.equal(file.suggestedFilename(), 'brindle-wash-7.json');
  await app.messages.getByText('Saved as “brindle-wash-7.json”.').waitFor();
  const text = await readFile(await file.path(), 'utf8');
  assert.deepEqual(JSON.parse(text), await stored());
  await page.getByRole('banner').getByRole('link', { name: 'Jobs' }).click();
  await app.fileChooser.setInputFiles({ name: 'well.json', mimeType: 'application/json', buffer: Buffer.from(text) });
  await page.getByText('The very same job is on this device already.').waitFor();
  await page.getByRole('radio', { name: 'Keep both' }).click({ force: true });
  await page.getByRole('button', { name: 'Add 1 job' }).click();
  await app.messages.getByText('Opened “Brindle Wash 7, copy”.').waitFor();
  assert.deepEqual(await app.jobs.allInnerTexts(), [`${job}, copy`, job, 'Low Saddle', 'Quill Flat']);
  const jobs = (await app.kept()).map(([, kept]) => JSON.parse(kept).job).filter(({ name }) => name.startsWith(job));
  assert.equal(jobs.length, 2);
  assert.deepEqual(jobs.map(({ name, ...figures }) => figures)[0], jobs.map(({ name, ...figures }) => figures)[1]);
  await app.jobs.first().click();
  assert.match(await app.savingTitle(), /at 623 ft$/);
});

test('files are taken by a drop, each with its message', async (t) => {
  const { page, app } = await start(t);
  const files = await page.evaluateHandle(() => {
    const carried = new DataTransfer();
    carried.items.add(new File(['{"schema":1,"name":"Dropped"}'], 'dropped.json', { type: 'application/json' }));
    return carried;
  });
  await app.fileChooser.dispatchEvent('drop', { dataTransfer: files });
  await app.messages.getByText('Opened “Dropped”.').waitFor();
  await app.job('Dropped').waitFor();
});

const wrong = [
  ['empty', '', /cut short or no job file/],
  ['cut short', '{"schema":1,"name":"cut', /cut short or no job file/],
  ['no job at all', '{"a":1}', /does not say that it is a job file/],
  ['of a newer page', '{"schema":2}', /a newer version of this page wrote it/],
  ['with an entry that no job has', '{"schema":1,"color":"red"}', /the entry color is not one that a job has/],
  ['with a unit that is none', '{"schema":1,"site":{"ambient":{"value":1,"unit":"K"}}}', /is not one that a job has/],
  ['larger than any', ' '.repeat(5_000_001), /larger than any job file/],
  ['not text', Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0xff, 0xfe, 0x00]), /no job file/],
];

test('a wrong file is refused with its reason, and nothing is changed', async (t) => {
  const { page, app } = await start(t);
  const everything = () => page.evaluate(() => Object.entries(localStorage).sort());
  const before = await everything();
  for (const [place, [name, content, reason]] of wrong.entries()) {
    const file = `wrong-${place}.json`;
    await app.fileChooser.setInputFiles({ name: file, mimeType: 'application/json', buffer: Buffer.from(content) });
    const message = app.messages.getByText(`“${file}” was not opened`);
    await message.waitFor();
    const said = await message.innerText();
    assert.match(said, reason, name);
    assert.match(said, /Nothing was changed\.$/, name);
    assert.deepEqual(await everything(), before, name);
    assert.equal(await app.jobs.count(), 3, name);
  }
});
