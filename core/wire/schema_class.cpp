#include "caution_codes.h"
#include "drive_fields.h"
#include "field_schema.h"
#include "line_writer.h"
#include "odd_question.h"
#include "problem_codes.h"
#include "request_schema.h"
#include "roster_question.h"
#include "schema_parts.h"
#include "schema_questions.h"
#include "seat_fields.h"
#include "supply_question.h"
#include "weeks_question.h"

namespace twinround {
namespace {

// What a cell changes in the class's request: values by pointer.
void write_changes(JsonWriter& json) {
  open_definition(json, "changes", "Values by RFC 6901 pointer into a request of `plan`", "object");
  json.key("additionalProperties").open_object();
  json.key("type").open_list();
  for (const char* type : {"number", "string", "boolean"}) json.text(type);
  json.close_list();
  json.close_object();
  json.close_object();
}

void write_parts_and_lines(JsonWriter& json) {
  json.key("planPart");
  write_part_schema(json, request_fields());
  json.key("seatPart");
  write_part_schema(json, seat_fields());
  json.key("pairLine");
  write_field_schema(json, line_fields(), nullptr);
  json.key("knitterWeeks");
  write_field_schema(json, knitter_weeks_fields(), nullptr);
  write_changes(json);
  write_note(json, "oddity", "What is odd about a pair", joined(kCautionCodes, kOddCodes),
             kHarmWords);
}

}  // namespace

void write_class_schema(JsonWriter& json) {
  write_parts_and_lines(json);
  json.key("supplyRequest");
  write_field_schema(json, supply_request_fields(), nullptr);
  write_answer(json, "supply", "One pair for every yarn by every size", supply_reply_fields());
  json.key("weeksRequest");
  write_field_schema(json, weeks_request_fields(), nullptr);
  write_answer(json, "weeks", "How far each pair comes in each meeting", weeks_reply_fields());
  json.key("rosterRequest");
  write_field_schema(json, roster_request_fields(), nullptr);
  write_answer(json, "roster", "A class seat by seat", roster_reply_fields());
  json.key("oddRequest");
  write_request_schema(json, seat_fields());
  write_answer(json, "odd", "What is odd about one pair", odd_reply_fields());
  json.key("driveRequest");
  write_request_schema(json, drive_request_fields());
  write_answer(json, "drive", "Sizes for many feet", drive_reply_fields(),
               {"No sizes, and why", "Something wrong with the request for many feet",
                joined(kProblemCodes, kDriveCodes)});
  write_note(json, "driveCaution", "Something that must not go unsaid about many feet",
             kDriveCautionCodes);
}

}  // namespace twinround
