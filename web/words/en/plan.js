// The plan told: the counts to choose from, how to knit the pair.
import { widerWords } from './wider.js';

/** @typedef {string} Text */

export const planWords = {
  choices: {
    lead: 'Five counts, each with its girth, the rib eased open, and how much smaller than the foot that is. Tap one to try it.',
    stitches: (/** @type {number} */ n) => `${n} stitches`,
    ease: (/** @type {Text} */ ease, /** @type {boolean} */ smaller) =>
      `${ease} ${smaller ? 'smaller' : 'larger'}`,
    yarn: (/** @type {Text} */ yarn) => `${yarn} knitted up`,
    heel: (/** @type {Text} */ use, /** @type {boolean} */ passes) =>
      passes ? `over the heel: ${use} of the stretch` : `too tight for the heel (${use})`,
    alike: 'both halves read the same',
    unlike: 'the halves read differently',
    advised: 'advised',
    own: 'your own',
    back: (/** @type {number} */ n) => `back to the advised ${n}`,
    noneAdvised: 'No count can be advised for this rib and foot; try another rib.',
    nearest: 'nearest',
    ribs: 'Ribs that fit this foot better at this gauge (tension). Tap one to try it:',
    rib: (/** @type {Text} */ rib, /** @type {number} */ n, /** @type {Text} */ ease) =>
      `${rib} on ${n} stitches, ${ease}`,
  },

  knit: {
    title: 'To knit',
    noHeel:
      'These socks have no heel: from the toe to the cuff they go straight on, and the spiral lets the tube settle round the foot.',
    passes: {
      list: ['A, first half', 'B, first half', 'turn', 'B, second half', 'A, second half', 'turn'],
      turn: 'To turn: slide the waiting stitches onto the left tip, draw the right tip out of the ones just knit, and let those rest on the cable.',
    },
    toe: {
      title: 'The toe',
      increase: (/** @type {Text} */ line) =>
        `Increase round, on each half of each sock: ${line}. That adds 4.`,
      made: 'M1R: lift the strand between the needles from back to front and knit its front leg. M1L: lift it from front to back and knit its back leg.',
      plain: 'All other rounds: knit.',
      allPlain: 'Every round: knit.',
      caption: 'Stitches of one sock after each toe round',
      lead: 'The great-toe side widens first, the other side more slowly. On A the great toe lies where a round begins: the start of the first half and the end of the second. B is its mirror.',
      bothSides: (/** @type {Text} */ line) =>
        `Increase both sides, on each half of each sock: ${line}. That adds 4.`,
      sided: /** @type {Record<string, (a: Text, b: Text) => Text>} */ ({
        great: (a, b) => `Great-toe side. A: ${a}. B: ${b}. That adds 2 to each.`,
        little: (a, b) => `Other side. A: ${a}. B: ${b}. That adds 2 to each.`,
      }),
      halves: (/** @type {Text} */ first, /** @type {Text} */ second) =>
        `first half ${first}; second half ${second}`,
      work: /** @type {Record<string, Text>} */ ({
        none: 'knit',
        both: 'increase both sides',
        great: 'great-toe side',
        little: 'other side',
      }),
      round: 'round',
      workHead: 'work',
      half: 'a half',
      stitches: 'a sock',
      isIncrease: 'increase',
      isPlain: 'knit',
    },
    rib: {
      title: 'The rib',
      straightName: 'straight rib',
      brokenName: 'broken rib',
      mossName: 'moss (seed) stitch',
      straight: (/** @type {Text} */ rib, /** @type {Text} */ rounds) =>
        `${rib}, straight up, for ${rounds}.`,
      spiral: (/** @type {Text} */ rib, /** @type {Text} */ every, /** @type {Text} */ rounds) =>
        `${rib}, moving over one stitch every ${every}, for ${rounds}.`,
      everyRound: 'round',
      period: (/** @type {number} */ n, /** @type {number} */ times, /** @type {number} */ rest) =>
        `Work rounds 1–${n} of the table ${times === 1 ? 'once' : `${times} times`}${
          rest === 0 ? '' : `, then rounds 1–${rest} once more`
        }.`,
      pitch: (/** @type {Text} */ degrees, /** @type {Text} */ way) =>
        `Going up, the ribs lean ${degrees} ${way}.`,
      leans: /** @type {Record<string, string>} */ ({
        left: 'to the left',
        right: 'to the right',
        mirrored: 'to the left on A, to the right on B',
      }),
      caption: 'One whole turn of the rib, counted from its first round',
      round: 'rounds',
      sock: 'sock',
      first: 'first half',
      second: 'second half',
      each: 'each half',
      sockA: 'A',
      sockB: 'B',
      socks: 'A and B',
      forward:
        'Where a half begins with a purl, bring the yarn forward between the tips first, not over the needle; snug up the second stitch of each half.',
      reading: 'k knit, p purl; *…* 4 times: work what stands between the stars 4 times in all.',
    },
    cuff: {
      title: 'The cuff',
      none: 'There is no cuff.',
      text: (/** @type {Text} */ rounds) => `${rounds}, straight on from where the rib stands:`,
      halves: (/** @type {Text} */ sock, /** @type {Text[]} */ halves) => {
        const of = sock === '' ? '' : `${sock}, `;
        return halves.length === 1
          ? `${of}each half: ${halves[0]}.`
          : `${of}first half: ${halves[0]}; second half: ${halves[1]}.`;
      },
      at: (/** @type {Text} */ length) => `The cuff begins ${length} from the tip of the toe.`,
    },
    wider: widerWords,
    ankle: {
      title: 'At the ankle',
      way: (/** @type {Text} */ share, /** @type {boolean} */ isLonger) =>
        `${isLonger ? 'longer' : 'shorter'} than the sock by ${share} of its length`,
      text: (
        /** @type {Text} */ back,
        /** @type {Text} */ front,
        /** @type {boolean} */ isStretched,
        /** @type {boolean} */ isBunched,
      ) =>
        `Behind, the way from the toe under the heel and up the leg is ${back}: there it ${
          isStretched ? 'stretches' : 'lies easy'
        }. In front, over the bend, it is ${front}: there ${isBunched ? 'the cloth folds or bunches' : 'it is drawn long'}.`,
      why: 'That is what a sock without a heel trades. In return it has no heel that must sit in one place: it turns as it likes, wears all round, and fits many feet.',
    },
    work: /** @type {Record<string, string>} */ ({
      k: 'k',
      p: 'p',
      m1l: 'M1L',
      m1r: 'M1R',
      m1p: 'M1P',
    }),
    times: (/** @type {Text} */ runs, /** @type {number} */ n) => `*${runs}* ${n} times`,
    allHalf: /** @type {Record<string, string>} */ ({ k: 'knit', p: 'purl' }),
    toLast: 'knit to the last stitch',
    toEnd: 'knit to the end',
  },

  cautions: { title: 'Watch for', none: '' },
};
