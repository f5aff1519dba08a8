// The only file that touches the module. The glue and the module's bytes are in the page itself, so
// nothing is fetched; see tools/js/bundle.mjs for how they get there.

/** @typedef {{ ok: true, answer: (question: string, request: unknown) => any }} Started */
/** @typedef {{ ok: false, code: 'noWebAssembly' | 'notStarted' }} NotStarted */

/** @returns {Promise<Started | NotStarted>} */
export async function startCore() {
  if (typeof WebAssembly !== 'object') return { ok: false, code: 'noWebAssembly' };
  try {
    const base64 = document.getElementById('core-module')?.textContent ?? '';
    const wasmBinary = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
    const module = await /** @type {any} */ (globalThis).createCore({ wasmBinary });
    return {
      ok: true,
      // JSON.stringify writes a lone half of a letter as an escape, so the text is always well formed.
      answer: (question, request) => JSON.parse(module.answer(question, JSON.stringify(request))),
    };
  } catch {
    return { ok: false, code: 'notStarted' };
  }
}
