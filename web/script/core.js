// The only part that touches the module. Its bytes are in the page itself, so nothing is fetched; see
// tools/js/bundle.mjs for how they get there.
import { startModule } from './core/module.js';

/** @typedef {{ ok: true, answer: (question: string, request: unknown) => any }} Started */
/** @typedef {{ ok: false, code: 'noWebAssembly' | 'notStarted' }} NotStarted */

/** @returns {Promise<Started | NotStarted>} */
export async function startCore() {
  if (typeof WebAssembly !== 'object') return { ok: false, code: 'noWebAssembly' };
  // The bytes stand behind the script, so that on a slow line the fields answer to the hand before those have come.
  if (document.readyState === 'loading') {
    await new Promise((resolve) => document.addEventListener('DOMContentLoaded', resolve));
  }
  try {
    // One byte in the low eight bits of each character, which is all that the array keeps. By hand: a callback
    // for every letter takes a phone 50 ms.
    const text = document.getElementById('core-module')?.textContent ?? '';
    const wasmBinary = new Uint8Array(text.length);
    for (let i = 0; i < text.length; i += 1) wasmBinary[i] = text.charCodeAt(i);
    const module = await startModule(wasmBinary);
    return {
      ok: true,
      // JSON.stringify writes a lone half of a letter as an escape, so the text is always well formed.
      answer: (question, request) => JSON.parse(module.answer(question, JSON.stringify(request))),
    };
  } catch {
    return { ok: false, code: 'notStarted' };
  }
}
