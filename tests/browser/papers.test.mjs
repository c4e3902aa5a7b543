// The papers as they print, the files beside them, the seller's own.
import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import { test } from 'node:test';
import { PNG } from 'pngjs';
import { useSite } from './support/fixture.mjs';
import { labels } from './support/labels.mjs';
import { printed } from './support/pdf.mjs';
import { Wellwright } from './support/wellwright.mjs';

const { open } = useSite();
const demo = 'Brindle Wash 7';
const demos = [demo, 'Low Saddle', 'Quill Flat'];

// Points of an inch.
const sizes = { Letter: [612, 792], A4: [595, 842] };
const papers = {
  en: { customer: 'Customer', installer: 'Installer', engineer: 'Engineer' },
  es: { customer: 'Cliente', installer: 'Instalador', engineer: 'Ingeniero' },
};

async function startPapers(t, { language = 'en', name = demo, ...options } = {}) {
  const { page } = await open(t, { locale: labels[language].locale, viewport: { width: 1280, height: 900 }, acceptDownloads: true, ...options });
  const app = new Wellwright(page, language);
  await app.openJob(name);
  await app.turn('papers');
  await page.locator('.paper .plate .lines svg').waitFor();
  return { page, app };
}

const choose = (page, name) => page.getByRole('radio', { name, exact: true }).click({ force: true });

for (const language of ['en', 'es']) {
  for (const [size, [width, height]] of Object.entries(sizes)) {
    test(`the three papers on ${size} in ${language}: their size, their pages, their words`, async (t) => {
      const { page } = await startPapers(t, { language });
      await choose(page, size);
      const says = {
        en: {
          customer: [/25 gpm at 60 psi/, /480 V saves, at 620 ft/, /\$546/, /\$5,091\.51/, /Assumed until measured or quoted:/, /Not a permit/, /Brindle Wash 7/, /invented/],
          installer: [/Lock off, wait, then test for voltage/, /10\.4 mA/, /Wiring/, /Wire to the motor/, /Insulation to ground, after lowering/],
          engineer: [/How each answer was worked out/, /NFPA/, /Every size and how deep it reaches/, /assumed/],
        },
        es: {
          customer: [/25 gpm a 60 psi/, /\$546/, /Supuesto hasta medirlo o cotizarlo:/, /Brindle Wash 7/],
          installer: [/10\.4 mA/, /Cableado/, /Conductor hasta el motor/, /Aislamiento a tierra, después de bajar/],
          engineer: [/Cómo se calculó cada respuesta/, /NFPA/, /supuesto/],
        },
      }[language];
      const pages = { customer: [1, 1], installer: [2, 4], engineer: [6, 40] };
      for (const [paper, word] of Object.entries(papers[language])) {
        await choose(page, word);
        await page.getByText(new RegExp(says[paper][0].source.replaceAll(' ', '\\s'))).first().waitFor();
        const pdf = await printed(page);
        const [least, most] = pages[paper];
        assert.ok(pdf.pages.length >= least && pdf.pages.length <= most, `${paper}: ${pdf.pages.length} pages`);
        for (const text of says[paper]) assert.match(pdf.text, text, paper);
        for (const [place, one] of pdf.pages.entries()) {
          assert.ok(Math.abs(one.width - width) < 1 && Math.abs(one.height - height) < 1, `${one.width} × ${one.height}`);
          // Nothing runs off the paper: a half inch is free.
          assert.ok(one.right < width - 30, `${paper}, page ${place + 1}: text to ${one.right} of ${width}`);
          assert.match(one.text, new RegExp(`${place + 1} / ${pdf.pages.length}`));
        }
        // Buttons, tabs and folds stay on the screen.
        assert.doesNotMatch(pdf.text, /Print or save|Imprimir o guardar|Save as files|Copy/);
      }
    });
  }

  test(`the customer’s page of every demo job is one page in ${language}`, async (t) => {
    for (const name of demos) {
      const { page } = await startPapers(t, { language, name });
      for (const size of Object.keys(sizes)) {
        await choose(page, size);
        const { pages } = await printed(page);
        assert.equal(pages.length, 1, `${name} on ${size}`);
      }
    }
  });
}

