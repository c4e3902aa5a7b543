// Keeps one whole build on the device and answers from it, so that the page opens without a network.
// The build puts two lines ahead of this file: `build`, a digest over all files, and `files`, their addresses.
/* global build, files */
const own = `wellwright ${self.registration.scope} `;
const kept = own + build;

// All files or none: one that is missing, as in a half-copied new build, leaves the old build in charge.
self.addEventListener('install', (event) => {
  const take = async () => {
    const cache = await caches.open(kept);
    // Past the browser's own cache, which may hold files of another build.
    await cache.addAll(files.map((file) => new Request(file, { cache: 'reload' })));
    // A page that names files of another build was put there before or after the others.
    const page = await (await cache.match('./')).text();
    const strange = [...page.matchAll(/"(\.\/[^"]+\.(?:js|css))"/g)].map(([, name]) => name).filter((name) => !files.includes(name));
    if (strange.length > 0) throw new Error(`The page is of another build: ${strange}`);
  };
  event.waitUntil(
    take().catch(async (why) => {
      await caches.delete(kept);
      throw why;
    }),
  );
});

// Only now is no page of an older build left, or the user has agreed.
self.addEventListener('activate', (event) => {
  const settle = async () => {
    const names = await caches.keys();
    const older = names.filter((name) => name.startsWith(own) && name !== kept);
    await Promise.all(older.map((name) => caches.delete(name)));
    await self.clients.claim();
  };
  event.waitUntil(settle());
});

self.addEventListener('message', (event) => {
  if (event.data === 'take over') self.skipWaiting();
});

self.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET' || new URL(request.url).origin !== self.location.origin) return;
  const answer = async () => {
    const cache = await caches.open(kept);
    // The page has two names.
    const isPage = new URL(request.url).pathname === new URL('index.html', self.registration.scope).pathname;
    const found = await cache.match(isPage ? './' : request, { ignoreSearch: true, ignoreVary: true });
    return found ?? fetch(request);
  };
  event.respondWith(answer());
});
