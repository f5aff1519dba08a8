#include "json_writer.h"

#include <gtest/gtest.h>

#include <cmath>
#include <cstdint>
#include <cstdlib>
#include <cstring>
#include <limits>
#include <random>

namespace twinround {
namespace {

TEST(JsonNumber, IsShortAndPlain) {
  EXPECT_EQ(json_number(0), "0");
  EXPECT_EQ(json_number(-0.0), "0");
  EXPECT_EQ(json_number(40), "40");
  EXPECT_EQ(json_number(-3), "-3");
  EXPECT_EQ(json_number(0.1), "0.1");
  EXPECT_EQ(json_number(101.6), "101.6");
  EXPECT_EQ(json_number(-0.04), "-0.04");
  EXPECT_EQ(json_number(0.1 + 0.2), "0.30000000000000004");
  EXPECT_EQ(json_number(1e21), "1e+21");
  EXPECT_EQ(json_number(1.5e-7), "1.5e-07");
}

// With a logged seed: any double at all, by its bits.
TEST(JsonNumber, ReadsBackAsTheSameDouble) {
  constexpr unsigned kSeed = 20240611;
  SCOPED_TRACE(kSeed);
  std::mt19937_64 random(kSeed);
  int finite = 0;
  for (int i = 0; i < 20000; ++i) {
    const std::uint64_t bits = random();
    double value = 0;
    static_assert(sizeof value == sizeof bits);
    std::memcpy(&value, &bits, sizeof value);
    if (!std::isfinite(value)) continue;
    ++finite;
    const std::string text = json_number(value);
    ASSERT_EQ(std::strtod(text.c_str(), nullptr), value) << text;
    ASSERT_LE(text.size(), 24U) << text;
  }
  EXPECT_GT(finite, 19000);
}

TEST(JsonNumber, ReadsBackAtTheEndsOfTheRange) {
  using Limits = std::numeric_limits<double>;
  for (const double value :
       {Limits::max(), Limits::lowest(), Limits::min(), Limits::denorm_min()}) {
    EXPECT_EQ(std::strtod(json_number(value).c_str(), nullptr), value);
  }
}

TEST(JsonWriter, PutsCommasBetweenAndNowhereElse) {
  JsonWriter json;
  json.open_object();
  json.key("a").open_list();
  json.close_list();
  json.key("b").open_list();
  json.whole(1);
  json.real(2.5);
  json.yes_no(true);
  json.yes_no(false);
  json.text("x");
  json.literal("-0.1");
  json.open_object();
  json.close_object();
  json.open_list();
  json.whole(3);
  json.close_list();
  json.close_list();
  json.key("c").whole(-4);
  json.close_object();
  EXPECT_EQ(json.written(), R"({"a":[],"b":[1,2.5,true,false,"x",-0.1,{},[3]],"c":-4})");
  EXPECT_TRUE(json.all_finite());
}

TEST(JsonWriter, EscapesWhatAStringCannotHold) {
  JsonWriter json;
  json.text(std::string("\"\\/\n\x1F\0\x7F\xC3\xA9", 9));
  EXPECT_EQ(json.written(), "\"\\\"\\\\/\\u000a\\u001f\\u0000\x7F\xC3\xA9\"");
}

TEST(JsonWriter, WritesEmptyAndVeryLongTextsAlike) {
  JsonWriter json;
  json.open_list();
  json.text(std::string_view());
  const std::string long_text(100000, 'x');
  json.text(long_text);
  json.close_list();
  EXPECT_EQ(json.written(), "[\"\",\"" + long_text + "\"]");
  EXPECT_EQ(JsonWriter().written(), "");
}

TEST(JsonWriter, OwnsUpToAFigureThatIsNone) {
  for (const double value : {std::nan(""), std::numeric_limits<double>::infinity(), -HUGE_VAL}) {
    JsonWriter json;
    json.open_list();
    json.real(value);
    json.real(1);
    json.close_list();
    EXPECT_FALSE(json.all_finite());
  }
}

}  // namespace
}  // namespace twinround
