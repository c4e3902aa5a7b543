// Has the worker keep the page on the device, and tells the page of it with the event `wellwright-device`.
// What it tells stands in `window.wellwrightDevice`: `kept` (opens without a network), `newer` (a newer build waits),
// `installable` (the browser offers a place on the home screen), `lasting` (the browser has promised not to clear what is
// stored); `takeNewer()`, `install()` and `askToLast()` do what they say, and `bring(address)` fetches the program.
const device = { kept: false, newer: false, installable: false, lasting: false, takeNewer() {}, async install() {}, async askToLast() {} };
window.wellwrightDevice = device;

function tell(change) {
  Object.assign(device, change);
  window.dispatchEvent(new Event('wellwright-device'));
}

window.addEventListener('beforeinstallprompt', (event) => {
  event.preventDefault();
  tell({
    installable: true,
    async install() {
      tell({ installable: false });
      await event.prompt();
    },
  });
});

const { storage } = navigator;
if (storage?.persist) {
  storage.persisted().then((lasting) => lasting && tell({ lasting }), () => {});
  // Some browsers ask their user, and never answer if the user does not: nothing waits for it.
  device.askToLast = async () => {
    device.askToLast = async () => {};
    tell({ lasting: await storage.persist().catch(() => false) });
  };
}

// A frame on another site is no place to keep things, and often may not; what is made for frames keeps nothing at all.
const embedded = window.self !== window.top || new URLSearchParams(window.location.search).has('embed');
const workers = embedded ? undefined : navigator.serviceWorker;
let laid = Promise.resolve();

/** Lays a copy where the worker that is about to come finds it: not every browser has one in its own cache. */
async function lay(address, copy) {
  const cache = await caches.open(`wellwright ${new URL('./', window.location.href)} laid`);
  await cache.put(address, copy);
}

device.bring = async (address) => {
  // Whoever has a worker has the program, even on a page that goes past it.
  const [program, known] = await Promise.all([fetch(address), workers?.getRegistration().catch(() => null)]);
  if (workers && !known && program.ok) laid = lay(address, program.clone()).catch(() => {});
  return program;
};

async function keep() {
  if (!workers) return;
  let agreed = false;
  let hadWorker = Boolean(workers.controller);
  const reload = () => {
    if (!agreed) return;
    agreed = false;
    window.location.reload();
  };
  workers.addEventListener('controllerchange', () => {
    // Agreed to in another tab: this one goes on with what it has loaded until its user agrees too.
    if (hadWorker && !agreed) offer(() => window.location.reload());
    hadWorker = true;
    tell({ kept: true });
    reload();
  });
  function offer(takeNewer) {
    tell({ newer: true, takeNewer });
  }
  function waits(worker) {
    // The first build of all waits for nobody.
    if (!workers.controller) return;
    offer(() => {
      agreed = true;
      worker.postMessage('take over');
      // Some browsers do not report that the worker changed.
      setTimeout(reload, 5000);
    });
  }
  tell({ kept: hadWorker });
  // The worker takes the program from where the page has put it, so it waits for the page to have it.
  if (!workers.controller) await new Promise((then) => { window.addEventListener('TrunkApplicationStarted', then, { once: true }); });
  await laid;
  const registration = await workers.register('./worker.js', { scope: './', updateViaCache: 'none' });
  if (registration.waiting) waits(registration.waiting);
  registration.addEventListener('updatefound', () => {
    const worker = registration.installing;
    worker?.addEventListener('statechange', () => {
      if (worker.state === 'installed') waits(worker);
    });
  });
  const look = () => {
    if (!document.hidden && navigator.onLine) registration.update().catch(() => {});
  };
  document.addEventListener('visibilitychange', look);
  // A page that a phone put to sleep and woke.
  window.addEventListener('pageshow', (event) => event.persisted && look());
}

keep().catch((why) => console.warn('The page is not kept for use without a network:', why));
