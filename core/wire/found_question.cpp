#include "found_question.h"

#include <algorithm>
#include <optional>
#include <string>
#include <vector>

#include "envelope.h"
#include "found.h"
#include "found_fields.h"
#include "json_reader.h"
#include "lost_count.h"
#include "request_check.h"
#include "rounding.h"
#include "spiral.h"

namespace twinround {
namespace {

const Field& row_of(std::string_view pointer) {
  const auto fields = found_request_fields();
  return *std::find_if(fields.begin(), fields.end(),
                       [&](const Field& field) { return field.pointer == pointer; });
}

std::optional<int> whole_at(const ReadText& read, std::string_view pointer) {
  const std::optional<double> number = read.number_at(pointer);
  return number ? std::optional<int>(round_half_up(*number)) : std::nullopt;
}

PairShape pair_in(const ReadText& read) {
  const auto whole = [&](std::string_view pointer) { return whole_at(read, pointer).value_or(0); };
  PairShape pair;
  pair.rib = {whole("/rib/knit"), whole("/rib/purl"), whole("/rib/roundsPerShift"),
              static_cast<Lean>(word_place(kFoundLeanWords, read.find("/rib/lean")->text))};
  pair.stitches = Stitches(whole("/stitches"));
  pair.toe_rounds = whole("/toeRounds");
  pair.rib_rounds = whole("/spiralRounds");
  pair.plain_rounds =
      std::min(whole_at(read, "/plainRounds").value_or(pair.rib_rounds), pair.rib_rounds);
  pair.cuff_rounds = whole("/cuffRounds");
  return pair;
}

int rounds_of(const PairShape& pair) {
  return pair.toe_rounds + pair.rib_rounds + pair.cuff_rounds;
}

// One sock of the question: `at` is /a or /b.
class SockSeen {
 public:
  SockSeen(const ReadText& read, std::string at) : read_(read), at_(std::move(at)) {}

  bool asked() const { return read_.find(at_) != nullptr; }
  std::vector<Problem> missing() const;
  Seen seen() const;
  std::optional<Problem> problem(const PairShape& pair) const;

 private:
  bool has(const char* name) const { return read_.find(at_ + "/" + name) != nullptr; }
  std::optional<int> whole(const char* name) const { return whole_at(read_, at_ + "/" + name); }
  bool in_toe() const { return read_.find(at_ + "/in")->text == "toe"; }
  Problem say(const char* name, const char* code, double most, std::string message) const {
    return {at_ + "/" + name, code, {{"max", most}}, {}, std::move(message)};
  }

