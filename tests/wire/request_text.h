// Requests for the tests of this folder: built field by field, so that each test says what it
// changes and no more.
#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "result.h"

namespace twinround {

// A JSON text told as its leaves: each a pointer and a JSON literal, in the order of the text.
class RequestText {
 public:
  RequestText() = default;
  RequestText(std::initializer_list<std::pair<std::string, std::string>> leaves)
      : leaves_(leaves) {}

  // The same with one field changed, or added at the end.
  RequestText with(std::string_view pointer, std::string_view literal) const;
  // The same without the field and all below it.
  RequestText without(std::string_view pointer) const;
  std::string text() const;

 private:
  std::vector<std::pair<std::string, std::string>> leaves_;
};

// Every field that a request can have beside a measured foot: the contract's example, and another
// yarn.
RequestText full_request();
// A label, a measured foot and a leg: the least there is.
RequestText least_request();
// The same with a shoe size in place of the foot.
RequestText shoe_request();

// "pointer code" of each problem of the text, in order; empty where it is a request.
std::vector<std::string> faults(const RequestText& request);
std::vector<std::string> faults(std::string_view text);
std::vector<Problem> problems_of(std::string_view text);

// The pointer of a row of the table, its `*` the first item.
std::string first_item(std::string_view pointer);

}  // namespace twinround
