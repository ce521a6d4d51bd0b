#include "engine/report/short_findings.hpp"

#include "engine/report/account.hpp"
#include "engine/report/json_parts.hpp"
#include "engine/report/json_writer.hpp"

namespace heelrule {
namespace {

// Those that a short line tells of, each with its place among the heads of a contribution.
constexpr std::array<Status, 3> told{Status::part, Status::fail, Status::not_seen};

constexpr std::size_t place_of(Status status) {
  return static_cast<std::size_t>(status) - static_cast<std::size_t>(Status::part);
}
static_assert(place_of(told.front()) == 0 && place_of(told.back()) == 2);

}  // namespace

ShortFindings::ShortFindings(const Program& program, std::span<const std::string> languages)
    : heads_(program.contributions.size()), words_(program, languages, Detail::failed, "},") {
  for (std::size_t i = 0; i < heads_.size(); ++i) {
    for (const Status status : told) {
      JsonWriter json(JsonWriter::Layout::compact);
      json.begin_object();
      write_rule(json, program, program.contributions[i].rule, program.contributions[i].side);
      json.text("status", in_words(status));
      heads_[i][place_of(status)] = PaddedText(json.take() + R"(,"words":)");
    }
  }
}

void ShortFindings::append(const Inspection& inspection, const Verdict& verdict,
                           GrowingText& line) {
  words_.begin(inspection);
  const std::size_t before = line.size();
  for (const std::uint32_t i : verdict.lacking) {
    const Finding& finding = verdict.findings[i];
    line.put(heads_[i][place_of(finding.status)]);
    words_.append(i, finding, line);
  }
  if (line.size() > before) {
    line.drop_last();  // the comma behind the last one
  }
}

}  // namespace heelrule
