// Reads aloud with a voice that the device has of its own: no other asks nobody.

/** @param {Window} view */
export function openVoice(view) {
  const speech = view.speechSynthesis;
  const own = () =>
    speech?.getVoices().filter(({ localService, lang }) => localService && /^en\b/i.test(lang))[0];

  return {
    /** @param {string} text @returns {boolean} whether there is a voice for it */
    say(text) {
      const voice = own();
      if (!voice) return false;
      speech.cancel();
      const said = new SpeechSynthesisUtterance(text);
      said.voice = voice;
      said.lang = voice.lang;
      speech.speak(said);
      return true;
    },
    hush: () => speech?.cancel(),
    /** Some browsers know their voices a while after the page has opened. @param {() => void} tell */
    whenKnown: (tell) => speech?.addEventListener?.('voiceschanged', tell),
  };
}
