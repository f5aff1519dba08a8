#include "feet.h"

#include <cstddef>

namespace twinround {

namespace {

using Correlations = std::array<std::array<double, kFootMeasures>, kFootMeasures>;

// The whole matrix from the pairs above its diagonal, row by row.
constexpr Correlations symmetric(const std::array<double, 15>& above) {
  constexpr std::size_t kSize = kFootMeasures;
  Correlations whole{};
  std::size_t next = 0;
  for (std::size_t i = 0; i < kSize; ++i) {
    whole[i][i] = 1.0;
    for (std::size_t j = i + 1; j < kSize; ++j) {
      whole[i][j] = above[next];
      whole[j][i] = above[next];
      ++next;
    }
  }
  return whole;
}

// ANSUR II, the US Army's survey of 2012 (men n = 4082, women n = 1986), public data file; every
// figure derived: computed from it, means and SDs to 0.01 mm, percentiles to 1 mm, correlations to
// 0.001.
// clang-format off
constexpr AdultFeet kMen = {
    4082,
    {{
        // mean    SD     p1   p5   p50  p95  p99
        {271.18, 13.10, 242, 250, 271, 293, 302},  // foot length
        {252.02, 12.94, 224, 232, 252, 273, 284},  // ball of foot girth
        {343.47, 16.62, 307, 317, 343, 372, 385},  // heel-ankle girth
        {229.34, 14.65, 198, 206, 228, 254, 268},  // ankle girth
        {392.26, 29.71, 330, 346, 392, 443, 467},  // calf girth
        { 72.90,  5.67,  60,  64,  73,  83,  87},  // ankle-bone height
    }},
    symmetric({
        // ball heel  ankle calf  bone
        .597, .794, .489, .375, .333,  // foot length
              .747, .682, .619, .377,  // ball girth
                    .719, .626, .455,  // heel-ankle girth
                          .816, .349,  // ankle girth
                                .306,  // calf girth
    })};

constexpr AdultFeet kWomen = {
    1986,
    {{
        {246.29, 12.44, 219, 226, 246, 268, 276},
        {228.11, 11.77, 203, 209, 227, 248, 257},
        {310.32, 15.31, 277, 287, 310, 337, 348},
        {215.74, 14.89, 185, 193, 215, 242, 255},
        {373.26, 28.52, 313, 328, 372, 423, 452},
        { 62.75,  5.11,  51,  54,  63,  71,  75},
    }},
    symmetric({
        .606, .803, .428, .410, .310,
              .739, .590, .558, .351,
                    .645, .607, .390,
                          .766, .313,
                                .253,
    })};

// Snyder et al. 1977, UM-HSRI-77-17, for the US Consumer Product Safety Commission (n = 3836);
// derived: mean and SD in whole mm by year of age. Nothing under 2 years, no girths.
constexpr std::array<ChildRow, 14> kChildren = {{
    // age  boys     girls
    { 2, 143, 10, 143, 10},
    { 3, 156,  9, 156,  9},
    { 4, 167, 10, 167, 10},
    { 5, 174, 10, 174, 10},
    { 6, 185, 11, 185, 11},
    { 7, 193, 11, 193, 11},
    { 8, 203, 12, 203, 12},
    { 9, 212, 12, 212, 12},
    {10, 221, 13, 221, 13},
    {11, 228, 13, 228, 13},
    {12, 237, 14, 237, 14},
    {13, 249, 16, 235, 12},
    {15, 263, 13, 237, 12},
    {17, 266, 15, 236, 11},
}};
// clang-format on

// ball girth = constant + per_length x foot length, from ANSUR II, derived; the residual SD beside
// it.
constexpr GirthLine kManBall = {Length::from_mm(92.2), 0.590, Length::from_mm(10.4), 0};
constexpr GirthLine kWomanBall = {Length::from_mm(86.9), 0.573, Length::from_mm(9.4), 0};

// ASSUMPTION: a child's ball girth is 0.97 of the foot's length, a chubbier foot than the adults'
// 0.93. Its spread, ASSUMPTION: 6 % of the girth, from the adults' 4.5 % about their own share and
// the 4 % between their share and this one, in quadrature.
constexpr GirthLine kChildBall = {Length::from_mm(0), 0.97, Length::from_mm(0), 0.06};

}  // namespace

const AdultFeet& men_feet() {
  return kMen;
}
const AdultFeet& women_feet() {
  return kWomen;
}

std::optional<ChildRow> child_feet(int age) {
  for (const ChildRow& row : kChildren) {
    if (row.age == age) return row;
  }
  return std::nullopt;
}

GirthLine ball_girth_line(Body body) {
  switch (body) {
    case Body::woman:
      return kWomanBall;
    case Body::man:
      return kManBall;
    case Body::child:
      break;
  }
  return kChildBall;
}

EstimatedGirth ball_girth_from_length(Body body, Length foot_length) {
  const GirthLine line = ball_girth_line(body);
  const Length girth = line.constant + line.per_length * foot_length;
  return {girth, line.spread + line.spread_share * girth};
}

}  // namespace twinround
