// Written by tools/make_types from core/wire/schema.json: change the table of fields in core/wire,
// then run `tools/make_types`.

/** What a plan is asked with. */
export type Request = {
  /** Version of this request. */
  version: 1;
  /** The swatch. */
  swatch?: {
    /** What the swatch is knit in; rib is the sock's own rib, relaxed. Default "stockinette". */
    fabric?: "stockinette" | "rib";
    /** Whether the swatch was washed and dried before it was measured. Default true. */
    washed?: boolean;
    /** Diameter of the swatch's needles (mm, in steps of 0.25). */
    needleMm?: number;
    /** Measurements of the swatch. */
    readings: Array<{
      /** Stitches counted over the width (stitches, in steps of 0.25). */
      stitches: number;
      /** Width over which the stitches were counted (mm, in steps of 0.5). */
      widthMm: number;
      /** Rounds or rows counted over the height (rounds, in steps of 0.25). */
      rounds?: number;
      /** Height over which the rounds were counted (mm, in steps of 0.5). */
      heightMm?: number;
    }>;
    /** Width of the first reading pulled as far as hands pull it (mm, in steps of 0.5). */
    stretchedWidthMm?: number;
    /** Mass of the weighed swatch (g, in steps of 0.1). */
    massG?: number;
    /** Stitches in the weighed swatch (stitches, in steps of 1). */
    massStitches?: number;
  };
  /** The yarn and its ball band. */
  yarn?: {
    /** Yarn weight category, 0 lace to 7 jumbo. */
    category?: number;
    /** Mass of one ball (g, in steps of 1). */
    ballG?: number;
    /** Length of yarn in one ball (m, in steps of 1). */
    ballM?: number;
    /** Another yarn to knit the same sock from, by its label. */
    substitute?: {
      /** Mass of one ball of it (g, in steps of 1). */
      ballG: number;
      /** Length of yarn in one ball of it (m, in steps of 1). */
      ballM: number;
    };
  };
  /** The foot, measured or by its shoe. */
  foot: {
    /** Length of the foot, heel to longest toe (mm, in steps of 0.5). */
    lengthMm?: number;
    /** Girth round the ball of the foot (mm, in steps of 0.5). */
    ballGirthMm?: number;
    /** Girth round the heel and over the bend of the ankle (mm, in steps of 0.5). */
    heelAnkleGirthMm?: number;
    /** Girth of the ankle, above the bones (mm, in steps of 0.5). */
    ankleGirthMm?: number;
    /** Girth of the calf at its widest (mm, in steps of 0.5). */
    calfGirthMm?: number;
    /** A shoe size in place of a measured foot. */
    shoe?: {
      /** Scale of the shoe size. */
      scale: "mondopoint" | "eu" | "us-men" | "us-women" | "uk";
      /** Shoe size on its scale; mondopoint is the foot's length in mm (in steps of 0.5). */
      size: number;
    };
    /** Whose foot it is, to estimate its girth from its length. */
    body?: "woman" | "man" | "child";
  };
  /** Height of the sock's top edge above the floor (mm, in steps of 0.5). */
  legHeightMm: number;
  /** Height of the straight cuff (mm, in steps of 0.5). Default 30. */
  cuffMm?: number;
  /** The rib and how it moves. */
  rib?: {
    /** Knit stitches in a repeat of the rib (stitches). Default 2. */
    knit?: number;
    /** Purl stitches in a repeat of the rib (stitches). Default 2. */
    purl?: number;
    /** Rounds between two moves of the rib by one stitch; 0 keeps it straight (rounds). Default 4. */
    roundsPerShift?: number;
    /** Which way the rib leans; mirrored: the second sock is the first one's mirror. Default "left". */
    lean?: "left" | "right" | "mirrored";
  };
  /** How much wider (+) or narrower (-) than the ball girth the sock is, as a share of it (in steps of 0.01). Default -0.1. */
  girthEase?: number;
  /** How much longer (+) or shorter (-) than the foot the sock's foot is, as a share of it (in steps of 0.01). Default -0.04. */
  lengthEase?: number;
  /** The toe. */
  toe?: {
    /** Length of the toe as a share of the foot's length (in steps of 0.01). Default 0.25. */
    share?: number;
    /** Stitches cast on as a share of the sock's count (in steps of 0.01). Default 0.4. */
    tipShare?: number;
    /** Whether the toe widens fast and then slowly, evenly, or faster on the great-toe side. Default "round". */
    shape?: "round" | "even" | "left-right";
  };
  /** The knitter's own stitch count; left out, one is advised (stitches). */
  stitchCount?: number;
  /** How fast the knitter knits. */
  pace?: {
    /** Stitches knit in a minute (stitches a minute, in steps of 1). Default 15. */
    stitchesPerMinute?: number;
  };
  /** Yarn bought beyond the need, as a share of it (in steps of 0.01). Default 0.1. */
  yarnMargin?: number;
};

export type Reply = Answered | Refused;

/** A plan. */
export type Answered = {
  /** Whether the question was answered. */
  ok: true;
  /** Version of this contract. */
  version: 1;
  /** Raised with every change of a default, a constant or a rule. */
  rules: number;
  plan: Plan;
};

/** No plan, and why. */
export type Refused = {
  /** Whether the question was answered. */
  ok: false;
  /** Version of this contract. */
  version: 1;
  /** Raised with every change of a default, a constant or a rule. */
  rules: number;
  /** Everything that is wrong, at once. */
  problems: Array<Problem>;
};

