#include "json_parts.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "fields.h"
#include "json_reader.h"

namespace twinround {
namespace {

using Parts = std::vector<std::string_view>;

TEST(JsonParts, AreTheValuesInOrder) {
  EXPECT_EQ(parts_of(R"({"a":1,"b":"x"})"), (Parts{"1", "\"x\""}));
  EXPECT_EQ(parts_of("[1,2,3]"), (Parts{"1", "2", "3"}));
  EXPECT_EQ(parts_of("[[1,2],{\"c\":[3,4]}]"), (Parts{"[1,2]", "{\"c\":[3,4]}"}));
  EXPECT_EQ(parts_of("{\"a\":{\"b\":{}}}"), Parts{"{\"b\":{}}"});
}

TEST(JsonParts, OfNothingAreNone) {
  EXPECT_EQ(parts_of("[]"), Parts{});
  EXPECT_EQ(parts_of(" { \n } "), Parts{});
}

TEST(JsonParts, DoNotTakeWhatStandsInAStringForPunctuation) {
  EXPECT_EQ(parts_of(R"({"a,b:c{":"d,e]}\"f","g":2})"), (Parts{R"("d,e]}\"f")", "2"}));
  EXPECT_EQ(parts_of(R"(["\\",1])"), (Parts{R"("\\")", "1"}));
}

TEST(JsonParts, LeaveOutTheWhiteSpaceAroundTheWhole) {
  EXPECT_EQ(parts_of("  [\n{\"a\":1}\n,\t2 ]\n").size(), 2u);
}

constexpr Field kTable[] = {
    {.pointer = "", .about = "All"},
    {.pointer = "/left", .about = "One", .kind = Kind::named, .words = "other"},
    {.pointer = "/right", .about = "Two", .kind = Kind::named, .words = "other"},
};

TEST(JsonParts, AreFoundByThePlaceThatTheReaderNotes) {
  // A key written with escapes is the same key; one that nobody knows has a place as well.
  const std::string text = R"({"x":0,"\u0072ight":{"y":[1]},"left":{}})";
  const ReadText read = read_json(text, kTable);
  ASSERT_TRUE(read.find("/right") && read.find("/left"));
  EXPECT_EQ(read.unknown.size(), 1u) << "what another table describes is not looked into";
  EXPECT_EQ(parts_of(text)[static_cast<std::size_t>(read.find("/right")->place)], "{\"y\":[1]}");
  EXPECT_EQ(parts_of(text)[static_cast<std::size_t>(read.find("/left")->place)], "{}");
}

}  // namespace
}  // namespace twinround
