// Writes one JSON text from front to back.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace twinround {

// A real as a short decimal that reads back as the same double, the same bytes on every build; a
// whole one without a point (40, not 40.0). Precondition: finite.
std::string json_number(double value);

// Calls follow the text: a key before each value of an object, every open_ matched by its close_.
class JsonWriter {
 public:
  JsonWriter& key(std::string_view name);
  void open_object();
  void close_object();
  void open_list();
  void close_list();
  void real(double number);
  void whole(int number);
  void yes_no(bool yes);
  void text(std::string_view words);    // UTF-8
  void literal(std::string_view json);  // a value already written as JSON

  // False once a real that is not finite was to be written, which JSON cannot say: the text is then
  // not to be used.
  bool all_finite() const { return all_finite_; }
  std::string written() const { return std::string(room_.data(), used_); }

 private:
  void value(std::string_view json);
  void quoted(std::string_view words);
  void add(std::string_view json);
  void add(char c);
  void make_room(std::size_t bytes);

  // Not a string: those grow through libc++'s ready-made code, which is slow in WebAssembly.
  std::vector<char> room_;
  std::size_t used_ = 0;
  bool needs_comma_ = false;
  bool all_finite_ = true;
};

}  // namespace twinround
