// A request of `plan` told in part: what a class has in common, and what is another's own.
#pragma once

#include <span>
#include <vector>

#include "json_reader.h"
#include "plan_request.h"
#include "result.h"

namespace twinround {

// What is wrong with a part by itself. What it leaves out at its top is not: another part may have
// it. `table` is the one it was read with: that of `plan`, or that and more.
std::vector<Problem> faults_of_part(const ReadText& part, std::span<const Field> table);

// The part over the common one, both read with the same table. A member that the part names takes
// the place of the common one's whole member. A swatch and a knitter's own count are of one yarn:
// a part with a yarn of its own takes neither from the common one.
ReadText laid_over(const ReadText& common, const ReadText& part);

// Whether that drops the common one's member, told by its pointer.
bool replaces(const ReadText& part, std::string_view member);

// The request that parts laid over one another make, or all that is wrong with it; its fields are
// told as those of a request of `plan`.
Result<PlanRequest> request_of_parts(const ReadText& whole, std::span<const Field> table);

}  // namespace twinround
