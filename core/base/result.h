// Errors are values. A Problem names the field to mend and how; a Result carries either the answer
// or every problem found, never half of both.
#pragma once

#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace twinround {

// A named number that goes with a code, so that the page can say the sentence in the reader's
// units. Lengths are millimetres and named `...Mm`; the rest as in the reply.
struct Number {
  std::string name;
  double value = 0;
};

// A word that goes with a code: a rib such as "k2p2", the name of an unknown field, the place a
// strain sits.
struct Word {
  std::string name;
  std::string value;
};

// What is wrong with a request. `field` is an RFC 6901 pointer into it ("" is the whole text);
// `message` is plain English in SI units, for readers of the JSON who have no page.
struct Problem {
  std::string field;
  std::string code;
  std::vector<Number> numbers;
  std::vector<Word> words;
  std::string message;
};

template <class T>
class Result {
 public:
  Result(T value) : held_(std::move(value)) {}
  Result(Problem problem) : held_(std::vector<Problem>{std::move(problem)}) {}
  // Precondition: not empty; a refusal has a reason.
  Result(std::vector<Problem> problems) : held_(std::move(problems)) {}

  bool ok() const { return std::holds_alternative<T>(held_); }
  // Precondition: ok().
  const T& value() const { return *std::get_if<T>(&held_); }
  // Empty when ok().
  std::vector<Problem> problems() const {
    const auto* found = std::get_if<std::vector<Problem>>(&held_);
    return found ? *found : std::vector<Problem>{};
  }

 private:
  std::variant<T, std::vector<Problem>> held_;
};

}  // namespace twinround