/** The plan of a pair of socks. */
export type Plan = {
  /** Stockinette gauge that everything is computed with. */
  gauge: {
    /** Stitches in a width (1/mm). */
    stitchesPerMm: number;
    /** Rounds in a height (1/mm). */
    roundsPerMm: number;
    /** Relative standard error of the stitches. */
    relativeError: number;
    /** Relative standard error of the rounds. */
    roundsRelativeError: number;
    /** What the gauge was worked out from. */
    from: "swatch" | "rib-swatch" | "label";
    /** Each reading's own gauge, turned to stockinette like the whole. */
    readings: Array<{
      /** Its stitches in a width (1/mm). */
      stitchesPerMm: number;
      /** Its rounds in a height (1/mm). */
      roundsPerMm?: number;
    }>;
  };
  /** Yarn weight category, given or pointed to by the gauge. */
  category: number;
  /** Whether the category was given. */
  categoryGiven: boolean;
  /** The foot as the plan used it. */
  foot: {
    /** Length of the foot (mm). */
    lengthMm: number;
    /** Whether it is estimated, not measured. */
    lengthEstimated: boolean;
    /** Give or take of the estimate (mm). */
    lengthSpreadMm?: number;
    /** Girth round the ball of the foot (mm). */
    ballGirthMm: number;
    /** Whether it is estimated, not measured. */
    ballGirthEstimated: boolean;
    /** Give or take of the estimate (mm). */
    ballGirthSpreadMm?: number;
    /** Girth round heel and ankle, for the drawing (mm). */
    heelAnkleGirthMm: number;
    /** Whether it is estimated, not measured. */
    heelAnkleGirthEstimated: boolean;
    /** The girth that the heel is tested with: larger than the last where that is estimated (mm). */
    heelToPassMm: number;
    /** Girth of the ankle (mm). */
    ankleGirthMm: number;
    /** Whether it is estimated, not measured. */
    ankleGirthEstimated: boolean;
    /** Girth of the calf (mm). */
    calfGirthMm: number;
    /** Whether it is estimated, not measured. */
    calfGirthEstimated: boolean;
  };
  /** The rib as asked for. */
  rib: {
    /** Knit stitches in a repeat (stitches). */
    knit: number;
    /** Purl stitches in a repeat (stitches). */
    purl: number;
    /** Rounds between two moves by one stitch; 0 is straight (rounds). */
    roundsPerShift: number;
    /** Which way it leans. */
    lean: "left" | "right" | "mirrored";
  };
  /** Stitches in a round of one sock (stitches). */
  stitchCount: number;
  /** The count advised; absent where none can be (stitches). */
  advisedCount?: number;
  /** Ease of the count: how much wider (+) or narrower (-) than the ball girth, as a share of it. */
  girthEase: number;
  /** Relative give or take of the girth laid flat. */
  girthError: number;
  /** Likewise of the girth at rest. */
  restGirthError: number;
  /** Girth laid flat in stockinette (mm). */
  finishedGirthMm: number;
  /** Girth at rest, the rib pulled in (mm). */
  restGirthMm: number;
  /** Girth past which the fabric cannot stretch (mm). */
  widestGirthMm: number;
  /** The largest girth that still counts as passing (mm). */
  passGirthMm: number;
  /** Share of the widest girth that passing the heel takes. */
  heelUse: number;
  /** Its relative give or take. */
  heelUseError: number;
  /** The largest share that still counts as passing. */
  passUse: number;
  /** Whether both halves of a rib round read alike. */
  halvesAlike: boolean;
  /** Counts around the plan's own, ascending, itself among them. */
  choices: Array<{
    /** Stitches in a round (stitches). */
    stitches: number;
    /** Girth laid flat in stockinette (mm). */
    girthMm: number;
    /** Ease at the ball of the foot. */
    ease: number;
    /** Share of the widest girth that passing the heel takes. */
    heelUse: number;
    /** Whether both halves of a rib round read alike. */
    halvesAlike: boolean;
    /** Yarn for the pair (m). */
    mPerPair: number;
    /** Knitting time of the pair (min). */
    minutes: number;
  }>;
  /** Ribs that would do better; empty unless the rib is the trouble. */
  ribsThatFit: Array<{
    /** Knit stitches in a repeat (stitches). */
    knit: number;
    /** Purl stitches in a repeat (stitches). */
    purl: number;
    /** Stitches in a round (stitches). */
    stitches: number;
    /** Ease at the ball of the foot. */
    ease: number;
  }>;
  /** The cast-on at the tip of the toe. */
  castOn: {
    /** Wraps round each needle. */
    wraps: number;
    /** Stitches cast on for one sock (stitches). */
    stitches: number;
  };
  /** The toe. */
  toe: {
    /** Rounds of the toe (rounds). */
    rounds: number;
    /** How many of them increase, by four stitches each; of a left and right toe by two or four (rounds). */
    increaseRounds: number;
    /** Stitches of one sock after each toe round. */
    counts: Array<number>;
    /** Which sides of the tube each toe round widens. */
    sides: Array<"none" | "both" | "great" | "little">;
  };
  /** The spiral rib. */
  spiral: {
    /** Rounds of the spiral rib before any widening (rounds). */
    rounds: number;
    /** Rounds until the rib stands where it began (rounds). */
    periodRounds: number;
    /** Lean of the rib from upright; 0 for a straight rib, absent for one that moves and leans nowhere (degrees). */
    pitchDeg?: number;
  };
  /** The leg from the first widening round to the cuff. */
  widening: {
    /** Rounds of it; 0 where the leg needs none (rounds). */
    rounds: number;
    /** Each widening, from the foot up. */
    stages: Array<{
      /** Knit stitches in a repeat (stitches). */
      knit: number;
      /** Purl stitches in a repeat (stitches). */
      purl: number;
      /** Stitches in a round (stitches). */
      stitches: number;
      /** The widening round, counted from 0 at the first round of the rib (rounds). */
      ribRound: number;
      /** Height above the floor from which the narrower tube would not pass (mm). */
      neededFromMm: number;
      /** Stitches to move from the first half to the second (+) or back (-) after it (stitches). */
      crossing?: number;
    }>;
  };
  /** The straight cuff. */
  cuff: {
    /** Rounds of the cuff (rounds). */
    rounds: number;
  };
  /** Rounds of one sock, toe to edge (rounds). */
  totalRounds: number;
  /** Rounds of one sock that are done when it is tried on past the heel (rounds). */
  tryOnRound: number;
  /** Length of the sock, tip to edge (mm). */
  lengthMm: number;
  /** Depth of the heel, back to bend (mm). */
  heelDepthMm: number;
  /** Least leg height for this foot and cuff (mm). */
  leastLegMm: number;
  /** How much longer the way over the heel is than the sock, as a share of the sock. */
  backStrain: number;
  /** Likewise the way over the instep; negative: it bunches. */
  frontStrain: number;
  /** The leg inside the tube, floor to edge. */
  legFit: {
    /** The girth that takes most of the stretch (mm). */
    widestGirthMm: number;
    /** Its height above the floor (mm). */
    widestHeightMm: number;
    /** Share of the widest girth that it takes. */
    worstUse: number;
    /** Whether the widest girth hangs on an estimate. */
    widestEstimated: boolean;
    /** Girth of the leg at the top edge (mm). */
    edgeGirthMm: number;
    /** Whether that hangs on an estimate. */
    edgeEstimated: boolean;
  };
  /** Stitches in a round at the top edge (stitches). */
  edgeStitches: number;
  /** Feet of the same build that the finished pair serves; absent where not even the one it was planned for. */
  serves?: {
    /** Length of the shortest (mm). */
    footFromMm: number;
    /** Length of the longest (mm). */
    footToMm: number;
    /** The shoe sizes made for them; of grown-ups only but for eu. */
    sizes: Array<{
      /** The scale. */
      scale: "eu" | "uk" | "us-women" | "us-men";
      /** The smallest. */
      from: number;
      /** The largest. */
      to: number;
    }>;
  };
  /** In place of widening: the same count on a larger needle, to be swatched anew. */
  largerNeedle?: {
    /** Height above the floor from which to knit with it (mm). */
    fromMm: number;
    /** The gauge it has to give, or looser (1/mm). */
    stitchesPerMmAtMost: number;
    /** Diameter to try first (mm). */
    mm: number;
    /** Its US name. */
    us?: string;
    /** Its UK name. */
    uk?: string;
  };
  /** The different rounds there are, each told once. */
  lines: Array<{
    /** First and second half, each as runs in knitting order. */
    halves: Array<Array<Run>>;
    /** First and second half as people say it. */
    told: Array<Array<{
      /** Runs in knitting order. */
      runs: Array<Run>;
      /** How many times over. */
      times: number;
    }>>;
  }>;
  /** The rounds from toe to edge, equal ones together. */
  rounds: Array<{
    /** Part of the sock. */
    section: "toe" | "spiral" | "widening" | "cuff";
    /** How many (rounds). */
    rounds: number;
    /** Stitches on the needles after each (stitches). */
    stitches: number;
    /** Place in `lines`, from 0. */
    line: number;
    /** Place in `lines` for the second sock, where it differs. */
    secondLine?: number;
  }>;
  /** Yarn needed. */
  yarn: {
    /** Yarn in one stitch (mm). */
    mmPerStitch: number;
    /** How that is known. */
    from: "loop-geometry" | "weighed";
    /** Beside a weighed figure, the one of loop geometry (mm). */
    geometryMmPerStitch?: number;
    /** Yarn of one sock (m). */
    mPerSock: number;
    /** Yarn of the pair (m). */
    mPerPair: number;
    /** Yarn to buy for the pair (m). */
    mWithMargin: number;
    /** Yarn one sock needs to begin its last round: that round, the bind-off and a tail (m). */
    mOfLastRound: number;
    /** Mass of one sock (g). */
    gPerSock?: number;
    /** Mass of the pair (g). */
    gPerPair?: number;
    /** Mass to buy for the pair (g). */
    gWithMargin?: number;
    /** True where the grams are guessed from the category. */
    massGuessed?: boolean;
    /** Balls to buy. */
    balls?: number;
    /** Whether that number is a close thing. */
    ballsJust?: boolean;
    /** What is left of the last ball (m). */
    spareM?: number;
    /** Grams a kilometre, from the ball or the category (tex). */
    tex: number;
    /** Relative standard error of the need. */
    relativeError: number;
    /** The same sock from another yarn. */
    substitute?: {
      /** Grams a kilometre (tex). */
      tex: number;
      /** Thicker (+) or thinner (-) than the first, as a share. */
      thicknessApart: number;
      /** Mass of the pair (g). */
      gPerPair: number;
      /** Mass to buy for the pair (g). */
      gWithMargin: number;
      /** Balls to buy. */
      balls: number;
      /** Whether that number is a close thing. */
      ballsJust: boolean;
      /** What is left of the last ball (m). */
      spareM: number;
      /** How firm the fabric would be at this gauge. */
      firmness: "loose" | "usual" | "firm";
    };
    /** Yarn of one sock by section. */
    sections: Array<{
      /** Part of the sock. */
      section: "castOn" | "toe" | "spiral" | "widening" | "cuff" | "bindOff" | "tails";
      /** Its yarn (m). */
      m: number;
    }>;
  };
  /** Needle and cable. */
  needle: {
    /** Diameter of the needle (mm). */
    mm: number;
    /** Its US name. */
    us?: string;
    /** Its UK name. */
    uk?: string;
    /** Least length of the circular needle (mm). */
    cableMinMm: number;
    /** The length to buy; absent where none sold is long enough (mm). */
    cableBuyMm?: number;
  };
  /** How firm the fabric is; absent where the yarn's thickness is not known. */
  firmness?: "loose" | "usual" | "firm";
  /** Knitting time of the pair (min). */
  minutes: number;
  /** Its relative give or take. */
  minutesError: number;
  /** What must not go unsaid about this plan, in order of harm. */
  cautions: Array<Caution>;
  /** How each figure came about. */
  working: Array<Working>;
};

/** What is worked, and how many times. */
export type Run = ["k" | "p" | "m1l" | "m1r" | "m1p", number];

/** Something wrong with the request. */
export type Problem = {
  /** RFC 6901 pointer into the request; "" is the whole of it. */
  field: string;
  /** What it is. */
  code: "unknown_question" | "too_large_text" | "bad_json" | "too_deep" | "not_an_object" | "newer_version" | "required" | "unknown_field" | "repeated_field" | "wrong_type" | "out_of_range" | "not_finite" | "number_too_large" | "not_whole" | "unknown_word" | "too_many_items" | "needs_partner" | "count_out_of_range" | "heel_out_of_reach" | "not_a_count" | "leg_too_short" | "no_room_for_rib" | "too_many_rounds" | "leg_too_wide" | "no_room_to_widen" | "stretched_too_narrow" | "shoe_out_of_range" | "girth_out_of_range";
  /** A plain English sentence in SI units. */
  message: string;
  /** A number or a word that goes with the code; lengths are named ...Mm. */
  [name: string]: number | string;
};

/** Something that must not go unsaid about a plan. */
export type Caution = {
  /** RFC 6901 pointer into the request; "" is the whole of it. */
  field: string;
  /** What it is. */
  code: "guessed_gauge" | "flat_swatch" | "unwashed_swatch" | "stretch_doubtful" | "rib_swatch" | "shift_every_round" | "moss_stitch" | "no_lean" | "ease_outside" | "ease_off" | "heel_moved_count" | "heel_tight" | "heel_will_not_pass" | "leg_widened" | "stitch_crosses" | "heel_below_ball" | "girths_estimated" | "foot_estimated" | "yarn_sources_disagree" | "mass_needs_ball" | "yarn_guessed" | "loose_fabric" | "firm_fabric" | "substitute_differs" | "balls_just" | "balls_barely_begun" | "no_cable_long_enough";
  /** A plain English sentence in SI units. */
  message: string;
  /** A number or a word that goes with the code; lengths are named ...Mm. */
  [name: string]: number | string;
};

/** How a figure came about. */
export type Working = {
  /** The figure explained. */
  figure: "footLength" | "ballGirth" | "gauge" | "gaugeError" | "mmPerStitch" | "geometryMmPerStitch" | "restGirthMm" | "firmness" | "stitchCount" | "heelUse" | "legFit" | "widening" | "castOn" | "toeRounds" | "toeIncreases" | "lengthMm" | "totalRounds" | "cuffRounds" | "spiralRounds" | "pitch" | "strains" | "bindOffYarn" | "mPerSock" | "mWithMargin" | "balls" | "substitute" | "gPerPair" | "needle" | "cable" | "minutes";
  /** The rule it came by. */
  rule: "shoe_length" | "ball_girth_estimate" | "gauge_pooled" | "gauge_from_rib" | "gauge_from_label" | "gauge_error" | "label_error" | "loop_weighed" | "loop_geometry" | "rest_girth" | "firmness" | "stitch_count" | "stitch_count_named" | "heel_use" | "leg_fit" | "widening" | "cast_on" | "toe_rounds" | "toe_increases" | "sock_length" | "total_rounds" | "cuff_rounds" | "spiral_rounds" | "pitch" | "strains" | "bind_off_yarn" | "yarn_sock" | "yarn_pair" | "balls" | "substitute" | "mass" | "needle" | "cable" | "time";
  /** The numbers put in, and what came out. */
  numbers: {
    [name: string]: number;
  };
  /** Where the rule is from. */
  source: "munden-1959" | "spencer" | "cyc-standard-yarn-weight" | "dillmont" | "ansur-ii" | "brannock" | "iso-19407" | "european-shoe-table" | "from-memory" | "trade-rule" | "common-practice" | "geometry" | "definition" | "assumption";
};

/** Where a pair in the making stands. */
export type PlaceRequest = {
  /** Version of this request. */
  version: 1;
  /** One sock in the making, as its plan has it. */
  sock: {
    /** Equal rounds in a row, from the toe up. */
    rounds: Array<{
      /** The part of the sock they are in. */
      section: "toe" | "spiral" | "widening" | "cuff";
      /** How many (rounds). */
      rounds: number;
      /** Stitches after each (stitches). */
      stitches: number;
      /** Their place in the plan's lines; left out: unlike the rounds before. */
      line?: number;
      /** The same of the second sock, where it differs. */
      secondLine?: number;
    }>;
    /** Yarn in one stitch (mm, in steps of 0.01). */
    mmPerStitch: number;
    /** Yarn in the cast-on (m, in steps of 0.01). */
    castOnM: number;
    /** Yarn in the bind-off (m, in steps of 0.01). */
    bindOffM: number;
    /** Yarn in the tails at both ends together (m, in steps of 0.01). */
    tailsM: number;
  };
  /** What is knit of both socks. */
  done: {
    /** Whole rounds of the pair, cast-on apart (rounds). */
    rounds: number;
    /** Whole passes of the round in hand: A first half, B first half, B second half, A second half. Default 0. */
    passes?: number;
  };
  /** The pace to reckon with where no lap was timed (stitches a minute, in steps of 1). Default 15. */
  stitchesPerMinute?: number;
  /** Rounds of the pair that were timed. */
  laps?: Array<{
    /** Its stitches, of both socks (stitches). */
    stitches: number;
    /** What it took, turns and all (s, in steps of 1). */
    seconds: number;
  }>;
};

