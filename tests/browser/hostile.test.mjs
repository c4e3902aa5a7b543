// Bad input and broken storage: a clear message, nothing lost, the rest lives.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { useSite } from './support/fixture.mjs';
import { Wellwright } from './support/wellwright.mjs';

const { open } = useSite();
const plain = Wellwright.plain;
const job = 'Brindle Wash 7';

const bad = [
  ['empty', '', /^Enter a value, 0 ft to 3,000 ft\./],
  ['negative', '-5', /^−5 ft is outside 0 ft to 3,000 ft\./],
  ['too deep', '3001', /^3,001 ft is outside/],
  ['too deep in the other unit', '1000 m', /^3,280\.8 ft is outside/],
  ['not a number', 'NaN', /^“NaN” is not a number\. 0 ft to 3,000 ft\./],
  ['huge', '1e308', /^1e308 ft is outside/],
  ['beyond any number', '1e999', /^“1e999” is too large/],
  ['letters', 'deep', /^“deep” is not a number\./],
  ['a unit that does not measure depth', '620 A', /^“620 A”: A does not fit here\./],
  ['marks that can be read two ways', '1,23,456', /^“1,23,456” can be read two ways\./],
  ['a division by zero', '620/0', /^“620\/0” divides by zero\./],
  ['a sum cut short', '430+', /^“430\+” is not a number\./],
  ['markup', '<b>9</b>', /^“<b>9<\/b>” is not a number\./],
];

test('a bad depth is told beside its field and kept as typed, and no answer is made of it', async (t) => {
  const { page } = await open(t);
  const app = new Wellwright(page);
  await app.openJob(job);
  const field = app.field('Pump setting');
  for (const [name, text, message] of bad) {
    await field.fill(text);
    assert.match(plain(await app.says('Pump setting')), message, name);
    assert.equal(await field.inputValue(), text, name);
    assert.equal(await app.savingTitle(), text === '' ? 'Waiting for' : 'Figures wrong', name);
    await field.fill('620');
    assert.doesNotMatch(plain(await app.says('Pump setting')), /outside|not a number|Enter/);
    assert.match(await app.savingTitle(), /at 620 ft$/);
  }
});

// A number comes back as numbers are written, a text as it was typed.
for (const [text, again] of [['-5', '−5'], ['deep', 'deep'], ['<b>9</b>', '<b>9</b>']]) {
  test(`the depth ${text} outlives a reload, and what does not depend on it stays`, async (t) => {
    const { page } = await open(t);
    const app = new Wellwright(page);
    await app.openJob(job);
    await app.field('Pump setting').fill(text);
    const said = await app.says('Pump setting');
    await app.curve.waitFor();
    await app.turn('cost');
    assert.ok((await app.steps.count()) > 5, 'the steps do not depend on the depth');
    await page.reload();
    await page.getByRole('region', { name: 'Answer and picture' }).getByRole('link', { name: 'Pump setting' }).click();
    assert.equal(await app.says('Pump setting'), said);
    assert.equal(await app.field('Pump setting').inputValue(), again);
  });
}

const outOfRange = [
  ['pump', 'Motor power', '0'],
  ['cable', 'Allowed drop', '90'],
  ['cable', 'Highest ambient', '400'],
  ['cost', 'Metal price, as cable', '-1'],
];

test('out of range, a figure is marked, and no figure that depends on it is shown', async (t) => {
  const { page } = await open(t);
  const app = new Wellwright(page);
  await app.openJob(job);
  for (const [slug, label, text] of outOfRange) {
    await app.turn(slug);
    await app.field(label).fill(text);
    assert.match(plain(await app.says(label)), /is outside/, label);
    assert.equal(await app.field(label).getAttribute('aria-invalid'), 'true', label);
    assert.equal(await app.savingTitle(), 'Figures wrong', label);
    await app.turn('cost');
    assert.equal(await app.steps.count(), 0, label);
    await app.turn('water');
    assert.equal(await app.field('Pump setting').inputValue(), '620', label);
    await app.undo.click();
  }
});

