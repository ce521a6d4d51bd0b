// Where reports go: to standard output, a file, or a folder of files.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "cli/exit_status.hpp"
#include "cli/write_file.hpp"

namespace heelrule {

/// A place for reports, as a person gave it.
struct Destination {
  std::optional<std::string> to;  ///< a file or a folder; nothing: standard output
  Existing existing = Existing::keep;
};

/// A report, and what it is called as a file.
struct NamedReport {
  std::string name;
  std::string text;
};

/// Writes one report: to standard output, or to a file. Where the destination is a folder, or ends
/// with a slash, into a file of its name in there.
ExitStatus write_report(const NamedReport& report, const Destination& destination);

/// Writes each report into a file of its own, in a folder that is made where there is none.
ExitStatus write_reports(const std::vector<NamedReport>& reports, const Destination& destination);

/// `wanted` with ASCII letters, digits and `-` alone, so that no client's code leads out of the
/// folder; and with a number behind it where `taken` has that name already, to which it is added.
///
///     file_name("C-014/2026", "html", taken)  ->  "C-014-2026.html"
std::string file_name(std::string_view wanted, std::string_view ending,
                      std::vector<std::string>& taken);

}  // namespace heelrule
