// What a teacher gives her class: the link, the code to photograph, and what to paste into a course page.
import { keptWords, lessonWords as words } from '../../../words/en.js';
import { viewCode } from '../page/code.js';

/** @typedef {import('../dom.js').Make} Make */

// High enough for a phone's first screen; the page scrolls inside.
const fixedHeight = 900;

/** In an attribute of somebody else's page. @param {string} text */
const quoted = (text) => text.replaceAll('&', '&amp;').replaceAll('"', '&quot;');

/** @param {string} url */
export const frameFor = (url) =>
  `<iframe id="twinround" src="${quoted(url)}" title="${words.frameTitle}"
  style="width: 100%; height: ${fixedHeight}px; border: 0" loading="lazy"
  sandbox="allow-scripts allow-same-origin allow-forms allow-popups allow-modals allow-downloads"
  allow="web-share; clipboard-write; screen-wake-lock"></iframe>`;

export const linesForHost = `<script>
addEventListener('message', ({ source, data }) => {
  const frame = document.getElementById('twinround');
  const height = data && data.twinround && data.twinround.height;
  if (source === frame.contentWindow && height > 0) frame.style.height = height + 'px';
});
</script>`;

/** @param {Make} h @param {Document} document @param {string} url @param {boolean} [isCopied] */
export function viewLesson(h, document, url, isCopied = false) {
  const text = (
    /** @type {string} */ id,
    /** @type {string} */ label,
    /** @type {string} */ value,
  ) => [
    h('label', { for: id }, label),
    h('textarea', { id, readonly: '', rows: '6', spellcheck: 'false' }, value),
  ];
  return [
    h('label', { for: 'lesson-link' }, words.link),
    h('input', { id: 'lesson-link', readonly: '', value: url }),
    h(
      'p',
      { class: 'print-it' },
      h('button', { type: 'button', class: 'quiet', 'data-share': 'class' }, words.handOut),
      isCopied && h('span', { class: 'aside' }, words.copied),
    ),
    viewCode(h, document, url),
    url.startsWith('#')
      ? h('p', {}, keptWords.noAddress)
      : h(
          'details',
          { class: 'fold' },
          h('summary', {}, words.frame),
          text('lesson-frame', words.frameLabel, frameFor(url)),
          text('lesson-lines', words.linesLabel, linesForHost),
        ),
  ];
}