export type PlaceReply = PlaceAnswered | PlaceRefused;

/** Where a pair in the making stands. */
export type PlaceAnswered = {
  /** Whether the question was answered. */
  ok: true;
  /** Version of this contract. */
  version: 1;
  /** Raised with every change of a default, a constant or a rule. */
  rules: number;
  place: Place;
};

/** No place, and why. */
export type PlaceRefused = {
  /** Whether the question was answered. */
  ok: false;
  /** Version of this contract. */
  version: 1;
  /** Raised with every change of a default, a constant or a rule. */
  rules: number;
  /** Everything that is wrong, at once. */
  problems: Array<PlaceProblem>;
};

/** Where the pair stands. */
export type Place = {
  /** Whether every round is knit and the bind-off is left. */
  allDone: boolean;
  /** Stitches after the round in hand, of one sock (stitches). */
  stitches: number;
  /** Yarn used so far, cast-on and its tail among it. */
  usedM: {
    /** Of sock A (m). */
    a: number;
    /** Of sock B (m). */
    b: number;
    /** Of both (m). */
    pair: number;
  };
  /** Yarn still to go, bind-off and its tail among it. */
  toGoM: {
    /** Of sock A (m). */
    a: number;
    /** Of sock B (m). */
    b: number;
    /** Of both (m). */
    pair: number;
  };
  /** Stitches knit of the pair, cast-on apart (stitches). */
  stitchesWorked: number;
  /** Stitches to knit of the pair, bind-off apart (stitches). */
  stitchesToGo: number;
  /** Rounds to go, the one in hand among them (rounds). */
  roundsToGo: number;
  /** What comes, one of a kind at most, nearest first. */
  next: Array<{
    /** What. */
    kind: "increase" | "rib" | "shift" | "widening" | "cuff" | "bindOff";
    /** The round it is in, from 1; the bind-off one past the last. */
    round: number;
    /** Rounds to finish before it; 0: the one in hand (rounds). */
    inRounds: number;
  }>;
  /** How fast it goes. */
  pace: {
    /** Median of the laps, turns taken off; or as asked (stitches a minute). */
    stitchesPerMinute: number;
    /** What that is from. */
    from: "laps" | "asked";
    /** For the rest of both socks, bind-off apart (min). */
    minutesToGo: number;
  };
};

/** Something wrong with a sock in the making. */
export type PlaceProblem = {
  /** RFC 6901 pointer into the request; "" is the whole of it. */
  field: string;
  /** What it is. */
  code: "unknown_question" | "too_large_text" | "bad_json" | "too_deep" | "not_an_object" | "newer_version" | "required" | "unknown_field" | "repeated_field" | "wrong_type" | "out_of_range" | "not_finite" | "number_too_large" | "not_whole" | "unknown_word" | "too_many_items" | "needs_partner" | "count_out_of_range" | "heel_out_of_reach" | "not_a_count" | "leg_too_short" | "no_room_for_rib" | "too_many_rounds" | "leg_too_wide" | "no_room_to_widen" | "stretched_too_narrow" | "shoe_out_of_range" | "girth_out_of_range" | "lap_too_short";
  /** A plain English sentence in SI units. */
  message: string;
  /** A number or a word that goes with the code; lengths are named ...Mm. */
  [name: string]: number | string;
};

/** What is seen of a pair whose count was lost, or of a misstep. */
export type FoundRequest = {
  /** Version of this request. */
  version: 1;
  /** The rib, as the plan begins it. */
  rib: {
    /** Knit stitches of the repeat (stitches). */
    knit: number;
    /** Purl stitches of the repeat (stitches). */
    purl: number;
    /** Rounds between two moves; 0 for a straight rib (rounds). */
    roundsPerShift: number;
    /** Which way it leans. */
    lean: "left" | "right" | "mirrored";
  };
  /** Rounds of the toe (rounds). */
  toeRounds: number;
  /** Rounds of the rib that moves, to the cuff (rounds). */
  spiralRounds: number;
  /** Of those, the ones below the first widening round; left out: all (rounds). */
  plainRounds?: number;
  /** Rounds of the cuff, straight on from the last of them; left out: none (rounds). */
  cuffRounds?: number;
  /** Stitches in a round of one sock, as the rib begins (stitches). */
  stitches: number;
  /** What is seen on sock A; in the rib either `columns` or `place`. */
  a?: {
    /** Where its last round is. */
    in: "toe" | "rib";
    /** In the toe: rounds counted from the cast-on, that apart (rounds). */
    rounds?: number;
    /** In the rib: how often it has stepped over since it began. */
    columns?: number;
    /** In the rib, where the steps were not counted: which stitch of the repeat a round begins with, 0 for the first knit one. */
    place?: number;
    /** In the rib: rounds since it last stepped over, the stepping one among them (rounds). */
    since?: number;
    /** Beside a place: about how many rounds there are in all (rounds). */
    near?: number;
  };
  /** The same of sock B. */
  b?: {
    /** Where its last round is. */
    in: "toe" | "rib";
    /** As of sock A (rounds). */
    rounds?: number;
    /** As of sock A. */
    columns?: number;
    /** As of sock A, read in the order sock B is knit. */
    place?: number;
    /** As of sock A (rounds). */
    since?: number;
    /** As of sock A (rounds). */
    near?: number;
  };
  /** The rib stepped over at a wrong round, or not at the right one. */
  misstep?: {
    /** Rounds knit since, the wrong one among them (rounds). */
    roundsSince: number;
  };
};

export type FoundReply = FoundAnswered | FoundRefused;

/** The round found again. */
export type FoundAnswered = {
  /** Whether the question was answered. */
  ok: true;
  /** Version of this contract. */
  version: 1;
  /** Raised with every change of a default, a constant or a rule. */
  rules: number;
  found: Found;
};

/** Not found, and why. */
export type FoundRefused = {
  /** Whether the question was answered. */
  ok: false;
  /** Version of this contract. */
  version: 1;
  /** Raised with every change of a default, a constant or a rule. */
  rules: number;
  /** Everything that is wrong, at once. */
  problems: Array<FoundProblem>;
};

/** The round found again. */
export type Found = {
  /** Rounds after which the rib looks alike again (rounds). */
  periodRounds: number;
  /** Sock A, where it was asked. */
  a?: {
    /** Rounds knit in all; absent where several look alike (rounds). */
    round?: number;
    /** Every number of rounds that looks like that. */
    candidates: Array<number>;
  };
  /** Sock B, where it was asked. */
  b?: {
    /** Rounds knit in all; absent where several look alike (rounds). */
    round?: number;
    /** Every number of rounds that looks like that. */
    candidates: Array<number>;
  };
  /** How the two stand to each other, where both rounds are found. */
  apart?: {
    /** Rounds that one has more (rounds). */
    rounds: number;
    /** The sock to knit alone, both halves of it, for so many rounds. */
    alone: "a" | "b" | "none";
  };
  /** Two ways out of a misstep, of both socks. */
  misstep?: {
    /** Unpicked: rounds (rounds). */
    unpickRounds: number;
    /** Unpicked: stitches (stitches). */
    unpickStitches: number;
    /** Or in place: columns dropped down and hooked up the other way. */
    hookColumns: number;
    /** In place: stitches hooked up (stitches). */
    hookStitches: number;
  };
};

/** Something that cannot be seen. */
export type FoundProblem = {
  /** RFC 6901 pointer into the request; "" is the whole of it. */
  field: string;
  /** What it is. */
  code: "unknown_question" | "too_large_text" | "bad_json" | "too_deep" | "not_an_object" | "newer_version" | "required" | "unknown_field" | "repeated_field" | "wrong_type" | "out_of_range" | "not_finite" | "number_too_large" | "not_whole" | "unknown_word" | "too_many_items" | "needs_partner" | "count_out_of_range" | "heel_out_of_reach" | "not_a_count" | "leg_too_short" | "no_room_for_rib" | "too_many_rounds" | "leg_too_wide" | "no_room_to_widen" | "stretched_too_narrow" | "shoe_out_of_range" | "girth_out_of_range" | "beyond_toe" | "too_many_since" | "beyond_rib" | "beyond_cuff" | "never_moves" | "place_not_reached";
  /** A plain English sentence in SI units. */
  message: string;
  /** A number or a word that goes with the code; lengths are named ...Mm. */
  [name: string]: number | string;
};

