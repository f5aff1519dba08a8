#include "round_writer.h"

namespace twinround {
namespace {

const char* word_of(Work work) {
  switch (work) {
    case Work::knit:
      return "k";
    case Work::purl:
      return "p";
    case Work::make_one_left:
      return "m1l";
    case Work::make_one_right:
      return "m1r";
    case Work::make_one_purl:
      break;
  }
  return "m1p";
}

void write_runs(JsonWriter& json, const std::vector<Run>& runs) {
  json.open_list();
  for (const Run& run : runs) {
    json.open_list();
    json.text(word_of(run.work));
    json.whole(run.times);
    json.close_list();
  }
  json.close_list();
}

void write_told(JsonWriter& json, const HalfLine& half) {
  json.open_list();
  for (const Phrase& phrase : fold_repeats(half)) {
    json.open_object();
    json.key("runs");
    write_runs(json, phrase.runs);
    json.key("times").whole(phrase.times);
    json.close_object();
  }
  json.close_list();
}

}  // namespace

const char* word_of(ToeSides sides) {
  switch (sides) {
    case ToeSides::none:
      return "none";
    case ToeSides::both:
      return "both";
    case ToeSides::great:
      return "great";
    case ToeSides::little:
      break;
  }
  return "little";
}

const char* word_of(Section section) {
  switch (section) {
    case Section::toe:
      return "toe";
    case Section::spiral:
      return "spiral";
    case Section::widening:
      return "widening";
    case Section::cuff:
      break;
  }
  return "cuff";
}

void write_toe(JsonWriter& json, const Toe& toe) {
  json.open_object();
  json.key("rounds").whole(static_cast<int>(toe.counts.size()));
  json.key("increaseRounds").whole(toe.increase_rounds);
  json.key("counts").open_list();
  for (const int count : toe.counts) json.whole(count);
  json.close_list();
  json.key("sides").open_list();
  for (const ToeSides sides : toe.sides) json.text(word_of(sides));
  json.close_list();
  json.close_object();
}

void write_lines(JsonWriter& json, const std::vector<RoundLine>& lines) {
  json.open_list();
  for (const RoundLine& line : lines) {
    json.open_object();
    json.key("halves").open_list();
    write_runs(json, line.first);
    write_runs(json, line.second);
    json.close_list();
    json.key("told").open_list();
    write_told(json, line.first);
    write_told(json, line.second);
    json.close_list();
    json.close_object();
  }
  json.close_list();
}

void write_rounds(JsonWriter& json, const std::vector<RoundSpan>& rounds) {
  json.open_list();
  for (const RoundSpan& span : rounds) {
    json.open_object();
    json.key("section").text(word_of(span.section));
    json.key("rounds").whole(span.rounds);
    json.key("stitches").whole(span.stitches);
    json.key("line").whole(span.line);
    if (span.second_line != span.line) json.key("secondLine").whole(span.second_line);
    json.close_object();
  }
  json.close_list();
}

}  // namespace twinround
