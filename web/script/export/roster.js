// A class seat by seat, as a table for a spreadsheet; and what it takes together as text for a mail.
import { plainNumber, unitsIn } from './numbers.js';
import { needleRows, oddGauges, sayPlanned, woolRows } from '../view/class/roster.js';
import { rosterRows } from '../view/class/roster_rows.js';
import { rosterWords as words } from '../../words/en.js';

/** @typedef {import('../view/showing.js').Showing} Showing */

/** Every row as pasted, those without a sock with what is in its way. @param {Showing} showing */
export function rosterTable(showing) {
  const [length, yarn, mass] = unitsIn(showing.system);
  const heads = words.csv(length, yarn, mass);
  const rows = rosterRows(showing).map(({ seat, line, odd, faults }) => {
    if (!line) {
      const why = faults.map(({ column, text }) => [column, text].filter(Boolean).join(': '));
      return [seat, ...heads.slice(2).map(() => ''), words.none + why.join(' ')];
    }
    const { mWithMargin, yarnError, gWithMargin, ball, needle, minutes, minutesError } = line;
    return [
      seat,
      line.stitchCount,
      line.totalRounds,
      plainNumber(mWithMargin, yarn),
      plainNumber(mWithMargin * yarnError, yarn),
      plainNumber(gWithMargin, mass),
      ball?.count ?? '',
      needle.mm,
      plainNumber(needle.cableMm, length),
      plainNumber(minutes, ''),
      plainNumber(minutes * minutesError, ''),
      odd.join('; '),
    ];
  });
  return [heads, ...rows];
}

/** @param {Showing} showing */
export function rosterText(showing) {
  const reply = showing.beside?.roster.reply;
  if (!reply) return words.title;
  const { system } = showing;
  /** @type {Array<[{ caption: string, heads: string[] }, ReturnType<typeof woolRows>]>} */
  const totals = [
    [words.wool, woolRows(reply, system)],
    [words.needles, needleRows(reply, system)],
  ];
  return [
    words.title,
    sayPlanned(showing),
    ...oddGauges(showing),
    ...totals.flatMap(([{ caption, heads }, rows]) => [
      '',
      caption,
      ...rows.map(
        ({ name, cells }) =>
          `${name}: ${cells
            .map((cell, i) => cell && `${heads[i + 1].toLowerCase()} ${cell}`)
            .filter(Boolean)
            .join('; ')}`,
      ),
    ]),
  ].join('\n');
}