/** What a plan is asked with. */
export type AdjustRequest = {
  /** Version of this request. */
  version: 1;
  /** The swatch. */
  swatch?: {
    /** What the swatch is knit in; rib is the sock's own rib, relaxed. Default "stockinette". */
    fabric?: "stockinette" | "rib";
    /** Whether the swatch was washed and dried before it was measured. Default true. */
    washed?: boolean;
    /** Diameter of the swatch's needles (mm, in steps of 0.25). */
    needleMm?: number;
    /** Measurements of the swatch. */
    readings: Array<{
      /** Stitches counted over the width (stitches, in steps of 0.25). */
      stitches: number;
      /** Width over which the stitches were counted (mm, in steps of 0.5). */
      widthMm: number;
      /** Rounds or rows counted over the height (rounds, in steps of 0.25). */
      rounds?: number;
      /** Height over which the rounds were counted (mm, in steps of 0.5). */
      heightMm?: number;
    }>;
    /** Width of the first reading pulled as far as hands pull it (mm, in steps of 0.5). */
    stretchedWidthMm?: number;
    /** Mass of the weighed swatch (g, in steps of 0.1). */
    massG?: number;
    /** Stitches in the weighed swatch (stitches, in steps of 1). */
    massStitches?: number;
  };
  /** The yarn and its ball band. */
  yarn?: {
    /** Yarn weight category, 0 lace to 7 jumbo. */
    category?: number;
    /** Mass of one ball (g, in steps of 1). */
    ballG?: number;
    /** Length of yarn in one ball (m, in steps of 1). */
    ballM?: number;
    /** Another yarn to knit the same sock from, by its label. */
    substitute?: {
      /** Mass of one ball of it (g, in steps of 1). */
      ballG: number;
      /** Length of yarn in one ball of it (m, in steps of 1). */
      ballM: number;
    };
  };
  /** The foot, measured or by its shoe. */
  foot: {
    /** Length of the foot, heel to longest toe (mm, in steps of 0.5). */
    lengthMm?: number;
    /** Girth round the ball of the foot (mm, in steps of 0.5). */
    ballGirthMm?: number;
    /** Girth round the heel and over the bend of the ankle (mm, in steps of 0.5). */
    heelAnkleGirthMm?: number;
    /** Girth of the ankle, above the bones (mm, in steps of 0.5). */
    ankleGirthMm?: number;
    /** Girth of the calf at its widest (mm, in steps of 0.5). */
    calfGirthMm?: number;
    /** A shoe size in place of a measured foot. */
    shoe?: {
      /** Scale of the shoe size. */
      scale: "mondopoint" | "eu" | "us-men" | "us-women" | "uk";
      /** Shoe size on its scale; mondopoint is the foot's length in mm (in steps of 0.5). */
      size: number;
    };
    /** Whose foot it is, to estimate its girth from its length. */
    body?: "woman" | "man" | "child";
  };
  /** Height of the sock's top edge above the floor (mm, in steps of 0.5). */
  legHeightMm: number;
  /** Height of the straight cuff (mm, in steps of 0.5). Default 30. */
  cuffMm?: number;
  /** The rib and how it moves. */
  rib?: {
    /** Knit stitches in a repeat of the rib (stitches). Default 2. */
    knit?: number;
    /** Purl stitches in a repeat of the rib (stitches). Default 2. */
    purl?: number;
    /** Rounds between two moves of the rib by one stitch; 0 keeps it straight (rounds). Default 4. */
    roundsPerShift?: number;
    /** Which way the rib leans; mirrored: the second sock is the first one's mirror. Default "left". */
    lean?: "left" | "right" | "mirrored";
  };
  /** How much wider (+) or narrower (-) than the ball girth the sock is, as a share of it (in steps of 0.01). Default -0.1. */
  girthEase?: number;
  /** How much longer (+) or shorter (-) than the foot the sock's foot is, as a share of it (in steps of 0.01). Default -0.04. */
  lengthEase?: number;
  /** The toe. */
  toe?: {
    /** Length of the toe as a share of the foot's length (in steps of 0.01). Default 0.25. */
    share?: number;
    /** Stitches cast on as a share of the sock's count (in steps of 0.01). Default 0.4. */
    tipShare?: number;
    /** Whether the toe widens fast and then slowly, evenly, or faster on the great-toe side. Default "round". */
    shape?: "round" | "even" | "left-right";
  };
  /** The knitter's own stitch count; left out, one is advised (stitches). */
  stitchCount?: number;
  /** How fast the knitter knits. */
  pace?: {
    /** Stitches knit in a minute (stitches a minute, in steps of 1). Default 15. */
    stitchesPerMinute?: number;
  };
  /** Yarn bought beyond the need, as a share of it (in steps of 0.01). Default 0.1. */
  yarnMargin?: number;
  /** The sock on the needles. */
  needles: {
    /** Rounds of one sock that are knit (rounds). */
    roundsDone: number;
    /** Stitches of the toe over the width, of one layer laid flat (stitches, in steps of 0.25). */
    stitches?: number;
    /** Width over which they were counted (mm, in steps of 0.5). */
    widthMm?: number;
    /** Rounds of the toe over the length (rounds, in steps of 0.25). */
    rounds?: number;
    /** Length over which they were counted (mm, in steps of 0.5). */
    lengthMm?: number;
    /** The swatch is none of this yarn: the toe counts alone. */
    toeAlone?: boolean;
    /** Yarn left for the first sock (g, in steps of 0.5). */
    gramsLeftA?: number;
    /** Yarn left for the second sock (g, in steps of 0.5). */
    gramsLeftB?: number;
  };
};

export type AdjustReply = AdjustAnswered | AdjustRefused;

/** What the sock on the needles comes to. */
export type AdjustAnswered = {
  /** Whether the question was answered. */
  ok: true;
  /** Version of this contract. */
  version: 1;
  /** Raised with every change of a default, a constant or a rule. */
  rules: number;
  adjust: Adjust;
};

/** No way to go on, and why. */
export type AdjustRefused = {
  /** Whether the question was answered. */
  ok: false;
  /** Version of this contract. */
  version: 1;
  /** Raised with every change of a default, a constant or a rule. */
  rules: number;
  /** Everything that is wrong, at once. */
  problems: Array<AdjustProblem>;
};

/** What the sock on the needles comes to, and how to go on. */
export type Adjust = {
  /** What the toe says; absent where it was not measured. */
  measured?: {
    /** The gauge that the sock was begun with. */
    swatch: {
      /** Stitches in a width (1/mm). */
      stitchesPerMm: number;
      /** Relative standard error of the stitches. */
      relativeError: number;
      /** Rounds in a height (1/mm). */
      roundsPerMm: number;
      /** Relative standard error of the rounds. */
      roundsRelativeError: number;
    };
    /** The toe by itself; what was not measured is left out. */
    toe: {
      /** Stitches in a width (1/mm). */
      stitchesPerMm?: number;
      /** Relative standard error of the stitches. */
      relativeError?: number;
      /** Rounds in a height (1/mm). */
      roundsPerMm?: number;
      /** Relative standard error of the rounds. */
      roundsRelativeError?: number;
    };
    /** What all the rest goes by: both, each weighed by how sure it is, or the toe alone in what was measured of it. */
    together: {
      /** Stitches in a width (1/mm). */
      stitchesPerMm: number;
      /** Relative standard error of the stitches. */
      relativeError: number;
      /** Rounds in a height (1/mm). */
      roundsPerMm: number;
      /** Relative standard error of the rounds. */
      roundsRelativeError: number;
    };
    /** How many standard errors swatch and toe lie apart, stitches or rounds. */
    errorsApart: number;
    /** Whether that is more than one fabric allows; never told of a swatch of another yarn. */
    isApart: boolean;
    /** Whether the toe counts alone: they lie apart, or the swatch is none of this yarn. */
    byToeAlone: boolean;
    /** The way to go on. */
    advised: "keep" | "change" | "restart";
    /** The ways to go on, what each costs and gives. */
    ways: Array<{
      /** Which. */
      way: "keep" | "change" | "restart";
      /** Stitches in a round of one sock (stitches). */
      stitchCount: number;
      /** How much wider or narrower than the ball girth. */
      girthEase: number;
      /** Girth laid flat (mm). */
      finishedGirthMm: number;
      /** Share of all stretch that the heel takes. */
      heelUse: number;
      /** Whether it passes heel and leg. */
      passes: boolean;
      /** Rounds of one sock (rounds). */
      totalRounds: number;
      /** Last round that stays as it is knit; 0: none (rounds). */
      fromRound: number;
      /** Rounds to unpick (rounds). */
      roundsLost: number;
      /** Rounds still to knit (rounds). */
      roundsToGo: number;
      /** Rounds knit already beyond what this way asks for (rounds). */
      roundsOver: number;
      /** Rounds of the toe to work otherwise than it was begun. */
      steps: Array<{
        /** Which round of the sock (rounds). */
        round: number;
        /** Whether it is a round more than the toe was begun with. */
        added: boolean;
        /** Which sides of the tube it was to widen. */
        begunSides: "none" | "both" | "great" | "little";
        /** Which it widens now. */
        sides: "none" | "both" | "great" | "little";
        /** Stitches of one sock after it (stitches). */
        stitches: number;
      }>;
      /** First round of the rib; from it on all is as in this way's own plan (rounds). */
      ribFromRound: number;
      /** Yarn of the pair, what is knit included (m). */
      mPerPair: number;
      /** The same on a scale (g). */
      gPerPair: number;
      /** Yarn of the pair still to knit, bind-off and tails included (m). */
      mToGo: number;
      /** The same on a scale (g). */
      gToGo: number;
      /** Knitting time of the pair from here (min). */
      minutesToGo: number;
    }>;
  };
  /** Whether metres to grams are guessed from the category. */
  yarnGuessed: boolean;
  /** What the yarn on the scale still makes; one for each sock that was weighed. */
  yarnLeft: Array<{
    /** Which. */
    sock: "a" | "b";
    /** Yarn left, as it was weighed (g). */
    g: number;
    /** The same as a length (m). */
    m: number;
    /** Kept back for the bind-off and its tail (m). */
    keptBackM: number;
    /** The same on a scale: there knitting ends (g). */
    keptBackG: number;
    /** Rounds that it still makes (rounds). */
    rounds: number;
    /** Round of the sock after which to bind off (rounds). */
    lastRound: number;
    /** Rounds of the plan not yet knit (rounds). */
    roundsToGo: number;
    /** Rounds of the plan that it does not reach (rounds). */
    roundsShort: number;
    /** Rounds that it makes beyond the plan (rounds). */
    roundsOver: number;
    /** Yarn left once the plan is knit and bound off; 0 where it falls short (m). */
    leftOverM: number;
    /** Rounds that give back what the bind-off takes (rounds). */
    roundsToUnpick: number;
    /** Floor to edge, if the sock ends there (mm). */
    legHeightMm: number;
    /** Whether that is above the bend of the ankle. */
    reachesLeg: boolean;
    /** Last round at whose beginning a new ball can be joined; 0: none (rounds). */
    roundToJoin: number;
  }>;
};

/** Something wrong with what was measured or planned. */
export type AdjustProblem = {
  /** RFC 6901 pointer into the request; "" is the whole of it. */
  field: string;
  /** What it is. */
  code: "unknown_question" | "too_large_text" | "bad_json" | "too_deep" | "not_an_object" | "newer_version" | "required" | "unknown_field" | "repeated_field" | "wrong_type" | "out_of_range" | "not_finite" | "number_too_large" | "not_whole" | "unknown_word" | "too_many_items" | "needs_partner" | "count_out_of_range" | "heel_out_of_reach" | "not_a_count" | "leg_too_short" | "no_room_for_rib" | "too_many_rounds" | "leg_too_wide" | "no_room_to_widen" | "stretched_too_narrow" | "shoe_out_of_range" | "girth_out_of_range" | "past_the_plan" | "more_than_a_layer" | "more_rounds_than_done";
  /** A plain English sentence in SI units. */
  message: string;
  /** A number or a word that goes with the code; lengths are named ...Mm. */
  [name: string]: number | string;
};

/** Stripes or leftovers on a pair. */
export type StripesRequest = {
  /** Version of this request. */
  version: 1;
  /** One sock in the making, as its plan has it. */
  sock: {
    /** Equal rounds in a row, from the toe up. */
    rounds: Array<{
      /** The part of the sock they are in. */
      section: "toe" | "spiral" | "widening" | "cuff";
      /** How many (rounds). */
      rounds: number;
      /** Stitches after each (stitches). */
      stitches: number;
      /** Their place in the plan's lines; left out: unlike the rounds before. */
      line?: number;
      /** The same of the second sock, where it differs. */
      secondLine?: number;
    }>;
    /** Yarn in one stitch (mm, in steps of 0.01). */
    mmPerStitch: number;
    /** Yarn in the cast-on (m, in steps of 0.01). */
    castOnM: number;
    /** Yarn in the bind-off (m, in steps of 0.01). */
    bindOffM: number;
    /** Yarn in the tails at both ends together (m, in steps of 0.01). */
    tailsM: number;
  };
  /** Mass of a kilometre of the sock's yarn (g/km, in steps of 1). */
  tex: number;
  /** Share kept over what the rounds take (in steps of 0.005). Default 0.1. */
  margin?: number;
  /** A self-striping yarn. */
  repeat?: {
    /** A ball for each sock, both ends of one, or one cut in two. Default "two-balls". */
    from?: "two-balls" | "two-ends" | "halves";
    /** Where in the repeat the ball of the first sock begins (m, in steps of 0.1). Default 0. */
    startAM?: number;
    /** Where that of the second begins, if it has one (m, in steps of 0.1). Default 0. */
    startBM?: number;
    /** Yarn in one ball; needed if both socks are of one (m, in steps of 0.5). */
    ballM?: number;
    /** Its colours as they leave the ball. */
    stripes: Array<{
      /** Which; the same number again is the same colour. */
      colour: number;
      /** How long it is (m, in steps of 0.1). */
      m: number;
    }>;
  };
  /** Stripes of plain colours, over and over from the toe up. */
  own?: {
    /** In turn. */
    stripes: Array<{
      /** Which. */
      colour: number;
      /** How many (rounds). */
      rounds: number;
    }>;
  };
  /** What is left of other yarn. */
  leftovers?: {
    /** The leg's height as planned, floor to edge (mm, in steps of 0.5). */
    legHeightMm?: number;
    /** Rounds in a height (1/mm, in steps of 0.01). */
    roundsPerMm?: number;
    /** The lots, as they are to be knit if that serves. */
    lots: Array<{
      /** Yarn in it (m, in steps of 0.5). */
      m?: number;
      /** Its mass (g, in steps of 0.5). */
      g?: number;
      /** Yarn in 100 g of it (m, in steps of 1). */
      mPer100G?: number;
    }>;
  };
};

