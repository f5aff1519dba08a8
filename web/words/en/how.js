// How to measure, and how to work: what each small drawing shows, and a sentence or three beside it.

/** @typedef {{ name: string, text: string }} Shown */
/** @typedef {{ title: string, name: string, text: string }} Card */

export const howWords = {
  see: 'See how',
  gauge: 'Count in the middle, quarters of a stitch too.',

  /** @type {Record<string, Shown>} */
  measures: {
    ball: {
      name: 'A foot seen from above, a tape round its widest part, over the joints of the great and the little toe.',
      text: 'Stand, so that the foot spreads. Lay the tape over both toe joints and under the foot: snug, not tight.',
    },
    length: {
      name: 'A foot on a sheet of paper, its heel at a wall; an arrow goes from the heel to the tip of the longest toe.',
      text: 'Put paper on the floor against a wall and stand on it, heel at the wall. Mark the longest toe and measure from the paper’s edge.',
    },
    heel: {
      name: 'A foot from the side, a tape aslant round the point of the heel and the bend in front of the ankle.',
      text: 'Lay the tape under the point of the heel and up over the bend in front. The sock has to pass here on its way up.',
    },
    ankle: {
      name: 'A foot from the side, a tape level round the leg just above the ankle bone.',
      text: 'Lay the tape level round the narrowest place, just above the ankle bone.',
    },
    calf: {
      name: 'A lower leg from the side, a tape level round its widest place.',
      text: 'Stand, and lay the tape level round the widest place below the knee.',
    },
    leg: {
      name: 'A leg from the side; an upright arrow goes from the floor to where the sock is to end.',
      text: 'Stand. Measure straight up from the floor, not along the leg, to where the top edge is to sit.',
    },
    cuff: {
      name: 'A leg from the side with the cuff at the top of the sock; an arrow tells its height.',
      text: 'Only the straight rib at the top. It is part of the leg, not added to it.',
    },
    shoe: {
      name: 'A shoe with its size written on the tongue.',
      text: 'The size stands on the tongue or inside the heel. Say which scale it is: 39 and 6 may be one shoe.',
    },
    stitches: {
      name: 'A swatch with a ruler across its middle; under it twelve V’s and half of the next are marked.',
      text: 'Stitches: each V is one. Lay the ruler level in the middle, away from the edges, and count along it over 10 cm (4 in) or as far as the swatch allows. Where it cuts a V, count the quarter or the half.',
    },
    rounds: {
      name: 'A swatch with a ruler standing upright; beside it eight V’s, one above the other, are marked.',
      text: 'Rounds (rows): the V’s of one column, one above the other, from the point of the first. Gauge is called tension in the UK.',
    },
    stretched: {
      name: 'A swatch pulled to both sides, its middle drawn in, above a ruler.',
      text: 'Pull the same stitches sideways as far as they go by hand, and measure them so.',
    },
    weighed: {
      name: 'A knitted piece on a kitchen scale that shows 12 grams.',
      text: 'Weigh the piece without its needle, on a scale that shows single grams; the larger the piece, the better. Its stitches are those of one row times its rows.',
    },
    band: {
      name: 'A ball of yarn; on its band a skein with a number in it, the weight, and the length.',
      text: 'The band tells all three: the number in the skein, how much the ball weighs, and how much yarn is in it.',
    },
    scale: {
      name: 'A ball of yarn on a kitchen scale that shows 63 grams.',
      text: 'A ball begun: weigh what is left. Its length shrinks in the same measure as its weight.',
    },
    needle: {
      name: 'A needle gauge, a plate with holes; a needle stands in the hole that just lets it through.',
      text: 'Worn off? The smallest hole of a needle gauge that it slides through tells the size.',
    },
    rib: {
      name: 'A rib of two knit and two purl; half-way up it has moved one stitch to the left.',
      text: 'Here the rib has stood for four rounds, moved over by one stitch, and stood for four again: a step every 4.',
    },
  },

  works: {
    title: 'Step by step, drawn',
    lead: 'A stitch sits on its needle with its right leg in front, unless the drawing shows otherwise.',
    /** @type {Record<string, Card>} */
    cards: {
      castOn: {
        title: 'Cast on for two',
        name: 'Two needle tips, one above the other, points to the right. At the left a slip knot and four wraps of yarn B round both, then, nearer the points, a slip knot and four wraps of yarn A. Each wrap goes up behind and comes down in front.',
        text: 'B first: a slip knot on the lower tip, then wraps round both, up behind and down in front. A follows the same way, nearer the points. Draw the lower tip out to the right and knit what is on the upper one: A, then B.',
      },
      round: {
        title: 'Four passes, one round',
        name: 'Both socks seen from above, as two rings: B left, A right. An arrow runs along the lower halves, A marked 1 and B marked 2, turns, and runs back along the upper halves, B marked 3 and A marked 4, and turns.',
        text: 'Seen from above: A (1) and B (2), turn, B (3) and A (4), turn. Each sock is knit from its own yarn, so the two are never joined.',
      },
      turn: {
        title: 'Turn before a purl',
        name: 'The right tip is in the first stitch, ready to purl. The yarn comes from the stitch behind, under the right tip to the front. A dashed way over the right tip is crossed out.',
        text: 'The yarn hangs from the half that now lies behind. Bring it forward between the tips, under the right one. Over the needle it would make a stitch too many.',
      },
      m1r: {
        title: 'M1R: make one, leaning right',
        name: 'The strand between two stitches lies over the left tip, its left leg in front of the needle. An arrow goes from the left under this front leg and on behind the needle.',
        text: 'Lift the strand between the needles from back to front: its left leg, dark here, lies in front. Knit this front leg, so that the strand twists shut.',
      },
      m1l: {
        title: 'M1L: make one, leaning left',
        name: 'The strand between two stitches lies over the left tip, its right leg in front of the needle. An arrow goes from the right behind the front leg and the needle, through the back leg.',
        text: 'Lift the strand from front to back: its right leg lies in front. Knit the back leg, dark here, so that the strand twists shut.',
      },
      m1p: {
        title: 'M1P: make one purlwise',
        name: 'The strand between two stitches lies over the left tip, its left leg in front of the needle. The working yarn hangs in front. An arrow goes from the right under the front leg, in front of the needle.',
        text: 'Yarn to the front. Lift the strand from back to front and purl its front leg, dark here, from the right.',
      },
      rib: {
        title: 'Move the rib',
        name: 'Two ribs of two knit stitches. Half-way up each moves to the left: the column left of it, marked plus, turns from purl to knit; its right column, marked minus, from knit to purl.',
        text: 'To lean left, knit the purl that stands left of each rib (+), and purl the rib’s rightmost knit (−). So no rib grows and none shrinks. To lean right, change sides.',
      },
      tryOn: {
        title: 'Try on past the heel',
        name: 'A foot in an unfinished sock that reaches past the heel; a thread runs through the stitches at its top, both ends hanging free.',
        text: 'Run a smooth thread through every stitch as a lifeline and slip the needle out. Draw the sock on past the heel: it should pass, and not strain the thread. Then slip the stitches back on, right legs in front.',
      },
      bindOff: {
        title: 'Bind off (cast off) with give',
        name: 'The right tip goes from the right behind the left needle and the front legs of two stitches, through their two back legs.',
        text: 'Put the right tip through the back legs of two stitches and knit them together. Slip the stitch made back to the left tip, and again. Keep it loose: the edge has to pass the heel.',
      },
    },
  },
};
