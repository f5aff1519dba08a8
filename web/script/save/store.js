// The one keeper of the browser's storage: texts by name. Where there is none (a frame that is denied it, a private
// window, a full disk) they last as long as the page is open, and the page says so.

const root = 'twinround/';
const aside = 'aside/';

/** @typedef {Pick<Storage, 'getItem' | 'setItem' | 'removeItem'> & { names: () => string[] }} Area */

/** @returns {Area} what lasts as long as the page is open */
function memory() {
  /** @type {Map<string, string>} */
  const texts = new Map();
  return {
    getItem: (name) => texts.get(name) ?? null,
    setItem: (name, text) => void texts.set(name, text),
    removeItem: (name) => void texts.delete(name),
    names: () => [...texts.keys()],
  };
}

/** @param {Storage} area */
function isWritable(area) {
  const probe = `${root}probe`;
  try {
    area.setItem(probe, '1');
    area.removeItem(probe);
    return true;
  } catch {
    return false;
  }
}

/** @param {Window} view @returns {Area | undefined} */
function areaOf(view) {
  try {
    const area = view.localStorage;
    const names = () => Object.keys(area);
    // A store may be there to be read and refuse to be written: of no use then, but where something is kept. That a full
    // disk still gives, and lets a text be written over by one as long.
    if (!isWritable(area) && !names().some((name) => name.startsWith(root))) return undefined;
    return {
      getItem: (name) => area.getItem(name),
      setItem: (name, text) => area.setItem(name, text),
      removeItem: (name) => area.removeItem(name),
      names,
    };
  } catch {
    return undefined;
  }
}

/** @param {Window} view */
export function openStore(view) {
  const found = areaOf(view);
  const area = found ?? memory();
  /** Names whose text as it is now could not be kept. @type {Set<string>} */
  const unkept = new Set();
  /** Texts as this tab knows them to be kept. @type {Map<string, string | null>} */
  const known = new Map();
  /** Names whose text could be neither read nor set aside: not written over. @type {Set<string>} */
  const taken = new Set();

  const names = (/** @type {string} */ prefix) =>
    area
      .names()
      .filter((name) => name.startsWith(root + prefix))
      .map((name) => name.slice(root.length))
      .sort();

  /** Over whatever is there. @param {string} name @param {string} text */
  function put(name, text) {
    unkept.add(name);
    if (taken.has(name)) return;
    try {
      area.setItem(root + name, text);
      known.set(name, text);
      unkept.delete(name);
    } catch {
      // Told by isKept.
    }
  }

  return {
    names,

    /** Whether all is kept, and for longer than the page is open. */
    isKept: () => found !== undefined && unkept.size === 0,
    /** @param {string} name */
    isKeptAs: (name) => !unkept.has(name),

    /** @param {string} name */
    read: (name) => area.getItem(root + name),

    /** Reads a text that this tab is going to write. @param {string} name */
    open(name) {
      const text = area.getItem(root + name);
      known.set(name, text);
      return text;
    },

    /**
     * Never over what another tab has written meanwhile.
     * @param {string} name @param {string} text @returns {string | undefined} what it has written
     */
    write(name, text) {
      const there = area.getItem(root + name);
      if (there !== null && there !== (known.get(name) ?? null)) return there;
      if (text !== there) put(name, text);
      return undefined;
    },

    put,

    /** @param {string} name */
    remove(name) {
      area.removeItem(root + name);
      known.delete(name);
      unkept.delete(name);
    },

    /** Removed where it stands as this tab knows it. @param {string} name */
    removeKnown(name) {
      if (area.getItem(root + name) === (known.get(name) ?? null)) this.remove(name);
    },

    /** What cannot be read is set aside under its time, never written over. @param {string} name */
    setAside(name) {
      const text = area.getItem(root + name) ?? '';
      try {
        area.setItem(`${root}${aside}${new Date().toISOString()} ${name}`, text);
        area.removeItem(root + name);
      } catch {
        taken.add(name);
        unkept.add(name);
      }
    },

    /** All that was set aside: the text, or of several each under its name; '' where there is none. */
    allAside() {
      const texts = names(aside).map((name) => [name, area.getItem(root + name) ?? '']);
      if (texts.length === 1) return texts[0][1];
      return texts.length === 0 ? '' : JSON.stringify(Object.fromEntries(texts), null, 1);
    },

    /** Another tab has written a text, or removed it. @param {(name: string, text: string | null) => void} tell */
    listen(tell) {
      view.addEventListener('storage', ({ key, newValue }) => {
        if (key?.startsWith(root)) tell(key.slice(root.length), newValue);
      });
    },
  };
}
