#include "cli/agree_command.hpp"

#include "cli/files.hpp"
#include "cli/load_program.hpp"
#include "cli/output.hpp"
#include "engine/agreement/table_agreement.hpp"
#include "engine/reading/read_ratings.hpp"
#include "engine/reading/text_gate.hpp"
#include "engine/report/ratings_report.hpp"
#include "engine/source/show_diagnostic.hpp"

namespace heelrule {
namespace {

ExitStatus report_ratings(const AgreeCommand& command) {
  const auto text = read_file(command.ratings);
  if (!text) {
    write_problem(text.problem());
    return ExitStatus::input_missing;
  }
  Sources sources;
  const std::uint32_t source =
      sources.add(command.ratings, std::string(without_byte_order_mark(*text)));
  const auto table = read_ratings(sources, source, command.scale);
  write_error(show(table.diagnostics(), sources));
  if (!table) {
    return ExitStatus::bad_data;
  }
  const TableAgreement agreement = table_agreement(scaled_ratings(*table));
  return write_output(command.as == ReportKind::json
                          ? ratings_json(*table, agreement)
                          : ratings_text(*table, agreement, colour_wanted()));
}

}  // namespace

ExitStatus run(const AgreeCommand& command, const RuleFiles& /*files*/) {
  return report_ratings(command);
}

}  // namespace heelrule