export type StripesReply = StripesAnswered | StripesRefused;

/** Stripes or leftovers on a pair. */
export type StripesAnswered = {
  /** Whether the question was answered. */
  ok: true;
  /** Version of this contract. */
  version: 1;
  /** Raised with every change of a default, a constant or a rule. */
  rules: number;
  stripes: Stripes;
};

/** None, and why. */
export type StripesRefused = {
  /** Whether the question was answered. */
  ok: false;
  /** Version of this contract. */
  version: 1;
  /** Raised with every change of a default, a constant or a rule. */
  rules: number;
  /** Everything that is wrong, at once. */
  problems: Array<StripesProblem>;
};

/** What was asked of: a repeat, stripes of one's own, leftovers. */
export type Stripes = {
  /** A self-striping yarn on the pair. */
  repeat?: {
    /** Where the socks' yarn is from. */
    from: "two-balls" | "two-ends" | "halves";
    /** Yarn in the shortest repeat (m). */
    repeatM: number;
    /** The first sock as its ball begins now. */
    bandsA: Array<Band>;
    /** The second as its ball begins now. */
    bandsB: Array<Band>;
    /** Whether they are alike as the balls begin now. */
    isAlike: boolean;
    /** Whether the socks run through the colours in opposite order. */
    isOpposite: boolean;
    /** Whether the repeat reads alike forwards and backwards. */
    isMirror: boolean;
    /** Whether the socks can be made alike. */
    canMatch: boolean;
    /** Off the second sock's yarn, and they are alike. */
    pullOffB?: {
      /** Yarn (m). */
      m: number;
      /** Its mass (g). */
      g: number;
    };
    /** Off the first sock's in its place. */
    pullOffA?: {
      /** Yarn (m). */
      m: number;
      /** Its mass (g). */
      g: number;
    };
    /** Of a ball cut in two: the first sock's part. */
    cut?: {
      /** Yarn (m). */
      m: number;
      /** Its mass (g). */
      g: number;
    };
    /** Whether the yarn lasts, pulled off as told; first sock, second. */
    balls: Array<{
      /** What there is for it (m). */
      holdsM: number;
      /** What the sock takes (m). */
      needM: number;
      /** What is pulled off first (m). */
      pulledM: number;
      /** What is left over; below 0 so much is missing (m). */
      spareM: number;
      /** `just`: without the margin. */
      enough: "yes" | "just" | "no";
    }>;
  };
  /** Stripes of plain colours. */
  own?: {
    /** Either sock. */
    bands: Array<Band>;
    /** What each colour takes. */
    colours: Array<{
      /** Which. */
      colour: number;
      /** Bands of it on one sock. */
      bands: number;
      /** Yarn (m). */
      mPerPair: number;
      /** Its mass (g). */
      gPerPair: number;
    }>;
    /** Changes of colour on one sock. */
    changes: number;
    /** More for the pair, if the yarn is cut at every change: two tails each (m). */
    moreIfCutM: number;
  };
  /** Leftovers laid from the toe up, with as few joins as there can be. */
  leftovers?: {
    /** Whether they reach the planned edge. */
    reaches: boolean;
    /** Whether they do with the margin kept; else they just reach, laid without it. */
    keepsMargin: boolean;
    /** Rounds of each sock that they make, bound off (rounds). */
    rounds: number;
    /** Joins on one sock. */
    joins: number;
    /** Of those, within toe or cuff. */
    joinsInside: number;
    /** What they do not reach with their margin kept, in a further yarn, for the pair with its own (m). */
    missingM: number;
    /** Floor to edge of the sock they make (mm). */
    legHeightMm?: number;
    /** Either sock; the colour is the lot, from 1. */
    bands: Array<Band>;
    /** The same by part of the sock. */
    parts: Array<{
      /** Which, from 1. */
      lot: number;
      /** The part. */
      section: "toe" | "spiral" | "widening" | "cuff";
      /** First round (rounds). */
      fromRound: number;
      /** Last round (rounds). */
      toRound: number;
    }>;
    /** The lots as they were told. */
    lots: Array<{
      /** Half of it (m). */
      mPerSock: number;
      /** What one sock takes of it, tails included; 0 where it is not needed (m). */
      usedM: number;
      /** Whether it would make both toes by itself. */
      makesToe: boolean;
      /** Whether it would make both ribs up to the cuff or to where they widen. */
      makesSpiral: boolean;
      /** Whether it would make what is wider. */
      makesWidening: boolean;
      /** Whether it would make both cuffs and bind them off. */
      makesCuff: boolean;
      /** How much thicker than the sock's yarn, as a share; where both are known. */
      thicknessApart?: number;
      /** Whether that is too much to share its gauge. */
      isOtherThickness?: boolean;
    }>;
  };
};

/** Something wrong with the stripes asked for. */
export type StripesProblem = {
  /** RFC 6901 pointer into the request; "" is the whole of it. */
  field: string;
  /** What it is. */
  code: "unknown_question" | "too_large_text" | "bad_json" | "too_deep" | "not_an_object" | "newer_version" | "required" | "unknown_field" | "repeated_field" | "wrong_type" | "out_of_range" | "not_finite" | "number_too_large" | "not_whole" | "unknown_word" | "too_many_items" | "needs_partner" | "count_out_of_range" | "heel_out_of_reach" | "not_a_count" | "leg_too_short" | "no_room_for_rib" | "too_many_rounds" | "leg_too_wide" | "no_room_to_widen" | "stretched_too_narrow" | "shoe_out_of_range" | "girth_out_of_range" | "too_many_bands";
  /** A plain English sentence in SI units. */
  message: string;
  /** A number or a word that goes with the code; lengths are named ...Mm. */
  [name: string]: number | string;
};

/** Yarn of one colour on a sock, in one piece; a round's share is what is knit of it when the colour changes. */
export type Band = {
  /** Which. */
  colour: number;
  /** Yarn, tails, cast-on and bind-off included (m). */
  m: number;
  /** The round it begins in (rounds). */
  fromRound: number;
  /** How much of that round is knit before it. */
  fromShare: number;
  /** In which half of that round it begins: 1 or 2. */
  fromHalf: number;
  /** The round it ends in (rounds). */
  toRound: number;
  /** How much of that round is knit with its end. */
  toShare: number;
};

/** What a plan is asked with. */
export type PlanPart = {
  /** Version of this request. */
  version?: 1;
  /** The swatch. */
  swatch?: {
    /** What the swatch is knit in; rib is the sock's own rib, relaxed. Default "stockinette". */
    fabric?: "stockinette" | "rib";
    /** Whether the swatch was washed and dried before it was measured. Default true. */
    washed?: boolean;
    /** Diameter of the swatch's needles (mm, in steps of 0.25). */
    needleMm?: number;
    /** Measurements of the swatch. */
    readings: Array<{
      /** Stitches counted over the width (stitches, in steps of 0.25). */
      stitches: number;
      /** Width over which the stitches were counted (mm, in steps of 0.5). */
      widthMm: number;
      /** Rounds or rows counted over the height (rounds, in steps of 0.25). */
      rounds?: number;
      /** Height over which the rounds were counted (mm, in steps of 0.5). */
      heightMm?: number;
    }>;
    /** Width of the first reading pulled as far as hands pull it (mm, in steps of 0.5). */
    stretchedWidthMm?: number;
    /** Mass of the weighed swatch (g, in steps of 0.1). */
    massG?: number;
    /** Stitches in the weighed swatch (stitches, in steps of 1). */
    massStitches?: number;
  };
  /** The yarn and its ball band. */
  yarn?: {
    /** Yarn weight category, 0 lace to 7 jumbo. */
    category?: number;
    /** Mass of one ball (g, in steps of 1). */
    ballG?: number;
    /** Length of yarn in one ball (m, in steps of 1). */
    ballM?: number;
    /** Another yarn to knit the same sock from, by its label. */
    substitute?: {
      /** Mass of one ball of it (g, in steps of 1). */
      ballG: number;
      /** Length of yarn in one ball of it (m, in steps of 1). */
      ballM: number;
    };
  };
  /** The foot, measured or by its shoe. */
  foot?: {
    /** Length of the foot, heel to longest toe (mm, in steps of 0.5). */
    lengthMm?: number;
    /** Girth round the ball of the foot (mm, in steps of 0.5). */
    ballGirthMm?: number;
    /** Girth round the heel and over the bend of the ankle (mm, in steps of 0.5). */
    heelAnkleGirthMm?: number;
    /** Girth of the ankle, above the bones (mm, in steps of 0.5). */
    ankleGirthMm?: number;
    /** Girth of the calf at its widest (mm, in steps of 0.5). */
    calfGirthMm?: number;
    /** A shoe size in place of a measured foot. */
    shoe?: {
      /** Scale of the shoe size. */
      scale: "mondopoint" | "eu" | "us-men" | "us-women" | "uk";
      /** Shoe size on its scale; mondopoint is the foot's length in mm (in steps of 0.5). */
      size: number;
    };
    /** Whose foot it is, to estimate its girth from its length. */
    body?: "woman" | "man" | "child";
  };
  /** Height of the sock's top edge above the floor (mm, in steps of 0.5). */
  legHeightMm?: number;
  /** Height of the straight cuff (mm, in steps of 0.5). Default 30. */
  cuffMm?: number;
  /** The rib and how it moves. */
  rib?: {
    /** Knit stitches in a repeat of the rib (stitches). Default 2. */
    knit?: number;
    /** Purl stitches in a repeat of the rib (stitches). Default 2. */
    purl?: number;
    /** Rounds between two moves of the rib by one stitch; 0 keeps it straight (rounds). Default 4. */
    roundsPerShift?: number;
    /** Which way the rib leans; mirrored: the second sock is the first one's mirror. Default "left". */
    lean?: "left" | "right" | "mirrored";
  };
  /** How much wider (+) or narrower (-) than the ball girth the sock is, as a share of it (in steps of 0.01). Default -0.1. */
  girthEase?: number;
  /** How much longer (+) or shorter (-) than the foot the sock's foot is, as a share of it (in steps of 0.01). Default -0.04. */
  lengthEase?: number;
  /** The toe. */
  toe?: {
    /** Length of the toe as a share of the foot's length (in steps of 0.01). Default 0.25. */
    share?: number;
    /** Stitches cast on as a share of the sock's count (in steps of 0.01). Default 0.4. */
    tipShare?: number;
    /** Whether the toe widens fast and then slowly, evenly, or faster on the great-toe side. Default "round". */
    shape?: "round" | "even" | "left-right";
  };
  /** The knitter's own stitch count; left out, one is advised (stitches). */
  stitchCount?: number;
  /** How fast the knitter knits. */
  pace?: {
    /** Stitches knit in a minute (stitches a minute, in steps of 1). Default 15. */
    stitchesPerMinute?: number;
  };
  /** Yarn bought beyond the need, as a share of it (in steps of 0.01). Default 0.1. */
  yarnMargin?: number;
};

