// Keeps the page in the browser, so that it opens without a signal. It hands out a page only if that is whole to
// the byte, and goes to a newer one only after the reader's yes.
//
// Each version lies in a cache of its own, named by the hash of its page. The oldest whole one is the reader's; a
// newer one lies behind it until her yes deletes what lies before. So wherever it is cut off, one is whole.

// Put in when the page is built: the hash of its bytes, and what is shown where no page can be.
const stamp = '{{page}}';
const lostPage = '{{lost}}';

const { pathname: scope } = new URL(self.registration.scope);
// Other pages may share the origin, and this one may lie in it twice. A path holds no space.
const prefix = `twinround ${scope} `;
const own = prefix + stamp;
const anew = /** @type {RequestInit} */ ({ cache: 'reload' });

async function hashOf(bytes) {
  const hash = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  return Array.from(hash, (byte) => byte.toString(16).padStart(2, '0')).join('');
}

const ourCaches = async () => (await caches.keys()).filter((name) => name.startsWith(prefix));

/** The page of one version, if it is there and whole. */
async function pageIn(name) {
  const page = await caches.match('./', { cacheName: name });
  const bytes = await page?.clone().arrayBuffer();
  return bytes && prefix + (await hashOf(bytes)) === name ? page : undefined;
}

/** The reader's version: caches are told in the order they were made. A disk that cannot be read holds none. */
async function findPage() {
  for (const name of await ourCaches().catch(() => [])) {
    const page = await pageIn(name).catch(() => undefined);
    if (page) return { name, page };
  }
  return undefined;
}

/** A page as it is kept, if it is the one this worker belongs to. */
async function ownPage(response) {
  const bytes = await response.arrayBuffer();
  if (!response.ok || (await hashOf(bytes)) !== stamp) return undefined;
  const headers = new Headers(response.headers);
  for (const ofTheWay of ['content-encoding', 'content-length']) headers.delete(ofTheWay);
  // Made anew, it has no address of its own: it opens at the one asked for, with its ? and its #.
  return new Response(bytes, { headers });
}

const keepPage = async (page) => (await caches.open(own)).put('./', page);

async function keepBeside() {
  const cache = await caches.open(own);
  const manifest = await fetch('app.webmanifest', anew);
  const { icons } = await manifest.clone().json();
  await cache.put('app.webmanifest', manifest);
  await cache.addAll(icons.map(({ src }) => src));
}

async function deleteOthers(...kept) {
  for (const name of await ourCaches()) if (!kept.includes(name)) await caches.delete(name);
}

/** Checked before anything is kept, and the page kept last: a failed install leaves what there was. */
async function install() {
  const page = await ownPage(await fetch('./', anew));
  if (!page) throw new Error('the page that came is not the one this worker belongs to');
  // Without its icon the page still opens.
  await keepBeside().catch(() => undefined);
  await keepPage(page);
  // Of versions she never said yes to only the last is of use.
  await deleteOthers((await findPage())?.name, own);
}

/** Whether this worker's page lies here whole, fetched again if it does not. */
async function hasOwn() {
  try {
    if (await pageIn(own)) return true;
    const page = await ownPage(await fetch('./', anew));
    if (page) await keepPage(page);
    return page !== undefined;
  } catch {
    return false;
  }
}

const lost = () =>
  new Response(lostPage, { status: 503, headers: { 'Content-Type': 'text/html; charset=utf-8' } });

async function handOut(request) {
  const found = await findPage();
  if (found) return found.page;
  try {
    const response = await fetch(request, anew);
    const page = await ownPage(response.clone());
    // A full disk keeps nothing, and what has come is handed out all the same.
    if (page) await keepPage(page).catch(() => undefined);
    return response;
  } catch {
    return lost();
  }
}

const handOutBeside = async (request) =>
  (await caches.match(request).catch(() => undefined)) ?? fetch(request);

async function answer({ data, source }) {
  const isHere = await hasOwn();
  if (data === 'take over' && isHere) {
    await deleteOthers(own);
    await self.skipWaiting();
    source.postMessage({ isTaken: true });
    return;
  }
  const found = await findPage();
  // A browser lets no worker answer a download, so the page asks for the copy to hand over.
  const copy = data === 'copy' ? await found?.page.blob() : undefined;
  source.postMessage({
    copy,
    isReady: found !== undefined,
    isNewer: isHere && found?.name !== own,
  });
}

self.addEventListener('install', (event) => event.waitUntil(install()));
self.addEventListener('activate', (event) => event.waitUntil(self.clients.claim()));
self.addEventListener('message', (event) => event.waitUntil(answer(event)));
self.addEventListener('fetch', (event) => {
  const { request } = event;
  const { origin, pathname } = new URL(request.url);
  const isOurs = origin === self.location.origin && pathname.startsWith(scope);
  if (request.method !== 'GET' || !isOurs) return;
  const name = pathname.slice(scope.length);
  if (name === '' || name === 'index.html') event.respondWith(handOut(request));
  else if (name === 'app.webmanifest' || name.startsWith('icons/')) {
    event.respondWith(handOutBeside(request));
  }
});