test('a customer’s page with a stop and a note of two lines is one page in Spanish', async (t) => {
  const { page } = await open(t, { locale: labels.es.locale, viewport: { width: 1280, height: 900 } });
  const app = new Wellwright(page, 'es');
  const job = JSON.parse(await readFile(new URL('../golden/v1/house_and_stock_well_on_its_supply.job.json', import.meta.url), 'utf8'));
  const note = 'Casa y ganado, pozo nuevo junto al camino. El cliente pregunta por el costo a 900 ft.';
  await app.fileChooser.setInputFiles({
    name: 'pozo.json', mimeType: 'application/json', buffer: Buffer.from(JSON.stringify({ ...job, name: 'Pozo nuevo', note, demo: false })),
  });
  await app.openJob('Pozo nuevo');
  await app.turn('papers');
  await page.locator('.paper .plate .lines svg').waitFor();
  for (const size of Object.keys(sizes)) {
    await choose(page, size);
    const { pages, text } = await printed(page);
    assert.match(text, /Alto/, size);
    assert.match(text, /pregunta por el costo/, size);
    assert.equal(pages.length, 1, size);
  }
});

test('the picture is lines on paper, not dots', async (t) => {
  const { page } = await startPapers(t);
  await page.emulateMedia({ media: 'print' });
  assert.equal(await page.locator('.paper canvas').count(), 0);
  const { text, bytes } = await printed(page);
  assert.match(text, /even at 426 ft|426 ft/);
  assert.ok(!bytes.includes('/Subtype /Image'), 'a picture of dots is in it');
});

test('readings stand on the installer’s pages as they were taken, or as lines to write on', async (t) => {
  const { page, app } = await startPapers(t);
  await app.turn('start-up');
  await page.getByRole('textbox', { name: 'Name or initials' }).fill('RG');
  await page.getByRole('button', { name: 'Begin a visit' }).click();
  await page.getByRole('textbox', { name: /^Supply volts, pump off/ }).fill('241.5');
  await page.getByRole('textbox', { name: /^Insulation to ground, after lowering/ }).fill('0.4');
  await app.turn('papers');
  await choose(page, 'Installer');
  const readings = page.getByRole('group', { name: 'Readings', exact: true }).getByRole('table');
  await readings.getByText('241.5').waitFor();
  await readings.getByRole('row', { name: /Insulation to ground, after lowering/ }).getByText('outside what is expected').waitFor();
  await choose(page, 'Blank');
  await page.getByText('Name and date:').waitFor();
  assert.equal(await readings.getByText('241.5').count(), 0);
});

test('the job as files: each is what it says', async (t) => {
  const { page } = await startPapers(t);
  await page.getByText('Save as files').click();
  const save = async (button) => {
    const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: button, exact: true }).click()]);
    return { name: download.suggestedFilename(), bytes: await readFile(await download.path()) };
  };
  const curve = await save('Curve as a table');
  assert.match(curve.name, /^brindle-wash-7-.*\.csv$/);
  const rows = curve.bytes.toString().trim().split('\r\n');
  assert.match(rows[0], /^Way,Size,Ground,From \(ft\),To \(ft\),Why/);
  assert.ok(rows.length > 8 && rows.slice(1).every((row) => /^(240|480)/.test(row)), rows.join('\n'));
  const parts = (await save('Parts list')).bytes.toString();
  assert.match(parts, /Wire to the motor,\d+ AWG,3,\d+/);
  const tables = (await save('All tables')).bytes.toString();
  for (const title of ['Every size and how deep it reaches', 'Wiring', 'Parts', 'What each way costs']) assert.match(tables, new RegExp(`^"?${title}`, 'm'));
  const evaluation = JSON.parse((await save('Evaluation')).bytes.toString());
  assert.equal(evaluation.job, demo);
  assert.ok(evaluation.at_depth && evaluation.break_even);
  const vector = await save('Picture, sharp at any size');
  assert.match(vector.name, /\.svg$/);
  const drawn = vector.bytes.toString();
  assert.match(drawn, /^<svg xmlns="http:\/\/www.w3.org\/2000\/svg"/);
  assert.match(drawn, /\$546/);
  assert.match(drawn, /pumping 472/);
  // It stands alone: no style sheet, no script, nothing from elsewhere.
  assert.doesNotMatch(drawn, /class=|var\(--|<script|href=/);
  const sides = await page.locator('.paper .plate').evaluate((plate) => [plate.clientWidth, plate.clientHeight]);
  const dots = PNG.sync.read((await save('Picture, for messages')).bytes);
  assert.deepEqual([dots.width, dots.height], sides.map((side) => 2 * side));
  const colors = new Set();
  for (let at = 0; at < dots.data.length; at += 4) colors.add(dots.data.readUInt32BE(at));
  assert.ok(colors.size > 50, `${colors.size} colors`);
});

