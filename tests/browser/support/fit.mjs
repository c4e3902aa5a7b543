// What runs off the side of a page, and what is too small for a finger.

/** Everything that a user presses or types in, and that is in sight; runs on the page. */
const findControls = () => {
  const seen = (element) => {
    const box = element.getBoundingClientRect();
    return box.width > 1 && box.height > 1 && element.checkVisibility({ visibilityProperty: true });
  };
  const name = (element) =>
    (element.getAttribute('aria-label') ?? element.labels?.[0]?.innerText ?? element.innerText ?? '').replaceAll(/\s+/g, ' ').slice(0, 50);
  // Radio buttons are pressed by their labels.
  const target = (element) => (element.type === 'radio' ? element.closest('label') : element);
  return [...document.querySelectorAll('button, a[href], input, select, summary, [role="slider"]')]
    .map((element) => ({ element: target(element), name: `${element.tagName.toLowerCase()} “${name(element)}”` }))
    .filter(({ element }) => element && seen(element));
};

/** Names of what is cut off at a side of the screen. What scrolls by itself, as a table does, may be. */
export function cutOff(page) {
  return page.evaluate((find) => {
    const controls = new Function(`return (${find})()`)();
    const width = innerWidth;
    const found = [];
    const scrolls = (element) => {
      for (let at = element.parentElement; at && at !== document.body; at = at.parentElement) {
        if (/auto|scroll/.test(getComputedStyle(at).overflowX) && at.scrollWidth > at.clientWidth) return true;
      }
      return false;
    };
    const wide = document.documentElement.scrollWidth;
    if (wide > width) found.push(`the page is ${wide} px wide on ${width} px`);
    for (const { element, name } of controls) {
      const { left, right } = element.getBoundingClientRect();
      if ((left < -0.5 || right > width + 0.5) && !scrolls(element)) found.push(`${name}: ${Math.round(left)} to ${Math.round(right)} of ${width}`);
    }
    return found;
  }, findControls.toString());
}

/** Names of what a finger misses: less than 44 px high or wide, counting what reaches farther than it is drawn. */
export function tooSmall(page, least = 44) {
  return page.evaluate(
    ([find, least]) => {
      const controls = new Function(`return (${find})()`)();
      const reach = least / 2 - 2;
      /** Whether a press at, and 20 px to every side of, the middle hits; `null` where something lies over it. */
      const hits = (element) => {
        const { left, top, width, height } = element.getBoundingClientRect();
        const hit = (right, down) => {
          const at = document.elementFromPoint(left + width / 2 + right, top + height / 2 + down);
          return at !== null && (element.contains(at) || at.control === element);
        };
        if (!hit(0, 0)) return null;
        return [[reach, 0], [-reach, 0], [0, reach], [0, -reach]].every(([right, down]) => hit(right, down));
      };
      const found = [];
      for (const { element, name } of controls) {
        const { width, height } = element.getBoundingClientRect();
        if ((width >= least - 0.5 && height >= least - 0.5) || hits(element)) continue;
        element.scrollIntoView({ block: 'center', inline: 'center' });
        if (hits(element) === false) found.push(`${name}: ${Math.round(width)} × ${Math.round(height)}`);
        scrollTo(0, 0);
      }
      return found;
    },
    [findControls.toString(), least],
  );
}
