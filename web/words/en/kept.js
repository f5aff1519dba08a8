// What is kept, and what can be taken back.

export const keptWords = {
  undo: 'undo',
  redo: 'redo',
  anew: 'begin anew',
  notKept:
    'Not saved here: this browser keeps nothing for the page. It is gone when the page is closed.',
  elsewhere: 'This sock was changed in another tab.',
  theirs: 'take that one',
  mine: 'keep this one',
  aside: 'Something kept here could not be read. It was set aside, not deleted.',
  download: 'download it',
};
