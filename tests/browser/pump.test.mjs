// The pump: its curve as text, what it gives, the motor that follows, and depth in its other sense.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { useSite } from './support/fixture.mjs';
import { Wellwright } from './support/wellwright.mjs';

const { open } = useSite();
const plain = Wellwright.plain;
const job = 'Brindle Wash 7';

async function openPump(t, name = job, options = {}) {
  const opened = await open(t, { viewport: { width: 1280, height: 900 }, ...options });
  const app = new Wellwright(opened.page);
  await app.openJob(name);
  await app.turn('pump');
  return { app, points: opened.page.getByRole('textbox', { name: /^Points/ }), ...opened };
}

test('the first thing said is that pump and well give what is asked', async (t) => {
  const { page } = await openPump(t);
  await page.getByText('Pump and well give 25 gpm at 60 psi.').waitFor();
  const text = plain(await page.getByRole('region', { name: 'Answer and picture' }).innerText());
  assert.ok(text.startsWith('Within limit Pump and well give 25 gpm at 60 psi.'), text.slice(0, 90));
});

test('more than the pump gives is said before the saving, on every page, with what to do', async (t) => {
  const { app, page } = await openPump(t);
  await app.turn('water');
  await app.field('Flow asked for').fill('34');
  const said = page.getByText(/The pump gives at most 2\d\.\d\sgpm of 34\sgpm asked for\. A larger pump/).first();
  await said.waitFor();
  for (const slug of ['pump', 'cost']) {
    await app.turn(slug);
    await said.waitFor();
    const text = plain(await page.getByRole('region', { name: 'Answer and picture' }).innerText());
    assert.ok(text.startsWith('Stop The pump gives at most'), text.slice(0, 90));
  }
});

test('a curve that can not be read says where, stops the pump and loses nothing', async (t) => {
  const { app, page, points } = await openPump(t);
  const whole = await points.inputValue();
  await points.fill('gpm\tft\n0\t820\n10\tabc\n20\t734');
  await page.getByText('Line 3, column 2: “abc” is not a number.').waitFor();
  await page.getByText('The pump’s curve can’t be used as it is').first().waitFor();
  assert.equal(await page.getByText('Power at the shaft').count(), 0);
  await page.reload();
  assert.equal(await points.inputValue(), 'gpm\tft\n0\t820\n10\tabc\n20\t734');
  await points.fill('0 820\n20 734');
  await page.getByText('2 points; at least 3 are needed.').waitFor();
  await points.fill('0 100\n10 200\n20 300');
  await page.getByText('The head never falls').waitFor();
  await points.fill(whole);
  await page.getByText('9 points: flow in gpm, head in ft, efficiency in %').waitFor();
  assert.equal(await app.page.getByText('Pump and well give 25 gpm at 60 psi.').count(), 1);
});

test('points without units are taken as assumed, and may be told to be in liters and meters', async (t) => {
  const { page, points } = await openPump(t);
  await points.fill('0; 250\n1.5; 210\n3; 110');
  await page.getByText('3 points: flow in gpm (assumed), head in ft (assumed)').waitFor();
  await page.getByRole('button', { name: 'My points are in L/s and m', exact: true }).click();
  await page.getByText('3 points: flow in L/s, head in m').waitFor();
  assert.equal(await points.inputValue(), 'L/s; m\n0; 250\n1.5; 210\n3; 110');
});

test('without a curve the power is estimated, and an invented curve may be tried', async (t) => {
  const { app, page, points } = await openPump(t);
  await page.getByRole('button', { name: 'Remove the curve' }).click();
  await app.field('Pump efficiency').fill('0.5');
  await page.getByText('Power at the shaft').first().waitFor();
  await app.choice('Try an invented curve').selectOption({ label: 'House well, 25 gpm' });
  await page.getByText('9 points: flow in gpm, head in ft, efficiency in %').waitFor();
  assert.equal(await app.field('Pump efficiency').count(), 0);
  await app.undo.click();
  assert.equal(await points.inputValue(), '');
  assert.equal(await app.field('Pump efficiency').inputValue(), '0.5');
});

test('the motor follows from the power at the shaft until it is entered, and drives cable and cost', async (t) => {
  const { app, page } = await openPump(t);
  await app.field('Motor power').fill('');
  assert.equal(await app.field('Motor power').getAttribute('placeholder'), '7.5');
  assert.match(await app.savingTitle(), /^480 V saves, at 620 ft$/);
  // With a curve the motor bears all of it; an estimate follows the flow.
  await page.getByRole('button', { name: 'Remove the curve' }).click();
  await app.turn('water');
  await app.field('Flow asked for').fill('10');
  await app.turn('pump');
  assert.notEqual(await app.field('Motor power').getAttribute('placeholder'), '7.5');
  await page.getByText('Motor load').waitFor();
});

test('depth means a longer lead, or deeper water with the motor that it takes', async (t) => {
  const { app, page } = await openPump(t);
  await app.turn('cost');
  const motors = async () => {
    const rows = await app.steps.allInnerTexts();
    return new Set(rows.slice(1).map((row) => plain(row).match(/[\d.]+ hp/)?.[0]));
  };
  // One motor for all depths has no column.
  assert.deepEqual([...(await motors())], [undefined]);
  await page.getByRole('radio', { name: 'Deeper water' }).click({ force: true });
  const deeper = await motors();
  assert.ok(deeper.has('7.5 hp') && deeper.has('10 hp') && deeper.has('15 hp'), [...deeper].join());
  assert.match(await app.savingTitle(), /^480 V saves, at 620 ft$/);
});
