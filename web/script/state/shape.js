// What a value that came from elsewhere is, before anything is made of it.

/** @param {unknown} value @param {number} longest @returns {value is string} */
export const isText = (value, longest) => typeof value === 'string' && value.length <= longest;

/** @param {unknown} value @returns {value is Record<string, any>} */
export const isRecord = (value) =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/**
 * Whether a value is built as another one is: every name it has, every list of the same kind of things. A number
 * is no more than ten times any that a plan can hold.
 * @param {unknown} like @param {unknown} value @returns {boolean}
 */
export function isLike(like, value) {
  if (Array.isArray(like)) {
    return (
      Array.isArray(value) &&
      value.length <= 5000 &&
      (like.length === 0 || value.every((one) => like.some((sample) => isLike(sample, one))))
    );
  }
  if (isRecord(like)) {
    return isRecord(value) && Object.keys(like).every((name) => isLike(like[name], value[name]));
  }
  if (typeof like === 'number') return Number.isFinite(value) && Math.abs(Number(value)) < 1e6;
  return typeof value === typeof like;
}
