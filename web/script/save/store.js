// The one keeper of the browser's storage. Where there is none (a frame that is denied it, a private window, a full
// disk) the page goes on and says that it keeps nothing.

const sheetName = 'twinround/sheet';
const asideName = 'twinround/aside/';
const visitName = 'twinround/visit';

/** @typedef {{ sheet: unknown, isKept: boolean, aside: string }} Found `aside`: a text that could not be read */

/** @param {Window} view @returns {Storage | undefined} */
function areaOf(view) {
  try {
    const area = view.localStorage;
    // A store may be there to be read and refuse to be written.
    const probe = 'twinround/probe';
    area.setItem(probe, '1');
    area.removeItem(probe);
    return area;
  } catch {
    return undefined;
  }
}

/** @param {string | null} text @returns {unknown} nothing where it is no JSON */
function parse(text) {
  try {
    return text === null ? undefined : JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** What was set aside last. @param {Storage | undefined} area */
function lastAside(area) {
  const names = area ? Object.keys(area).filter((name) => name.startsWith(asideName)) : [];
  const name = names.sort().pop();
  return (name && area?.getItem(name)) || '';
}

/** @param {Window} view @param {(sheet: unknown) => boolean} canRead whether the page understands a sheet */
export function openStore(view, canRead) {
  const area = areaOf(view);
  let isKept = area !== undefined;
  // A text that could be neither read nor set aside is not written over.
  let isTaken = false;
  /** The sheet as this tab knows it to be kept. */
  let last = area?.getItem(sheetName) ?? null;

  /** What cannot be read is set aside under its time, never written over. @param {string} text */
  function setAside(text) {
    try {
      area?.setItem(`${asideName}${new Date().toISOString()}`, text);
      area?.removeItem(sheetName);
    } catch {
      isTaken = true;
      isKept = false;
    }
  }

  return {
    /** What was kept, and what of it could not be read. @returns {Found} */
    open() {
      const sheet = parse(last);
      const isGood = sheet !== undefined && canRead(sheet);
      if (last !== null && !isGood) setAside(last);
      return { sheet: isGood ? sheet : undefined, isKept, aside: lastAside(area) };
    },

    /** @param {unknown} sheet @returns {boolean} whether it is kept */
    keep(sheet) {
      const text = JSON.stringify(sheet);
      if (text === last || !area || isTaken) return isKept;
      try {
        area.setItem(sheetName, text);
        last = text;
        isKept = true;
      } catch {
        isKept = false;
      }
      return isKept;
    },

    /** What was made of a link's sock, for as long as that link stands in the address. @param {string} link @param {unknown} sheet */
    keepVisit(link, sheet) {
      try {
        area?.setItem(visitName, JSON.stringify({ link, sheet }));
      } catch {
        isKept = false;
      }
      return isKept;
    },

    /** @param {string} link @returns {unknown} */
    openVisit(link) {
      const visit = /** @type {any} */ (parse(area?.getItem(visitName) ?? null));
      return visit?.link === link && canRead(visit.sheet) ? visit.sheet : undefined;
    },

    /** Another tab has kept another sheet. @param {(sheet: unknown) => void} tell */
    listen(tell) {
      view.addEventListener('storage', ({ key, newValue }) => {
        if (key !== sheetName || newValue === null || newValue === last) return;
        last = newValue;
        const sheet = parse(newValue);
        if (canRead(sheet)) tell(sheet);
      });
    },
  };
}
