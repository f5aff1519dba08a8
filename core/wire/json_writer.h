// Writes one JSON text from front to back.
#pragma once

#include <string>
#include <string_view>

namespace twinround {

// A real as the shortest decimal that reads back as the same double, the same bytes on every build;
// a whole one without a point (40, not 40.0). Precondition: finite.
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
  const std::string& written() const { return written_; }

 private:
  void value(std::string_view json);
  void quoted(std::string_view words);

  std::string written_;
  bool needs_comma_ = false;
  bool all_finite_ = true;
};

}  // namespace twinround
