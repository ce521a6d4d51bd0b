// Times what one inspection goes through from a cold start, step by step:
// cold RULES_FOLDER RULE_SET RECORD [options of Google Benchmark]. Each step starts from nothing
// but the results of those before it.
#include <benchmark/benchmark.h>

#include <cstdio>

#include "engine/reading/yaml_tree.hpp"
#include "engine/report/text_report.hpp"
#include "engine/scoring/compile.hpp"
#include "engine/scoring/grade.hpp"
#include "tests/bench/given.hpp"

using namespace heelrule;

int main(int count, char** arguments) {
  if (count < 4) {
    std::fprintf(stderr,
                 "usage: cold RULES_FOLDER RULE_SET RECORD [options of Google Benchmark]\n");
    return 64;
  }
  const Given given(arguments[1], arguments[2], arguments[3]);
  Sources loaded;
  const LoadedRules rules = given.load(loaded);
  const auto program = compile(rules.rules, rules.diagnostics);
  const auto inspection = given.read(rules.rules);
  if (!program || !inspection) {
    std::fprintf(stderr, "cold: the rules or the record have faults\n");
    return 1;
  }
  const Verdict verdict = grade(*program, *inspection);
  const auto time = [](const char* name, auto step) {
    benchmark::RegisterBenchmark(name, [step](benchmark::State& state) {
      for (auto _ : state) {
        benchmark::DoNotOptimize(step());
      }
    })->Unit(benchmark::kMicrosecond);
  };
  // Of every file that was read, as `load_rules` reads it; a part of the next step.
  time("events", [&] {
    std::size_t entries = 0;
    for (std::uint32_t source = 0; source < loaded.size(); ++source) {
      Diagnostics diagnostics;
      const auto tree = read_yaml(loaded, source, diagnostics);
      entries += tree ? tree->entries.size() : 0;
    }
    return entries;
  });
  time("load", [&] {
    Sources sources;
    return given.load(sources).rules.rules.size();
  });
  time("compile", [&] { return compile(rules.rules, rules.diagnostics)->register_count; });
  time("record", [&] { return given.read(rules.rules)->observations.size(); });
  time("grade", [&] { return grade(*program, *inspection).findings.size(); });
  time("print", [&] { return text_report(*program, *inspection, verdict, {}).size(); });
  arguments[3] = arguments[0];
  int rest = count - 3;
  benchmark::Initialize(&rest, arguments + 3);
  benchmark::RunSpecifiedBenchmarks();
  return 0;
}
