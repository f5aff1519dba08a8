#include "line.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "sock_examples.h"

namespace twinround {
namespace {

using test::stitch_by_stitch;

// "kkp" as runs.
HalfLine runs_of(const std::string& letters) {
  HalfLine half;
  for (const char letter : letters) {
    const Work work = letter == 'k'   ? Work::knit
                      : letter == 'p' ? Work::purl
                      : letter == '<' ? Work::make_one_left
                                      : Work::make_one_right;
    append_run(half, work, 1);
  }
  return half;
}

// "[p1] [k2 p2]x4 [k2 p1]"
std::string said(const std::vector<Phrase>& phrases) {
  std::string text;
  for (const Phrase& phrase : phrases) {
    text += text.empty() ? "[" : " [";
    for (std::size_t i = 0; i < phrase.runs.size(); ++i) {
      if (i > 0) text += " ";
      text += stitch_by_stitch({{phrase.runs[i].work, 1}}) + std::to_string(phrase.runs[i].times);
    }
    text += "]";
    if (phrase.times != 1) text += "x" + std::to_string(phrase.times);
  }
  return text;
}

TEST(Line, JoinsRunsOfTheSameWork) {
  HalfLine half;
  append_run(half, Work::knit, 2);
  append_run(half, Work::knit, 1);
  append_run(half, Work::purl, 0);
  append_run(half, Work::knit, 4);
  append_run(half, Work::purl, 3);
  EXPECT_EQ(half, (HalfLine{{Work::knit, 7}, {Work::purl, 3}}));
}

TEST(Line, ReadFromItsOtherEndItsIncreasesLeanTheOtherWay) {
  EXPECT_EQ(stitch_by_stitch(read_backwards(runs_of("kkp"))), "pkk");
  EXPECT_EQ(stitch_by_stitch(read_backwards(runs_of("k<pp>kk"))), "kk<pp>k");
  // The toe's own half is its own mirror: k1, M1R, k3, M1L, k1.
  EXPECT_EQ(stitch_by_stitch(read_backwards(runs_of("k>kkk<k"))), "k>kkk<k");
}

TEST(Line, CountsTheStitchesItLeaves) {
  EXPECT_EQ(stitches_after(runs_of("kkppk")).value(), 5);
  EXPECT_EQ(stitches_after(runs_of("k>kkk<k")).value(), 7);
  EXPECT_EQ(stitches_after({}).value(), 0);
}

struct Folded {
  const char* stitches = "";
  const char* said = "";
};

TEST(Line, FoldsRepeatsForPeople) {
  const std::vector<Folded> table = {
      {"kkkkk", "[k5]"},
      {"kkpp", "[k2 p2]"},
      {"kkppkkpp", "[k2 p2]x2"},
      {"kkppkkppkk", "[k2 p2]x2 [k2]"},
      {"pkkppkkppkkppkkppkkp", "[p1] [k2 p2]x4 [k2 p1]"},
      {"kpkpkp", "[k1 p1]x3"},
      {"ppkkppkkpp", "[p2] [k2 p2]x2"},
      {"kppkppkppk", "[k1 p2]x3 [k1]"},
      {"k>kkk<k", "[k1 >1 k3 <1 k1]"},
      {"", "[]"},
  };
  for (const Folded& row : table) {
    EXPECT_EQ(said(fold_repeats(runs_of(row.stitches))), row.said) << row.stitches;
  }
}

TEST(Line, FoldedRepeatsUnfoldToTheSameRuns) {
  // Every half of up to 12 stitches there is.
  for (unsigned length = 1; length <= 12; ++length) {
    for (unsigned bits = 0; bits < 1U << length; ++bits) {
      std::string letters;
      for (unsigned i = 0; i < length; ++i) letters += (bits >> i & 1U) != 0U ? 'k' : 'p';
      const HalfLine half = runs_of(letters);
      HalfLine unfolded;
      for (const Phrase& phrase : fold_repeats(half)) {
        for (int time = 0; time < phrase.times; ++time) {
          unfolded.insert(unfolded.end(), phrase.runs.begin(), phrase.runs.end());
        }
      }
      ASSERT_EQ(unfolded, half) << letters << " told as " << said(fold_repeats(half));
    }
  }
}

}  // namespace
}  // namespace twinround
