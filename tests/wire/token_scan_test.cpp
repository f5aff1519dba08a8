#include "token_scan.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace twinround {
namespace {

using Nulls = std::vector<NullMeaning>;

constexpr NullMeaning kNull = NullMeaning::null;
constexpr NullMeaning kNotFinite = NullMeaning::not_finite;
constexpr NullMeaning kTooLarge = NullMeaning::too_large;

TEST(TokenScan, WritesWhatIsNoNumberAsNullAndSaysWhatItWas) {
  const TokenScan scan = scan_tokens("[NaN, null, -Infinity,Infinity ,1e999,2]");
  EXPECT_EQ(scan.text, "[null, null, null,null ,null,2]");
  EXPECT_EQ(scan.nulls, (Nulls{kNotFinite, kNull, kNotFinite, kNotFinite, kTooLarge}));
}

TEST(TokenScan, LeavesStringsAlone) {
  for (const char* text : {R"(["NaN"])", R"(["a\"NaN"])", R"(["\\",1])", R"({"null":"1e999"})",
                           R"(["NaN)", R"(["\)", R"(["\")"}) {
    EXPECT_EQ(scan_tokens(text).text, text);
    EXPECT_TRUE(scan_tokens(text).nulls.empty()) << text;
  }
  EXPECT_EQ(scan_tokens(R"(["\\",NaN])").text, R"(["\\",null])");
}

TEST(TokenScan, LeavesToTheParserWhatIsNoTokenOfJson) {
  for (const char* text : {"NaNs", "+Infinity", "--Infinity", "01e999", "1.e999", ".1e999",
                           "1e999x", "1e", "1e+", "-", "-e999", "nullnull", "nil", "1e9991e999"}) {
    EXPECT_EQ(scan_tokens(text).text, text);
    EXPECT_TRUE(scan_tokens(text).nulls.empty()) << text;
  }
}

TEST(TokenScan, KnowsTheLargestNumberFromTheFirstTooLarge) {
  EXPECT_TRUE(scan_tokens("1.7976931348623157e308").nulls.empty());
  EXPECT_TRUE(scan_tokens("-1.7976931348623158e+308").nulls.empty());
  EXPECT_EQ(scan_tokens("1.7976931348623159e308").nulls, Nulls{kTooLarge});
  EXPECT_EQ(scan_tokens("-1E309").nulls, Nulls{kTooLarge});
  EXPECT_EQ(scan_tokens(std::string(310, '7')).nulls, Nulls{kTooLarge});
  EXPECT_EQ(scan_tokens("0." + std::string(400, '0') + "1").nulls, Nulls{});
  EXPECT_EQ(scan_tokens("0e999").nulls, Nulls{});
}

TEST(TokenScan, NoControlCharacterLooksLikeTheEnd) {
  EXPECT_EQ(scan_tokens(std::string("{}\0", 3)).text, "{}\x01");
}

}  // namespace
}  // namespace twinround
