// The question `found` at the core's door.
#include <gtest/gtest.h>

#include <string>

#include "answer.h"
#include "request_text.h"

namespace twinround {
namespace {

RequestText asked() {
  return {{"/version", "1"},         {"/rib/knit", "2"},
          {"/rib/purl", "2"},        {"/rib/roundsPerShift", "4"},
          {"/rib/lean", "\"left\""}, {"/toeRounds", "17"},
          {"/spiralRounds", "95"},   {"/stitches", "40"}};
}

RequestText in_rib(const RequestText& request, const std::string& sock, const char* columns,
                   const char* since) {
  return request.with(sock + "/in", "\"rib\"")
      .with(sock + "/columns", columns)
      .with(sock + "/since", since);
}

RequestText by_place(const char* place, const char* since) {
  return asked().with("/a/in", "\"rib\"").with("/a/place", place).with("/a/since", since);
}

std::string found(const RequestText& request) {
  return answer("found", request.text());
}

bool has(const std::string& reply, const std::string& part) {
  return reply.find(part) != std::string::npos;
}

TEST(FoundQuestion, AnswersAWholeReply) {
  const RequestText both = in_rib(in_rib(asked(), "/a", "9", "4"), "/b", "9", "2");
  EXPECT_EQ(found(both.with("/misstep/roundsSince", "3")),
            R"({"ok":true,"version":1,"rules":2,"found":{"periodRounds":16,)"
            R"("a":{"round":57,"candidates":[57]},"b":{"round":55,"candidates":[55]},)"
            R"("apart":{"rounds":2,"alone":"b"},)"
            R"("misstep":{"unpickRounds":3,"unpickStitches":240,"hookColumns":40,)"
            R"("hookStitches":120}}})");
}

TEST(FoundQuestion, SaysWhichSockIsToBeKnitAlone) {
  const RequestText a = in_rib(asked(), "/a", "9", "4");
  EXPECT_TRUE(has(found(in_rib(a, "/b", "10", "1")), R"("apart":{"rounds":1,"alone":"a"})"));
  EXPECT_TRUE(has(found(in_rib(a, "/b", "9", "4")), R"("apart":{"rounds":0,"alone":"none"})"));
  EXPECT_FALSE(has(found(a), "apart"));
  const RequestText toe = a.with("/b/in", "\"toe\"").with("/b/rounds", "17");
  EXPECT_TRUE(has(found(toe), R"("apart":{"rounds":40,"alone":"b"})"));
}

TEST(FoundQuestion, TellsEveryRoundThatLooksAlike) {
  EXPECT_TRUE(has(found(by_place("0", "3")), R"("a":{"candidates":[20,36,52,68,84,100]}})"));
  EXPECT_TRUE(has(found(by_place("0", "3").with("/a/near", "50")),
                  R"("a":{"round":52,"candidates":[20,36,52,68,84,100]}})"));
  EXPECT_TRUE(has(found(by_place("0", "3").with("/plainRounds", "18")),
                  R"("a":{"round":20,"candidates":[20]}})"));
}

TEST(FoundQuestion, ReadsTheSecondSockOfAMirroredPairTheOtherWay) {
  const auto of = [](const char* sock, const char* lean) {
    const std::string at = std::string("/") + sock;
    return found(asked()
                     .with("/rib/lean", lean)
                     .with(at + "/in", "\"rib\"")
                     .with(at + "/place", "3")
                     .with(at + "/since", "1"));
  };
  // The first round after the first move begins at place 3; its mirror, over a half of 20 stitches,
  // at (2 - 20 - 3) mod 4 = 3 as well.
  EXPECT_TRUE(has(of("a", "\"left\""), R"("candidates":[22,)"));
  EXPECT_TRUE(has(of("b", "\"left\""), R"("candidates":[22,)"));
  EXPECT_TRUE(has(of("a", "\"mirrored\""), R"("candidates":[22,)"));
  EXPECT_TRUE(has(of("b", "\"mirrored\""), R"("candidates":[22,)"));
  // The first rib round begins at place 0, its mirror at (2 - 20 - 0) mod 4 = 2.
  const RequestText b =
      asked().with("/b/in", "\"rib\"").with("/b/place", "2").with("/b/since", "1");
  EXPECT_TRUE(has(found(b.with("/rib/lean", "\"mirrored\"")), R"("candidates":[18,)"));
  EXPECT_TRUE(has(found(b), R"("candidates":[26,)"));
}

struct Fault {
  const char *pointer, *literal, *told;
};

TEST(FoundQuestion, RefusesWhatCannotBeSeenAtItsField) {
  const RequestText seen =
      in_rib(asked(), "/a", "23", "3").with("/b/in", "\"toe\"").with("/b/rounds", "17");
  for (const Fault& fault : {
           Fault{"/a/since", "3", ""},
           Fault{"/a/since", "4", R"("field":"/a/since","code":"beyond_cuff","max":3)"},
           Fault{"/cuffRounds", "8", ""},
           Fault{"/a/columns", "22", ""},
           Fault{"/a/since", "0", R"("field":"/a/since","code":"out_of_range")"},
           Fault{"/a/columns", "24", R"("field":"/a/columns","code":"beyond_rib","max":23)"},
           Fault{"/b/rounds", "18", R"("field":"/b/rounds","code":"beyond_toe","max":17)"},
           Fault{"/rib/roundsPerShift", "0", R"("field":"/a/columns","code":"never_moves")"},
           Fault{"/misstep/roundsSince", "95", ""},
           Fault{"/misstep/roundsSince", "96",
                 R"("field":"/misstep/roundsSince","code":"beyond_rib","max":95)"},
       }) {
    const std::string reply = found(seen.with(fault.pointer, fault.literal));
    SCOPED_TRACE(std::string(fault.pointer) + " " + fault.literal);
    EXPECT_EQ(reply.starts_with(R"({"ok":true)"), std::string(fault.told).empty()) << reply;
    EXPECT_TRUE(has(reply, fault.told)) << reply;
  }
  EXPECT_TRUE(has(found(by_place("3", "1")), R"({"ok":true)"));
  EXPECT_TRUE(has(found(by_place("4", "1")),
                  R"("field":"/a/place","code":"out_of_range","min":0,"max":3)"));
  EXPECT_TRUE(
      has(found(by_place("0", "5")), R"("field":"/a/since","code":"too_many_since","max":4)"));
  EXPECT_TRUE(has(found(by_place("1", "1").with("/plainRounds", "4")),
                  R"("field":"/a/place","code":"place_not_reached")"));
}

TEST(FoundQuestion, GoesOnIntoTheCuffUpToItsEdge) {
  const RequestText sock = asked().with("/cuffRounds", "8");
  EXPECT_TRUE(has(found(in_rib(sock, "/a", "23", "11")), R"("a":{"round":120,)"));
  EXPECT_TRUE(has(found(in_rib(sock, "/a", "23", "12")),
                  R"("field":"/a/since","code":"beyond_cuff","max":11)"));
  EXPECT_TRUE(has(found(in_rib(sock, "/a", "22", "5")),
                  R"("field":"/a/since","code":"too_many_since","max":4)"));
  const RequestText straight = sock.with("/rib/roundsPerShift", "0");
  EXPECT_TRUE(has(found(in_rib(straight, "/a", "0", "103")), R"("a":{"round":120,)"));
  EXPECT_TRUE(has(found(in_rib(straight, "/a", "0", "104")),
                  R"("field":"/a/since","code":"beyond_cuff","max":103)"));
}

TEST(FoundQuestion, TakesNoGuessBeyondTheSock) {
  const RequestText seen = by_place("0", "3").with("/cuffRounds", "8");
  EXPECT_TRUE(has(found(seen.with("/a/near", "120")), R"({"ok":true)"));
  EXPECT_TRUE(has(found(seen.with("/a/near", "121")),
                  R"("field":"/a/near","code":"out_of_range","min":0,"max":120)"));
}

TEST(FoundQuestion, AsksForWhatEachPlaceNeeds) {
  EXPECT_TRUE(has(found(asked()), R"("field":"/a","code":"required","instead":"/misstep")"));
  const RequestText rib = asked().with("/a/in", "\"rib\"");
  const std::string bare = found(rib);
  EXPECT_TRUE(has(bare, R"("field":"/a/columns","code":"required","instead":"/a/place")")) << bare;
  EXPECT_TRUE(has(bare, R"("field":"/a/since","code":"required")")) << bare;
  EXPECT_TRUE(
      has(found(asked().with("/b/in", "\"toe\"")), R"("field":"/b/rounds","code":"required")"));
}

}  // namespace
}  // namespace twinround
