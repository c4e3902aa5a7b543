// The price book: chosen, changed, kept on the device, brought in and given out; money in its currency.
import assert from 'node:assert/strict';
import { describe, test } from 'node:test';
import { PriceBook } from './support/book.mjs';
import { cutOff, tooSmall } from './support/fit.mjs';
import { useSite } from './support/fixture.mjs';
import { Wellwright } from './support/wellwright.mjs';

const { open } = useSite();
const plain = Wellwright.plain;
const job = 'Brindle Wash 7';
const doubling = 'Voltage-doubling drive, fixed part';
const head = 'item,kind,metal,size,unit,price\n';

/** A small book in another currency. */
const pesos = `${head}name,Lista de octubre,,,,
source,Un proveedor inventado,,,,
currency,MXN,,,,
date,2026-10-05,,,,
cable_fixed,,,,$/m,12.5
metal,,copper,,$/kg,380
metal,,aluminum,,$/kg,120
equipment,doubling,,,$,28000
equipment,doubling,,,$/hp,2400
equipment,converting_active,,,$,12000
equipment,converting_active,,,$/hp,2500
`;

const widths = [['a phone', { width: 360, height: 740 }], ['a desk', { width: 1280, height: 900 }]];

async function openCost(t, options = {}) {
  const opened = await open(t, { viewport: widths[1][1], reducedMotion: 'reduce', ...options });
  const app = new Wellwright(opened.page);
  await app.openJob(job);
  await app.turn('cost');
  return { app, book: new PriceBook(opened.page), ...opened };
}

/** Lets the book tell the metal's price, which the demo job has a figure of its own for. */
async function clearOwnPrices(app) {
  await app.field('Metal price, as cable').fill('');
  await app.field('Cable, fixed part').fill('');
}

