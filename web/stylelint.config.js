/** @type {import('stylelint').Config} */
export default {
  extends: ['stylelint-config-standard'],
  rules: {
    // Colours are named once, in tokens.css, so that light, dark, contrast and print change together.
    'color-no-hex': null,
    // Sections of one file may come back to a selector; order is read, not sorted.
    'no-descending-specificity': null,
    'declaration-no-important': true,
    // Prefixed properties do what the standard one cannot yet (text size on phones).
    'property-no-vendor-prefix': [true, { ignoreProperties: ['text-size-adjust', 'print-color-adjust'] }],
    'custom-property-empty-line-before': null,
    'comment-empty-line-before': null,
    'rule-empty-line-before': null,
    'declaration-empty-line-before': null,
  },
  overrides: [
    {
      files: ['**/style/*.css'],
      rules: { 'color-no-hex': null },
    },
  ],
};
