#include "yarn_course.h"

#include <algorithm>
#include <cstddef>

#include "rounding.h"

namespace twinround {

YarnCourse yarn_course(const SockInMaking& sock) {
  YarnCourse course;
  course.bind_off = sock.bind_off;
  course.tail = sock.tails / 2;
  course.used.push_back(course.tail + sock.cast_on);
  for (const RoundSpan& span : sock.rounds) {
    for (int i = 0; i < span.rounds; ++i) {
      course.rounds.push_back({span.section, span.stitches});
      course.used.push_back(course.used.back() + sock.loop * span.stitches);
    }
  }
  course.whole = course.used.back() + course.bind_off + course.tail;
  return course;
}

SockPlace place_of_yarn(const YarnCourse& course, Length yarn) {
  const int all = static_cast<int>(course.rounds.size());
  // The first round that is not yet whole.
  const auto unfinished =
      std::partition_point(course.used.begin() + 1, course.used.end(),
                           [&](Length used) { return !clearly_above(used.mm(), yarn.mm()); });
  if (unfinished == course.used.end()) return {all, 1};
  const Length begun = *(unfinished - 1);
  const int round = static_cast<int>(unfinished - course.used.begin());
  return {round, std::max(0.0, (yarn - begun) / (*unfinished - begun))};
}

}  // namespace twinround
