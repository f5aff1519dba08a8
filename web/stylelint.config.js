/** @type {import('stylelint').Config} */
export default {
  extends: ['stylelint-config-standard'],
  rules: {
    // Sections of one file may come back to a selector; order is read, not sorted.
    'no-descending-specificity': null,
    'declaration-no-important': true,
    // Prefixed properties do what the standard one cannot yet (text size on phones).
    'property-no-vendor-prefix': [
      true,
      { ignoreProperties: ['text-size-adjust', 'print-color-adjust'] },
    ],
    'custom-property-empty-line-before': null,
    'comment-empty-line-before': null,
    'rule-empty-line-before': null,
    'declaration-empty-line-before': null,
  },
};