test('an entry that can’t be read is reported, kept whole, and the rest opens', async (t) => {
  const { page } = await open(t);
  const app = new Wellwright(page);
  await app.jobs.first().waitFor();
  const broken = '{"job":{"schema":1,"name":"cut sho';
  const newer = '{"job":{"schema":99,"name":"from tomorrow"},"drafts":{}}';
  await page.evaluate(([a, b]) => {
    localStorage.setItem('wellwright.job.broken', a);
    localStorage.setItem('wellwright.job.newer', b);
  }, [broken, newer]);
  await page.reload();
  await app.alerts.filter({ hasText: '2 stored jobs can’t be read' }).waitFor();
  assert.equal(await app.jobs.count(), 3);
  await app.newJob({ depth: '300', power: '5' });
  const kept = await page.evaluate(() => ['broken', 'newer'].map((id) => localStorage.getItem(`wellwright.job.${id}`)));
  assert.deepEqual(kept, [broken, newer]);
});

test('a full storage is told, and what is on the screen stays', async (t) => {
  const { page } = await open(t);
  const app = new Wellwright(page);
  await app.openJob(job);
  const before = await page.evaluate(() => Object.entries(localStorage).sort());
  await page.evaluate(() => {
    Storage.prototype.setItem = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
  });
  await app.field('Pump setting').fill('700');
  await app.alerts.filter({ hasText: 'Not saved' }).waitFor();
  assert.match(await app.savingTitle(), /at 700 ft$/);
  assert.deepEqual(await page.evaluate(() => Object.entries(localStorage).sort()), before);
});

test('without storage the page works and says that it keeps nothing', async (t) => {
  const { page } = await open(t);
  const app = new Wellwright(page);
  await app.newJobButton.waitFor();
  await page.addInitScript(() => {
    Object.defineProperty(window, 'localStorage', {
      get() {
        throw new DOMException('no', 'SecurityError');
      },
    });
  });
  await page.reload();
  await app.alerts.filter({ hasText: 'keeps nothing' }).waitFor();
  await app.openJob(job);
  assert.match(await app.savingTitle(), /480 V saves, at 620 ft/);
});

const markup = ['<img src=x onerror="window.hit=1">', '"><script>window.hit=1</script>', 'javascript:window.hit=1', '=HYPERLINK("http://127.0.0.1/")'];

test('markup, script and formulas in every text field are text, on every page and on paper', async (t) => {
  const { page } = await open(t, { locale: 'en-US', viewport: { width: 1280, height: 900 } });
  const app = new Wellwright(page);
  await app.newJobButton.waitFor();
  const id = await app.idOf(job);
  let filled = 0;
  for (const slug of ['water', 'pump', 'power', 'cable', 'cost', 'start-up', 'papers']) {
    await app.goTo(id, slug);
    await page.evaluate(() => { for (const fold of document.querySelectorAll('main details')) fold.open = true; });
    if (slug === 'start-up') {
      await page.getByRole('textbox', { name: 'Name or initials' }).fill(markup[0]);
      await page.getByRole('button', { name: 'Begin a visit' }).click();
    }
    for (const box of await page.getByRole('main').getByRole('textbox').all()) {
      if (!(await box.isVisible()) || !(await box.isEditable())) continue;
      await box.fill(markup[filled % markup.length]);
      filled += 1;
    }
  }
  await app.jobName.fill(markup[1]);
  assert.ok(filled > 60, `${filled} fields`);
  for (const slug of ['water', 'cost', 'start-up', 'papers']) await app.goTo(id, slug);
  await page.getByRole('banner').getByRole('link', { name: 'Jobs' }).click();
  await app.job(markup[1]).waitFor();
  await page.reload();
  await app.job(markup[1]).waitFor();
  assert.equal(await page.evaluate(() => window.hit), undefined);
  assert.equal(await page.locator('img[src=x], script:not([src])').count(), 0);
});