for (const [on, viewport] of widths) {
  describe(`on ${on}`, () => {
    test('the built-in book says that it is invented; its first change goes into a copy that undo takes back', async (t) => {
      const { app, book, page } = await openCost(t, { viewport });
      assert.equal(await book.chosen(), 'Invented prices');
      await book.prices.getByText('Prices invented.').waitFor();
      await book.unfold('Drives and converters');
      assert.equal(await book.price(doubling).inputValue(), '1600');
      await book.type(doubling, '1,750.50');
      await app.messages.getByText('The invented prices stay as they are: the change went into a copy, “My prices”.').waitFor();
      assert.equal(await book.chosen(), 'My prices, in this job only');
      assert.equal(await book.price(doubling).inputValue(), '1750.5');
      // The day is the one that it is, and nobody stands behind the prices yet.
      const today = await page.evaluate(() => {
        const now = new Date();
        return [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((part) => String(part).padStart(2, '0')).join('-');
      });
      await book.unfold('About the book');
      assert.equal(await book.prices.getByLabel('Day of the prices').inputValue(), today);
      await book.prices.getByText('Prices invented.').waitFor();
      await book.type('Voltage-doubling drive, for its size', '150');
      await app.undo.click();
      assert.equal(await book.price('Voltage-doubling drive, for its size').inputValue(), '140');
      assert.equal(await book.price(doubling).inputValue(), '1750.5');
      await app.undo.click();
      assert.equal(await book.chosen(), 'Invented prices');
      assert.equal(await book.price(doubling).inputValue(), '1600');
      await app.redo.click();
      assert.equal(await book.price(doubling).inputValue(), '1750.5');
      await page.reload();
      await book.unfold('Drives and converters');
      assert.equal(await book.price(doubling).inputValue(), '1750.5');
    });

    test('everything fits, and a finger hits it', async (t) => {
      const { book, page } = await openCost(t, { viewport });
      await book.importText(pesos.replace('Lista de octubre', 'L'.repeat(110)));
      await book.keepButton.waitFor();
      await book.unfold('Cable', 'Drives and converters', 'About the book');
      await book.prices.getByRole('combobox', { name: 'What it is for' }).selectOption('cable');
      await book.prices.getByRole('combobox', { name: 'Metal of the cable' }).waitFor();
      // The message lies over the foot of a phone until it passes.
      await page.locator('.toast').waitFor({ state: 'detached' });
      assert.deepEqual(await cutOff(page), []);
      assert.deepEqual(await tooSmall(page), []);
    });
  });
}

test('what is wrong stands beside its price, is named with its line, and is kept as typed', async (t) => {
  const { book, page } = await openCost(t);
  await book.unfold('Drives and converters');
  await book.type(doubling, 'a lot');
  await book.prices.getByText(/Line \d+, column price: “a lot” is not a number/).waitFor();
  const field = book.price(doubling);
  assert.equal(await field.getAttribute('aria-invalid'), 'true');
  const says = await page.locator(`[id="${await field.getAttribute('aria-describedby')}"]`).innerText();
  assert.equal(plain(says), '“a lot” is not a number');
  await page.reload();
  // What is wrong is unfolded.
  assert.equal(await book.price(doubling).inputValue(), 'a lot');
  await book.type(doubling, '1e9');
  await book.prices.getByText(/is outside 0 to 10,000,000/).first().waitFor();
  await book.type(doubling, '1700');
  await book.keepButton.waitFor();
  assert.equal(await book.prices.getByText('can’t be read').count(), 0);
});

test('a row is added once, its unit is changed, and it is taken out', async (t) => {
  const { app, book } = await openCost(t);
  await book.unfold('Drives and converters');
  const pick = (label) => book.prices.getByRole('combobox', { name: label, exact: true });
  await pick('What it is for').selectOption('equipment');
  await pick('Which').selectOption('doubling');
  await book.prices.getByRole('textbox', { name: /^Size/ }).fill('10 hp');
  await book.prices.getByRole('textbox', { name: 'Price', exact: true }).fill('2950');
  await book.button('Add it').click();
  await app.messages.getByText('Added: Voltage-doubling drive, 10 hp.').waitFor();
  assert.equal(await book.price('Voltage-doubling drive, 10 hp').inputValue(), '2950');
  await book.prices.getByRole('textbox', { name: 'Price', exact: true }).fill('3000');
  await book.button('Add it').click();
  await book.prices.getByText(/^line \d+ says this already$/).waitFor();
  const size = 'Voltage-doubling drive, for its size';
  await pick(`Unit of: ${size}`).selectOption('$/kW');
  assert.match(await book.ofJob(), /equipment,doubling,,,\$\/kW,140\n/);
  await book.button(`Take out: ${size}`).focus();
  await book.button(`Take out: ${size}`).press('Enter');
  await app.messages.getByText(`Taken out: ${size}.`).waitFor();
  assert.equal(await book.price(size).count(), 0);
  assert.doesNotMatch(await book.ofJob(), /\$\/kW/);
  await app.undo.click();
  assert.equal(await book.price(size).inputValue(), '140');
});

test('a book is kept, used by another job, and newer prices are offered, never taken', async (t) => {
  const { app, book, page } = await openCost(t);
  await clearOwnPrices(app);
  await book.unfold('Cable');
  await book.type('By the metal in it, Copper', '11');
  await book.keepButton.click();
  await app.messages.getByText('“My prices” is kept on this device.').waitFor();
  await book.prices.getByText('Kept on this device for other jobs.').waitFor();
  assert.equal(await book.chosen(), 'My prices');
  assert.equal(await app.field('Metal price, as cable').getAttribute('placeholder'), '11');
  const before = await app.savingTitle();
  const first = page.url();

  await page.goto(`${new URL(first).origin}/#/`);
  await app.openJob('Low Saddle');
  await app.turn('cost');
  await book.choice.selectOption({ label: 'My prices' });
  await book.unfold('Cable', 'About the book');
  await book.type('By the metal in it, Copper', '14');
  await book.prices.getByText('The book of this name on this device has other prices.').waitFor();
  await book.prices.getByLabel('Day of the prices').fill('2031-01-15');
  await book.button('Keep this job’s prices instead').click();
  await book.prices.getByText('Kept on this device for other jobs.').waitFor();
  assert.equal((await book.kept()).length, 1);

  await page.goto(first);
  await book.prices.getByText('The book of this name on this device has newer prices, of January 15, 2031.').waitFor();
  assert.equal(await app.savingTitle(), before);
  assert.equal(await app.field('Metal price, as cable').getAttribute('placeholder'), '11');
  await book.button('Use the newer prices').click();
  await book.prices.getByText('Kept on this device for other jobs.').waitFor();
  assert.equal(await app.field('Metal price, as cable').getAttribute('placeholder'), '14');
  await app.undo.click();
  assert.equal(await app.field('Metal price, as cable').getAttribute('placeholder'), '11');
});

test('a book is removed from the device and brought back; the job holds its prices', async (t) => {
  const { app, book } = await openCost(t);
  await book.importText(pesos);
  await book.keepButton.click();
  await book.button('Remove from this device').click();
  await app.messages.getByText('is no longer kept').waitFor();
  assert.deepEqual(await book.kept(), []);
  assert.equal(await book.chosen(), 'Lista de octubre, in this job only');
  assert.equal(await book.ofJob(), pesos);
  await app.messages.getByRole('button', { name: 'Undo' }).click();
  assert.deepEqual(await book.kept(), [pesos]);
  assert.equal(await book.chosen(), 'Lista de octubre');
});

test('a new book is a copy under a name of its own', async (t) => {
  const { app, book } = await openCost(t);
  await book.unfoldExchange();
  const name = book.prices.getByRole('textbox', { name: /^New book/ });
  assert.equal(await name.getAttribute('placeholder'), 'My prices');
  await name.fill('=SUM(A1)');
  await name.press('Enter');
  await app.messages.getByText('This job goes by “=SUM(A1)” now.').waitFor();
  assert.equal(await book.chosen(), '=SUM(A1), in this job only');
  await book.keepButton.click();
  await book.button('Make the copy').click();
  assert.equal(await book.chosen(), 'My prices, in this job only');
  await book.choice.selectOption({ label: 'Invented prices' });
  assert.equal(await book.ofJob(), '');
  await app.undo.click();
  assert.equal(await book.chosen(), 'My prices, in this job only');
});

test('the currency of the book is that of all money of the job, and of this job alone', async (t) => {
  const { app, book, page } = await openCost(t);
  await book.importText(pesos);
  await app.messages.getByText('7 prices of “Lista de octubre” taken over into this job.').waitFor();
  await book.prices.getByText('MXN, prices of October 5, 2026').waitFor();
  await book.prices.getByText('Quoted by Un proveedor inventado').waitFor();
  const answer = page.getByRole('region', { name: 'Answer and picture' });
  for (const slug of ['water', 'power', 'cable', 'cost']) {
    await app.turn(slug);
    await answer.getByText(/MXN\s[\d,]+/).first().waitFor();
    const said = await page.getByRole('main').innerText();
    assert.doesNotMatch(said, /\$/, slug);
  }
  await app.field('Metal price, as cable').fill('MXN 400/kg');
  assert.equal(await app.says('Metal price, as cable').then(plain).then((said) => /not|fit/.test(said)), false);
  await app.turn('papers');
  await page.getByText('Prices: Lista de octubre; MXN, prices of October 5, 2026. Quoted by Un proveedor inventado.').waitFor();
  await page.getByRole('banner').getByRole('link', { name: 'Jobs' }).click();
  assert.match(plain(await app.row(job).innerText()), /MXN [\d,]+/);
  assert.match(plain(await app.row('Low Saddle').innerText()), /\$[\d,]+/);
  await app.openJob('Low Saddle');
  assert.doesNotMatch(await page.getByRole('main').innerText(), /MXN/);
  await app.turn('papers');
  await page.getByText('Prices: Invented prices; USD, prices of November 1, 2026. Prices invented.').waitFor();
});

test('a table is taken over or refused whole', async (t) => {
  const { app, book } = await openCost(t);
  // Semicolons, decimal commas and a mark of the byte order, as a spreadsheet in Spanish writes.
  const semicolons = `\uFEFF${pesos.replaceAll('12.5', '12#5').replaceAll(',', ';').replaceAll('#', ',').replaceAll('\n', '\r\n')}`;
  await book.importText(semicolons);
  await app.messages.getByText('7 prices of').waitFor();
  await book.unfold('Cable');
  assert.equal(await book.price('By the metal in it, Cable, apart from its metal').inputValue(), '12,5');
  await book.takeOver(pesos);
  for (const [text, why] of [
    [`${pesos}equipment,warp,,,$,5\n`, 'Line 13, column kind: “warp” is not known here'],
    [`${pesos}line,,,,$/lb,5\n`, 'Line 13, column unit: $/lb does not fit here; it may be $, $/ft, $/m, $/kft, $/km'],
    [`${pesos}line,,,,$,=1+1\n`, 'Line 13, column price: “=1+1” is not a number'],
    [`${pesos}line,,,,$,-5\n`, 'Line 13, column price: −5 is outside 0 to'],
    [`${pesos}metal,,copper,,$/lb,5\n`, 'Line 13, column item: line 7 says this already'],
    [pesos.replace('2026-10-05', '05/10/2026'), 'Line 5, column kind: “05/10/2026” is no day written as 2026-11-01'],
    [pesos.replace('currency,MXN,,,,\n', ''), 'Line 1, column item: no row tells this: Currency'],
    [pesos.replace('metal,,copper', '"metal,,copper'), 'a quote is not closed'],
    ['', 'There is no table in it'],
    ['a,b\n1,2\n', 'the first line names no column that is known'],
    ['{"job":{}}', 'a quote is not closed'],
    [`${head}${'line,,,,$,5\n'.repeat(3000)}`, 'Line 3, column item: line 2 says this already'],
    [`${pesos}${',,,,,\n'.repeat(50_000)}`, 'the table is 301 kB long, at most 100 kB are read'],
  ]) {
    await book.importText(text);
    await book.refusal.filter({ hasText: why }).waitFor();
    assert.match(plain(await book.refusal.first().innerText()), /^(Nothing was taken over, the prices stay as they were|“prices.csv” was not opened)/);
    assert.equal(await book.ofJob(), pesos);
  }
  await book.importText(pesos.replace('380', '390'));
  await book.refusal.waitFor({ state: 'detached' });
});

test('a table of a hundred thousand rows is refused at once', async (t) => {
  const { book } = await openCost(t);
  const rows = Array.from({ length: 100_000 }, (_, row) => `equipment,doubling,,${row}.5 hp,$,${row}\n`).join('');
  const started = Date.now();
  await book.importText(`${pesos}${rows}`);
  await book.refusal.filter({ hasText: 'it is larger than any price book; at most 2,000 rows and 100 kB are read' }).waitFor();
  assert.ok(Date.now() - started < 3000, `${Date.now() - started} ms`);
  assert.equal(await book.ofJob(), '');
});

test('a pasted table without a name gets one', async (t) => {
  const { app, book } = await openCost(t);
  await book.unfoldExchange();
  const area = book.prices.getByRole('textbox', { name: 'Or paste a table from a spreadsheet' });
  await area.fill(pesos.replace('name,Lista de octubre,,,,\n', '').replaceAll(',', '\t'));
  await book.button('Take the table over').click();
  await app.messages.getByText('7 prices of “My prices” taken over into this job.').waitFor();
  await area.fill('nothing');
  await book.button('Take the table over').click();
  await book.refusal.filter({ hasText: 'Line 1' }).waitFor();
  assert.equal(await book.chosen(), 'My prices, in this job only');
});

test('what is given out comes back the same, and none of it is a formula', async (t) => {
  const { app, book, page } = await openCost(t);
  const template = await book.exported();
  assert.equal(template.name, 'invented-prices.csv');
  assert.match(template.text, /^item,kind,metal,size,unit,price\ncurrency,USD,,,,\n/);
  const formulas = pesos.replace('Lista de octubre', '"=HYPERLINK(""x"",1)"').replace('Un proveedor inventado', '@SUM(1)');
  await book.importText(formulas);
  await app.messages.getByText('7 prices of').waitFor();
  const { name, text } = await book.exported();
  assert.match(name, /\.csv$/);
  for (const cell of text.split(/[\n,]/)) assert.doesNotMatch(cell, /^"?[=+\-@]/, cell);
  assert.match(text, /name,"'=HYPERLINK\(""x"",1\)",,,,\nsource,'@SUM\(1\),/);
  await book.takeOver(text);
  await book.prices.getByText('Quoted by @SUM(1)').waitFor();
  assert.equal((await book.exported()).text, text);
  await page.reload();
  assert.equal(await book.ofJob(), text);
});

test('another tab sees the book at once', async (t) => {
  const { book, context, page } = await openCost(t);
  const other = await context.newPage();
  await other.goto(page.url());
  const there = new PriceBook(other);
  await there.choice.waitFor();
  await book.importText(pesos);
  await book.keepButton.click();
  await there.choice.locator('option:not([value="*"])').filter({ hasText: 'Lista de octubre' }).waitFor({ state: 'attached' });
  await book.button('Remove from this device').click();
  await there.choice.locator('option:not([value="*"])').filter({ hasText: 'Lista de octubre' }).waitFor({ state: 'detached' });
});

test('stored texts that are no book are set aside, reported and deleted only by hand', async (t) => {
  const { app, book, page } = await openCost(t);
  await page.evaluate((good) => {
    localStorage.setItem('wellwright.book.bad', '<img src=x onerror=alert(1)>');
    localStorage.setItem('wellwright.book.blank', ' ');
    localStorage.setItem('wellwright.book.good', good);
    localStorage.setItem('wellwright.books', 'null]');
  }, pesos);
  await page.reload();
  await book.choice.locator('option').filter({ hasText: 'Lista de octubre' }).waitFor({ state: 'attached' });
  const notice = app.alerts.filter({ hasText: '2 stored price books can’t be read.' });
  await notice.getByText('Can’t be read: it holds no row.').waitFor();
  await notice.getByText('the first line names no column that is known').waitFor();
  await page.getByRole('banner').getByRole('link', { name: 'Jobs' }).click();
  await notice.getByRole('button', { name: 'Delete' }).first().click();
  await page.getByRole('button', { name: 'Delete for good' }).click();
  await app.alerts.filter({ hasText: '1 stored price book can’t be read.' }).waitFor();
  assert.equal((await book.kept()).length, 2);
});

test('where the storage is full the book is not kept, and the job still holds it', async (t) => {
  const { app, book, page } = await openCost(t);
  await book.importText(pesos);
  await book.keepButton.waitFor();
  await page.evaluate(() => {
    Storage.prototype.setItem = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
  });
  await book.keepButton.click();
  await app.messages.getByText('Not kept: the browser’s storage is full.').waitFor();
  assert.deepEqual(await book.kept(), []);
  assert.equal(await book.chosen(), 'Lista de octubre, in this job only');
});

test('without storage a book serves until the page closes, and that is said', async (t) => {
  const prepare = (context) =>
    context.addInitScript(() => {
      Object.defineProperty(window, 'localStorage', {
        get() {
          throw new DOMException('no', 'SecurityError');
        },
      });
    });
  const { app, book } = await openCost(t, { prepare });
  await book.importText(pesos);
  await book.keepButton.click();
  await app.messages.getByText('This browser keeps nothing for this page').waitFor();
  assert.equal(await book.chosen(), 'Lista de octubre');
});

test('in Spanish the book speaks Spanish', async (t) => {
  const opened = await open(t, { viewport: widths[0][1], locale: 'es-MX', reducedMotion: 'reduce' });
  const app = new Wellwright(opened.page, 'es');
  await app.openJob(job);
  await app.turn('cost');
  const book = new PriceBook(opened.page, 'es');
  await book.importText(pesos);
  await book.prices.getByText('MXN, precios del 5 de octubre de 2026').waitFor();
  await book.prices.getByText('Cotizó Un proveedor inventado').waitFor();
  await book.importText(`${pesos}line,,,,,5\n`);
  await book.refusal.filter({ hasText: 'No se tomó nada, los precios quedan como estaban. Línea 13, columna unit: el precio no tiene unidad; puede ser $, $/ft' }).waitFor();
  await book.keepButton.click();
  await app.messages.getByText('«Lista de octubre» quedó guardada en este dispositivo.').waitFor();
});
