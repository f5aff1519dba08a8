// The time of one plan, text to text, as sockmath computes it: reading, checking, planning,
// writing.
#include <benchmark/benchmark.h>

#include <cstdio>
#include <fstream>
#include <iterator>
#include <string>

#include "answer.h"

namespace {

std::string read_file(const char* name) {
  std::ifstream file(name, std::ios::binary);
  return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

void plan(benchmark::State& state, const std::string& request) {
  for (auto _ : state) {
    benchmark::DoNotOptimize(twinround::answer("plan", request));
  }
}

}  // namespace

// bench_plan REQUEST.json [flags of the benchmark library]
int main(int argc, char** argv) {
  const std::string request = argc > 1 ? read_file(argv[1]) : "";
  if (twinround::answer("plan", request).rfind("{\"ok\":true", 0) != 0) {
    std::fputs("bench_plan: the request is not answered\n", stderr);
    return 2;
  }
  benchmark::Initialize(&argc, argv);
  benchmark::RegisterBenchmark("plan", [&](benchmark::State& state) { plan(state, request); });
  benchmark::RunSpecifiedBenchmarks();
  return 0;
}
