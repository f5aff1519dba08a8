#include "note_writer.h"

namespace twinround {

void write_note_members(JsonWriter& json, const Problem& problem) {
  json.key("field").text(problem.field);
  json.key("code").text(problem.code);
  for (const Number& number : problem.numbers) json.key(number.name).real(number.value);
  for (const Word& word : problem.words) json.key(word.name).text(word.value);
  json.key("message").text(problem.message);
}

void write_problems(JsonWriter& json, const std::vector<Problem>& problems) {
  json.open_list();
  for (const Problem& problem : problems) {
    json.open_object();
    write_note_members(json, problem);
    json.close_object();
  }
  json.close_list();
}

void write_working(JsonWriter& json, const std::vector<Working>& working) {
  json.open_list();
  for (const Working& figure : working) {
    json.open_object();
    json.key("figure").text(figure.figure);
    json.key("rule").text(figure.rule);
    json.key("numbers").open_object();
    for (const Number& number : figure.numbers) json.key(number.name).real(number.value);
    json.close_object();
    json.key("source").text(figure.source);
    json.close_object();
  }
  json.close_list();
}

}  // namespace twinround
