#include "cli/pass_command.hpp"

#include "cli/files.hpp"
#include "cli/load_program.hpp"
#include "cli/output.hpp"
#include "cli/report_files.hpp"
#include "engine/agreement/pass_mark.hpp"
#include "engine/reading/read_pass_sheet.hpp"
#include "engine/reading/text_gate.hpp"
#include "engine/report/pass_page.hpp"
#include "engine/report/pass_report.hpp"
#include "engine/source/show_diagnostic.hpp"

namespace heelrule {

ExitStatus run(const PassCommand& command, const RuleFiles& /*files*/) {
  const auto text = read_file(command.sheet);
  if (!text) {
    write_problem(text.problem());
    return ExitStatus::input_missing;
  }
  Sources sources;
  const std::uint32_t source =
      sources.add(command.sheet, std::string(without_byte_order_mark(*text)));
  const auto sheet = load_pass_sheet(sources, source);
  write_error(show(sheet.diagnostics(), sources));
  if (!sheet) {
    return ExitStatus::bad_data;
  }
  const PassMarks marks = pass_marks(*sheet);
  switch (command.as) {
    case ReportKind::json:
      return write_report({"pass.json", pass_json(*sheet, marks)}, command.destination);
    case ReportKind::html:
      return write_report({"pass.html", pass_page(*sheet, marks)}, command.destination);
    case ReportKind::text:
    case ReportKind::csv:
      break;
  }
  const bool colour = colour_wanted() && !command.destination.to;
  return write_report({"pass.txt", pass_text(*sheet, marks, colour)}, command.destination);
}

}  // namespace heelrule
