// Whether the page opens without a signal, and that there is a newer one.

export const offlineWords = {
  ready: 'Ready: from now on this page opens without a signal.',
  cannot: 'This browser opens the page only with a signal. A copy opens without:',
  copy: 'This is a copy kept on a disk: it works without a signal.',
  keep: 'keep a copy of this page',
  newer: 'A newer version of this page is here. What you typed stays kept.',
  newerUnkept:
    'A newer version of this page is here. This browser keeps nothing: taking it loses what you typed.',
  take: 'take the new one',
};

/** The service worker's own, where it has no page to show. */
export const lostWords = {
  title: 'Twinround cannot open just now',
  text: 'The copy of the page in this browser is damaged or gone, and there is no signal to fetch it again. Open it once more where there is one. What you typed is not touched.',
};
