// The question `place` at the core's door.
#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "answer.h"
#include "making_fields.h"
#include "request_text.h"

namespace twinround {
namespace {

// Two toe rounds of 8 and 12 stitches on 8 cast on, four of rib that moves after two, two of cuff;
// 10 mm a stitch, so 0.08 m cast on and 0.2 m for either tail.
RequestText eight_rounds() {
  RequestText request{{"/version", "1"}};
  struct Row {
    const char *section, *rounds, *stitches, *line;
  };
  int i = 0;
  for (const Row& row : {Row{"\"toe\"", "1", "8", "0"}, Row{"\"toe\"", "1", "12", "1"},
                         Row{"\"spiral\"", "2", "12", "2"}, Row{"\"spiral\"", "2", "12", "3"},
                         Row{"\"cuff\"", "2", "12", "3"}}) {
    const std::string span = "/sock/rounds/" + std::to_string(i++);
    request = request.with(span + "/section", row.section)
                  .with(span + "/rounds", row.rounds)
                  .with(span + "/stitches", row.stitches)
                  .with(span + "/line", row.line);
  }
  return request.with("/sock/castOnM", "0.08")
      .with("/sock/bindOffM", "0.5")
      .with("/sock/tailsM", "0.4")
      .with("/sock/mmPerStitch", "10")
      .with("/done/rounds", "1");
}

std::string place(const RequestText& request) {
  return answer("place", request.text());
}

bool has(const std::string& reply, const std::string& part) {
  return reply.find(part) != std::string::npos;
}

TEST(PlaceQuestion, AnswersAWholeReply) {
  // A: 0.08 + 0.2 and 8 stitches of 10 mm, six more of the round in hand; 80 left.
  EXPECT_EQ(place(eight_rounds().with("/done/passes", "1")),
            R"({"ok":true,"version":1,"rules":2,"place":{"allDone":false,"stitches":12,)"
            R"("usedM":{"a":0.42,"b":0.36,"pair":0.78},"toGoM":{"a":1.48,"b":1.54,"pair":3.02},)"
            R"("stitchesWorked":22,"stitchesToGo":162,"roundsToGo":7,"next":[)"
            R"({"kind":"increase","round":2,"inRounds":0},{"kind":"rib","round":3,"inRounds":1},)"
            R"({"kind":"shift","round":5,"inRounds":3},{"kind":"cuff","round":7,"inRounds":5},)"
            R"({"kind":"bindOff","round":9,"inRounds":7}],)"
            R"("pace":{"stitchesPerMinute":15,"from":"asked","minutesToGo":13.133333333333333}}})");
}

TEST(PlaceQuestion, TakesRoundsThatComeWithoutTheirLinesForUnlikeOnes) {
  RequestText request = eight_rounds();
  for (int i = 0; i < 5; ++i) {
    request = request.without("/sock/rounds/" + std::to_string(i) + "/line");
  }
  EXPECT_TRUE(has(place(request), R"({"kind":"shift","round":5,"inRounds":3})"));
  EXPECT_FALSE(has(place(eight_rounds().with("/sock/rounds/3/line", "2")), "shift"));
  EXPECT_TRUE(has(place(eight_rounds().with("/sock/rounds/3/secondLine", "4")), "shift"));
}

TEST(PlaceQuestion, TakesThePaceFromLapsBeforeTheOneAsked) {
  const RequestText asked = eight_rounds().with("/stitchesPerMinute", "30");
  EXPECT_TRUE(has(place(asked), R"("pace":{"stitchesPerMinute":30,"from":"asked",)"));
  const RequestText timed = asked.with("/laps/0/stitches", "24").with("/laps/0/seconds", "80");
  // 168 stitches at 24 a minute, and seven rounds with two turns of 10 s.
  EXPECT_TRUE(
      has(place(timed),
          R"("pace":{"stitchesPerMinute":24,"from":"laps","minutesToGo":9.33333333)"));
}

struct Fault {
  const char *pointer, *literal, *told;
};

TEST(PlaceQuestion, RefusesByNameOnBothSidesOfEachLimit) {
  const RequestText lap =
      eight_rounds().with("/laps/0/stitches", "24").with("/laps/0/seconds", "80");
  for (const Fault& fault : {
           Fault{"/done/rounds", "8", ""},
           Fault{"/done/rounds", "9",
                 R"("field":"/done/rounds","code":"out_of_range","min":0,"max":8)"},
           Fault{"/done/rounds", "-1", R"("field":"/done/rounds","code":"out_of_range")"},
           Fault{"/done/passes", "3", ""},
           Fault{"/done/passes", "4", R"("field":"/done/passes","code":"out_of_range")"},
           Fault{"/laps/0/seconds", "20.1", ""},
           Fault{"/laps/0/seconds", "20",
                 R"("field":"/laps/0/seconds","code":"lap_too_short","turnsSeconds":20)"},
           Fault{"/sock/rounds/0/rounds", "1993", ""},
           Fault{"/sock/rounds/0/rounds", "1994",
                 R"("field":"/sock/rounds","code":"too_many_rounds","rounds":2001,"max":2000)"},
           Fault{"/sock/rounds/0/line", "4001",
                 R"("field":"/sock/rounds/0/line","code":"out_of_range")"},
           Fault{"/sock/rounds/2/section", "\"heel\"",
                 R"("field":"/sock/rounds/2/section","code":"unknown_word")"},
           Fault{"/sock/mmPerStitch", "0", R"("field":"/sock/mmPerStitch","code":"out_of_range")"},
           Fault{"/foot", "1", R"("field":"/foot","code":"unknown_field")"},
       }) {
    const std::string reply = place(lap.with(fault.pointer, fault.literal));
    SCOPED_TRACE(std::string(fault.pointer) + " " + fault.literal);
    EXPECT_EQ(reply.starts_with(R"({"ok":true)"), std::string(fault.told).empty()) << reply;
    EXPECT_TRUE(has(reply, fault.told)) << reply;
  }
}

TEST(PlaceQuestion, HasNoRoundInHandWhereAllIsKnit) {
  const RequestText done = eight_rounds().with("/done/rounds", "8");
  EXPECT_TRUE(has(place(done), R"("allDone":true,"stitches":12)"));
  EXPECT_TRUE(has(place(done), R"("next":[{"kind":"bindOff","round":9,"inRounds":0}])"));
  EXPECT_TRUE(has(place(done.with("/done/passes", "1")),
                  R"("field":"/done/passes","code":"out_of_range","min":0,"max":0)"));
}

TEST(PlaceQuestion, TellsEveryFaultAtOnce) {
  const std::string reply = place(eight_rounds()
                                      .with("/done/rounds", "9")
                                      .with("/laps/0/stitches", "8")
                                      .with("/laps/0/seconds", "5"));
  EXPECT_TRUE(has(reply, "/done/rounds") && has(reply, "/laps/0/seconds")) << reply;
}

// A sock that moves in every one of its 2000 rounds, two lines to a round.
std::string longest_sock(int spans) {
  std::string rounds;
  for (int i = 0; i < spans; ++i) {
    rounds += std::string(i > 0 ? "," : "") +
              R"({"section":"widening","rounds":1,"stitches":1000,"line":)" +
              std::to_string(2000 + i % 2) + R"(,"secondLine":)" + std::to_string(3000 + i % 2) +
              "}";
  }
  return R"({"version":1,"sock":{"rounds":[)" + rounds +
         R"(],"castOnM":1,"bindOffM":1,"tailsM":0.4,"mmPerStitch":10},"done":{"rounds":1999}})";
}

TEST(PlaceQuestion, TakesTheLongestSockThereIsAndRefusesALongerOne) {
  const std::string longest = longest_sock(2000);
  EXPECT_LT(longest.size(), kMostMakingBytes);
  EXPECT_TRUE(has(answer("place", longest), R"({"kind":"shift","round":2000,"inRounds":0})"));
  EXPECT_TRUE(has(answer("place", longest_sock(2001)),
                  R"("field":"/sock/rounds","code":"too_many_items","max":2000)"));
  std::string spaced = longest + std::string(kMostMakingBytes - longest.size(), ' ');
  EXPECT_TRUE(answer("place", spaced).starts_with(R"({"ok":true)"));
  spaced += ' ';
  EXPECT_TRUE(has(answer("place", spaced), R"("code":"too_large_text","max":327680)"));
}

}  // namespace
}  // namespace twinround
