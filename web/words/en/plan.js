// The plan told: the hand note, what to buy, how to knit it.

/** @typedef {string} Text */

const plural = (/** @type {number} */ n, /** @type {string} */ one, /** @type {string} */ many) =>
  `${n} ${n === 1 ? one : many}`;

export const planWords = {
  note: {
    title: 'For the back of your hand',
    next: (/** @type {Text} */ wraps) => `next: wrap ${wraps} and ${wraps}`,
    wraps: 'wraps',
    stitches: 'stitches a round',
    toe: 'toe rounds',
    rounds: 'rounds in all',
    yarn: 'of yarn, the pair',
    giveOrTake: (/** @type {Text} */ yarn, /** @type {Text} */ margin) =>
      `Yarn: ${margin} to spare is in it; give or take ${yarn}.`,
  },

  choices: {
    lead: 'Each with its girth laid flat and its ease against the foot. Tap one to try it.',
    stitches: (/** @type {number} */ n) => `${n} stitches`,
    ease: (/** @type {Text} */ ease, /** @type {boolean} */ tighter) =>
      `${ease} ${tighter ? 'tighter' : 'wider'} than the foot`,
    heel: (/** @type {Text} */ use) => `heel takes ${use} of the stretch`,
    alike: 'halves alike',
    unlike: 'halves differ',
    advised: 'advised',
    own: 'your own',
    back: (/** @type {number} */ n) => `back to the advised ${n}`,
    noneAdvised: 'No count can be advised for this rib and foot; try another rib.',
    ribs: 'Ribs that would fit this foot at this gauge (tension):',
    rib: (/** @type {Text} */ rib, /** @type {number} */ n, /** @type {Text} */ ease) =>
      `${rib} on ${n} stitches, ${ease}`,
  },

  buy: {
    title: 'To buy',
    need: (/** @type {Text} */ yarn, /** @type {Text} */ also) =>
      `${yarn} (${also}) of yarn for the pair`,
    margin: (/** @type {Text} */ margin, /** @type {Text} */ bare) =>
      `${margin} to spare is in it; the pair itself takes ${bare}.`,
    mass: (/** @type {Text} */ mass, /** @type {Text} */ also) => `That is ${mass} (${also}).`,
    massGuessed: (/** @type {Text} */ mass, /** @type {Text} */ also) =>
      `That is about ${mass} (${also}), guessed from the yarn’s weight.`,
    balls: (/** @type {number} */ n) => plural(n, 'ball', 'balls'),
    just: 'just',
    spare: (/** @type {Text} */ spare) => `${spare} would be left over.`,
    twoYarns: (/** @type {Text} */ sock) =>
      `Each sock has its own yarn: ${sock} a sock, wound off, or both ends of one ball.`,
    eachYarn: 'Each sock has its own yarn: a ball each, or both ends of one ball.',
    yarn: 'Yarn',
    needle: 'Needle',
    needleSize: (/** @type {Text} */ mm, /** @type {Text} */ us, /** @type {Text} */ uk) =>
      [mm, us && `US ${us}`, uk && `UK ${uk}`].filter(Boolean).join(', '),
    // Circular needles are sold by round names; the core tells millimetres.
    cableSold: /** @type {Record<number, Record<string, string>>} */ ({
      1000: { metric: '100 cm', inch: '40 in' },
      1200: { metric: '120 cm', inch: '47 in' },
      1500: { metric: '150 cm', inch: '60 in' },
    }),
    cable: (/** @type {Text} */ length, /** @type {Text} */ also) =>
      `one long circular, ${length} (${also}), for both socks at once`,
    cableLeast: (/** @type {Text} */ length) => `This pair needs ${length} of cable at least.`,
    firmness: /** @type {Record<string, string>} */ ({
      loose: 'The fabric is loose for a sock.',
      usual: 'The fabric is as firm as hand-knit socks usually are.',
      firm: 'The fabric is firmer than hand-knit socks usually are.',
    }),
    time: (/** @type {Text} */ time, /** @type {Text} */ pace) =>
      `About ${time} of knitting for the pair${pace === '' ? '' : `, at ${pace} stitches a minute`}.`,
    sections: 'Yarn in one sock',
    part: 'part',
    length: 'yarn',
    also: 'that is',
    oneSock: 'one sock',
    pair: 'the pair',
    withMargin: 'with the margin',
  },

  knit: {
    title: 'To knit',
    castOn: {
      title: 'Cast on both',
      text: (/** @type {number} */ wraps, /** @type {number} */ stitches) => [
        `Lay the two tips side by side. Wrap yarn A ${wraps} times round both, then yarn B ${wraps} times beside it: a Turkish cast-on.`,
        `That is ${wraps} stitches on each tip for each sock, ${stitches} a sock. The slip knot is no stitch.`,
      ],
    },
    passes: {
      title: 'A round of the pair is four passes',
      list: ['A, first half', 'B, first half', 'turn', 'B, second half', 'A, second half', 'turn'],
    },
    toe: {
      title: 'The toe',
      increase: (/** @type {Text} */ line) =>
        `Increase round, on each half of each sock: ${line}. That adds 4.`,
      plain: 'All other rounds: knit.',
      allPlain: 'Every round: knit.',
      caption: 'Stitches of one sock after each toe round',
      round: 'round',
      work: 'work',
      half: 'a half',
      stitches: 'a sock',
      isIncrease: 'increase',
      isPlain: 'knit',
    },
    rib: {
      title: 'The rib',
      straightName: 'straight rib',
      straight: (/** @type {Text} */ rib, /** @type {Text} */ rounds) =>
        `${rib}, straight up, for ${rounds}.`,
      spiral: (/** @type {Text} */ rib, /** @type {Text} */ every, /** @type {Text} */ rounds) =>
        `${rib}, moving over one stitch every ${every}, for ${rounds}.`,
      period: (/** @type {number} */ n) => `After ${n} rounds it begins again.`,
      pitch: (/** @type {Text} */ degrees) => `It leans ${degrees} from upright.`,
      caption: 'One whole turn of the rib, counted from its first round',
      round: 'rounds',
      sock: 'sock',
      first: 'first half',
      second: 'second half',
      sockA: 'A',
      sockB: 'B',
      socks: 'A and B',
      forward:
        'Before a first purl bring the yarn forward between the tips, not over the needle; snug up the second stitch of each half.',
    },
    cuff: {
      title: 'The cuff, and off',
      none: 'There is no cuff.',
      text: (/** @type {Text} */ rounds) => `${rounds}, straight on from where the rib stands:`,
      halves: (/** @type {Text} */ sock, /** @type {Text[]} */ halves) => {
        const of = sock === '' ? '' : `${sock}, `;
        return halves.length === 1
          ? `${of}each half: ${halves[0]}.`
          : `${of}first half: ${halves[0]}; second half: ${halves[1]}.`;
      },
      bindOff: (/** @type {Text} */ yarn) =>
        `Bind off (cast off) loosely, so that the edge stretches as far as the rib: it takes ${yarn} of yarn a sock.`,
    },
    work: /** @type {Record<string, string>} */ ({ k: 'k', p: 'p', m1l: 'M1L', m1r: 'M1R' }),
    times: (/** @type {Text} */ runs, /** @type {number} */ n) => `*${runs}* ${n} times`,
    allHalf: /** @type {Record<string, string>} */ ({ k: 'knit', p: 'purl' }),
    toLast: 'knit to the last stitch',
  },

  cautions: { title: 'Mind', none: '' },
  workingTitle: 'How each figure came about',
  workingLead: 'Open one to see its rule, the numbers put in and where the rule comes from.',
  workingSource: 'From',
};
