#include "problems.h"

#include <utility>

#include "json_reader.h"
#include "json_writer.h"

namespace twinround {
namespace {

constexpr std::string_view kQuestions =
    "plan | adjust | place | found | stripes | supply | weeks | roster | odd | drive | link";

Problem of_text(const std::string& pointer, const char* code, std::string message) {
  return {pointer, code, {}, {}, std::move(message)};
}

// "Width of ...: give a number."
Problem of_field(const Field& field, int item, const char* code, const std::string& what) {
  return {pointer_of(field, item), code, {}, {}, std::string(field.about) + ": " + what + "."};
}

const char* name_of(Kind kind) {
  switch (kind) {
    case Kind::object:
    case Kind::named:
      return "object";
    case Kind::list:
      return "list";
    case Kind::number:
      return "number";
    case Kind::whole:
      return "whole number";
    case Kind::yes_no:
      return "true or false";
    case Kind::word:
      return "word";
    case Kind::text:
      break;
  }
  return "value";
}

const char* with_article(Kind kind) {
  switch (kind) {
    case Kind::object:
    case Kind::named:
      return "an object { }";
    case Kind::list:
      return "a list [ ]";
    case Kind::number:
      return "a number, without quotes";
    case Kind::whole:
      return "a whole number, without quotes";
    case Kind::yes_no:
      return "true or false, without quotes";
    case Kind::word:
      return "a word in quotes";
    case Kind::text:
      break;
  }
  return "a value";
}

}  // namespace

Problem unknown_question() {
  Problem problem = of_text("", "unknown_question",
                            "The questions answered are " + std::string(kQuestions) + ".");
  problem.words = {{"allowed", std::string(kQuestions)}};
  return problem;
}

Problem too_large_text(std::size_t most_bytes) {
  Problem problem = of_text(
      "", "too_large_text",
      "The text is larger than " + std::to_string(most_bytes / 1024) + " KiB; it was not read.");
  problem.numbers = {{"max", static_cast<double>(most_bytes)}};
  return problem;
}

Problem bad_json(const std::string& pointer) {
  return of_text(pointer, "bad_json", "The text is no JSON: it cannot be read on from here.");
}

Problem too_deep(const std::string& pointer) {
  Problem problem =
      of_text(pointer, "too_deep", "Objects and lists are nested more than 16 deep here.");
  problem.numbers = {{"max", static_cast<double>(kMostDepth)}};
  return problem;
}

Problem not_an_object() {
  return of_text("", "not_an_object", "The text is to be one JSON object { }.");
}

Problem newer_version(double version) {
  Problem problem =
      of_text("/version", "newer_version",
              "This request is of version " + json_number(version) + ", and version " +
                  std::to_string(kVersion) + " is the newest known here.");
  problem.numbers = {{"given", version}, {"max", kVersion}};
  return problem;
}

Problem required(const Field& field, int item) {
  return of_field(field, item, "required", "this is missing");
}

Problem required_or(const Field& field, std::string_view instead) {
  Problem problem =
      of_field(field, 0, "required", "this is missing; or give " + std::string(instead));
  problem.words = {{"instead", std::string(instead)}};
  return problem;
}

Problem unknown_field(const std::string& pointer) {
  return of_text(pointer, "unknown_field", "There is no such field.");
}

Problem repeated_field(const Field& field, int item) {
  return of_field(field, item, "repeated_field", "this is given more than once");
}

Problem wrong_type(const Field& field, int item) {
  Problem problem =
      of_field(field, item, "wrong_type", std::string("give ") + with_article(field.kind));
  problem.words = {{"expected", name_of(field.kind)}};
  return problem;
}

Problem out_of_range(const Field& field, int item, double min, double max) {
  const std::string unit = field.unit.empty() ? "" : " " + std::string(field.unit);
  Problem problem = of_field(field, item, "out_of_range",
                             "give " + json_number(min) + " to " + json_number(max) + unit);
  problem.numbers = {{"min", min}, {"max", max}};
  return problem;
}

Problem not_finite(const Field& field, int item) {
  return of_field(field, item, "not_finite", "NaN and infinities are no values");
}

Problem number_too_large(const Field& field, int item) {
  return of_field(field, item, "number_too_large", "this number is too large to be held");
}

Problem not_whole(const Field& field, int item) {
  return of_field(field, item, "not_whole", "give a whole number");
}

Problem unknown_word(const Field& field, int item) {
  Problem problem =
      of_field(field, item, "unknown_word", "give one of " + std::string(field.words));
  problem.words = {{"allowed", std::string(field.words)}};
  return problem;
}

Problem too_many_items(const Field& field, int item) {
  Problem problem =
      of_field(field, item, "too_many_items", "give " + json_number(field.max) + " at most");
  problem.numbers = {{"max", field.max}};
  return problem;
}

Problem needs_partner(const Field& field, int item) {
  const std::string around(parent_pointer(pointer_of(field, item)));
  const std::string partner = around + "/" + std::string(field.partner);
  Problem problem = of_field(field, item, "needs_partner", "this comes together with " + partner);
  problem.words = {{"partner", partner}};
  return problem;
}

Problem figure_too_large() {
  return of_text("", "number_too_large", "A figure of this plan came out too large to be told.");
}

}  // namespace twinround