  const ReadText& read_;
  std::string at_;
};

std::vector<Problem> SockSeen::missing() const {
  std::vector<Problem> problems;
  const auto need = [&](const char* name) {
    if (!has(name)) problems.push_back(required(row_of(at_ + "/" + name), 0));
  };
  if (in_toe()) {
    need("rounds");
    return problems;
  }
  if (!has("columns") && !has("place")) {
    problems.push_back(required_or(row_of(at_ + "/columns"), at_ + "/place"));
  }
  need("since");
  return problems;
}

Seen SockSeen::seen() const {
  Seen seen;
  seen.in_toe = in_toe();
  seen.toe_rounds = whole("rounds").value_or(0);
  seen.columns = whole("columns");
  seen.place = whole("place").value_or(0);
  seen.since = whole("since").value_or(1);
  seen.near = whole("near");
  seen.on_second = at_ == "/b";
  return seen;
}

std::optional<Problem> SockSeen::problem(const PairShape& pair) const {
  const Seen seen = this->seen();
  const int shift = pair.rib.rounds_per_shift;
  if (!seen.in_toe && !seen.columns && seen.place >= pair.rib.repeat()) {
    const Field& row = row_of(at_ + "/place");
    return out_of_range(row, 0, 0, pair.rib.repeat() - 1);
  }
  if (seen.near && *seen.near > rounds_of(pair)) {
    return out_of_range(row_of(at_ + "/near"), 0, 0, rounds_of(pair));
  }
  switch (find_round(pair, seen).fault) {
    case SeenFault::none:
      break;
    case SeenFault::beyond_toe:
      return say("rounds", "beyond_toe", pair.toe_rounds,
                 "The toe has " + std::to_string(pair.toe_rounds) +
                     " rounds: beyond them, say what is seen of the rib.");
    case SeenFault::too_many_since:
      return say("since", "too_many_since", shift,
                 "The rib steps over every " + std::to_string(shift) +
                     " rounds: look again for the last step, and count from there.");
    case SeenFault::beyond_rib:
      return say("columns", "beyond_rib", moves_of(pair),
                 "The rib steps over " + std::to_string(moves_of(pair)) +
                     " times before the cuff: follow one rib, and count again.");
    case SeenFault::beyond_cuff: {
      const int most = most_since(pair, moves_of(pair));
      return say("since", "beyond_cuff", most,
                 "From there to the edge of the cuff there are " + std::to_string(most) +
                     " rounds: count again, from " +
                     (shift == 0 ? "where the rib begins." : "the last step."));
    }
    case SeenFault::never_moves:
      return say(seen.columns ? "columns" : "place", "never_moves", 0,
                 "A straight rib never steps over: give 0 columns, and as `since` the rounds "
                 "counted from where the rib begins.");
    case SeenFault::place_not_reached:
      return say("place", "place_not_reached", pair.plain_rounds,
                 "The rib never stands so in a round this soon: count how often one rib has "
                 "stepped over instead.");
  }
  return std::nullopt;
}

std::vector<Problem> check_together(const ReadText& read) {
  std::vector<Problem> problems;
  const PairShape pair = pair_in(read);
  const bool any = read.find("/a") || read.find("/b") || read.find("/misstep");
  if (!any) problems.push_back(required_or(row_of("/a"), "/misstep"));
  for (const char* at : {"/a", "/b"}) {
    const SockSeen sock(read, at);
    if (!sock.asked()) continue;
    const std::vector<Problem> missing = sock.missing();
    problems.insert(problems.end(), missing.begin(), missing.end());
    if (!missing.empty()) continue;
    if (const auto problem = sock.problem(pair)) problems.push_back(*problem);
  }
  const auto since = whole_at(read, "/misstep/roundsSince");
  if (since && *since > pair.rib_rounds) {
    problems.push_back(
        {"/misstep/roundsSince",
         "beyond_rib",
         {{"max", static_cast<double>(pair.rib_rounds)}},
         {},
         "The rib has " + std::to_string(pair.rib_rounds) + " rounds: give as many at most."});
  }
  return problems;
}

void write_found(JsonWriter& json, const char* key, const Found& found) {
  json.key(key).open_object();
  if (found.likely) json.key("round").whole(*found.likely);
  json.key("candidates").open_list();
  for (const int rounds : found.rounds) json.whole(rounds);
  json.close_list();
  json.close_object();
}

void write_apart(JsonWriter& json, int a, int b) {
  const int apart = rounds_apart(a, b);
  json.key("apart").open_object();
  json.key("rounds").whole(apart < 0 ? -apart : apart);
  json.key("alone").text(apart == 0 ? "none" : apart < 0 ? "a" : "b");
  json.close_object();
}

void write_ways_out(JsonWriter& json, const WaysOut& ways) {
  json.key("misstep").open_object();
  json.key("unpickRounds").whole(ways.rounds_to_unpick);
  json.key("unpickStitches").whole(ways.stitches_to_unpick);
  json.key("hookColumns").whole(ways.columns_to_hook);
  json.key("hookStitches").whole(ways.stitches_to_hook);
  json.close_object();
}

void write_reply(JsonWriter& json, const ReadText& read) {
  const PairShape pair = pair_in(read);
  json.open_object();
  json.key("periodRounds").whole(period(pair.rib).value());
  std::optional<int> likely[2];
  const char* const names[2] = {"a", "b"};
  for (int i = 0; i < 2; ++i) {
    const SockSeen sock(read, std::string("/") + names[i]);
    if (!sock.asked()) continue;
    const Found found = find_round(pair, sock.seen());
    likely[i] = found.likely;
    write_found(json, names[i], found);
  }
  if (likely[0] && likely[1]) write_apart(json, *likely[0], *likely[1]);
  if (const auto since = whole_at(read, "/misstep/roundsSince")) {
    write_ways_out(json, ways_out({*since, pair.rib.repeat(), pair.stitches}));
  }
  json.close_object();
}

}  // namespace

std::string answer_found(std::string_view text) {
  const ReadText read = read_json(text, found_request_fields());
  std::vector<Problem> problems = check_fields(read, found_request_fields());
  if (problems.empty()) problems = check_together(read);
  if (!problems.empty()) return refused(problems);
  return answered("found", [&](JsonWriter& json) { write_reply(json, read); });
}

}  // namespace twinround
