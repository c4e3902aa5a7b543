// Every figure that is worked out, on every page of every demo job, opens to its working.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { useSite } from './support/fixture.mjs';
import { slugs } from './support/labels.mjs';
import { Wellwright } from './support/wellwright.mjs';

const { open } = useSite();

/** What is entered, by definition, read from a list or measured, by the name beside it. */
const putIn = [
  // The motor and its drive.
  'The drive sends',
  'Motor connected for',
  'Nameplate current',
  'Rated power',
  'Rated voltage',
  'Rated current',
  // Sizes and ratings that stand in a list.
  'Their ground',
  'Transformer',
  // Settings that are read on a plate, typed, or common practice, each with its reason beside it.
  'Motor volts',
  'Motor frequency',
  'Motor amps',
  'Pressure setpoint',
  'Transducer span',
  'Cut-in pressure',
  'Cut-out pressure',
  'Ramp to 30 Hz, and down from it',
  'Lowest frequency',
  'Highest frequency',
  'Dry-run trip after',
  'Try again after a dry run',
  'Wait before it starts again',
  'Tank precharge',
  'Clear around the drive',
];

/** Runs on the page: each figure of a table, a list or a field that was worked out, with its name and whether it opens. */
function figures() {
  const seen = (element) => element.getClientRects().length > 0;
  const plain = (text) => (text ?? '').split('\n')[0].replaceAll(/\s+/g, ' ').trim();
  const found = [];
  const tell = (name, figure, opens) => found.push({ name: plain(name), figure: plain(figure), opens: Boolean(opens) });
  const main = document.querySelector('main.job');
  for (const cell of main.querySelectorAll('td:not(.words)')) {
    if (!seen(cell) || !/\d/.test(cell.innerText)) continue;
    const row = cell.closest('tr');
    tell(row.querySelector('th')?.innerText, cell.innerText, row.querySelector('.equals'));
  }
  for (const item of main.querySelectorAll('dd')) {
    if (!seen(item) || !/\d/.test(item.innerText)) continue;
    const name = item.previousElementSibling;
    tell(name?.innerText, item.innerText, item.querySelector('.equals') ?? name?.querySelector('.equals'));
  }
  for (const field of main.querySelectorAll('.field.out')) {
    if (!seen(field) || !/\d/.test(field.querySelector('output').innerText)) continue;
    tell(field.querySelector('.label').innerText, field.querySelector('output').innerText, field.querySelector('.equals'));
  }
  return found;
}

test('no figure stands without its working', async (t) => {
  const { page } = await open(t, { locale: 'en-US', viewport: { width: 1280, height: 3000 }, reducedMotion: 'reduce' });
  const app = new Wellwright(page);
  let met = 0;
  for (const job of ['Brindle Wash 7', 'Low Saddle', 'Quill Flat']) {
    const id = await app.idOf(job);
    for (const slug of slugs.slice(0, 6)) {
      await app.goTo(id, slug);
      if (slug === 'power') await app.unfoldWays();
      // The ranking comes once the job was left alone.
      if (slug === 'cost') await page.locator('.ranks li').first().waitFor();
      for (const { name, figure, opens } of await page.evaluate(figures)) {
        met += 1;
        assert.ok(opens || putIn.includes(name), `${job}, ${slug}: ${name}, ${figure} opens nothing`);
      }
    }
    await page.getByRole('banner').getByRole('link', { name: 'Jobs' }).click();
    await app.newJobButton.waitFor();
  }
  assert.ok(met > 300, `${met} figures`);
});

test('what moves the saving opens with the figure that it stands for', async (t) => {
  const { page } = await open(t, { locale: 'en-US', viewport: { width: 1280, height: 2000 }, reducedMotion: 'reduce' });
  const app = new Wellwright(page);
  await app.openJob('Brindle Wash 7');
  await app.turn('cost');
  const bar = page.locator('.ranks li').filter({ hasText: 'Allowed drop' });
  await bar.getByRole('button', { name: /^Calculation: Allowed drop, \$1,401/ }).click();
  const drawer = page.getByRole('region', { name: 'What 480 V saves' });
  await drawer.waitFor();
  assert.match(await drawer.locator('.worked').innerText(), /^\$1,400\.55/);
  await page.keyboard.press('Escape');
  await drawer.waitFor({ state: 'detached' });
});
