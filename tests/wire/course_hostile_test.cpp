// Texts made to hurt the questions about many socks: whatever comes, there is one whole answer.
#include <gtest/gtest.h>

#include <random>
#include <string>
#include <vector>

#include "answer.h"
#include "course_example.h"
#include "json_reader.h"
#include "roster_question.h"
#include "worn_text.h"

namespace twinround {
namespace {

constexpr unsigned kSeed = 1589;

constexpr Field kAnything[] = {{.pointer = "", .about = "A reply"}};

void ask_all(const std::string& text) {
  for (const char* question : {"supply", "weeks", "roster", "odd"}) {
    const std::string reply = answer(question, text);
    ASSERT_TRUE(reply.starts_with("{\"ok\":")) << question << text.substr(0, 200);
    // One JSON object from end to end, by the reader itself.
    const ReadText read = read_json(reply, kAnything, reply.size());
    ASSERT_FALSE(read.broken) << question << text.substr(0, 200);
    ASSERT_EQ(reply.find("null"), std::string::npos) << question << text.substr(0, 200);
  }
}

const RequestText kClass = full_request().without("/foot");
const RequestText kFoot = {{"/foot/lengthMm", "246"}, {"/foot/ballGirthMm", "228"}};

// A text that each of the questions finds something of its own in.
std::string base() {
  const std::string feet = list_of({kFoot, {{"/cuffMm", "20"}}});
  return course(kClass, member("rows", list_of({{{"/yarn/category", "1"}}})) +
                            member("columns", feet) + member("knitters", feet) +
                            member("seats", feet) + member("meetings", "3") +
                            member("minutesInClass", "60"));
}

std::string for_question(const char* list) {
  const std::string feet = list_of({kFoot, {{"/cuffMm", "20"}}});
  return course(
      kClass, member(list, feet) +
                  (std::string(list) == "knitters" ? ",\"meetings\":3,\"minutesInClass\":60" : ""));
}

TEST(CourseHostile, EveryBeginningIsAnswered) {
  for (const char* list : {"seats", "knitters"}) {
    const std::string text = for_question(list);
    for (std::size_t length = 0; length <= text.size(); ++length) ask_all(text.substr(0, length));
  }
}

TEST(CourseHostile, TextsWornByChanceAreAnswered) {
  SCOPED_TRACE(kSeed);
  std::mt19937 random(kSeed);
  const std::vector<std::string> bases = {base(), for_question("seats"), for_question("knitters")};
  for (int round = 0; round < 2000; ++round) {
    ask_all(worn(bases[random() % bases.size()], random, 4));
  }
}

TEST(CourseHostile, KeysThatComeAgainOrAreWrittenOtherwiseAreNotMixedUp) {
  const std::string seat = "{\"cuffMm\":20}";
  const std::string twice =
      "{\"version\":1,\"class\":{},\"seats\":[" + seat + "],\"seats\":[" + seat + "]}";
  EXPECT_EQ(faults_in(answer("roster", twice)), std::vector<std::string>{"/seats repeated_field"});
  const std::string escaped =
      "{\"version\":1,\"\\u0063lass\":{\"legHeightMm\":200},\"s\\u0065ats\":[" + kFoot.text() +
      "]}";
  EXPECT_EQ(faults_in(answer("roster", escaped)), std::vector<std::string>{"/swatch required"});
}

TEST(CourseHostile, AMebibyteOfOneThingIsAnswered) {
  for (const char* piece : {"{},", "[", "{\"seats\":", "\"\",", "0,", "\\", "{\"version\":1},"}) {
    std::string text = "{\"version\":1,\"class\":{},\"seats\":[";
    while (text.size() + 8 < kMostRosterBytes) text += piece;
    ask_all(text);
    ask_all(text + "{}]}");
  }
}

}  // namespace
}  // namespace twinround