test('the seller’s own stands on the customer’s page, is kept, and is text alone', async (t) => {
  const { page, app } = await startPapers(t);
  await page.getByText('Your name on it').click();
  const bad = '<img src=x onerror=alert(1)>';
  await page.getByLabel('Your name or firm').fill(`Low Desert Pumps ${bad}`);
  await page.getByLabel('Address, telephone, license').fill('12 Mesa Road\n555 0100');
  // A picture far larger than what is kept.
  const large = new PNG({ width: 2400, height: 1200 });
  large.data.fill(0x7f);
  await page.getByLabel('Choose a picture').setInputFiles({ name: 'sign.png', mimeType: 'image/png', buffer: PNG.sync.write(large) });
  await page.locator('.paper .seller img').waitFor();
  await page.reload();
  const own = page.locator('.paper .seller');
  await own.getByText(`Low Desert Pumps ${bad}`).waitFor();
  assert.deepEqual(await own.locator('img').evaluate((image) => [image.naturalWidth, image.naturalHeight]), [480, 240]);
  assert.equal((await printed(page)).pages.length, 1);
  // It does not travel with the job.
  assert.ok((await app.kept()).every(([, text]) => !text.includes('Low Desert')));
  await page.getByText('Your name on it').click();
  await page.getByLabel('Choose a picture').setInputFiles({ name: 'x.png', mimeType: 'image/png', buffer: Buffer.from('no picture') });
  await app.messages.getByText('That file is no picture').waitFor();
  await page.getByRole('button', { name: 'Take the picture off' }).click();
  await own.locator('img').waitFor({ state: 'detached' });
});

test('without an answer there is nothing to print, and it says what is waited for', async (t) => {
  const { page } = await open(t, { locale: 'en-US' });
  const app = new Wellwright(page);
  await app.newJob();
  await app.turn('papers');
  await page.getByText('Waiting for Pump setting, Motor power').waitFor();
  assert.equal(await page.getByRole('button', { name: 'Print or save as PDF' }).isDisabled(), true);
});

test('a stop is dark on paper without backgrounds, its mark too', async (t) => {
  const { page } = await open(t, { viewport: { width: 1280, height: 900 } });
  const app = new Wellwright(page);
  await app.openJob(demo);
  await app.turn('water');
  await page.locator('[id="site.pump_setting"]').fill('440');
  await app.turn('papers');
  const stop = page.locator('.paper .verdict.stop').first();
  await stop.waitFor();
  await page.emulateMedia({ media: 'print' });
  const [ink, paper] = await stop.evaluate((element) => {
    const style = getComputedStyle(element);
    return [style.color, style.backgroundColor];
  });
  assert.equal(paper, 'rgba(0, 0, 0, 0)');
  // The red of a stop on white paper: far below half as light as it.
  assert.ok(Math.max(...ink.match(/\d+/g).slice(0, 3).map(Number)) < 160, ink);
});
