#include "drive_reader.h"

#include "drive_fields.h"
#include "json_reader.h"
#include "lot_reader.h"
#include "problems.h"
#include "request_check.h"
#include "request_reader.h"
#include "rounding.h"

namespace twinround {
namespace {

constexpr std::string_view kLots = "/drive/lots";

class Reader {
 public:
  explicit Reader(const ReadText& read) : read_(read) {}

  DriveRequest read() const;
  std::vector<Problem> ages_missing(std::span<const Field> table) const;

 private:
  bool has(std::string_view pointer, int item) const { return read_.find(pointer, item); }
  double number(std::string_view pointer, double standard, int item = 0) const {
    const TextValue* value = read_.find(pointer, item);
    return value ? value->number : standard;
  }
  std::optional<int> whole(std::string_view pointer, int item = 0) const {
    const TextValue* value = read_.find(pointer, item);
    return value ? std::optional<int>(round_half_up(value->number)) : std::nullopt;
  }
  Body body(int item) const {
    const TextValue* who = read_.find("/drive/groups/*/who", item);
    if (!who || who->text == "woman") return Body::woman;
    return who->text == "man" ? Body::man : Body::child;
  }

  const ReadText& read_;
};

// What the table has no word for: children have an age.
std::vector<Problem> Reader::ages_missing(std::span<const Field> table) const {
  std::vector<Problem> missing;
  for (const Field& field : table) {
    if (field.pointer != "/drive/groups/*/ageYears") continue;
    for (int i = 0; has("/drive/groups/*/who", i); ++i) {
      if (body(i) == Body::child && !has(field.pointer, i)) missing.push_back(required(field, i));
    }
  }
  return missing;
}

DriveRequest Reader::read() const {
  constexpr double kLegOfFoot = 0.8;  // 20 cm on a foot of 25. ASSUMPTION
  DriveRequest request;
  request.plan = plan_request_in(read_);
  request.leg.height = request.plan.leg_height;
  if (!read_.find("/legHeightMm")) request.leg.of_foot = number("/drive/legOfFoot", kLegOfFoot);
  request.pairs = whole("/drive/pairs").value_or(0);
  for (int i = 0; has("/drive/groups/*", i); ++i) {
    request.groups.push_back({body(i), whole("/drive/groups/*/ageYears", i).value_or(0),
                              number("/drive/groups/*/share", 1, i)});
  }
  request.sizes = whole("/drive/sizes");
  request.wanted_share = number("/drive/wantedShare", request.wanted_share);
  for (const YarnLot& lot : lots_in(read_, kLots)) {
    const int item = static_cast<int>(request.lots.size());
    request.lots.push_back({lot, whole("/drive/lots/*/category", item)});
  }
  return request;
}

}  // namespace

Result<DriveRequest> read_drive_request(std::string_view text) {
  const std::vector<Field> table = drive_request_fields();
  const ReadText read = read_json(text, table);
  std::vector<Problem> problems = check_fields(read, table);
  if (problems.empty()) {
    problems = Reader(read).ages_missing(table);
    for (const Problem& problem : lots_of_nothing(read, table, kLots)) problems.push_back(problem);
  }
  if (!problems.empty()) return problems;
  return Reader(read).read();
}

}  // namespace twinround
