#include "link_fields.h"

#include "link_sheet.h"
#include "link_words.h"

namespace twinround {
namespace {

constexpr double kLargest = 20000;  // of any field, in whatever unit

// clang-format off
constexpr Field kAsked[] = {
  {.pointer = "", .about = "A link to open, or a sheet to make one of"},
  {.pointer = "/version", .about = "Version of this request",
   .kind = Kind::whole, .need = Need::always, .min = kVersion, .max = kVersion, .step = 1},
  {.pointer = "/text", .about = "A link to open, and then nothing else", .kind = Kind::text},
  {.pointer = "/fields", .about = "What the form says",
   .kind = Kind::list, .max = kMostFields},
  {.pointer = "/fields/*", .about = "One field; emptied, where nothing goes with it"},
  {.pointer = "/fields/*/field", .about = "Its pointer in the draft",
   .kind = Kind::text, .need = Need::always},
  {.pointer = "/fields/*/value", .about = "A number, in its unit",
   .kind = Kind::number, .min = -kLargest, .max = kLargest},
  {.pointer = "/fields/*/typed", .about = "A choice", .kind = Kind::text},
  {.pointer = "/fields/*/unit", .about = "Unit of the number",
   .kind = Kind::text},
  {.pointer = "/view", .about = "Page to open on", .kind = Kind::word, .words = kLinkViews},
  {.pointer = "/system", .about = "Units of the page's own figures", .kind = Kind::word, .words = kLinkSystems},
  {.pointer = "/locks", .about = "What is not to be changed", .kind = Kind::list, .max = 3},
  {.pointer = "/locks/*", .about = "A part of the sheet", .kind = Kind::word, .words = kLinkLocks},
  {.pointer = "/yarns", .about = "The yarns that a class may use; left out or empty, any", .kind = Kind::list, .max = kYarnCategories},
  {.pointer = "/yarns/*", .about = "A category of yarn", .kind = Kind::whole, .min = 0, .max = kYarnCategories - 1, .step = 1},
  {.pointer = "/title", .about = "Title of a class, 60 characters at most", .kind = Kind::text, .max = kTitleMost},
  {.pointer = "/note", .about = "Note of a class, 280 characters at most", .kind = Kind::text, .max = kNoteMost},
  {.pointer = "/echo", .about = "The plan that the sheet has now"},
  {.pointer = "/echo/stitchCount", .about = "Stitches in a round of one sock",
   .kind = Kind::whole, .need = Need::always, .min = kEchoLeastStitches, .max = kEchoMostStitches, .step = 1, .unit = "stitches"},
  {.pointer = "/echo/totalRounds", .about = "Rounds of one sock, toe to edge",
   .kind = Kind::whole, .need = Need::always, .min = 1, .max = kEchoMostRounds, .step = 1, .unit = "rounds"},
};

constexpr Field kAnswered[] = {
  {.pointer = "", .about = "A link and what it says"},
  {.pointer = "/text", .about = "The link: the fragment of an address", .kind = Kind::text, .need = Need::always},
  {.pointer = "/fields", .about = "What it says of the form, in the link's order", .kind = Kind::list, .need = Need::always},
  {.pointer = "/fields/*", .about = "One field"},
  {.pointer = "/fields/*/field", .about = "Its pointer", .kind = Kind::text, .need = Need::always},
  {.pointer = "/fields/*/typed", .about = "As one types it: 9 5/8, 24.6, left; empty where the field was emptied",
   .kind = Kind::text, .need = Need::always},
  {.pointer = "/fields/*/unit", .about = "Its unit; empty where it has none", .kind = Kind::text, .need = Need::always},
  {.pointer = "/fields/*/value", .about = "Its number, in that unit", .kind = Kind::number},
  {.pointer = "/view", .about = "Page to open on", .kind = Kind::word, .words = kLinkViews},
  {.pointer = "/system", .about = "Units of the page's own figures", .kind = Kind::word, .words = kLinkSystems},
  {.pointer = "/locks", .about = "What is not to be changed", .kind = Kind::list, .need = Need::always},
  {.pointer = "/locks/*", .about = "A part of the sheet", .kind = Kind::word, .words = kLinkLocks},
  {.pointer = "/yarns", .about = "The yarns that a class may use, in order; absent where it may use any", .kind = Kind::list},
  {.pointer = "/yarns/*", .about = "A category of yarn", .kind = Kind::whole},
  {.pointer = "/title", .about = "Title of a class", .kind = Kind::text},
  {.pointer = "/note", .about = "Note of a class", .kind = Kind::text},
  {.pointer = "/echo", .about = "The plan that the sheet had when the link was made", .need = Need::always},
  {.pointer = "/echo/rules", .about = "The rules it was made by", .kind = Kind::whole, .need = Need::always},
  {.pointer = "/echo/stitchCount", .about = "Stitches in a round of one sock; absent where there was no plan", .kind = Kind::whole, .unit = "stitches"},
  {.pointer = "/echo/totalRounds", .about = "Rounds of one sock; absent where there was no plan", .kind = Kind::whole, .unit = "rounds"},
  {.pointer = "/changed", .about = "Of a link made: what it says otherwise than was asked, finer than its steps or not to be shown",
   .kind = Kind::list, .need = Need::always},
  {.pointer = "/changed/*", .about = "A field's pointer, or /title or /note", .kind = Kind::text},
};
// clang-format on

}  // namespace

std::span<const Field> link_request_fields() {
  return kAsked;
}

std::span<const Field> link_reply_fields() {
  return kAnswered;
}

}  // namespace twinround