/** What a plan is asked with. */
export type SeatPart = {
  /** Version of this request. */
  version?: 1;
  /** The swatch. */
  swatch?: {
    /** What the swatch is knit in; rib is the sock's own rib, relaxed. Default "stockinette". */
    fabric?: "stockinette" | "rib";
    /** Whether the swatch was washed and dried before it was measured. Default true. */
    washed?: boolean;
    /** Diameter of the swatch's needles (mm, in steps of 0.25). */
    needleMm?: number;
    /** Measurements of the swatch. */
    readings: Array<{
      /** Stitches counted over the width (stitches, in steps of 0.25). */
      stitches: number;
      /** Width over which the stitches were counted (mm, in steps of 0.5). */
      widthMm: number;
      /** Rounds or rows counted over the height (rounds, in steps of 0.25). */
      rounds?: number;
      /** Height over which the rounds were counted (mm, in steps of 0.5). */
      heightMm?: number;
    }>;
    /** Width of the first reading pulled as far as hands pull it (mm, in steps of 0.5). */
    stretchedWidthMm?: number;
    /** Mass of the weighed swatch (g, in steps of 0.1). */
    massG?: number;
    /** Stitches in the weighed swatch (stitches, in steps of 1). */
    massStitches?: number;
  };
  /** The yarn and its ball band. */
  yarn?: {
    /** Yarn weight category, 0 lace to 7 jumbo. */
    category?: number;
    /** Mass of one ball (g, in steps of 1). */
    ballG?: number;
    /** Length of yarn in one ball (m, in steps of 1). */
    ballM?: number;
    /** Another yarn to knit the same sock from, by its label. */
    substitute?: {
      /** Mass of one ball of it (g, in steps of 1). */
      ballG: number;
      /** Length of yarn in one ball of it (m, in steps of 1). */
      ballM: number;
    };
  };
  /** The foot, measured or by its shoe. */
  foot?: {
    /** Length of the foot, heel to longest toe (mm, in steps of 0.5). */
    lengthMm?: number;
    /** Girth round the ball of the foot (mm, in steps of 0.5). */
    ballGirthMm?: number;
    /** Girth round the heel and over the bend of the ankle (mm, in steps of 0.5). */
    heelAnkleGirthMm?: number;
    /** Girth of the ankle, above the bones (mm, in steps of 0.5). */
    ankleGirthMm?: number;
    /** Girth of the calf at its widest (mm, in steps of 0.5). */
    calfGirthMm?: number;
    /** A shoe size in place of a measured foot. */
    shoe?: {
      /** Scale of the shoe size. */
      scale: "mondopoint" | "eu" | "us-men" | "us-women" | "uk";
      /** Shoe size on its scale; mondopoint is the foot's length in mm (in steps of 0.5). */
      size: number;
    };
    /** Whose foot it is, to estimate its girth from its length. */
    body?: "woman" | "man" | "child";
  };
  /** Height of the sock's top edge above the floor (mm, in steps of 0.5). */
  legHeightMm?: number;
  /** Height of the straight cuff (mm, in steps of 0.5). Default 30. */
  cuffMm?: number;
  /** The rib and how it moves. */
  rib?: {
    /** Knit stitches in a repeat of the rib (stitches). Default 2. */
    knit?: number;
    /** Purl stitches in a repeat of the rib (stitches). Default 2. */
    purl?: number;
    /** Rounds between two moves of the rib by one stitch; 0 keeps it straight (rounds). Default 4. */
    roundsPerShift?: number;
    /** Which way the rib leans; mirrored: the second sock is the first one's mirror. Default "left". */
    lean?: "left" | "right" | "mirrored";
  };
  /** How much wider (+) or narrower (-) than the ball girth the sock is, as a share of it (in steps of 0.01). Default -0.1. */
  girthEase?: number;
  /** How much longer (+) or shorter (-) than the foot the sock's foot is, as a share of it (in steps of 0.01). Default -0.04. */
  lengthEase?: number;
  /** The toe. */
  toe?: {
    /** Length of the toe as a share of the foot's length (in steps of 0.01). Default 0.25. */
    share?: number;
    /** Stitches cast on as a share of the sock's count (in steps of 0.01). Default 0.4. */
    tipShare?: number;
    /** Whether the toe widens fast and then slowly, evenly, or faster on the great-toe side. Default "round". */
    shape?: "round" | "even" | "left-right";
  };
  /** The knitter's own stitch count; left out, one is advised (stitches). */
  stitchCount?: number;
  /** How fast the knitter knits. */
  pace?: {
    /** Stitches knit in a minute (stitches a minute, in steps of 1). Default 15. */
    stitchesPerMinute?: number;
  };
  /** Yarn bought beyond the need, as a share of it (in steps of 0.01). Default 0.1. */
  yarnMargin?: number;
  /** Yarn in hand for the pair. */
  inHand?: {
    /** Balls of it (in steps of 0.25). */
    balls?: number;
    /** Mass of it; overrules the balls (g, in steps of 0.5). */
    g?: number;
  };
};

/** The figures of one pair in a table; as its plan has them. */
export type PairLine = {
  /** Yarn weight category, named or read off the gauge. */
  category: number;
  /** Stitches in a round of one sock (stitches). */
  stitchCount: number;
  /** Rounds of one sock, toe to edge (rounds). */
  totalRounds: number;
  /** Yarn of the pair (m). */
  mPerPair: number;
  /** Yarn to buy for the pair (m). */
  mWithMargin: number;
  /** Relative give or take of the yarn. */
  yarnError: number;
  /** Mass of one sock (g). */
  gPerSock: number;
  /** Mass to buy for the pair (g). */
  gWithMargin: number;
  /** The ball it is bought in; absent where neither ball nor category is known. */
  ball?: {
    /** Mass of one ball (g). */
    g: number;
    /** Yarn in one ball (m). */
    m: number;
    /** Whether it is the category's usual ball, for want of a label. */
    usual: boolean;
    /** Balls to buy for the pair. */
    count: number;
    /** Whether that number is a close thing. */
    just: boolean;
  };
  /** The needle. */
  needle: {
    /** Diameter (mm). */
    mm: number;
    /** Its US name. */
    us?: string;
    /** Its UK name. */
    uk?: string;
    /** Its length as sold; absent where none is long enough (mm). */
    cableMm?: number;
  };
  /** Knitting time of the pair (min). */
  minutes: number;
  /** Its relative give or take. */
  minutesError: number;
};

/** How far one pair comes. */
export type KnitterWeeks = {
  /** The pace it is told for (stitches a minute). */
  stitchesPerMinute: number;
  /** Stitches in a round of one sock (stitches). */
  stitchCount: number;
  /** Rounds of one sock, toe to edge (rounds). */
  totalRounds: number;
  /** Each meeting. */
  meetings: Array<{
    /** Whole rounds of one sock when it begins (rounds). */
    roundsAtStart: number;
    /** Whole rounds of one sock when it ends (rounds). */
    roundsAtEnd: number;
  }>;
  /** In the order they are reached. */
  milestones: Array<{
    /** What comes next, or of cast-on and toe what is done. */
    milestone: "castOn" | "toe" | "firstShift" | "tryOn" | "cuff" | "bindOff";
    /** Whole rounds of one sock by then (rounds). */
    rounds: number;
    /** Knitting time of the pair by then (min). */
    minutes: number;
    /** In a meeting, at home after one, or when the course is over. */
    when: "class" | "home" | "late";
    /** Which meeting, from 1; absent where the course is over. */
    meeting?: number;
  }>;
  /** Cast-on and knitting; bind-off and tails are not in it (min). */
  workMinutes: number;
  /** What is left of the time; under 0, what is missing (min). */
  slackMinutes: number;
  /** Whether the last round is knit in time. */
  finishes: boolean;
  /** The least whole pace that is done in time; absent where none is (stitches a minute). */
  leastPace?: number;
};

/** Values by RFC 6901 pointer into a request of `plan`. */
export type Changes = {
  [name: string]: number | string | boolean;
};

/** What is odd about a pair. */
export type Oddity = {
  /** What it does, the worst first. */
  harm: "body" | "supply" | "sock" | "doubt";
  /** RFC 6901 pointer into the request; "" is the whole of it. */
  field: string;
  /** What it is. */
  code: "guessed_gauge" | "flat_swatch" | "unwashed_swatch" | "stretch_doubtful" | "rib_swatch" | "shift_every_round" | "moss_stitch" | "no_lean" | "ease_outside" | "ease_off" | "heel_moved_count" | "heel_tight" | "heel_will_not_pass" | "leg_widened" | "stitch_crosses" | "heel_below_ball" | "girths_estimated" | "foot_estimated" | "yarn_sources_disagree" | "mass_needs_ball" | "yarn_guessed" | "loose_fabric" | "firm_fabric" | "substitute_differs" | "balls_just" | "balls_barely_begun" | "no_cable_long_enough" | "tight_on_leg" | "yarn_short" | "margin_short" | "hand_needs_ball" | "gauge_dense" | "gauge_loose" | "readings_scatter";
  /** A plain English sentence in SI units. */
  message: string;
  /** A number or a word that goes with the code; lengths are named ...Mm. */
  [name: string]: number | string;
};

/** What a class has in common, and its yarns and sizes. */
export type SupplyRequest = {
  /** Version of this request. */
  version: 1;
  class: PlanPart;
  /** Each yarn: what of the class's request it replaces. */
  rows: Array<PlanPart>;
  /** Each size: what of the class's request it replaces. */
  columns: Array<PlanPart>;
};

export type SupplyReply = SupplyAnswered | Refused;

/** One pair for every yarn by every size. */
export type SupplyAnswered = {
  /** Whether the question was answered. */
  ok: true;
  /** Version of this contract. */
  version: 1;
  /** Raised with every change of a default, a constant or a rule. */
  rules: number;
  supply: Supply;
};

/** One pair for every yarn by every size. */
export type Supply = {
  /** Row by row. */
  cells: Array<{
    /** Its yarn's place, from 0. */
    row: number;
    /** Its size's place, from 0. */
    column: number;
    line?: PairLine;
    /** Why there is none. */
    problems?: Array<Problem>;
    /** What the class's request has to lose for this plan: pointers of its members. */
    clear: Array<string>;
    change: Changes;
  }>;
};

