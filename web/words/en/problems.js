// What is wrong, in words that say what would be right.

import { lostProblems } from './lost.js';

/** @typedef {Record<string, string>} Figures */

const plainNumber = 'a plain number';

/** @type {Record<string, (figures: Figures) => string>} */
export const problemWords = {
  ...lostProblems,
  // Told by the page, of what was typed.
  not_a_number: ({ typed }) => `“${typed}” is no number. Write 24.6, 24,6 or 9 1/2.`,
  ambiguous_number: ({ typed }) =>
    `“${typed}” can be read two ways. Leave out the sign between thousands.`,
  two_numbers: ({ typed }) => `“${typed}” is two numbers. A fraction is written 9 1/2.`,
  unknown_unit: ({ units }) => `That unit is not known here. Known: ${units || plainNumber}.`,
  not_in_list: ({ item }) =>
    `“${item}” is not understood. Write one after the other, with commas between, as in the example below the field.`,
  not_a_day: () => 'Write the day as 2027-01-31: year, month, day.',
  not_a_time: () => 'Write the time as 19:00.',
  wrong_unit: ({ units }) => `That unit does not fit here. What fits: ${units || plainNumber}.`,

  // Told by the core, of the request.
  required: () => 'This is needed.',
  needs_partner: ({ partner }) => `This goes together with “${partner}”: fill in both, or neither.`,
  out_of_range: ({ min, max }) => `Between ${min} and ${max}, please.`,
  not_whole: () => 'A whole number, please.',
  not_finite: () => 'This is no finite number.',
  number_too_large: () => 'This number is too large to be read.',
  wrong_type: ({ expected }) => `This should be ${expected}.`,
  unknown_word: ({ allowed }) => `One of these: ${allowed}.`,
  unknown_field: () => 'This is not a field of the sheet.',
  repeated_field: () => 'This is said twice.',
  too_many_items: ({ max }) => `At most ${max} of these.`,
  too_large_text: () => 'The sheet is too long to be read.',
  too_deep: () => 'The sheet is nested too deep to be read.',
  bad_json: () => 'The sheet cannot be read.',
  not_an_object: () => 'The sheet cannot be read.',
  newer_version: () => 'The sheet was made by a newer page. Reload this one.',

  // Told by the core, of the sock.
  count_out_of_range: ({ count, min, max, coarsestPer100Mm, finestPer100Mm, ribs }) =>
    `This girth at this gauge (tension) would take ${count} stitches; a sock here has ${min} to ${max}. A gauge of ${coarsestPer100Mm} to ${finestPer100Mm} stitches over 10 cm would do${
      ribs ? `, or a rib of ${ribs}` : ''
    }.`,
  heel_out_of_reach: ({ heelMm, max, byEase }) =>
    `The foot asks for ${byEase} stitches, but not even ${max} would stretch over a heel ${heelMm} round. Measure the heel again, and look at the swatch.`,
  not_a_count: ({ given, below, above }) => {
    const near = [below, above].filter(Boolean).join(' and ');
    return `${given} is no count for this rib: even, and whole repeats.${near ? ` Nearest: ${near}.` : ''}`;
  },
  leg_too_short: ({ leastMm }) =>
    `The leg would end below the bend of the ankle. At least ${leastMm}, with this cuff.`,
  no_room_for_rib: ({ leastMm }) => `Toe and cuff take it all. At least ${leastMm} of leg, please.`,
  leg_too_wide: ({ heightMm = '', girthMm, use }) => {
    const isAll = heightMm.startsWith('0 ');
    const where = isAll ? 'all the way up' : `from ${heightMm} above the floor`;
    const lower = isAll ? '' : `End the leg below ${heightMm}; or choose`;
    return `Too wide ${where}: ${girthMm} round takes ${use} of all the stretch, even of the widest this rib can grow, and 85 % is the most to plan for. ${
      lower || 'Choose'
    } a rib of fewer stitches, for it has more repeats to widen; or swatch on a larger needle.`;
  },
  no_room_to_widen: ({ rounds, stages }) =>
    `The leg has to widen ${stages === '1' ? 'once' : `${stages} times`}, and the rib has ${
      rounds === '1' ? 'one round' : `${rounds} rounds`
    } in all, too few of them below the place where the leg grows wide. A shorter cuff or toe leaves more, and a leg that ends lower needs less.`,
  too_many_rounds: ({ rounds, max }) => `That is ${rounds} rounds; at most ${max} can be planned.`,
  past_the_plan: ({ totalRounds }) => `The plan has ${totalRounds} rounds, no more.`,
  more_than_a_layer: ({ layer }) =>
    `One layer of the tube, laid flat, has ${layer} stitches at most. Count one layer only.`,
  more_rounds_than_done: ({ roundsDone }) =>
    `${roundsDone === '1' ? 'Only one round is' : `Only ${roundsDone} rounds are`} done. Count again, or put the rounds done right.`,
  stretched_too_narrow: ({ widthMm }) => `Pulled, it must be wider than at rest (${widthMm}).`,
  shoe_out_of_range: ({ lengthMm, min, max }) =>
    `That size is a foot of ${lengthMm}; feet from ${min} to ${max} are known. Is it the right scale?`,
  girth_out_of_range: ({ girthMm }) =>
    `That size would be a foot ${girthMm} round, out of range. Measure the foot instead.`,

  // Told by the core, of many feet.
  nobody_served: () =>
    'No sock of this fabric goes over anybody’s heel and still stays on. Look at the gauge (tension), the stretched width and their units.',

  // Told by the core, of stripes.
  too_many_bands: () => 'So short a repeat makes no stripes: the colour would change all the time.',
};
