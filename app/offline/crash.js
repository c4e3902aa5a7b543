// When the program has failed nothing of it can be trusted any more: this shows the page `#crashed` that stands ready,
// saves what is stored as one file (the form of app/src/platform/storage/backup.rs), and starts again.
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

window.addEventListener('error', ({ error }) => {
  // A panic of the program ends in this; nothing else does.
  if (!(error instanceof WebAssembly.RuntimeError)) return;
  const page = document.getElementById('crashed');
  if (!page || !page.hidden) return;
  for (const other of document.body.children) other.hidden = true;
  page.hidden = false;
  for (const button of page.querySelectorAll('[data-does]')) {
    button.addEventListener('click', button.dataset.does === 'save' ? save : () => window.location.reload());
  }
  page.querySelector('button').focus();
});
