// Says before anything is drawn what stands on the page until the program has come (`data-first` of the root): `new` for who
// has nothing here yet, `again` for who has, `failed` where the program did not come, `none` inside a page of somebody
// else, for which nothing that is stored is touched. The language and the theme are those that were set.
{
  const root = document.documentElement;

  /** What is stored under a name, if it is there and whole. */
  const kept = (name) => {
    try {
      return JSON.parse(localStorage.getItem(`wellwright.${name}`));
    } catch {
      return null;
    }
  };

  const language = (chosen) =>
    [chosen, ...navigator.languages].map((tag) => String(tag).slice(0, 2).toLowerCase()).find((tag) => tag === 'en' || tag === 'es') ?? 'en';

  /** The answer of the job that the address names, as it was last time. */
  const last = () => {
    const [, id] = /^#\/job\/([^/]+)/.exec(window.location.hash) ?? [];
    const found = kept('last');
    const texts = typeof found?.name === 'string' && typeof found.told === 'string';
    return id && texts && found.id === id && kept(`job.${id}`) ? found : null;
  };

  const began = () => {
    const { theme, language: chosen } = kept('settings') ?? {};
    root.lang = language(chosen);
    if (['light', 'dark', 'sun'].includes(theme)) root.dataset.theme = theme;
    root.dataset.first = Array.isArray(kept('order')) ? 'again' : 'new';
    const found = last();
    if (!found) return;
    document.addEventListener('DOMContentLoaded', () => {
      for (const place of document.querySelectorAll('#first .last')) {
        place.querySelector('b').textContent = found.name;
        place.querySelector('span').textContent = found.told;
        place.hidden = false;
      }
    });
  };

  const failed = () => {
    if (!document.getElementById('first')) return;
    // A program that came and failed has a page of its own (`app/offline/crash.js`).
    root.dataset.first = document.getElementById('crashed') ? 'none' : 'failed';
    for (const button of document.querySelectorAll('#first button')) button.onclick = () => window.location.reload();
  };

  if (new URLSearchParams(window.location.search).has('embed')) root.dataset.first = 'none';
  else began();
  // A script that did not come says so on its own element, a program on the promise that waits for it.
  window.addEventListener('error', () => setTimeout(failed), true);
  window.addEventListener('unhandledrejection', failed);
}
