// Dark by choice: the style's dark colours, which stand in it once, for those whose system asks for them.

const asked = '(prefers-color-scheme: dark)';
/** @type {WeakSet<CSSMediaRule>} */
const turned = new WeakSet();

/** @param {Document} document @param {boolean} isOn */
export function setNight(document, isOn) {
  document.documentElement.toggleAttribute('data-night', isOn);
  for (const sheet of document.styleSheets) {
    for (const rule of sheet.cssRules) {
      if (!(rule instanceof CSSMediaRule)) continue;
      if (!turned.has(rule) && rule.conditionText !== asked) continue;
      turned.add(rule);
      rule.media.mediaText = isOn ? 'screen' : asked;
    }
  }
}
