// Many feet, as the core is asked about them: whom the socks are for, and what wool there is.

/** @typedef {import('../ask.js').Good} Good */
/** @typedef {{ who: string, ageYears?: number, share?: number }} Group */

// One foot's own, and the leg's height, which goes by the foot here.
const ofOneFoot = new Set(['foot', 'girthEase', 'stitchCount', 'legHeightMm']);

/** @param {Good['request']} request */
function ofTheClass(request) {
  const kept = Object.entries(request).filter(([name]) => !ofOneFoot.has(name));
  const { yarn, ...others } = Object.fromEntries(kept);
  if (!yarn) return others;
  const { substitute: _other, ...own } = yarn;
  return { ...others, yarn: own };
}

/** @param {Record<string, any>} drive @returns {Group[]} those with any part in it */
function groupsOf({ women, men, children = [] }) {
  const grown = { woman: women, man: men };
  const ages = children.map((/** @type {number[]} */ [ageYears, share]) => ({
    who: 'child',
    ageYears,
    share,
  }));
  return [
    ...Object.entries(grown).flatMap(([who, share]) =>
      share === undefined ? [] : [{ who, share }],
    ),
    ...ages,
  ].filter(({ share }) => share !== 0);
}

/** @type {import('./desk_requests.js').Make} */
export function driveRequest({ request }, { drive = {} }) {
  const { pairs, sizes, wantedShare, legOfFoot, lots } = drive;
  const groups = groupsOf(drive);
  // Half a question is none: she is still typing it.
  if (pairs === undefined || groups.length === 0) return undefined;
  return {
    ...ofTheClass(request),
    drive: { pairs, groups, sizes, wantedShare, legOfFoot, lots },
  };
}

const fieldOf = /** @type {Record<string, string>} */ ({
  woman: '/drive/women',
  man: '/drive/men',
  child: '/drive/children',
});

/** The field that a problem's pointer stands for. @type {import('./desk_requests.js').Place} */
export function drivePlace(pointer, { drive: { groups } }) {
  const [, , list, item] = pointer.split('/');
  if (list !== 'groups' && pointer.startsWith('/drive/')) return pointer;
  // What is wrong with everybody's socks is told where their feet are.
  return fieldOf[(groups[Number(item)] ?? groups[0]).who];
}
