#include "cli/load_record.hpp"

#include <algorithm>

#include "cli/files.hpp"
#include "cli/load_program.hpp"
#include "cli/output.hpp"
#include "engine/reading/read_inspection.hpp"
#include "engine/reading/text_gate.hpp"
#include "engine/source/show_diagnostic.hpp"

namespace heelrule {

std::optional<Inspection> load_record(const std::string& path, const RuleSet& rules,
                                      ExitStatus& status) {
  const auto text = read_file(path);
  if (!text) {
    write_problem(text.problem());
    status = std::max(status, ExitStatus::input_missing);
    return std::nullopt;
  }
  Sources sources;
  const std::uint32_t source = sources.add(path, std::string(without_byte_order_mark(*text)));
  auto inspection = load_inspection(sources, source, rules);
  write_error(show(inspection.diagnostics(), sources));
  if (!inspection) {
    status = std::max(status, ExitStatus::bad_data);
    return std::nullopt;
  }
  return *std::move(inspection);
}

}  // namespace heelrule
