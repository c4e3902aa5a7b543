// Rules of accessibility that a machine can check, on both pages.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { AxeBuilder } from '@axe-core/playwright';
import { useSite } from './support/fixture.mjs';
import { Wellwright } from './support/wellwright.mjs';

const { open } = useSite();
const rules = ['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa', 'best-practice'];

for (const theme of ['light', 'dark', 'sun']) {
  for (const width of [360, 1280]) {
    test(`no violation, ${theme}, ${width} px`, async (t) => {
      const { page } = await open(t, { viewport: { width, height: 800 } });
      const app = new Wellwright(page);
      await app.newJobButton.waitFor();
      await page.evaluate((name) => localStorage.setItem('wellwright.settings', JSON.stringify({ theme: name })), theme);
      await page.reload();
      await app.newJobButton.waitFor();
      const check = async (where) => {
        const { violations } = await new AxeBuilder({ page }).withTags(rules).analyze();
        const found = violations.map((v) => `${v.id}: ${v.nodes.map((node) => node.target.join(' ')).join('; ')}`);
        assert.deepEqual(found, [], where);
      };
      await check('list');
      await app.openJob('Brindle Wash, lot 7');
      await app.field('Allowed drop').fill('wide');
      await check('job');
    });
  }
}
