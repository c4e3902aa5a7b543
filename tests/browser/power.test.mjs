// The ways to run the motor: compared, opened, chosen; the user's own equipment; the pulses at the motor.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { useSite } from './support/fixture.mjs';
import { Wellwright } from './support/wellwright.mjs';

const { open } = useSite();
const plain = Wellwright.plain;
const job = 'Brindle Wash 7';

async function openPower(t, options = {}) {
  const opened = await open(t, { viewport: { width: 1280, height: 900 }, reducedMotion: 'reduce', ...options });
  const app = new Wellwright(opened.page);
  await app.openJob(job);
  await app.turn('power');
  const ways = opened.page.getByRole('region', { name: 'Ways to run this motor' });
  const cards = ways.getByRole('listitem').filter({ has: opened.page.locator('summary') });
  return { app, ways, cards, ...opened };
}

const way = (cards, name) => cards.filter({ hasText: name }).first();

test('every way stands with its verdict and its reason, those that serve first', async (t) => {
  const { cards } = await openPower(t);
  await cards.first().waitFor();
  assert.equal(await cards.count(), 14);
  const said = (await cards.allInnerTexts()).map(plain);
  const serve = said.map((text) => /(Serves|With care)/.test(text));
  assert.equal(serve.lastIndexOf(true) + 1, serve.filter(Boolean).length, said.join('\n'));
  assert.ok(serve.includes(true) && serve.includes(false));
  for (const text of said) assert.match(text, /(Serves|With care|No) \S.*\./, text);
  assert.match(said.find((text) => text.startsWith('Phase-converting drive, passive')), /The motor gets only 8\d\.\d % of its volts/);
  assert.match(said.filter((text) => text.includes('in use, assumed')).join(), /\$\d/);
});

test('they are sorted by what the customer cares for', async (t) => {
  const { cards, ways } = await openPower(t);
  await cards.first().waitFor();
  const costs = async (pattern) => {
    const all = (await cards.allInnerTexts()).map(plain).filter((text) => /(Serves|With care)/.test(text));
    return all.map((text) => Number(text.match(pattern)?.[1].replaceAll(',', '') ?? 'Infinity'));
  };
  const rising = (figures) => figures.every((figure, place) => place === 0 || figures[place - 1] <= figure);
  assert.ok(rising(await costs(/First cost \$([\d,]+)/)));
  await ways.getByRole('radio', { name: 'Metal' }).click({ force: true });
  assert.ok(rising(await costs(/Metal ([\d,]+)\s*lb/)), String(await costs(/Metal ([\d,]+)\s*lb/)));
  await ways.getByRole('radio', { name: 'Harmonics' }).click({ force: true });
  assert.ok(rising(await costs(/Harmonics ([\d,]+)\s*%/)));
});

test('a way opens to its figures and their workings, is chosen, and given up', async (t) => {
  const { app, cards, page } = await openPower(t);
  const card = way(cards, 'Phase-converting drive, active front end');
  await card.locator('summary').click();
  await card.getByText('Transformer', { exact: true }).waitFor();
  await card.getByRole('button', { name: 'Calculation: Volts at the motor' }).click();
  await page.getByRole('region', { name: /Volts at the motor/ }).waitFor();
  await page.keyboard.press('Escape');
  await card.getByRole('button', { name: 'Use this way' }).click();
  await card.getByText('in use', { exact: true }).waitFor();
  await app.undo.click();
  assert.match(plain(await way(cards, 'in use, assumed').innerText()), /doubling/i);
  await app.redo.click();
  await page.reload();
  await card.getByText('in use', { exact: true }).waitFor();
});

test('what the supply and the place change is seen at once', async (t) => {
  const { app, cards } = await openPower(t);
  const doubling = way(cards, 'Voltage-doubling drive');
  await doubling.waitFor();
  await app.choice('Place').selectOption({ label: 'Corrosive air' });
  await doubling.getByText('Type 3R does not keep out corrosion. Take type 3RX.').waitFor();
  await app.choice('Enclosure').selectOption({ label: 'Type 4X' });
  await doubling.getByText('does not keep out').waitFor({ state: 'detached' });
  await app.field('Supply volts').fill('480');
  await doubling.getByText('It is not made for a supply of 480 V.').waitFor();
  await app.field('Supply volts').fill('900');
  assert.match(await app.says('Supply volts'), /900\sV is outside 200\sV to 600\sV/);
});

