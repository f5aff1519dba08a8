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
      /** Its mass (g, in steps of 1). */
      grams: number;
      /** Its length (m, in steps of 1). */
      metres: number;
      /** Its weight category; left out, its thickness tells whether it is the sock's yarn. */
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
