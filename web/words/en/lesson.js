// What a teacher gives her class.

export const lessonWords = {
  link: 'The link',
  handOut: 'copy or share it',
  copied: 'Copied.',
  frame: 'In a course page',
  frameTitle: 'Twinround: plan your pair of socks',
  frameLabel:
    'To paste where the course page takes HTML. It has a fixed height and scrolls inside.',
  linesLabel:
    'And this too, where the course page takes script: then the frame is as tall as what is in it.',
};
