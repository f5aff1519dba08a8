#include "json_indent.h"

#include <gtest/gtest.h>

namespace twinround {
namespace {

TEST(JsonIndent, PutsOneValueOnALine) {
  EXPECT_EQ(indent_json(R"({"a":[1,{"b":true}],"c":"x"})"),
            "{\n  \"a\": [\n    1,\n    {\n      \"b\": true\n    }\n  ],\n  \"c\": \"x\"\n}\n");
}

TEST(JsonIndent, KeepsWhatIsEmptyOnItsLine) {
  EXPECT_EQ(indent_json(R"({"a":[],"b":{}})"), "{\n  \"a\": [],\n  \"b\": {}\n}\n");
}

TEST(JsonIndent, LeavesStringsAlone) {
  EXPECT_EQ(indent_json(R"(["a,b:{\"[]\\"])"), "[\n  \"a,b:{\\\"[]\\\\\"\n]\n");
}

}  // namespace
}  // namespace twinround
