#include "adjust_fields.h"
#include "field_schema.h"
#include "found_fields.h"
#include "place_question.h"
#include "problem_codes.h"
#include "request_schema.h"
#include "schema_parts.h"
#include "schema_questions.h"
#include "stripes_fields.h"

namespace twinround {

void write_making_schema(JsonWriter& json) {
  json.key("placeRequest");
  write_field_schema(json, place_request_fields(), nullptr);
  write_answer(json, "place", "Where a pair in the making stands", place_reply_fields(),
               {"No place, and why", "Something wrong with a sock in the making",
                joined(kProblemCodes, kPlaceCodes)});
  json.key("foundRequest");
  write_field_schema(json, found_request_fields(), nullptr);
  write_answer(
      json, "found", "The round found again", found_reply_fields(),
      {"Not found, and why", "Something that cannot be seen", joined(kProblemCodes, kFoundCodes)});
  json.key("adjustRequest");
  write_request_schema(json, adjust_request_fields());
  write_answer(json, "adjust", "What the sock on the needles comes to", adjust_reply_fields(),
               {"No way to go on, and why", "Something wrong with what was measured or planned",
                joined(kProblemCodes, kAdjustCodes)});
  json.key("stripesRequest");
  write_stripes_request_schema(json);
  write_answer(json, "stripes", "Stripes or leftovers on a pair", stripes_reply_fields(),
               {"None, and why", "Something wrong with the stripes asked for",
                joined(kProblemCodes, kStripesCodes)});
  json.key("band");
  write_field_schema(json, band_fields(), nullptr);
}

}  // namespace twinround
