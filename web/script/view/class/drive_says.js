// What there is to say of sizes for many feet, as text: for the page, for paper and for a mail.
import { bandWords, driveCautions, driveWords as words } from '../../../words/en.js';
import {
  formatCount,
  formatNumber,
  formatPercent,
  formatPercentAway,
  formatTime,
} from '../../units.js';
import { sayShoes } from '../paper/band.js';
import { figuresIn } from '../figures.js';
import { sayMargin } from '../give_or_take.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {Showing['system']} System */
/** @typedef {import('../../contract.js').Drive} Drive */
/** @typedef {Drive['sizes'][number]} Size */
/** @typedef {import('../../contract.js').DriveRequest} Request */
/** @typedef {Request['drive']['groups'][number]} Group */

/** Never rounded up, so that what is not reached does not read as if it were. @param {number} share */
export const sayShare = (share) => formatPercentAway(share, false);

export const sayWanted = (/** @type {Drive} */ { wantedShare }) => formatPercent(wantedShare, 1);

/** @param {Drive} reply @param {Request} request */
function sayEnough(reply, request) {
  const { isReached, isFewest, sizes } = reply;
  const { enough } = words;
  const wanted = sayWanted(reply);
  const isOwn = request.drive.sizes !== undefined;
  if (!isReached) return isOwn && enough.isShort(wanted);
  // Fewer than one is none.
  if (isOwn || sizes.length === 1) return enough.isReached(wanted);
  return isFewest ? enough.isFewest(wanted) : enough.isOpen(wanted);
}

/** The answer, and whether it is as few sizes as can be. @param {Drive} reply @param {Request} request */
export const sayAnswer = (reply, request) =>
  [
    words.serves(
      formatCount(reply.sizes.length),
      sayShare(reply.share),
      formatNumber(reply.shareError * 100, 1),
    ),
    sayEnough(reply, request),
  ].filter((text) => typeof text === 'string');

/** @param {Group[]} groups */
function sayWhom(groups) {
  const isEven = groups.every(({ share }) => share === groups[0].share);
  const each = groups.map(({ who, ageYears, share = 1 }) => {
    const named = words.who[who](String(ageYears));
    return isEven ? named : words.parts(named, formatNumber(share, 2));
  });
  const last = each.slice(-2).join(words.and);
  return [...each.slice(0, -2), last].join(', ');
}

/** @param {Drive} reply @param {Request} request @param {Showing} showing */
export const sayCaption = ({ legOfFoot = 0 }, { drive }, showing) =>
  words.caption(
    formatCount(drive.pairs),
    sayWhom(drive.groups),
    formatPercent(legOfFoot, 1),
    sayMargin(showing),
  );

/** @param {number} from @param {number} to @param {System} system */
function sayRange(from, to, system) {
  const { length } = figuresIn(system);
  return bandWords.range(length(from), length(to));
}

/** Whose feet they are, where they are not all of one kind. @param {Size} size */
function sayParts({ women, men, children }) {
  const parts = Object.entries({ women, men, children }).filter(([, share]) => share >= 0.001);
  return parts.length < 2
    ? []
    : parts.map(([who, share]) =>
        words.part(words.ofWhom[/** @type {keyof typeof words.ofWhom} */ (who)], sayShare(share)),
      );
}

/** What stands in a size's cells, line by line. @param {Size} size @param {System} system */
export function saySize(size, system) {
  const { length, yarn, mass } = figuresIn(system);
  const { band } = size;
  return {
    pairs: [formatCount(size.pairs), words.hours(formatTime(size.minutes))],
    sock: [
      words.stitches(formatCount(size.stitchCount)),
      words.rounds(formatCount(size.totalRounds)),
      words.long(length(size.lengthMm)),
      words.leg(length(size.legHeightMm)),
    ],
    feet: [
      sayRange(band.footFromMm, band.footToMm, system),
      ...sayShoes(band.shoes),
      words.fits(sayRange(band.fitsFromMm, band.fitsToMm, system)),
    ],
    serves: [sayShare(size.share), ...sayParts(size)],
    yarn: [words.aPair(yarn(size.mPerPair)), words.inAll(yarn(size.m), mass(size.g))],
  };
}

/** Wool for all pairs. @param {Drive} reply @param {Request} request @param {System} system */
export function sayWool({ wool }, { yarn: label }, system) {
  const { yarn, mass } = figuresIn(system);
  const { balls, massGuessed } = wool;
  return [
    words.wool.all(yarn(wool.m), mass(wool.g)),
    balls === undefined
      ? words.wool.noBall
      : words.wool.balls(formatCount(balls), mass(Number(label?.ballG))),
    ...(massGuessed ? [words.wool.guessed] : []),
  ];
}

/** A lot by both its figures. @param {Drive} reply @param {number} at @param {System} system */
export function sayLot({ atHand }, at, system) {
  const { yarn, mass } = figuresIn(system);
  const lot = atHand?.lots[at];
  return lot ? words.lots.name(mass(lot.g), yarn(lot.m)) : '';
}

const ofShares = new Set(['share_not_reached', 'better_not_ruled_out']);

/** @param {Drive['cautions'][number]} caution @param {Drive} reply @param {System} system */
function sayCaution(caution, reply, system) {
  const { code, field, message, ...numbers } = caution;
  const write = ofShares.has(code) ? sayShare : formatCount;
  const figures = Object.entries(numbers).map(([name, value]) => [name, write(Number(value))]);
  const at = /\/lots\/(\d+)/.exec(field)?.[1];
  return (
    driveCautions[code]?.({
      ...Object.fromEntries(figures),
      lot: at ? sayLot(reply, Number(at), system) : '',
    }) ?? message
  );
}

/** Those of the wool at hand, or all others. @param {Drive} reply @param {System} system @param {boolean} isOfLots */
export const sayCautions = (reply, system, isOfLots) =>
  reply.cautions
    .filter(({ field }) => field.startsWith('/drive/lots') === isOfLots)
    .map((caution) => sayCaution(caution, reply, system));
