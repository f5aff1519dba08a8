// The rooms of drive.cpp. Private to this folder.
#pragma once

#include "cover_table.h"
#include "drive.h"

namespace twinround {

// The request of a size's plan.
PlanRequest request_of(const DriveRequest& drive, const SockMake& make, const SockSize& size);

// What the plans of all sizes have in common: their yarn.
struct DriveYarn {
  int category = 0;
  double tex = 0;
  bool is_mass_guessed = false;
};

// The sizes to knit, as candidates of the table. Bars those that cannot be knit.
struct ChosenSizes {
  SizeChoice choice;
  bool is_fewest = false;
  std::vector<double> by_number;
};
ChosenSizes choose_sizes(const CoverTable& table, const DriveRequest& drive);

// Bars every candidate whose toe, leg and cuff leave no sock.
void bar_what_cannot_be(CoverTable& table, const DriveRequest& drive, const SockMake& make,
                        const Gauge& gauge);

// Fills wool and lots, from the sizes and their pairs.
void drive_wool(Drive& result, const DriveRequest& drive, const DriveYarn& yarn);

// What must not go unsaid.
std::vector<Caution> drive_cautions(const Drive& result, const DriveRequest& drive);

}  // namespace twinround
