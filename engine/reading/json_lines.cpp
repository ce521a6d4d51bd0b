#include "engine/reading/json_lines.hpp"

#include <fmt/format.h>

#include <utility>

#include "engine/reading/json_tree.hpp"
#include "engine/reading/read_inspection.hpp"
#include "engine/reading/text_gate.hpp"

namespace heelrule {

std::optional<LineFault> JsonLineReader::read(std::string_view line, std::uint64_t number,
                                              InspectionRow& row) {
  line = number == 1 ? without_byte_order_mark(line) : line;
  if (quick_.read(line, row)) {
    return std::nullopt;
  }
  LineFault fault;
  const std::uint32_t source = fault.sources.add(name_, std::string(line), number);
  if (line.find_first_not_of(" \t") == std::string_view::npos) {
    fault.diagnostics.error({source, 0, 0}, "this line is empty", "write one record on each line");
    return fault;
  }
  if (line.size() > TreeLimits::bytes) {
    fault.diagnostics.error(
        {source, 0, 0}, fmt::format("this line is longer than {} MiB", TreeLimits::bytes >> 20U),
        "write one record on each line");
    return fault;
  }
  const auto tree = read_json(fault.sources, source, fault.diagnostics);
  if (!tree) {
    return fault;
  }
  Inspection inspection = read_inspection(*tree, *rules_, fault.diagnostics);
  if (fault.diagnostics.has_errors()) {
    return fault;
  }
  fill(row, std::move(inspection), rules_->traits.size());
  return std::nullopt;
}

}  // namespace heelrule
