#include "engine/report/report_reader.hpp"

#include <array>

namespace heelrule {

std::string_view in_words(ReportReader reader) {
  switch (reader) {
    case ReportReader::assessor:
      return "assessor";
    case ReportReader::student:
      return "student";
    case ReportReader::client:
      return "client";
  }
  return "";
}

std::optional<ReportReader> find_reader(std::string_view name) {
  for (const auto reader :
       std::array{ReportReader::assessor, ReportReader::student, ReportReader::client}) {
    if (in_words(reader) == name) {
      return reader;
    }
  }
  return std::nullopt;
}

}  // namespace heelrule
