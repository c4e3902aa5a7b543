// Which language the page speaks, how it writes numbers in it, and what stays when it is changed.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { useSite } from './support/fixture.mjs';
import { Wellwright } from './support/wellwright.mjs';

const { open } = useSite();
const job = 'Brindle Wash 7';
const spoken = (page) => page.evaluate(() => document.documentElement.lang);

test('another language by the menu keeps the page, its figures and all that is stored', async (t) => {
  const { page } = await open(t, { locale: 'en-US' });
  const [app, aplicacion] = [new Wellwright(page), new Wellwright(page, 'es')];
  await app.openJob(job);
  await app.turn('cost');
  await app.field('Metal price, as cable').fill('9.5');
  await app.field('Where the prices come from').fill('Quote of May');
  const [before, address] = [await app.kept(), page.url()];
  await app.set('Language', 'Español');

  const inSpanish = async () => {
    await aplicacion.heading('cost').waitFor();
    assert.equal(await spoken(page), 'es');
    assert.equal(page.url(), address);
    assert.match(await page.title(), /^Costo · Brindle Wash 7/);
    assert.equal(await aplicacion.field('Precio del metal en cable').inputValue(), '9.5');
    assert.equal(await aplicacion.field('De dónde vienen los precios').inputValue(), 'Quote of May');
    assert.deepEqual(await app.kept(), before);
  };
  await inSpanish();
  await page.reload();
  await inSpanish();
  await aplicacion.set('Idioma', 'English');
  await app.heading('cost').waitFor();
  assert.equal(await spoken(page), 'en');
  assert.deepEqual(await app.kept(), before);
});

test('a text that is no number yet outlives the change of language', async (t) => {
  const { page } = await open(t, { locale: 'en-US' });
  const app = new Wellwright(page);
  await app.openJob(job);
  await app.field('Pump setting').fill('about 600');
  await app.set('Language', 'Español');
  const aplicacion = new Wellwright(page, 'es');
  assert.equal(await aplicacion.field('Prof. de la bomba').inputValue(), 'about 600');
  assert.match(await aplicacion.says('Prof. de la bomba'), /«about 600» no es un número/);
});

for (const [locale, language] of [['en-US', 'en'], ['es-MX', 'es'], ['es-ES', 'es'], ['fr-FR', 'en']]) {
  test(`a browser that asks for ${locale} gets ${language}`, async (t) => {
    const { page } = await open(t, { locale });
    await new Wellwright(page, language).newJobButton.waitFor();
    assert.equal(await spoken(page), language);
  });
}

test('a language that was chosen wins over the browser’s', async (t) => {
  const { page } = await open(t, { locale: 'es-MX', settings: { language: 'en' } });
  await new Wellwright(page).newJobButton.waitFor();
  assert.equal(await spoken(page), 'en');
});

const written = [
  ['es-ES', '1.234,5', [['12,5', 12.5, '12,5'], ['1.234', 1234, '1.234'], ['1.234,5', 1234.5, '1.234,5'], ['7.5', 7.5, '7,5']]],
  ['es-MX', '1,234.5', [['12,5', 12.5, '12.5'], ['1,234', 1234, '1,234'], ['1.234', 1.234, '1.234'], ['1.234,5', 1234.5, '1,234.5']]],
];

for (const [locale, figure, cases] of written) {
  test(`numbers in ${locale} are written as ${figure}, and read so`, async (t) => {
    const { page } = await open(t, { locale });
    const app = new Wellwright(page, 'es');
    await app.openJob(job);
    const id = page.url().split('/').at(-2);
    const field = app.field('Prof. de la bomba');
    for (const [typed, value, shown] of [...cases, ['1234.5', 1234.5, figure]]) {
      await field.fill(typed);
      await field.blur();
      assert.equal(await field.inputValue(), shown, typed);
      const kept = await page.evaluate((id) => JSON.parse(localStorage.getItem(`wellwright.job.${id}`)), id);
      assert.deepEqual(kept.job.site.pump_setting, { value, unit: 'ft' }, typed);
    }
    await app.table('A esta profundidad').or(app.well).first().waitFor();
    const title = Wellwright.plain(await app.answer(/ahorra/).innerText());
    assert.match(title, locale === 'es-ES' ? /a 1\.23[45] ft/ : /a 1,23[45] ft/);
  });
}
