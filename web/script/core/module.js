// The module started, and its one function: a question and a text in, a text out. See wasm/bindings.cpp.

const ascii = (/** @type {Uint8Array} */ bytes) => String.fromCharCode(...bytes);

/** @param {Uint8Array} bytes of core.wasm */
export async function startModule(bytes) {
  /** @type {{ exports: any }} its functions: there once it has started, and asked for what it needs */
  const core = { exports: undefined };
  // Anew at every use: where the memory grows, the old view of it is gone.
  /** @param {number} at @param {number} [length] */
  const memory = (at, length) => new Uint8Array(core.exports.memory.buffer, at, length);
  const started = await WebAssembly.instantiate(/** @type {BufferSource} */ (bytes), {
    env: {
      /** A number as text, ending in a zero. */
      number(/** @type {number} */ at) {
        const rest = memory(at);
        return Number(ascii(rest.subarray(0, rest.indexOf(0))));
      },
      emscripten_notify_memory_growth() {},
    },
    wasi_snapshot_preview1: {
      proc_exit(/** @type {number} */ code) {
        throw new Error(`the core has ended: ${code}`);
      },
    },
  });
  core.exports = started.instance.exports;
  core.exports._initialize();
  const [encoder, decoder] = [new TextEncoder(), new TextDecoder()];
  return {
    /** @param {string} question @param {string} text @returns {string} */
    answer(question, text) {
      const [asked, told] = [encoder.encode(question), encoder.encode(text)];
      const at = core.exports.room(asked.length + told.length);
      memory(at).set(asked);
      memory(at + asked.length).set(told);
      const reply = core.exports.answer(asked.length);
      return decoder.decode(memory(reply, core.exports.length()));
    },
  };
}
