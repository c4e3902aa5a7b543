// The cost page: what the curve shows, how sure the saving is, what moves it most, a year and its bill.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { useSite } from './support/fixture.mjs';
import { Wellwright } from './support/wellwright.mjs';

const { open } = useSite();
const plain = Wellwright.plain;
const job = 'Brindle Wash 7';

async function openCost(t, options = {}) {
  const opened = await open(t, { viewport: { width: 1280, height: 900 }, reducedMotion: 'reduce', ...options });
  const app = new Wellwright(opened.page);
  await app.openJob(job);
  await app.turn('cost');
  return { app, ...opened };
}

const count = async (page, name) => page.getByRole('radio', { name, exact: true }).click({ force: true });

test('a saving counts the cable, then what is installed, then the years', async (t) => {
  const { app, page } = await openCost(t);
  const saved = async () => plain(await app.answer(/saves|same/).first().locator('..').innerText());
  await count(page, 'Cable');
  assert.match(await saved(), /\$1,446/);
  await count(page, 'Installed');
  assert.match(await saved(), /\$546/);
  await count(page, 'Over the years');
  assert.match(await saved(), /480 V: \$546 less at first, \$\d+ more for energy/);
});

test('how sure the saving is stands in words, the same each time', async (t) => {
  const { page } = await openCost(t);
  const outlook = page.getByRole('region', { name: 'How sure the saving is' });
  await outlook.waitFor();
  const said = plain(await outlook.innerText());
  assert.match(said, /480 V saves between \$\d+ and \$\d+ installed, in eight of ten cases/);
  assert.match(said, /The 480 V lead saves copper, not losses: it gives off \d+ W more heat\./);
  await page.reload();
  await outlook.waitFor();
  assert.equal(plain(await outlook.innerText()), said);
  // A price that is counted outside its own range is named.
  await page.getByText('How far prices and hours may move').click();
  const app = new Wellwright(page);
  await app.field('Energy price, low').fill('0.2');
  await outlook.getByText('Energy price: what is counted must lie between low and high.').waitFor();
});

test('the assumptions are ranked, and one that is entered leaves the list', async (t) => {
  const { app, page } = await openCost(t);
  const ranks = page.getByRole('region', { name: 'What moves the saving most' });
  const items = ranks.getByRole('listitem');
  await items.first().waitFor({ timeout: 20000 });
  const names = async () => (await items.allInnerTexts()).map(plain);
  const before = await names();
  assert.ok(before.length >= 3 && before.some((text) => text.startsWith('Equipment price 85 % to 120 %')), before.join('\n'));
  const spread = (text) => {
    const [low, high] = text.match(/-?\$[\d,]+/g).slice(-2).map((cash) => Number(cash.replaceAll(/[$,]/g, '')));
    return Math.abs(high - low);
  };
  const widths = before.map(spread);
  assert.ok(widths.every((width, place) => place === 0 || widths[place - 1] >= width), before.join('\n'));
  const gone = before.find((text) => text.startsWith('Allowed drop'));
  if (gone !== undefined) {
    await app.turn('cable');
    await app.field('Allowed drop').fill('5');
    await app.turn('cost');
    await items.first().waitFor({ timeout: 20000 });
    assert.ok(!(await names()).some((text) => text.startsWith('Allowed drop')));
  }
});

test('the price of metal is slid, and one undo takes it back', async (t) => {
  const { app, page } = await openCost(t);
  const slider = page.getByRole('slider', { name: 'Slide the metal price' });
  const net = async () => plain(await app.answer(/saves|same/).first().locator('..').innerText());
  const before = await net();
  await slider.focus();
  for (let press = 0; press < 12; press += 1) await page.keyboard.press('ArrowRight');
  await page.waitForFunction((text) => !document.body.innerText.includes(text), '$546');
  assert.notEqual(await net(), before);
  for (let press = 0; press < 12 && (await net()) !== before; press += 1) await app.undo.click();
  assert.equal(await net(), before);
});

