// From what is asked for to the head: demand, levels, pipes; and first of all whether the water can be given.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { useSite } from './support/fixture.mjs';
import { Wellwright } from './support/wellwright.mjs';

const { open } = useSite();
const plain = Wellwright.plain;

async function newJob(t, options) {
  const opened = await open(t, { viewport: { width: 1280, height: 900 }, ...options });
  const app = new Wellwright(opened.page);
  await app.newJobButton.waitFor();
  await app.newJobButton.click();
  await app.heading('water').waitFor();
  return { app, ...opened };
}

/** A well with water at 430 ft and a pump at 620 ft that is asked for 25 gpm. */
async function fillWell(app) {
  await app.field('Flow asked for').fill('25');
  await app.field('Pump setting').fill('620');
  await app.field('Static level').fill('430');
}

/** Figure and unit of an answer among the figures. */
async function workedOut(page, label) {
  const row = page.locator('.field.out').filter({ hasText: label }).first();
  return plain(`${await row.locator('output').innerText()} ${await row.locator('.u').innerText()}`);
}

test('the head is worked out from flow, well, pipe and pressure', async (t) => {
  const { app, page } = await newJob(t);
  await fillWell(app);
  await page.getByText('Not known yet whether pump and well give what is asked.').waitFor();
  await app.field('Drawdown').fill('41.667');
  await app.choice('Drop pipe, size').selectOption({ label: '1-1/2 in' });
  await app.field(/^Pressure held/).fill('60');
  await page.getByText(/^25\sgpm takes \d+\sft of head/).waitFor();
  assert.match(plain(await app.stations.getByRole('link', { name: /Water/ }).first().innerText()), /25 gpm, 6\d\d ft/);
  assert.equal(await workedOut(page, 'Pumping level'), '472 ft');
});

test('a flow may be told in liters a second, and shows in gallons a minute', async (t) => {
  const { app } = await newJob(t);
  await app.field('Flow asked for').fill('2 L/s');
  await app.field('Flow asked for').blur();
  assert.match(await app.field('Flow asked for').inputValue(), /^31\.70/);
  await app.field('Flow asked for').fill('5 m3/h');
  await app.field('Flow asked for').blur();
  assert.match(await app.field('Flow asked for').inputValue(), /^22\.01/);
});

// 27,154 gal in an acre-inch: 10 acres, 0.30 in a day, 22 hours make 61.7 gpm. 4 people at 75 and 100 cattle at 15 gal:
// 1,800 gal over 22 hours make 1.36 gpm.
test('land, or people and stock, tell the flow', async (t) => {
  const { app, page } = await newJob(t);
  await page.getByRole('radio', { name: 'Land' }).click({ force: true });
  await app.field('Irrigated area').fill('10');
  await app.field('Depth of water').fill('0.30');
  assert.equal(await workedOut(page, 'the day’s water over the pumping hours'), '61.7 gpm');
  await app.choice('That depth is').selectOption({ label: 'At the roots' });
  assert.equal(await workedOut(page, 'the day’s water over the pumping hours'), '77.1 gpm');
  await page.getByRole('radio', { name: 'People, stock' }).click({ force: true });
  await app.field(/^People/).fill('4');
  await app.field(/^Beef cattle/).fill('100');
  assert.equal(await workedOut(page, 'the day’s water over the pumping hours'), '1.36 gpm');
  await app.undo.click();
  assert.equal(await app.field(/^Beef cattle/).inputValue(), '');
});

test('a specific capacity tells the drawdown; a well that would run dry is said before any saving', async (t) => {
  const { app, page } = await newJob(t);
  await fillWell(app);
  await app.choice('How drawdown is known').selectOption({ label: 'By specific capacity' });
  await app.field('Specific capacity').fill('0.6');
  assert.equal(await workedOut(page, 'Drawdown worked out'), '41.7 ft');
  assert.equal(await workedOut(page, 'The well gives'), '114 gpm');
  await app.field('Specific capacity').fill('0.1');
  await page.getByText(/The water stands 60\sft below the pump|The well gives at most 19\sgpm of 25\sgpm/).first().waitFor();
  const texts = await page.getByRole('region', { name: 'Answer and picture' }).innerText();
  assert.ok(plain(texts).startsWith('Stop'), plain(texts).slice(0, 80));
});

test('a wider pipe takes less head, and fittings add to their sum', async (t) => {
  const { app, page } = await newJob(t);
  await fillWell(app);
  await app.field('Drawdown').fill('42');
  const head = async () => Number(/takes ([\d.]+) ft/.exec(plain(await page.getByText(/of head/).first().innerText()))[1]);
  const assumed = await head();
  await app.choice('Drop pipe, size').selectOption({ label: '1-1/4 in' });
  const narrow = await head();
  assert.ok(narrow > assumed + 20, `${narrow} and ${assumed}`);
  await app.choice('Drop pipe, made of').selectOption({ label: 'PVC, ratio SDR 26' });
  await app.choice('Drop pipe, size').selectOption({ label: '3 in' });
  assert.ok((await head()) < assumed);
  await page.getByText('Pipe details').click();
  for (let added = 0; added < 2; added += 1) {
    await app.choice('Fittings of the drop pipe').selectOption({ label: 'Swing check valve, adds K 2' });
  }
  assert.equal(await app.field('Drop pipe, sum of K').inputValue(), '4');
  // A size that the new series lacks goes back to the assumed one.
  await app.choice('Drop pipe, size').selectOption({ label: '1 in' });
  await app.choice('Drop pipe, made of').selectOption({ label: 'PVC, schedule 80' });
  assert.notEqual(await app.choice('Drop pipe, size').inputValue(), '');
});

test('a figure that is folded away and wrong unfolds itself', async (t) => {
  const { app, page } = await newJob(t);
  await page.getByText('Pressure tank').click();
  await app.field('Tank volume').fill('-3');
  await page.reload();
  await app.field('Tank volume').waitFor();
  assert.match(plain(await app.says('Tank volume')), /outside 0\.1 gal to 20,000 gal/);
});

test('on the surface there is open water, a suction and no well', async (t) => {
  const { app, page } = await newJob(t);
  await page.getByRole('radio', { name: 'On the surface' }).click({ force: true });
  await app.field('Suction lift').fill('10');
  assert.equal(await app.field('Pump setting').count(), 0);
  await app.field('Flow asked for').fill('800');
  await app.field('Suction pipe, length').fill('30');
  // Without the pump's own figure nobody knows whether the suction serves.
  await page.getByRole('region', { name: 'Answer and picture' }).getByRole('link', { name: 'NPSH required' }).click();
  await app.heading('pump').waitFor();
  assert.match(await workedOut(page, 'NPSH available'), /^\d\d\.\d+ ft$/);
  await app.field('NPSH required').fill('40');
  await page.getByText(/it would cavitate/).first().waitFor();
  await app.field('NPSH required').fill('8');
  await page.getByText(/^800\sgpm takes/).waitFor();
  await app.turn('water');
  await page.getByText('Pipe details').click();
  const valve = app.choice('Fittings of the suction pipe').locator('option').filter({ hasText: 'Foot valve, hinged' });
  await app.choice('Fittings of the suction pipe').selectOption(await valve.getAttribute('value'));
  assert.ok(Number(await app.field('Suction pipe, sum of K').inputValue()) > 0.5);
});
