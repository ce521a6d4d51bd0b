// Times what one inspection goes through from a cold start, step by step:
// cold RULES_FOLDER RULE_SET RECORD [options of Google Benchmark]. Each step starts from nothing
// but the results of those before it.
#include <benchmark/benchmark.h>

#include <cstdio>
#include <fstream>
#include <iterator>

#include "engine/reading/load_rules.hpp"
#include "engine/reading/read_inspection.hpp"
#include "engine/reading/yaml_tree.hpp"
#include "engine/report/text_report.hpp"
#include "engine/scoring/compile.hpp"
#include "engine/scoring/grade.hpp"

namespace {

using namespace heelrule;

std::string file_text(const std::string& path) {
  std::ifstream file(path, std::ios::binary);
  if (!file) {
    std::fprintf(stderr, "cold: cannot read %s\n", path.c_str());
    std::exit(1);
  }
  return {std::istreambuf_iterator<char>(file), {}};
}

// All the rule files that a set is made of, in memory.
class Given {
 public:
  Given(std::string folder, std::string set, const std::string& record)
      : folder_(std::move(folder)), set_(std::move(set)), record_(file_text(record)) {}

  LoadedRules load(Sources& sources) const {
    return load_rules(
        set_,
        [&](std::string_view name, std::string_view) {
          const std::string path = folder_ + "/" + std::string(name) + ".yaml";
          return Parsed<FoundFile>(FoundFile{path, std::string(name), file_text(path)});
        },
        sources);
  }

  Checked<Inspection> read(const RuleSet& rules) const {
    Sources sources;
    const std::uint32_t source = sources.add("record", record_);
    return load_inspection(sources, source, rules);
  }

 private:
  std::string folder_;
  std::string set_;
  std::string record_;
};

}  // namespace

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