test('further ways stand along the curve, each with its letter, its cost and how it compares', async (t) => {
  const { app, page } = await openCost(t);
  await page.getByText('More ways along the curve').click();
  const box = (name) => page.getByRole('checkbox', { name, exact: true });
  await box('Large drive, economy').check();
  await box('Phase-converting drive, passive front end').check();
  const said = async (name) => plain(await page.locator('.tick').filter({ has: box(name) }).locator('.note').innerText());
  // Letters go down the list, whichever was ticked first.
  assert.match(await said('Phase-converting drive, passive front end'), /^A: \$[\d,]+ at 620 ft\. Against 240 V: .+\. Against 480 V: .+\.$/);
  assert.match(await said('Large drive, economy'), /^B: \$[\d,]+ at 620 ft\./);
  await page.getByText('2 shown').waitFor();
  const curve = page.getByRole('group', { name: /^Cost against depth/ });
  await curve.focus();
  await page.keyboard.press('ArrowDown');
  const readout = page.locator('.readout');
  await readout.getByText(/^A: .*AWG/).waitFor();
  await readout.getByText(/^B: .*AWG/).waitFor();
  // Counted otherwise, it says so; the saving of the pair stays.
  const before = await said('Large drive, economy');
  await count(page, 'Cable');
  assert.notEqual(await said('Large drive, economy'), before);
  await count(page, 'Installed');
  await box('Phase-converting drive, passive front end').uncheck();
  assert.match(await said('Large drive, economy'), /^A: /);
  assert.match(await app.savingTitle(), /480 V saves/);
});

test('a band and other equipment change the picture and the saving', async (t) => {
  const { app, page, errors } = await openCost(t);
  const drawn = () => page.locator('.plate canvas').evaluate((canvas) => canvas.toDataURL());
  const before = await drawn();
  await count(page, 'Metal price');
  await page.waitForFunction(
    (text) => document.querySelector('.plate canvas').toDataURL() !== text, before);
  await count(page, 'Allowed drop 3 to 5 %');
  await count(page, 'None');
  await page.waitForFunction(
    (text) => document.querySelector('.plate canvas').toDataURL() === text, before);
  const equipment = app.choice('Equipment at 240 V');
  const options = await equipment.getByRole('option').allInnerTexts();
  assert.ok(options.length > 2 && /assumed/.test(options[0]), options.join());
  await equipment.selectOption({ label: 'Phase-converting drive, passive front end' });
  await page.waitForFunction(() => document.body.innerText.includes('Beyond the lead'));
  await app.undo.click();
  assert.equal(await equipment.inputValue(), '');
  assert.deepEqual(errors ?? [], []);
});

test('a year of duty is typed: where the power goes, and its bill', async (t) => {
  const { app, page } = await openCost(t);
  const duty = page.getByRole('textbox', { name: /^Duty of a year/ });
  await duty.fill('25, 900\n15, 1500\n');
  await app.table('A year, where the power goes').getByRole('row').nth(2).waitFor();
  const summary = app.table('The year in all');
  assert.match(plain(await summary.innerText()), /Water [\d,]+ gal .*Of the Nebraska criterion, 0\.885 \d+ %/);
  await page.getByText('Demand charge, season, CO₂').click();
  await app.field(/^Demand charge(?! in)/).first().fill('9');
  await app.field(/^Months of pumping/).fill('6');
  await summary.getByText('Bill, demand').waitFor();
  await duty.fill('25, 900\nfive, 3\n');
  await page.getByText(/Line 2, cell 1 can’t be used/).waitFor();
  await duty.fill('2500, 900\n');
  await page.getByText(/can’t give 2,500/).first().waitFor();
  await page.reload();
  assert.equal(await page.getByRole('textbox', { name: /^Duty of a year/ }).inputValue(), '2500, 900\n');
});
