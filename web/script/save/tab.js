// Which sock this tab is on: a reload opens that one, whatever other tabs have turned to. The browser keeps it with the
// tab's own history, and not where it denies a page that.

/** @param {Window} view @returns {string | undefined} */
export function recallSock({ history }) {
  try {
    const { sock } = history.state ?? {};
    return typeof sock === 'string' ? sock : undefined;
  } catch {
    return undefined;
  }
}

/** @param {Window} view @param {string} sock */
export function rememberSock({ history }, sock) {
  try {
    history.replaceState({ ...history.state, sock }, '');
  } catch {
    // The last sock of any tab will be opened.
  }
}
