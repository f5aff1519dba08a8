// A class for the tests of the questions about many socks, and how to read their replies.
#pragma once

#include <cstdlib>
#include <string>
#include <vector>

#include "request_text.h"

namespace twinround {

inline std::string list_of(const std::vector<RequestText>& parts) {
  std::string text;
  for (const RequestText& part : parts) text += (text.empty() ? "" : ",") + part.text();
  return "[" + text + "]";
}

// {"version":1,"class":{...},"NAME":[...],...}
inline std::string course(const RequestText& common, const std::string& members) {
  return R"({"version":1,"class":)" + common.text() + members + "}";
}

inline std::string member(const std::string& name, const std::string& json) {
  return ",\"" + name + "\":" + json;
}

// How often a part stands in a reply.
inline int times(const std::string& reply, const std::string& part) {
  int found = 0;
  for (std::size_t at = reply.find(part); at != std::string::npos; at = reply.find(part, at + 1)) {
    ++found;
  }
  return found;
}

inline bool says_part(const std::string& reply, const std::string& part) {
  return times(reply, part) > 0;
}

// "field code" of each problem in a reply, or in a piece of one.
inline std::vector<std::string> faults_in(const std::string& reply) {
  std::vector<std::string> found;
  const std::string field = "\"field\":\"";
  const std::string code = "\",\"code\":\"";
  for (std::size_t at = reply.find(field); at != std::string::npos;
       at = reply.find(field, at + 1)) {
    const std::size_t begin = at + field.size();
    const std::size_t middle = reply.find(code, begin);
    const std::size_t end = reply.find('"', middle + code.size());
    found.push_back(reply.substr(begin, middle - begin) + " " +
                    reply.substr(middle + code.size(), end - middle - code.size()));
  }
  return found;
}

// The first number under that name after a place.
inline double number_after(const std::string& reply, const std::string& name,
                           std::size_t from = 0) {
  const std::size_t at = reply.find("\"" + name + "\":", from);
  if (at == std::string::npos) return -1e300;
  return std::strtod(reply.c_str() + at + name.size() + 3, nullptr);
}

}  // namespace twinround
