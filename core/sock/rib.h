// The rib and how it steps sideways: vocabulary shared by the files of this folder.
#pragma once

namespace twinround {

enum class Lean { left, right, mirrored };

// k knit and p purl stitches, moved one stitch sideways every `rounds_per_shift` rounds (0:
// straight).
struct Rib {
  int knit = 2;
  int purl = 2;
  int rounds_per_shift = 4;
  Lean lean = Lean::left;

  constexpr int repeat() const { return knit + purl; }
  constexpr bool is_one_by_one() const { return knit == 1 && purl == 1; }
  // 1x1 moved one stitch left is 1x1 moved one stitch right: it turns into its own negative, and
  // leans nowhere.
  constexpr bool leans() const { return rounds_per_shift > 0 && !is_one_by_one(); }
  // 1x1 moved every round is the trade's moss (seed) stitch, which does not pull in.
  constexpr bool is_moss() const { return is_one_by_one() && rounds_per_shift == 1; }
};

}  // namespace twinround
