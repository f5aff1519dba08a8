// How the making came about: toe, length, yarn, needle, time.
#include <utility>

#include "plan_parts.h"

namespace twinround {

namespace {

double real(int count) {
  return static_cast<double>(count);
}

// Collects the workings of one plan: figure, rule, numbers put in, source.
class MakingWorker {
 public:
  MakingWorker(const PlanRequest& request, const FabricFigures& fabric, const Plan& plan)
      : request_(request), fabric_(fabric), plan_(plan) {}

  void show_toe();
  void show_length();
  void show_yarn();
  void show_tools_and_time();
  std::vector<Working> take() { return std::move(workings_); }

 private:
  void show(const char* figure, const char* rule, std::vector<Number> numbers, const char* source) {
    workings_.push_back({figure, rule, std::move(numbers), source});
  }
  int stitches_made() const;
  double g_s() const { return plan_.gauge.stitches.per_mm(); }
  double g_r() const { return plan_.gauge.rounds.per_mm(); }

  const PlanRequest& request_;
  const FabricFigures& fabric_;
  const Plan& plan_;
  std::vector<Working> workings_;
};

// Of one sock: cast on and worked, all rounds together.
int MakingWorker::stitches_made() const {
  int stitches = plan_.toe.cast_on.value();
  for (const RoundSpan& span : plan_.rounds) stitches += span.rounds * span.stitches;
  return stitches;
}

void MakingWorker::show_toe() {
  const Toe& toe = plan_.toe;
  show("castOn", "cast_on",
       {{"stitches", real(plan_.stitches.value())},
        {"tipShare", request_.tip_share},
        {"exact", request_.tip_share * plan_.stitches.value()},
        {"castOn", real(toe.cast_on.value())},
        {"wraps", real(toe.wraps)}},
       "trade-rule");
  show("toeRounds", "toe_rounds",
       {{"share", request_.toe_share},
        {"footLengthMm", plan_.foot.length.value.mm()},
        {"roundsPerMm", g_r()},
        {"exact", request_.toe_share * plan_.foot.length.value * plan_.gauge.rounds},
        {"increases", real(toe.increase_rounds)},
        {"rounds", static_cast<double>(toe.counts.size())}},
       "dillmont");
  show("toeIncreases", "toe_increases",
       {{"stitches", real(plan_.stitches.value())},
        {"castOn", real(toe.cast_on.value())},
        {"increases", real(toe.increase_rounds)}},
       "trade-rule");
}

void MakingWorker::show_length() {
  const SockLength& sock = plan_.length;
  show("lengthMm", "sock_length",
       {{"footLengthMm", plan_.foot.length.value.mm()},
        {"lengthEase", request_.length_ease},
        {"legHeightMm", request_.leg_height.mm()},
        {"lengthMm", sock.length.mm()}},
       "trade-rule");
  show("totalRounds", "total_rounds",
       {{"lengthMm", sock.length.mm()},
        {"roundsPerMm", g_r()},
        {"exact", sock.length * plan_.gauge.rounds},
        {"rounds", real(sock.total.value())}},
       "definition");
  show("cuffRounds", "cuff_rounds",
       {{"cuffMm", request_.cuff.mm()},
        {"roundsPerMm", g_r()},
        {"exact", request_.cuff * plan_.gauge.rounds},
        {"rounds", real(sock.cuff.value())}},
       "definition");
  show("spiralRounds", "spiral_rounds",
       {{"totalRounds", real(sock.total.value())},
        {"toeRounds", static_cast<double>(plan_.toe.counts.size())},
        {"wideningRounds", real(plan_.widening_rounds.value())},
        {"cuffRounds", real(sock.cuff.value())},
        {"rounds", real(plan_.spiral_rounds.value())}},
       "definition");
  if (plan_.pitch) {
    show("pitch", "pitch",
         {{"stitchesPerMm", g_s()},
          {"roundsPerMm", g_r()},
          {"roundsPerShift", real(plan_.rib.rounds_per_shift)},
          {"pitchDeg", plan_.pitch->degrees()}},
         "geometry");
  }
  show("strains", "strains",
       {{"heelGirthMm", plan_.foot.heel_girth.value.mm()},
        {"footLengthMm", plan_.foot.length.value.mm()},
        {"stadium", kStadium},
        {"breadthShare", kHeelBreadthOfFoot},
        {"legHeightMm", request_.leg_height.mm()},
        {"heelDepthMm", sock.heel_depth.mm()},
        {"lengthMm", sock.length.mm()},
        {"backStrain", sock.back_strain},
        {"frontStrain", sock.front_strain}},
       "assumption");
}

void MakingWorker::show_yarn() {
  const YarnNeed& need = plan_.yarn.need;
  show("bindOffYarn", "bind_off_yarn",
       {{"perGirth", kBindOffPerGirth},
        {"girthMm", need.bind_off.mm() / kBindOffPerGirth},
        {"m", need.bind_off.m()}},
       "assumption");
  show("mPerSock", "yarn_sock",
       {{"mmPerStitch", plan_.yarn.loop.mm()},
        {"stitches", real(stitches_made())},
        {"bindOffM", need.bind_off.m()},
        {"tailsM", need.tails.m()},
        {"m", need.sock.m()}},
       plan_.yarn.weighed ? "definition" : "munden-1959");
  show("mWithMargin", "yarn_pair",
       {{"mPerSock", need.sock.m()},
        {"margin", request_.yarn_margin},
        {"m", need.with_margin.m()},
        {"relativeError", plan_.yarn.relative_error}},
       "common-practice");
  if (plan_.yarn.balls) {
    show("balls", "balls",
         {{"m", need.with_margin.m()},
          {"ballM", request_.yarn.ball_length->m()},
          {"balls", real(plan_.yarn.balls->count)}},
         "definition");
  }
  if (plan_.yarn.substitute) {
    show("substitute", "substitute",
         {{"m", need.with_margin.m()},
          {"ballG", request_.yarn.substitute_mass->g()},
          {"ballM", request_.yarn.substitute_length->m()},
          {"g", plan_.yarn.substitute->with_margin_mass.g()},
          {"balls", real(plan_.yarn.substitute->balls.count)}},
         "definition");
  }
  if (plan_.yarn.pair_mass) {
    const bool guessed = plan_.yarn.mass_guessed;
    show("gPerPair", "mass",
         {{"m", need.pair.m()},
          {"ballG", guessed ? 100.0 : request_.yarn.ball_mass->g()},
          {"ballM", guessed ? fabric_.category.m_per_100g : request_.yarn.ball_length->m()},
          {"g", plan_.yarn.pair_mass->g()}},
         guessed ? "common-practice" : "definition");
  }
}

void MakingWorker::show_tools_and_time() {
  show("needle", "needle", {{"mm", plan_.needle.name.diameter.mm()}},
       request_.swatch.needle ? "definition" : "cyc-standard-yarn-weight");
  show("cable", "cable",
       {{"stitches", real(plan_.edge_stitches.value())},  // the widest round has to find room
        {"stitchesPerMm", g_s()},
        {"loopMm", kCableLoop.mm()},
        {"tipMm", kNeedleTip.mm()},
        {"cableMinMm", plan_.needle.cable_least.mm()}},
       "assumption");
  show("minutes", "time",
       {{"stitchesOfPair", 2.0 * real(stitches_made() - plan_.toe.cast_on.value())},
        {"stitchesPerMinute", request_.stitches_per_minute},
        {"rounds", real(plan_.length.total.value())},
        {"turnSeconds", kTurn.minutes() * 60.0},
        {"minutes", plan_.time.minutes()}},
       "assumption");
}

}  // namespace

std::vector<Working> working_of_making(const PlanRequest& request, const FabricFigures& fabric,
                                       const Plan& plan) {
  MakingWorker worker(request, fabric, plan);
  worker.show_toe();
  worker.show_length();
  worker.show_yarn();
  worker.show_tools_and_time();
  return worker.take();
}

}  // namespace twinround
