// Everything that a page says: texts, seen or only heard, and its title.

/** Texts of the page as it stands, each once. */
export function textsOf(page) {
  return page.evaluate(() => {
    const found = new Set([document.title]);
    const silent = new Set(['SCRIPT', 'STYLE', 'NOSCRIPT']);
    const walker = document.createTreeWalker(document.documentElement, NodeFilter.SHOW_TEXT | NodeFilter.SHOW_ELEMENT);
    for (let node = walker.currentNode; node; node = walker.nextNode()) {
      if (node.nodeType === Node.TEXT_NODE) {
        if (node.parentElement && !silent.has(node.parentElement.closest('script, style, noscript, title')?.tagName ?? '')) {
          found.add(node.data);
        }
        continue;
      }
      for (const name of ['aria-label', 'aria-valuetext', 'aria-roledescription', 'title', 'placeholder', 'alt']) {
        if (node.hasAttribute(name)) found.add(node.getAttribute(name));
      }
    }
    return [...found].map((text) => text.replaceAll(/\s+/g, ' ').trim()).filter(Boolean);
  });
}

/** Words of three letters or more, in small letters. */
export function wordsOf(texts) {
  return new Set(texts.flatMap((text) => text.toLowerCase().match(/\p{L}{3,}/gu) ?? []));
}
