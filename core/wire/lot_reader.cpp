#include "lot_reader.h"

#include <algorithm>
#include <string>

#include "problems.h"

namespace twinround {

int items_of(const ReadText& read, std::string_view list) {
  const TextValue* value = read.find(list);
  return value ? value->items : 0;
}

Problem required_instead(std::span<const Field> table, std::string_view pointer, int item,
                         const std::string& instead) {
  const auto row = std::find_if(table.begin(), table.end(),
                                [&](const Field& field) { return field.pointer == pointer; });
  Problem problem = required(*row, item);
  problem.words = {{"instead", instead}};
  return problem;
}

std::vector<Problem> lots_of_nothing(const ReadText& read, std::span<const Field> table,
                                     std::string_view list) {
  const std::string lot = std::string(list) + "/*";
  std::vector<Problem> problems;
  for (int i = 0; i < items_of(read, list); ++i) {
    if (read.find(lot + "/m", i) || read.find(lot + "/g", i)) continue;
    const std::string m = std::string(list) + "/" + std::to_string(i) + "/m";
    problems.push_back(required_instead(table, lot + "/g", i, m));
  }
  return problems;
}

std::vector<YarnLot> lots_in(const ReadText& read, std::string_view list) {
  const std::string lot = std::string(list) + "/*";
  std::vector<YarnLot> lots;
  for (int i = 0; i < items_of(read, list); ++i) {
    YarnLot told;
    if (const auto m = read.number_at(lot + "/m", i)) told.length = Length::from_m(*m);
    if (const auto g = read.number_at(lot + "/g", i)) told.mass = Mass::from_g(*g);
    if (const auto m = read.number_at(lot + "/mPer100G", i)) told.per_100g = Length::from_m(*m);
    lots.push_back(told);
  }
  return lots;
}

}  // namespace twinround