/** A course of meetings and who knits in it. */
export type WeeksRequest = {
  /** Version of this request. */
  version: 1;
  class: PlanPart;
  /** Each knitter, or each yarn: what of the class's request it replaces. */
  knitters: Array<PlanPart>;
  /** How often the class meets. */
  meetings: number;
  /** Knitting time in a meeting (min, in steps of 5). */
  minutesInClass: number;
  /** Knitting time between two meetings (min, in steps of 5). Default 0. */
  minutesAtHome?: number;
  /** Time in which both toes are cast on, in the first meeting (min, in steps of 5). Default 20. */
  castOnMinutes?: number;
};

export type WeeksReply = WeeksAnswered | Refused;

/** How far each pair comes in each meeting. */
export type WeeksAnswered = {
  /** Whether the question was answered. */
  ok: true;
  /** Version of this contract. */
  version: 1;
  /** Raised with every change of a default, a constant or a rule. */
  rules: number;
  weeks: Weeks;
};

/** How far each pair comes in each meeting. */
export type Weeks = {
  /** All meetings and the time at home between (min). */
  minutes: number;
  /** In the order asked. */
  knitters: Array<{
    weeks?: KnitterWeeks;
    /** Why there is none. */
    problems?: Array<Problem>;
  }>;
};

/** A class and its seats. */
export type RosterRequest = {
  /** Version of this request. */
  version: 1;
  class: SeatPart;
  /** Each seat: what of the class's request it replaces. */
  seats: Array<SeatPart>;
};

export type RosterReply = RosterAnswered | Refused;

/** A class seat by seat. */
export type RosterAnswered = {
  /** Whether the question was answered. */
  ok: true;
  /** Version of this contract. */
  version: 1;
  /** Raised with every change of a default, a constant or a rule. */
  rules: number;
  roster: Roster;
};

/** A class seat by seat, and what it takes together. */
export type Roster = {
  /** In the order asked. */
  seats: Array<{
    line?: PairLine;
    /** What does harm, worst first; absent where nothing does. */
    odd?: Array<Oddity>;
    /** Why there is no plan. */
    problems?: Array<Problem>;
  }>;
  /** Seats that have a plan; the totals are theirs. */
  planned: number;
  /** Yarn to buy by category, finest first. */
  wool: Array<{
    /** Which. */
    category: number;
    /** Pairs. */
    pairs: number;
    /** Yarn, margins in it (m). */
    m: number;
    /** Its mass (g). */
    g: number;
    /** Balls, whole ones for each pair. */
    balls: number;
    /** Pairs that are not in the balls: neither label nor category is known. */
    pairsWithoutBall: number;
  }>;
  /** Needles to lend, thinnest first. */
  needles: Array<{
    /** Diameter (mm). */
    mm: number;
    /** Its US name. */
    us?: string;
    /** Its UK name. */
    uk?: string;
    /** Its length as sold; absent where none is long enough (mm). */
    cableMm?: number;
    /** How many. */
    count: number;
  }>;
};

/** What a plan is asked with. */
export type OddRequest = {
  /** Version of this request. */
  version: 1;
  /** The swatch. */
  swatch?: {
    /** What the swatch is knit in; rib is the sock's own rib, relaxed. Default "stockinette". */
    fabric?: "stockinette" | "rib";
    /** Whether the swatch was washed and dried before it was measured. Default true. */
    washed?: boolean;
    /** Diameter of the swatch's needles (mm, in steps of 0.25). */
    needleMm?: number;
    /** Measurements of the swatch. */
    readings: Array<{
      /** Stitches counted over the width (stitches, in steps of 0.25). */
      stitches: number;
      /** Width over which the stitches were counted (mm, in steps of 0.5). */
      widthMm: number;
      /** Rounds or rows counted over the height (rounds, in steps of 0.25). */
      rounds?: number;
      /** Height over which the rounds were counted (mm, in steps of 0.5). */
      heightMm?: number;
    }>;
    /** Width of the first reading pulled as far as hands pull it (mm, in steps of 0.5). */
    stretchedWidthMm?: number;
    /** Mass of the weighed swatch (g, in steps of 0.1). */
    massG?: number;
    /** Stitches in the weighed swatch (stitches, in steps of 1). */
    massStitches?: number;
  };
  /** The yarn and its ball band. */
  yarn?: {
    /** Yarn weight category, 0 lace to 7 jumbo. */
    category?: number;
    /** Mass of one ball (g, in steps of 1). */
    ballG?: number;
    /** Length of yarn in one ball (m, in steps of 1). */
    ballM?: number;
    /** Another yarn to knit the same sock from, by its label. */
    substitute?: {
      /** Mass of one ball of it (g, in steps of 1). */
      ballG: number;
      /** Length of yarn in one ball of it (m, in steps of 1). */
      ballM: number;
    };
  };
  /** The foot, measured or by its shoe. */
  foot: {
    /** Length of the foot, heel to longest toe (mm, in steps of 0.5). */
    lengthMm?: number;
    /** Girth round the ball of the foot (mm, in steps of 0.5). */
    ballGirthMm?: number;
    /** Girth round the heel and over the bend of the ankle (mm, in steps of 0.5). */
    heelAnkleGirthMm?: number;
    /** Girth of the ankle, above the bones (mm, in steps of 0.5). */
    ankleGirthMm?: number;
    /** Girth of the calf at its widest (mm, in steps of 0.5). */
    calfGirthMm?: number;
    /** A shoe size in place of a measured foot. */
    shoe?: {
      /** Scale of the shoe size. */
      scale: "mondopoint" | "eu" | "us-men" | "us-women" | "uk";
      /** Shoe size on its scale; mondopoint is the foot's length in mm (in steps of 0.5). */
      size: number;
    };
    /** Whose foot it is, to estimate its girth from its length. */
    body?: "woman" | "man" | "child";
  };
  /** Height of the sock's top edge above the floor (mm, in steps of 0.5). */
  legHeightMm: number;
  /** Height of the straight cuff (mm, in steps of 0.5). Default 30. */
  cuffMm?: number;
  /** The rib and how it moves. */
  rib?: {
    /** Knit stitches in a repeat of the rib (stitches). Default 2. */
    knit?: number;
    /** Purl stitches in a repeat of the rib (stitches). Default 2. */
    purl?: number;
    /** Rounds between two moves of the rib by one stitch; 0 keeps it straight (rounds). Default 4. */
    roundsPerShift?: number;
    /** Which way the rib leans; mirrored: the second sock is the first one's mirror. Default "left". */
    lean?: "left" | "right" | "mirrored";
  };
  /** How much wider (+) or narrower (-) than the ball girth the sock is, as a share of it (in steps of 0.01). Default -0.1. */
  girthEase?: number;
  /** How much longer (+) or shorter (-) than the foot the sock's foot is, as a share of it (in steps of 0.01). Default -0.04. */
  lengthEase?: number;
  /** The toe. */
  toe?: {
    /** Length of the toe as a share of the foot's length (in steps of 0.01). Default 0.25. */
    share?: number;
    /** Stitches cast on as a share of the sock's count (in steps of 0.01). Default 0.4. */
    tipShare?: number;
    /** Whether the toe widens fast and then slowly, evenly, or faster on the great-toe side. Default "round". */
    shape?: "round" | "even" | "left-right";
  };
  /** The knitter's own stitch count; left out, one is advised (stitches). */
  stitchCount?: number;
  /** How fast the knitter knits. */
  pace?: {
    /** Stitches knit in a minute (stitches a minute, in steps of 1). Default 15. */
    stitchesPerMinute?: number;
  };
  /** Yarn bought beyond the need, as a share of it (in steps of 0.01). Default 0.1. */
  yarnMargin?: number;
  /** Yarn in hand for the pair. */
  inHand?: {
    /** Balls of it (in steps of 0.25). */
    balls?: number;
    /** Mass of it; overrules the balls (g, in steps of 0.5). */
    g?: number;
  };
};

export type OddReply = OddAnswered | Refused;

/** What is odd about one pair. */
export type OddAnswered = {
  /** Whether the question was answered. */
  ok: true;
  /** Version of this contract. */
  version: 1;
  /** Raised with every change of a default, a constant or a rule. */
  rules: number;
  odd: Odd;
};

/** What is odd about one pair. */
export type Odd = {
  /** In order of harm. */
  oddities: Array<Oddity>;
};

/** What a plan is asked with. */
export type DriveRequest = {
  /** Version of this request. */
  version: 1;
  /** The swatch. */
  swatch?: {
    /** What the swatch is knit in; rib is the sock's own rib, relaxed. Default "stockinette". */
    fabric?: "stockinette" | "rib";
    /** Whether the swatch was washed and dried before it was measured. Default true. */
    washed?: boolean;
    /** Diameter of the swatch's needles (mm, in steps of 0.25). */
    needleMm?: number;
    /** Measurements of the swatch. */
    readings: Array<{
      /** Stitches counted over the width (stitches, in steps of 0.25). */
      stitches: number;
      /** Width over which the stitches were counted (mm, in steps of 0.5). */
      widthMm: number;
      /** Rounds or rows counted over the height (rounds, in steps of 0.25). */
      rounds?: number;
      /** Height over which the rounds were counted (mm, in steps of 0.5). */
      heightMm?: number;
    }>;
    /** Width of the first reading pulled as far as hands pull it (mm, in steps of 0.5). */
    stretchedWidthMm?: number;
    /** Mass of the weighed swatch (g, in steps of 0.1). */
    massG?: number;
    /** Stitches in the weighed swatch (stitches, in steps of 1). */
    massStitches?: number;
  };
  /** The yarn and its ball band. */
  yarn?: {
    /** Yarn weight category, 0 lace to 7 jumbo. */
    category?: number;
    /** Mass of one ball (g, in steps of 1). */
    ballG?: number;
    /** Length of yarn in one ball (m, in steps of 1). */
    ballM?: number;
  };
  /** Height of the sock's top edge above the floor (mm, in steps of 0.5). */
  legHeightMm?: number;
  /** Height of the straight cuff (mm, in steps of 0.5). Default 30. */
  cuffMm?: number;
  /** The rib and how it moves. */
  rib?: {
    /** Knit stitches in a repeat of the rib (stitches). Default 2. */
    knit?: number;
    /** Purl stitches in a repeat of the rib (stitches). Default 2. */
    purl?: number;
    /** Rounds between two moves of the rib by one stitch; 0 keeps it straight (rounds). Default 4. */
    roundsPerShift?: number;
    /** Which way the rib leans; mirrored: the second sock is the first one's mirror. Default "left". */
    lean?: "left" | "right" | "mirrored";
  };
  /** How much longer (+) or shorter (-) than the foot the sock's foot is, as a share of it (in steps of 0.01). Default -0.04. */
  lengthEase?: number;
  /** The toe. */
  toe?: {
    /** Length of the toe as a share of the foot's length (in steps of 0.01). Default 0.25. */
    share?: number;
    /** Stitches cast on as a share of the sock's count (in steps of 0.01). Default 0.4. */
    tipShare?: number;
    /** Whether the toe widens fast and then slowly, evenly, or faster on the great-toe side. Default "round". */
    shape?: "round" | "even" | "left-right";
  };
  /** How fast the knitter knits. */
  pace?: {
    /** Stitches knit in a minute (stitches a minute, in steps of 1). Default 15. */
    stitchesPerMinute?: number;
  };
  /** Yarn bought beyond the need, as a share of it (in steps of 0.01). Default 0.1. */
  yarnMargin?: number;
  /** Many feet that nobody has measured. */
  drive: {
    /** Pairs wanted. */
    pairs: number;
    /** For whom. */
    groups: Array<{
      /** Who they are. */
      who: "woman" | "man" | "child";
      /** Age of the children (years). */
      ageYears?: number;
      /** How many of the feet are theirs, in parts of any size (in steps of 0.01). Default 1. */
      share?: number;
    }>;
    /** Sizes to make; left out, as few as serve the wanted share. */
    sizes?: number;
    /** Share of the feet to serve (in steps of 0.01). Default 0.9. */
    wantedShare?: number;
    /** Height of the top edge in foot lengths, where /legHeightMm does not give one height for all (in steps of 0.05). Default 0.8. */
    legOfFoot?: number;
    /** Wool at hand. */
    lots?: Array<{
      /** Yarn in it (m, in steps of 1). */
      m?: number;
      /** Its mass (g, in steps of 1). */
      g?: number;
      /** Yarn in 100 g of it (m, in steps of 1). */
      mPer100G?: number;
      /** Its weight category; left out, its thickness tells whether it is the sock's yarn; neither told, it is. */
      category?: number;
    }>;
  };
};

