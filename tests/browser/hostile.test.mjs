// Bad input and broken storage: a clear message, nothing lost, the rest lives.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { useSite } from './support/fixture.mjs';
import { Wellwright } from './support/wellwright.mjs';

const { open } = useSite();
const plain = Wellwright.plain;

const bad = [
  ['empty', '', /^Enter a value, 0 ft to 3,000 ft\./],
  ['negative', '-5', /^−5 ft is outside 0 ft to 3,000 ft\./],
  ['too deep', '3001', /^3,001 ft is outside/],
  ['not a number', 'NaN', /^“NaN” is not a number\./],
  ['huge', '1e308', /^1e308 ft is outside/],
  ['beyond any number', '1e999', /^“1e999” is too large/],
  ['letters', 'deep', /^“deep” is not a number\./],
  ['a unit typed along', '620 ft', /^“620 ft” is not a number\./],
  ['a decimal comma', '12,5', /^“12,5” can be read two ways\. Use a point/],
  ['markup', '<b>9</b>', /^“<b>9<\/b>” is not a number\./],
];

for (const [name, text, message] of bad) {
  test(`bad depth, ${name}: said beside the field, kept as typed, the curve lives`, async (t) => {
    const { page } = await open(t);
    const app = new Wellwright(page);
    await app.openJob('Brindle Wash, lot 7');
    const field = app.field('Pump setting');
    await field.fill(text);
    assert.match(plain(await app.says('Pump setting')), message);
    assert.equal(await field.inputValue(), text);
    assert.equal(await app.savingTitle(), 'Waiting for');
    assert.ok((await app.steps.count()) > 5, 'the steps do not depend on the depth');
    assert.equal(await app.field('Motor power').inputValue(), '7.5');
    await field.blur();
    await page.reload();
    await field.waitFor();
    assert.match(plain(await app.says('Pump setting')), message);
    await field.fill('620');
    assert.equal(plain(await app.says('Pump setting')).includes('outside'), false);
    assert.match(await app.savingTitle(), /at 620 ft$/);
  });
}

for (const [label, text] of [['Motor power', '0'], ['Allowed drop', '90'], ['Warmest surroundings', '400'], ['Metal, as cable', '-1']]) {
  test(`out of range in ${label}: no figure that depends on it is shown`, async (t) => {
    const { page } = await open(t);
    const app = new Wellwright(page);
    await app.openJob('Brindle Wash, lot 7');
    await app.field(label).fill(text);
    assert.match(plain(await app.says(label)), /is outside/);
    assert.equal(await app.field(label).getAttribute('aria-invalid'), 'true');
    assert.equal(await app.savingTitle(), 'Waiting for');
    assert.equal(await app.steps.count(), 0);
    assert.equal(await app.field('Pump setting').inputValue(), '620');
  });
}

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
  await app.openJob('Brindle Wash, lot 7');
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
  await app.openJob('Brindle Wash, lot 7');
  assert.match(await app.savingTitle(), /480 V saves, at 620 ft/);
});

test('an address of a job that is not here says so', async (t) => {
  const { page } = await open(t, { path: '#/job/nowhere' });
  await page.getByRole('heading', { name: 'This job is not on this device.' }).waitFor();
  await page.getByRole('link', { name: 'All jobs' }).click();
  await new Wellwright(page).newJobButton.waitFor();
});
