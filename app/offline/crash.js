// When the program has failed nothing of it can be trusted any more: this shows the page `#crashed` that stands ready,
// saves what is stored as one file (the form of app/src/platform/storage/backup.rs), and starts again. A program that failed
// before it made the page gets a plain one.
function everything() {
  const entries = {};
  for (let place = 0; place < localStorage.length; place += 1) {
    const key = localStorage.key(place);
    if (key.startsWith('wellwright.')) entries[key] = localStorage.getItem(key);
  }
  return JSON.stringify({ wellwright_backup: 1, entries });
}

function save() {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([everything()], { type: 'application/json' }));
  link.download = 'wellwright.json';
  link.click();
}

const plain = {
  en: { title: 'Something in this page failed', save: 'Save everything as one file', restart: 'Start again' },
  es: { title: 'Algo falló en esta página', save: 'Guardar todo en un archivo', restart: 'Empezar de nuevo' },
};

/** Whether there may be something to save: inside a page of somebody else a browser may not even let it ask. */
function keeps() {
  try {
    return localStorage.length > 0;
  } catch {
    return false;
  }
}

function made() {
  const words = plain[navigator.language.startsWith('es') ? 'es' : 'en'];
  const page = document.createElement('main');
  page.id = 'crashed';
  page.className = 'page crashed';
  page.hidden = true;
  const title = document.createElement('h1');
  title.textContent = words.title;
  const buttons = [...(keeps() ? ['save'] : []), 'restart'].map((does) => {
    const button = document.createElement('button');
    button.className = 'btn';
    button.dataset.does = does;
    button.textContent = words[does];
    return button;
  });
  page.append(title, ...buttons);
  document.body.append(page);
  return page;
}

// A panic of the program ends in the first, a stack that is too deep in one of the others; the page's few scripts beside it
// throw none of them.
const isFailure = (error) => error instanceof WebAssembly.RuntimeError || error instanceof RangeError || error?.name === 'InternalError';

window.addEventListener('error', ({ error }) => {
  if (!isFailure(error)) return;
  const page = document.getElementById('crashed') ?? made();
  if (!page.hidden) return;
  for (const other of document.body.children) other.hidden = true;
  page.hidden = false;
  for (const button of page.querySelectorAll('[data-does]')) {
    button.addEventListener('click', button.dataset.does === 'save' ? save : () => window.location.reload());
  }
  page.querySelector('button').focus();
});
