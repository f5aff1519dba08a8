// A second reader of links, written from the description of versions 1 and 2 and sharing nothing with the
// core: whole numbers of any size instead of letters divided by hand, fractions instead of grids. It
// reads links that are whole; it judges none.

const letters = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz';
const numberOf = (text) =>
  [...text].reduce((sum, letter) => sum * 62n + BigInt(letters.indexOf(letter)), 0n);

/** Half millimetres and eightieths of an inch within a range in millimetres. */
const length = (min, max) => [
  ['cm', 20, min * 2, max * 2],
  ['in', 80, Math.ceil((min / 25.4) * 80 - 1e-9), Math.floor((max / 25.4) * 80 + 1e-9)],
];
const parts = (unit, below, min, max) => [[unit, below, min * below, max * below]];
const percent = (min, max) => parts('%', 2, min, max);
const whole = (min, max) => parts('', 1, min, max);
const ballMass = [...parts('g', 2, 5, 2000), ['oz', 100, 18, 7054]];
const ballLength = [...parts('m', 2, 5, 5000), ['yd', 2, 11, 10936]];

const reading = {
  stitches: parts('', 4, 1, 400),
  widthMm: length(10, 500),
  rounds: parts('', 4, 1, 600),
  heightMm: length(10, 500),
};
const groups = [
  { '/swatch': 'swatch label', '/foot': 'tape shoe' },
  {
    '/foot/lengthMm': length(80, 400),
    '/foot/ballGirthMm': length(80, 400),
    '/foot/heelAnkleGirthMm': length(80, 600),
    '/foot/ankleGirthMm': length(80, 600),
    '/foot/calfGirthMm': length(80, 700),
    '/legHeightMm': length(40, 700),
  },
  {
    '/swatch/needleMm': parts('mm', 20, 1, 25),
    '/yarn/category': whole(0, 7),
    '/yarn/ballG': ballMass,
    '/yarn/ballM': ballLength,
  },
  {
    '/cuffMm': length(0, 300),
    '/rib/knit': whole(1, 12),
    '/rib/purl': whole(1, 12),
    '/rib/roundsPerShift': whole(0, 40),
    '/rib/lean': 'left right mirrored',
  },
  {
    '/swatch/fabric': 'stockinette rib',
    '/swatch/washed': 'true false',
    '/girthEase': percent(-40, 20),
    '/lengthEase': percent(-20, 20),
    '/toe/share': percent(5, 50),
    '/toe/tipShare': percent(10, 100),
    '/toe/shape': 'round even left-right',
    '/pace/stitchesPerMinute': parts('', 2, 1, 200),
    '/yarnMargin': percent(0, 100),
  },
  {
    '/foot/shoe/scale': 'mondopoint eu us-men us-women uk',
    '/foot/shoe/size': parts('', 6, 0, 400),
    '/foot/body': 'woman man child',
  },
  { '/yarn/substitute/ballG': ballMass, '/yarn/substitute/ballM': ballLength },
  {
    '/swatch/stretchedWidthMm': length(10, 1500),
    '/swatch/massG': [...parts('g', 10, 0.5, 200), ['oz', 100, 2, 705]],
    '/swatch/massStitches': whole(50, 20000),
  },
];

/** Takes values off a number, the first one first. */
function takerOf(number) {
  let left = number;
  return (radix) => {
    const value = Number(left % BigInt(radix));
    left /= BigInt(radix);
    return value;
  };
}

/** Not said, emptied in each unit, then the values of each unit. */
function takeField(take, how) {
  if (typeof how === 'string') {
    const words = how.split(' ');
    const code = take(2 + words.length);
    return code === 0 ? undefined : { unit: '', typed: words[code - 2] ?? '' };
  }
  const sizes = how.map(([, , first, last]) => last - first + 1);
  let code = take(1 + how.length + sizes.reduce((sum, size) => sum + size));
  if (code === 0) return undefined;
  if (code <= how.length) return { unit: how[code - 1][0] };
  code -= 1 + how.length;
  const unit = code < sizes[0] ? 0 : 1;
  const [name, below, first] = how[unit];
  return { unit: name, value: (first + code - (unit === 0 ? 0 : sizes[0])) / below };
}

function takeAll(take, hows, at, into) {
  for (const [pointer, how] of Object.entries(hows)) {
    const said = takeField(take, how);
    if (said) into[`${at}${pointer}`] = said;
  }
}

/** What a class says: a title, a note, and in version 2 the yarns that it may use, one bit each. */
function readWords(text, version) {
  const take = takerOf(numberOf(text));
  const [title, note] = [60, 280].map((most) =>
    Buffer.from(Array.from({ length: take(most * 4 + 1) }, () => take(256))).toString('utf8'),
  );
  const allowed = version === '2' ? take(256) : 0;
  const yarns = [...Array(8).keys()].filter((category) => (allowed >> category) & 1);
  return {
    ...(title && { title }),
    ...(note && { note }),
    ...(yarns.length > 0 && { yarns }),
  };
}

/** @param {string} link @returns {object} what the core's reply says of it, fields by pointer */
export function readLink(link) {
  const [plan, words = ''] = link.split('_');
  const take = takerOf(numberOf(plan.slice(7)));
  take(2);
  const view = [undefined, 'buy', 'count', 'knit', 'class'][take(5)];
  const system = [undefined, 'metric', 'inch'][take(3)];
  const locked = take(8);
  const locks = ['rib', 'toe', 'yarn'].filter((_, bit) => (locked >> bit) & 1);
  const fields = {};
  const readings = take(13);
  for (let row = 0; row < readings; row += 1) {
    takeAll(take, reading, `/swatch/readings/${row}/`, fields);
  }
  for (const group of groups) if (take(2) === 1) takeAll(take, group, '', fields);
  const echo = { rules: take(100) };
  const totalRounds = take(2001);
  const own = take(3);
  const stitches = own === 2 || totalRounds > 0 ? 8 + take(393) : 0;
  if (own > 0) fields['/stitchCount'] = { unit: '', ...(own === 2 && { value: stitches }) };
  if (totalRounds > 0) Object.assign(echo, { stitchCount: stitches, totalRounds });
  return {
    fields,
    ...(view && { view }),
    ...(system && { system }),
    locks,
    ...readWords(words.slice(2), link[0]),
    echo,
  };
}

/** The check in the six letters, likewise. @param {string} link */
export function checkOf(link) {
  const [version, behind] = [link[0], link.slice(7)];
  let check = BigInt(letters.indexOf(version));
  for (const letter of behind) {
    const value = letter === '_' ? 62 : letters.indexOf(letter);
    check = (check * 31415926n + BigInt(value) + 1n) % (2n ** 28n - 57n);
  }
  return check * 144n + BigInt(link.split('_')[0].length - 7) === numberOf(link.slice(1, 7));
}
