// The pair for a whole room.

export const projectorWords = {
  show: 'show it to the whole room',
  leave: 'back to the page',
  title: 'The pair of socks',
  shown: 'Only the pair and its figures, large. Escape leads back.',
  left: 'The page again.',
};