test('without the distance to the pole the ways wait for it', async (t) => {
  const { app, cards } = await openPower(t);
  await app.field('Transformer to drive').fill('');
  await way(cards, 'Voltage-doubling drive').getByText('Waits for: Transformer to drive.').waitFor();
});

test('own equipment is added, keeps what was typed wrong, and joins the ways', async (t) => {
  const { app, cards, page } = await openPower(t);
  await page.getByRole('heading', { name: 'Own equipment' }).click();
  await app.choice('Add equipment').selectOption({ label: 'Voltage-doubling drive' });
  await way(cards, 'Own equipment 1').waitFor();
  await page.getByText('Own equipment 1').first().click();
  const rated = app.field('Rated ambient');
  assert.equal(await rated.getAttribute('placeholder'), '40');
  await rated.fill('fifty');
  await rated.press('Tab');
  await page.getByText('Line 2, column rated_c: “fifty” is not a number').waitFor();
  assert.match(await app.says('Rated ambient'), /“fifty” is not a number/);
  await page.reload();
  await page.getByText('Own equipment 1').first().click();
  assert.equal(await rated.inputValue(), 'fifty');
  await rated.fill('50');
  await rated.press('Tab');
  await way(cards, 'Own equipment 1').waitFor();
  assert.equal(await page.getByText('is not a number').count(), 0);
});

test('a table of equipment is taken over or refused whole', async (t) => {
  const { app, cards, page } = await openPower(t);
  await page.getByRole('heading', { name: 'Own equipment' }).click();
  const file = (text) => ({ name: 'own.csv', mimeType: 'text/csv', buffer: Buffer.from(text) });
  const chooser = page.getByLabel('Import CSV');
  await chooser.setInputFiles(file('\uFEFFname;kind;hp;output_a_480;rated_c\r\nBlue 10;doubling;10;14,5;50\r\n'));
  await app.messages.getByText('Equipment taken over: 1').waitFor();
  await way(cards, 'Blue 10').waitFor();
  for (const [text, why] of [
    ['name,kind\nx,=1+1\n', 'Line 2, column kind: “=1+1” is no kind of equipment'],
    ['name,kind,thd_pct\nx,doubling,900\n', 'Line 2, column thd_pct: 900 is outside 0 to 300'],
    [`name,kind\n${'x,doubling\n'.repeat(80_000)}`, 'too many rows'],
    ['name,kind\n"x,doubling\n', 'a quote is not closed'],
  ]) {
    await chooser.setInputFiles(file(text));
    await app.messages.getByText(why).waitFor();
    assert.equal(await way(cards, 'Blue 10').count(), 1);
  }
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Export CSV' }).click(),
  ]);
  assert.match(download.suggestedFilename(), /\.csv$/);
});

test('on a phone the ways are cards that fit', async (t) => {
  const { cards, page } = await openPower(t, { viewport: { width: 360, height: 740 } });
  await cards.first().waitFor();
  const wide = await page.evaluate(() => document.documentElement.scrollWidth > innerWidth);
  assert.equal(wide, false);
  await cards.first().locator('summary').click();
  await cards.first().getByRole('button', { name: /Use this way|Back to the assumed way/ }).waitFor();
});

test('the peak at the motor is drawn, and its cure is counted in', async (t) => {
  const { app, cards, page } = await openPower(t);
  const passive = way(cards, 'Three-phase generator, plain drive');
  await passive.locator('summary').click();
  await passive.getByRole('button', { name: 'Use this way' }).click();
  await app.turn('cable');
  await page.getByRole('img', { name: /peak/i }).waitFor();
  await page.getByText(/The motor would see [\d,]+\sV, it stands 1,000\sV: order it with the sine filter/).first().waitFor();
  await app.choice('Between drive and lead').selectOption({ label: 'nothing' });
  await page.getByText(/The motor would see [\d,]+\sV and stands 1,000\sV\. Fit a sine filter/).first().waitFor();
});
