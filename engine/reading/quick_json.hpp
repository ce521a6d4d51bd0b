// Records as JSON in their usual form, straight from its bytes into a row.
#pragma once

#include <memory>
#include <string_view>

#include "engine/model/inspection_row.hpp"
#include "engine/model/rule_set.hpp"

namespace heelrule {

/// Knows the usual forms of a record and none of its mistakes. What it takes it has checked as
/// strictly as `read_json` and `read_inspection` do; whatever it is not sure of it leaves to them.
class QuickJson {
 public:
  /// `rules` must outlive this object.
  explicit QuickJson(const RuleSet& rules);
  ~QuickJson();
  QuickJson(QuickJson&&) noexcept;
  QuickJson& operator=(QuickJson&&) noexcept;
  QuickJson(const QuickJson&) = delete;
  QuickJson& operator=(const QuickJson&) = delete;

  /// Reads a line, with `JsonLineReader::padding` readable bytes behind it, into `row`. False where
  /// it is anything but a sound record in its usual form; the row is of no use then.
  bool read(std::string_view line, InspectionRow& row);

 private:
  class Reader;
  std::unique_ptr<Reader> reader_;
};

}  // namespace heelrule