export type DriveReply = DriveAnswered | DriveRefused;

/** Sizes for many feet. */
export type DriveAnswered = {
  /** Whether the question was answered. */
  ok: true;
  /** Version of this contract. */
  version: 1;
  /** Raised with every change of a default, a constant or a rule. */
  rules: number;
  drive: Drive;
};

/** No sizes, and why. */
export type DriveRefused = {
  /** Whether the question was answered. */
  ok: false;
  /** Version of this contract. */
  version: 1;
  /** Raised with every change of a default, a constant or a rule. */
  rules: number;
  /** Everything that is wrong, at once. */
  problems: Array<DriveProblem>;
};

/** Sizes for many feet. */
export type Drive = {
  /** Share of the feet that was to be served. */
  wantedShare: number;
  /** Height of the top edge in foot lengths; absent where one height is for all. */
  legOfFoot?: number;
  /** Share of all feet that the sizes serve, each foot counted once. */
  share: number;
  /** Give or take of every share, against the feet as surveyed. */
  shareError: number;
  /** No choice of so many sizes serves more. */
  atMost: number;
  /** Whether the wanted share is reached. */
  isReached: boolean;
  /** Whether fewer sizes that reach it are ruled out. */
  isFewest: boolean;
  /** What 1, 2, ... sizes serve, each wider and longer than the last, up to where another adds nothing. */
  shareByNumber: Array<number>;
  /** The sizes, narrow to wide. */
  sizes: Array<{
    /** Pairs of it. */
    pairs: number;
    /** Stitches in a round of one sock (stitches). */
    stitchCount: number;
    /** Rounds of one sock (rounds). */
    totalRounds: number;
    /** Foot length it is made for (mm). */
    footMm: number;
    /** Ball girth that it fits with 10 % of ease (mm). */
    ballGirthMm: number;
    /** Floor to top edge on that foot (mm). */
    legHeightMm: number;
    /** Length of the sock (mm). */
    lengthMm: number;
    /** Girth laid flat (mm). */
    finishedGirthMm: number;
    /** Share of all feet that it serves, whatever the other sizes do. */
    serves: number;
    /** Share of all feet counted for it, each foot once. */
    share: number;
    /** Women's part of that share. */
    women: number;
    /** Men's. */
    men: number;
    /** Children's. */
    children: number;
    /** What goes on its band. */
    band: {
      /** Foot length of the feet counted for it, 5th percentile (mm). */
      footFromMm: number;
      /** 95th percentile (mm). */
      footToMm: number;
      /** Shortest foot that it serves (mm). */
      fitsFromMm: number;
      /** Longest foot (mm). */
      fitsToMm: number;
      /** Smallest ball girth that it serves (mm). */
      ballFromMm: number;
      /** Largest, where a median heel goes with it (mm). */
      ballToMm: number;
      /** Whole shoe sizes of the feet counted for it. */
      shoes: Array<{
        /** Which. */
        scale: "eu" | "uk" | "us-women" | "us-men";
        /** Smallest size. */
        from: number;
        /** Largest size. */
        to: number;
      }>;
    };
    /** Yarn of a pair, with the margin (m). */
    mPerPair: number;
    /** Yarn of all its pairs, with the margin (m). */
    m: number;
    /** Its mass (g). */
    g: number;
    /** Knitting time of a pair (min). */
    minutes: number;
  }>;
  /** Wool for all pairs, with the margin. */
  wool: {
    /** Its length (m). */
    m: number;
    /** Its mass (g). */
    g: number;
    /** Whether the grams are guessed from the category. */
    massGuessed: boolean;
    /** Balls to buy; absent where the ball is not known. */
    balls?: number;
  };
  /** What the lots make of the pairs, each pair from one lot; absent without lots. */
  atHand?: {
    /** Pairs in all. */
    pairs: number;
    /** No filling of the lots makes more. */
    pairsAtMost: number;
    /** Of each size, in their order. */
    pairsOfSize: Array<number>;
    /** Each lot, in the order of the request. */
    lots: Array<{
      /** Yarn in it, as told or by its thickness (m). */
      m: number;
      /** Its mass, likewise (g). */
      g: number;
      /** Whether it is the sock's yarn; else it makes nothing. */
      isSameYarn: boolean;
      /** What it is to make of each size. */
      pairsOfSize: Array<number>;
      /** What it would make of each size if it made that alone, however many are wanted. */
      alone: Array<number>;
      /** Yarn left of it (m). */
      leftM?: number;
    }>;
  };
  /** What must not go unsaid. */
  cautions: Array<DriveCaution>;
};

/** Something wrong with the request for many feet. */
export type DriveProblem = {
  /** RFC 6901 pointer into the request; "" is the whole of it. */
  field: string;
  /** What it is. */
  code: "unknown_question" | "too_large_text" | "bad_json" | "too_deep" | "not_an_object" | "newer_version" | "required" | "unknown_field" | "repeated_field" | "wrong_type" | "out_of_range" | "not_finite" | "number_too_large" | "not_whole" | "unknown_word" | "too_many_items" | "needs_partner" | "count_out_of_range" | "heel_out_of_reach" | "not_a_count" | "leg_too_short" | "no_room_for_rib" | "too_many_rounds" | "leg_too_wide" | "no_room_to_widen" | "stretched_too_narrow" | "shoe_out_of_range" | "girth_out_of_range" | "nobody_served";
  /** A plain English sentence in SI units. */
  message: string;
  /** A number or a word that goes with the code; lengths are named ...Mm. */
  [name: string]: number | string;
};

/** Something that must not go unsaid about many feet. */
export type DriveCaution = {
  /** RFC 6901 pointer into the request; "" is the whole of it. */
  field: string;
  /** What it is. */
  code: "feet_of_soldiers" | "children_estimated" | "fewer_sizes_do" | "share_not_reached" | "better_not_ruled_out" | "lot_of_another_yarn" | "lots_fall_short";
  /** A plain English sentence in SI units. */
  message: string;
  /** A number or a word that goes with the code; lengths are named ...Mm. */
  [name: string]: number | string;
};

/** A link to open, or a sheet to make one of. */
export type LinkRequest = {
  /** Version of this request. */
  version: 1;
  /** A link to open, and then nothing else. */
  text?: string;
  /** What the form says. */
  fields?: Array<{
    /** Its pointer in the draft. */
    field: string;
    /** A number, in its unit. */
    value?: number;
    /** A choice. */
    typed?: string;
    /** Unit of the number. */
    unit?: string;
  }>;
  /** Page to open on. */
  view?: "buy" | "count" | "knit" | "class";
  /** Units of the page's own figures. */
  system?: "metric" | "inch";
  /** What is not to be changed. */
  locks?: Array<"rib" | "toe" | "yarn">;
  /** The yarns that a class may use; left out or empty, any. */
  yarns?: Array<number>;
  /** Title of a class, 60 characters at most. */
  title?: string;
  /** Note of a class, 280 characters at most. */
  note?: string;
  /** The plan that the sheet has now. */
  echo?: {
    /** Stitches in a round of one sock (stitches). */
    stitchCount: number;
    /** Rounds of one sock, toe to edge (rounds). */
    totalRounds: number;
  };
};

export type LinkReply = LinkAnswered | LinkRefused;

/** A link, made or opened. */
export type LinkAnswered = {
  /** Whether the question was answered. */
  ok: true;
  /** Version of this contract. */
  version: 1;
  /** Raised with every change of a default, a constant or a rule. */
  rules: number;
  link: Link;
};

/** No link, and why. */
export type LinkRefused = {
  /** Whether the question was answered. */
  ok: false;
  /** Version of this contract. */
  version: 1;
  /** Raised with every change of a default, a constant or a rule. */
  rules: number;
  /** Everything that is wrong, at once. */
  problems: Array<LinkProblem>;
};

/** A link and what it says. */
export type Link = {
  /** The link: the fragment of an address. */
  text: string;
  /** What it says of the form, in the link's order. */
  fields: Array<{
    /** Its pointer. */
    field: string;
    /** As one types it: 9 5/8, 24.6, left; empty where the field was emptied. */
    typed: string;
    /** Its unit; empty where it has none. */
    unit: string;
    /** Its number, in that unit. */
    value?: number;
  }>;
  /** Page to open on. */
  view?: "buy" | "count" | "knit" | "class";
  /** Units of the page's own figures. */
  system?: "metric" | "inch";
  /** What is not to be changed. */
  locks: Array<"rib" | "toe" | "yarn">;
  /** The yarns that a class may use, in order; absent where it may use any. */
  yarns?: Array<number>;
  /** Title of a class. */
  title?: string;
  /** Note of a class. */
  note?: string;
  /** The plan that the sheet had when the link was made. */
  echo: {
    /** The rules it was made by. */
    rules: number;
    /** Stitches in a round of one sock; absent where there was no plan (stitches). */
    stitchCount?: number;
    /** Rounds of one sock; absent where there was no plan (rounds). */
    totalRounds?: number;
  };
  /** Of a link made: what it says otherwise than was asked, finer than its steps or not to be shown. */
  changed: Array<string>;
};

/** Something wrong with a link or its request. */
export type LinkProblem = {
  /** RFC 6901 pointer into the request; "" is the whole of it. */
  field: string;
  /** What it is. */
  code: "link_not_ours" | "link_newer" | "link_too_long" | "link_cut" | "link_damaged" | "too_large_text" | "bad_json" | "too_deep" | "not_an_object" | "newer_version" | "required" | "unknown_field" | "wrong_type" | "repeated_field" | "out_of_range" | "not_finite" | "number_too_large" | "not_whole" | "unknown_word" | "too_many_items";
  /** A plain English sentence in SI units. */
  message: string;
  /** A number or a word that goes with the code; lengths are named ...Mm. */
  [name: string]: number | string;
};
