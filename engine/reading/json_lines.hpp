// Inspections as JSON Lines: one whole record a line.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

#include "engine/model/inspection_row.hpp"
#include "engine/model/rule_set.hpp"
#include "engine/reading/line_fault.hpp"
#include "engine/reading/quick_json.hpp"

namespace heelrule {

/// Reads records one by one. Each means what it would mean as a file of its own: what is in its
/// usual form is read the quick way, and everything else, with all that may be wrong with it, as
/// `load_inspection` reads a file.
class JsonLineReader {
 public:
  /// Bytes that must be readable behind each line.
  static constexpr std::size_t padding = 64;

  /// `name` is what messages call the file. `rules` must outlive this object.
  JsonLineReader(const RuleSet& rules, std::string name)
      : rules_(&rules), name_(std::move(name)), quick_(rules) {}

  /// Reads a line (without its line break) into `row`, or tells what is wrong with it. `number` is
  /// the line's number in its file.
  std::optional<LineFault> read(std::string_view line, std::uint64_t number, InspectionRow& row);

 private:
  const RuleSet* rules_;
  std::string name_;
  QuickJson quick_;
};

}  // namespace heelrule
