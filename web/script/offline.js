// The page's side of its service worker: asks for one, hears whether the page is kept, and takes a newer one on a yes.
import { handOver } from './download.js';

/**
 * @typedef {object} Offline
 * @property {boolean} isFile whether this is a copy on a disk
 * @property {boolean} isHosted whether the page has an address that it could be had from again
 * @property {boolean} isBarred whether no worker may be had here
 * @property {boolean} isReady whether the page opens without a signal
 * @property {boolean} isNewer whether a newer version waits for a yes
 */

// Whatever a script might ask for, this is the one address that becomes a worker.
const address = 'sw.js';

/** @param {any} view */
const trusted = (view) =>
  view.trustedTypes
    ?.createPolicy('twinround', { createScriptURL: () => address })
    .createScriptURL(address) ?? address;

/** @param {Window} view @param {(said: Partial<Offline>) => void} hear @param {() => boolean} isReady */
async function startWorker(view, hear, isReady) {
  // The page around a frame has not asked for a worker. Where there may be none, asking throws.
  if (view.top !== view) throw new Error('in a frame');
  const workers = view.navigator.serviceWorker;
  const registration = await workers.register(trusted(view));
  const ask = (/** @type {string} */ what) =>
    (registration.waiting ?? registration.active)?.postMessage(what);
  const follow = () =>
    registration.installing?.addEventListener('statechange', () => ask('how is it'));
  workers.addEventListener('message', ({ data }) => {
    const { isTaken, copy, ...said } = data;
    // Only where she said yes: another tab stays as it is until she says so there.
    if (isTaken) view.location.reload();
    else hear(said);
    if (copy) handOver(view.document, copy, 'twinround.html');
  });
  registration.addEventListener('updatefound', follow);
  view.document.addEventListener('click', (event) => {
    const { target } = event;
    if (!(target instanceof Element)) return;
    if (target.closest('[data-take-over]')) ask('take over');
    if (isReady() && target.closest('[data-copy]')) {
      event.preventDefault();
      ask('copy');
    }
  });
  follow();
  ask('how is it');
}

/** @param {Document} document @param {(offline: Offline) => void} tell */
export function watchOffline(document, tell) {
  const { protocol } = document.location;
  let offline = {
    isFile: protocol === 'file:',
    isHosted: protocol.startsWith('http'),
    isBarred: false,
    isReady: false,
    isNewer: false,
  };
  const hear = (/** @type {Partial<Offline>} */ said) => {
    // The page in this tab stays the older one, even when the newer was taken in another.
    const isNewer = offline.isNewer || Boolean(said.isNewer);
    tell((offline = { ...offline, ...said, isNewer }));
  };
  hear({});
  if (!offline.isHosted) return;
  const view = /** @type {Window} */ (document.defaultView);
  startWorker(view, hear, () => offline.isReady).catch(() => hear({ isBarred: true }));
}
