// The yarns that a class may use.

/** @typedef {string} Text */

export const classYarnWords = {
  all: (/** @type {Text[]} */ names) => `Your class uses yarn of weight ${names.join('; or ')}.`,
  chosen: (/** @type {Text} */ name) => `Chosen here is ${name}, which is none of them.`,
  ofSwatch: (/** @type {Text} */ name) =>
    `By its gauge (tension) your swatch is ${name}, which is none of them: show it to your teacher before you cast on.`,
};
