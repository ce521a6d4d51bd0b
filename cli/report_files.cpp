#include "cli/report_files.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "cli/load_program.hpp"
#include "cli/output.hpp"

namespace heelrule {
namespace {

constexpr std::size_t longest_name = 80;  // what file systems allow is three times as much

ExitStatus write_or_say(const std::string& path, const std::string& text, Existing existing) {
  const Problem problem = write_file(path, text, existing);
  if (problem.message.empty()) {
    return ExitStatus::done;
  }
  write_problem(problem);
  return ExitStatus::cannot_write;
}

std::string inside(const std::string& folder, const std::string& name) {
  return folder.ends_with('/') ? folder + name : folder + "/" + name;
}

bool is_plain(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '-';
}

}  // namespace

ExitStatus write_report(const NamedReport& report, const Destination& destination) {
  if (!destination.to) {
    return write_output(report.text);
  }
  if (destination.to->ends_with('/') || is_folder(*destination.to)) {
    return write_reports({report}, destination);
  }
  return write_or_say(*destination.to, report.text, destination.existing);
}

ExitStatus write_reports(const std::vector<NamedReport>& reports, const Destination& destination) {
  const std::string& folder = *destination.to;
  if (const Problem problem = make_folder(folder); !problem.message.empty()) {
    write_problem(problem);
    return ExitStatus::cannot_write;
  }
  ExitStatus status = ExitStatus::done;
  for (const NamedReport& report : reports) {
    status = std::max(status,
                      write_or_say(inside(folder, report.name), report.text, destination.existing));
  }
  return status;
}

std::string file_name(std::string_view wanted, std::string_view ending,
                      std::vector<std::string>& taken) {
  std::string name;
  for (const char c : wanted.substr(0, longest_name)) {
    name += is_plain(c) ? c : '-';
  }
  if (name.empty()) {
    name = "report";
  }
  std::string found = fmt::format("{}.{}", name, ending);
  for (int number = 2; std::find(taken.begin(), taken.end(), found) != taken.end(); ++number) {
    found = fmt::format("{}-{}.{}", name, number, ending);
  }
  taken.push_back(found);
  return found;
}

}  // namespace heelrule
