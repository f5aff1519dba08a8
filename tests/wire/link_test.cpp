// The question `link` at the core's door.
#include <gtest/gtest.h>

#include <algorithm>
#include <iterator>
#include <set>
#include <string>
#include <vector>

#include "answer.h"
#include "link_problems.h"
#include "link_reader.h"
#include "link_sheets.h"

namespace twinround {
namespace {

std::string ask(const std::string& text) {
  return answer("link", text);
}

bool has(const std::string& reply, const std::string& part) {
  return reply.find(part) != std::string::npos;
}

std::vector<std::string> faults_in(const std::string& text) {
  std::vector<std::string> found;
  for (const Problem& problem : read_link_request(text).problems) {
    found.push_back(problem.field + " " + problem.code);
  }
  return found;
}
using Faults = std::vector<std::string>;

std::string field_in_reply(const SheetField& field) {
  const std::string reply = ask(link_question({field}));
  const auto from = reply.find("\"fields\":[");
  return reply.substr(from + 10, reply.find(']', from) - from - 10);
}

TEST(Link, AnswersInTheEnvelope) {
  const std::string reply = ask(link_question({number_field("/foot/lengthMm", 9.5, "in")}));
  EXPECT_TRUE(reply.starts_with(R"({"ok":true,"version":1,"rules":2,"link":{"text":"1)")) << reply;
  EXPECT_TRUE(reply.ends_with(
      R"("fields":[{"field":"/foot/lengthMm","typed":"9 1/2","unit":"in","value":9.5}],"locks":[],"echo":{"rules":2},"changed":[]}})"))
      << reply;
  EXPECT_TRUE(
      ask(open_question("x"))
          .starts_with(
              R"({"ok":false,"version":1,"rules":2,"problems":[{"field":"/text","code":"link_not_ours","message":")"));
}

TEST(Link, TellsTheSameWhenMadeAndWhenOpened) {
  const std::string made = ask(link_question(
      example_fields(),
      R"("view":"class","system":"inch","locks":["yarn","rib"],"title":"Tuesday \"socks\"","note":"4½ mm","echo":{"stitchCount":40,"totalRounds":120})"));
  ASSERT_TRUE(has(made, R"("ok":true)")) << made;
  EXPECT_TRUE(has(
      made,
      R"("view":"class","system":"inch","locks":["rib","yarn"],"title":"Tuesday \"socks\"","note":"4½ mm","echo":{"rules":2,"stitchCount":40,"totalRounds":120},"changed":[])"))
      << made;
  EXPECT_EQ(ask(open_question(link_in(made))), made);
}

TEST(Link, SaysWhatPeopleType) {
  const char* length = "/foot/lengthMm";
  for (const auto& [value, unit, said] :
       {std::tuple{9.5, "in", R"("typed":"9 1/2","unit":"in","value":9.5)"},
        {9.625, "in", R"("typed":"9 5/8","unit":"in","value":9.625)"},
        {9.6875, "in", R"("typed":"9 11/16","unit":"in","value":9.6875)"},
        {9.6, "in", R"("typed":"9.6","unit":"in","value":9.6)"},
        {9.65, "in", R"("typed":"9.65","unit":"in","value":9.65)"},
        {10.0, "in", R"("typed":"10","unit":"in","value":10)"},
        {24.6, "cm", R"("typed":"24.6","unit":"cm","value":24.6)"},
        {24.65, "cm", R"("typed":"24.65","unit":"cm","value":24.65)"},
        {246.0, "mm", R"("typed":"24.6","unit":"cm","value":24.6)"},
        {246.5, "mm", R"("typed":"24.65","unit":"cm","value":24.65)"}}) {
    EXPECT_EQ(field_in_reply(number_field(length, value, unit)),
              std::string(R"({"field":"/foot/lengthMm",)") + said + "}");
    EXPECT_TRUE(has(ask(link_question({number_field(length, value, unit)})), R"("changed":[])"))
        << value;
  }
  EXPECT_EQ(field_in_reply(number_field("/cuffMm", 0.875, "in")),
            R"({"field":"/cuffMm","typed":"7/8","unit":"in","value":0.875})");
  EXPECT_EQ(field_in_reply(number_field("/cuffMm", 0, "in")),
            R"({"field":"/cuffMm","typed":"0","unit":"in","value":0})");
  EXPECT_EQ(field_in_reply(number_field("/girthEase", -12.5, "%")),
            R"({"field":"/girthEase","typed":"-12.5","unit":"%","value":-12.5})");
  EXPECT_EQ(field_in_reply(number_field("/foot/shoe/size", 38 + 2.0 / 3)),
            R"({"field":"/foot/shoe/size","typed":"38 2/3","unit":"","value":38.666666666666664})");
  EXPECT_EQ(field_in_reply(number_field("/foot/shoe/size", 38.5)),
            R"({"field":"/foot/shoe/size","typed":"38.5","unit":"","value":38.5})");
  EXPECT_EQ(field_in_reply(number_field("/yarn/ballG", 1.76, "oz")),
            R"({"field":"/yarn/ballG","typed":"1.76","unit":"oz","value":1.76})");
  EXPECT_EQ(field_in_reply(choice_field("/rib/lean", "mirrored")),
            R"({"field":"/rib/lean","typed":"mirrored","unit":""})");
  EXPECT_EQ(field_in_reply(choice_field("/swatch/washed", "false")),
            R"({"field":"/swatch/washed","typed":"false","unit":""})");
  EXPECT_EQ(field_in_reply(choice_field("/foot", "shoe")),
            R"({"field":"/foot","typed":"shoe","unit":""})");
}

TEST(Link, KeepsWhatWasEmptiedAndItsUnit) {
  SheetField emptied = choice_field("/foot/calfGirthMm", "");
  EXPECT_EQ(field_in_reply(emptied), R"({"field":"/foot/calfGirthMm","typed":"","unit":"cm"})");
  emptied.unit = "in";
  EXPECT_EQ(field_in_reply(emptied), R"({"field":"/foot/calfGirthMm","typed":"","unit":"in"})");
  EXPECT_EQ(field_in_reply(choice_field("/foot/body", "")),
            R"({"field":"/foot/body","typed":"","unit":""})");
}

TEST(Link, TellsWhatItTakesToTheNearestStep) {
  const std::string reply = ask(link_question({number_field("/foot/lengthMm", 9 + 1.0 / 3, "in"),
                                               number_field("/foot/ballGirthMm", 22.83, "cm"),
                                               number_field("/foot/ankleGirthMm", 21.6, "cm"),
                                               number_field("/swatch/readings/3/stitches", 20.1)},
                                              R"("title":"a\nb","note":"plain")"));
  EXPECT_TRUE(has(
      reply,
      R"("changed":["/foot/lengthMm","/foot/ballGirthMm","/swatch/readings/3/stitches","/title"])"))
      << reply;
  EXPECT_TRUE(has(reply, R"("typed":"9.3375")")) << reply;
  EXPECT_TRUE(has(reply, R"("typed":"22.85")")) << reply;
  EXPECT_TRUE(has(reply, R"("typed":"20")")) << reply;
  EXPECT_TRUE(has(reply, R"("title":"a b")")) << reply;
}

// 10 mm is 31.5 eightieths of an inch, and 500 mm 1574.8 of them.
TEST(Link, TheEndsOfARangeAreTakenInwards) {
  const char* width = "/swatch/readings/0/widthMm";
  EXPECT_TRUE(has(field_in_reply(number_field(width, 10 / 25.4, "in")), R"("value":0.4)"));
  EXPECT_TRUE(has(field_in_reply(number_field(width, 500 / 25.4, "in")), R"("value":19.675)"));
}

TEST(Link, RefusesEveryFaultAtItsField) {
  EXPECT_EQ(
      faults_in(link_question(
          {number_field("/foot/lengthMm", 79, "mm"), number_field("/foot/ballGirthMm", 16, "in"),
           number_field("/rib/knit", 2.5), choice_field("/rib/lean", "up"),
           number_field("/cuffMm", 3, "yd"), number_field("/yarn/ballM", 3, "in"),
           number_field("/heel", 3), number_field("/swatch/readings/12/widthMm", 4, "in"),
           number_field("/swatch/readings/00/widthMm", 4, "in"),
           number_field("/swatch/readings/x", 1),
           number_field("/swatch/readings/*/widthMm", 4, "in"), number_field("/purl", 1),
           number_field("", 1), number_field("/rib", 1), number_field("/rib/purl", 2),
           number_field("/rib/purl", 2)})),
      (Faults{"/foot/lengthMm out_of_range", "/foot/ballGirthMm out_of_range",
              "/rib/knit not_whole", "/rib/lean unknown_word", "/cuffMm unknown_word",
              "/yarn/ballM unknown_word", "/heel unknown_field",
              "/swatch/readings/12/widthMm unknown_field",
              "/swatch/readings/00/widthMm unknown_field", "/swatch/readings/x unknown_field",
              "/swatch/readings/*/widthMm unknown_field", "/purl unknown_field", " unknown_field",
              "/rib unknown_field", "/rib/purl repeated_field"}));
  EXPECT_EQ(faults_in(link_question({number_field("/swatch/readings/3/widthMm", 51, "cm")})),
            Faults{"/swatch/readings/3/widthMm out_of_range"});
}

TEST(Link, RefusesWhatIsNoRequest) {
  EXPECT_EQ(faults_in(""), Faults{" bad_json"});
  EXPECT_EQ(faults_in("[]"), Faults{" not_an_object"});
  EXPECT_EQ(faults_in("{}"), Faults{"/version required"});
  EXPECT_EQ(faults_in(R"({"version":2,"yarnball":1})"), Faults{"/version newer_version"});
  EXPECT_EQ(
      faults_in(
          R"({"version":1,"fields":{},"text2":"","locks":["heel"],"view":"class ","title":1})"),
      (Faults{"/text2 unknown_field", "/fields wrong_type", "/view unknown_word",
              "/locks/0 unknown_word", "/title wrong_type"}));
  EXPECT_EQ(
      faults_in(
          R"({"version":1,"fields":[{"value":NaN},{"field":"/cuffMm","value":1e999},{"field":"/cuffMm","value":1e300}]})"),
      (Faults{"/fields/0/field required", "/fields/0/value not_finite",
              "/fields/1/value number_too_large", "/fields/2/value out_of_range"}));
  EXPECT_EQ(faults_in(R"({"version":1,"echo":{"stitchCount":7,"totalRounds":2001}})"),
            (Faults{"/echo/stitchCount out_of_range", "/echo/totalRounds out_of_range"}));
  EXPECT_EQ(faults_in(R"({"version":1,"echo":{"stitchCount":40}})"),
            Faults{"/echo/totalRounds required"});
  EXPECT_EQ(faults_in(R"({"version":1,"text":"a","text":"b"})"), Faults{"/text repeated_field"});
}

TEST(Link, RefusesMoreWordsThanThereIsRoomFor) {
  const auto with = [](const char* name, int characters) {
    std::string text;
    for (int i = 0; i < characters; ++i) text += "ß";
    return faults_in(std::string(R"({"version":1,")") + name + R"(":")" + text + "\"}");
  };
  EXPECT_EQ(with("title", 60), Faults{});
  EXPECT_EQ(with("title", 61), Faults{"/title too_many_items"});
  EXPECT_EQ(with("note", 280), Faults{});
  EXPECT_EQ(with("note", 281), Faults{"/note too_many_items"});
}

TEST(Link, TellsTheYarnsOfAClass) {
  const std::string made = ask(link_question({}, R"("title":"Quay","yarns":[4,0,7,4])"));
  EXPECT_TRUE(has(made, R"("text":"2)")) << made;
  EXPECT_TRUE(has(made, R"("locks":[],"yarns":[0,4,7],"title":"Quay")")) << made;
  EXPECT_EQ(ask(open_question(link_in(made))), made);
  for (const char* any : {R"("yarns":[])", ""}) {
    const std::string reply = ask(link_question({}, any));
    EXPECT_TRUE(has(reply, R"("text":"1)")) << reply;
    EXPECT_FALSE(has(reply, "yarns")) << reply;
  }
}

TEST(Link, RefusesYarnsThatAreNone) {
  const auto with = [](const std::string& yarns) {
    return faults_in(R"({"version":1,"yarns":)" + yarns + "}");
  };
  EXPECT_EQ(with("[0,1,2,3,4,5,6,7]"), Faults{});
  EXPECT_EQ(with("[0,1,2,3,4,5,6,7,7]"), Faults{"/yarns too_many_items"});
  EXPECT_EQ(with("[-1,8]"), (Faults{"/yarns/0 out_of_range", "/yarns/1 out_of_range"}));
  EXPECT_EQ(with("[2.5]"), Faults{"/yarns/0 not_whole"});
  EXPECT_EQ(with("[1e999]"), Faults{"/yarns/0 number_too_large"});
  EXPECT_EQ(with("[\"4\",null]"), (Faults{"/yarns/0 wrong_type", "/yarns/1 wrong_type"}));
  EXPECT_EQ(with("4"), Faults{"/yarns wrong_type"});
}

TEST(Link, RefusesMoreFieldsThanThereAre) {
  EXPECT_EQ(faults_in(link_question(SheetFields(101, number_field("/cuffMm", 3, "cm")))),
            Faults{"/fields too_many_items"});
}

TEST(Link, ALinkThatHoldsItsBreathIsRead) {
  // A size that its scale does not have is a sheet like any other half-filled one: the plan says
  // so.
  const std::string link = link_in(
      ask(link_question({choice_field("/foot", "shoe"), choice_field("/swatch", "label"),
                         number_field("/yarn/category", 4), choice_field("/foot/shoe/scale", "eu"),
                         number_field("/foot/shoe/size", 70), choice_field("/foot/body", "man"),
                         number_field("/legHeightMm", 20, "cm")})));
  EXPECT_EQ(faults(request_of(fields_of(opened(link)))), Faults{"/foot/shoe/size out_of_range"});
}

TEST(Link, EveryCodeToldIsListed) {
  std::set<std::string> listed(std::begin(kFaultCodes), std::end(kFaultCodes));
  listed.insert(std::begin(kLinkRequestCodes), std::end(kLinkRequestCodes));
  EXPECT_EQ(listed.size(), std::size(kFaultCodes) + std::size(kLinkRequestCodes));
  std::set<std::string> told;
  const auto hear = [&](const std::string& text) {
    const std::string reply = ask(text);
    for (std::size_t at = 0; (at = reply.find("\"code\":\"", at)) != std::string::npos;) {
      at += 8;
      told.insert(reply.substr(at, reply.find('"', at) - at));
    }
  };
  const std::string link = link_in(ask(link_question(example_fields())));
  for (const std::string& text : {std::string("x"), std::string("3"), "1" + std::string(200, '1'),
                                  link.substr(0, 9), link + "1"}) {
    hear(open_question(text));
  }
  for (
      const char* text :
      {"{", "[]", "{}", R"({"version":2})", R"({"version":1,"x":1,"view":1,"view":2})",
       R"({"version":1,"view":"x","title":1})",
       R"({"version":1,"fields":[{"field":"/cuffMm","value":NaN},{"field":"","value":1e999},{"field":"","value":1e9}]})"}) {
    hear(text);
  }
  hear(std::string(70000, ' '));
  hear(std::string(20, '['));
  hear(link_question({number_field("/rib/knit", 1.5)}));
  hear(link_question(SheetFields(101, number_field("/cuffMm", 3, "cm"))));
  hear(R"({"version":1,"title":")" + std::string(61, 'a') + "\"}");
  EXPECT_EQ(told, listed);
}

}  // namespace
}  // namespace twinround
