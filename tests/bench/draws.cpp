// Times how sure the grade of one inspection is: draws RULES_FOLDER RULE_SET RECORD [options of
// Google Benchmark]. One thread.
#include <benchmark/benchmark.h>

#include <cstdio>

#include "engine/doubt/doubt.hpp"
#include "engine/doubt/tally.hpp"
#include "engine/scoring/compile.hpp"
#include "engine/scoring/grade.hpp"
#include "tests/bench/given.hpp"

using namespace heelrule;

int main(int count, char** arguments) {
  if (count < 4) {
    std::fprintf(stderr,
                 "usage: draws RULES_FOLDER RULE_SET RECORD [options of Google Benchmark]\n");
    return 64;
  }
  const Given given(arguments[1], arguments[2], arguments[3]);
  Sources loaded;
  const LoadedRules rules = given.load(loaded);
  const auto program = compile(rules.rules, rules.diagnostics);
  const auto inspection = given.read(rules.rules);
  if (!program || !inspection) {
    std::fprintf(stderr, "draws: the rules or the record have faults\n");
    return 1;
  }
  const Verdict verdict = grade(*program, *inspection);
  const Doubt doubt = doubt_of(*program, *inspection, verdict);
  const auto time = [](const char* name, auto step) {
    benchmark::RegisterBenchmark(name, [step](benchmark::State& state) {
      for (auto _ : state) {
        benchmark::DoNotOptimize(step());
      }
    })->Unit(benchmark::kMillisecond);
  };
  time("10,000 draws", [&] { return tally(*program, *inspection, doubt.readings, {}).draws; });
  time("readings to take again",
       [&] { return effects(*program, *inspection, doubt.readings, doubt.target).size(); });
  time("fewest readings", [&] {
    return fewest_readings(*program, *inspection, doubt.readings, *verdict.grade).tried;
  });
  time("better grades",
       [&] { return better_grades(*program, *inspection, *verdict.grade).size(); });
  time("all of it", [&] { return doubt_of(*program, *inspection, verdict).draws; });
  arguments[3] = arguments[0];
  int rest = count - 3;
  benchmark::Initialize(&rest, arguments + 3);
  benchmark::RunSpecifiedBenchmarks();
  return 0;
}
