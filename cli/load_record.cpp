#include "cli/load_record.hpp"

#include <algorithm>

#include "cli/files.hpp"
#include "cli/load_program.hpp"
#include "cli/output.hpp"
#include "engine/reading/read_document.hpp"
#include "engine/reading/read_inspection.hpp"
#include "engine/reading/text_gate.hpp"
#include "engine/source/show_diagnostic.hpp"

namespace heelrule {
namespace {

struct ReadRecord {
  Node tree;
  Inspection inspection;
};

std::optional<ReadRecord> read_record(const std::string& path, const RuleSet& rules,
                                      ExitStatus& status) {
  const auto text = read_file(path);
  if (!text) {
    write_problem(text.problem());
    status = std::max(status, ExitStatus::input_missing);
    return std::nullopt;
  }
  Sources sources;
  const std::uint32_t source = sources.add(path, std::string(without_byte_order_mark(*text)));
  Diagnostics diagnostics;
  auto tree = read_document(sources, source, diagnostics);
  Inspection inspection = tree ? read_inspection(*tree, rules, diagnostics) : Inspection{};
  write_error(show(diagnostics, sources));
  if (!tree || diagnostics.has_errors()) {
    status = std::max(status, ExitStatus::bad_data);
    return std::nullopt;
  }
  return ReadRecord{*std::move(tree), std::move(inspection)};
}

}  // namespace

std::optional<Inspection> load_record(const std::string& path, const RuleSet& rules,
                                      ExitStatus& status) {
  auto record = read_record(path, rules, status);
  return record ? std::optional(std::move(record->inspection)) : std::nullopt;
}

std::optional<Node> load_record_tree(const std::string& path, const RuleSet& rules,
                                     ExitStatus& status) {
  auto record = read_record(path, rules, status);
  return record ? std::optional(std::move(record->tree)) : std::nullopt;
}

}  // namespace heelrule
