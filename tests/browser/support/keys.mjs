// A user without a pointer: goes from stop to stop and sees where the focus is.
import assert from 'node:assert/strict';

const farthest = 120;

export class Keys {
  constructor(page) {
    this.page = page;
  }

  press(key) { return this.page.keyboard.press(key); }

  /** What has the focus. */
  get here() { return this.page.locator(':focus'); }

  isOn(target) { return target.evaluate((element) => element === document.activeElement); }

  /** Goes on by Tab, or back by Shift+Tab, until the target has the focus; every stop on the way must be seen. */
  async tabTo(target, key = 'Tab') {
    await target.waitFor({ state: 'attached' });
    for (let stop = 0; stop < farthest; stop += 1) {
      await this.press(key);
      await this.assertSeen();
      if (await this.isOn(target)) return;
    }
    assert.fail(`no Tab leads to ${target}`);
  }

  /** The focus shows by an outline, on the control itself or on what stands for it. */
  async assertSeen() {
    const lost = await this.page.evaluate(() => {
      const at = document.activeElement;
      if (!at || at === document.body) return null;
      const shows = (element) => {
        const { outlineStyle, outlineWidth, outlineColor } = getComputedStyle(element);
        return outlineStyle !== 'none' && parseFloat(outlineWidth) >= 2 && !/, 0\)$/.test(outlineColor);
      };
      const stand = [at, at.nextElementSibling, at.closest('label'), at.closest('li')].filter(Boolean);
      return stand.some(shows) ? null : at.outerHTML.slice(0, 120);
    });
    assert.equal(lost, null, 'the focus is not seen');
  }

  async assertOn(target, message) {
    await target.waitFor();
    const on = await this.isOn(target);
    const there = on ? '' : await this.page.evaluate(() => document.activeElement?.outerHTML.slice(0, 120));
    assert.ok(on, `${message}; the focus is on ${there}`);
  }
}
