// The rule set and the record that a timing is given, all in memory.
#pragma once

#include <string>

#include "engine/reading/load_rules.hpp"
#include "engine/reading/read_inspection.hpp"
#include "tests/bench/file_text.hpp"

namespace heelrule {

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

}  // namespace heelrule
