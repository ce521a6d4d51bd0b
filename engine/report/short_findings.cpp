#include "engine/report/short_findings.hpp"

#include "engine/formula/operation.hpp"
#include "engine/report/account.hpp"
#include "engine/report/json_parts.hpp"
#include "engine/report/json_writer.hpp"
#include "engine/report/value_words.hpp"
#include "engine/scoring/find.hpp"
#include "engine/scoring/joining.hpp"
#include "engine/scoring/rows.hpp"
#include "engine/scoring/rule_needs.hpp"

namespace heelrule {
namespace {

// So many inputs can be told from each other in a case, besides whether the rule applies.
constexpr std::size_t most_needs = 30;

Rows rows_with_reasons(std::span<const InspectionRow> rows) {
  Rows with = 0;
  for (std::size_t row = 0; row < rows.size(); ++row) {
    with |= gives_reasons(rows[row].inspection) ? Rows{1} << row : 0;
  }
  return with;
}

}  // namespace

ShortFindings::ShortFindings(const Program& program, std::span<const std::string> languages)
    : program_(program),
      heads_(program.contributions.size()),
      sentences_(program, languages),
      kept_(program.contributions.size()) {
  for (const Contribution& contribution : program.contributions) {
    needs_.push_back(inputs_needed(program, contribution.rule));
  }
}

void ShortFindings::turn_to(const Block& block, std::span<const InspectionRow> rows) {
  kept_.begin();
  const Rows with_reasons = rows_with_reasons(rows);
  for (std::size_t i = 0; i < program_.contributions.size(); ++i) {
    const Contribution& contribution = program_.contributions[i];
    const Rows told = rows_without_pass(contribution, block) & first_rows(rows.size());
    const Rows open = told & rows_not_seen(contribution, block);
    const Rows unlike_others = needs_[i].size() <= most_needs ? open & with_reasons : open;
    const auto make = [&](std::size_t row) { return words(i, block, row, rows[row].inspection); };
    const auto case_of = [&, values = ValueBits(contribution, block)](std::size_t row) {
      return values.of(row, has_row(open, row) ? what_is_open(i, block, row) : 0);
    };
    kept_.tell(i, told & ~unlike_others, case_of, make);
    for_each_row(unlike_others, [&](std::size_t row) { kept_.tell_once(row, make(row)); });
  }
}

std::uint32_t ShortFindings::what_is_open(std::size_t contribution, const Block& block,
                                          std::size_t row) const {
  std::uint32_t open = applies_to(program_.contributions[contribution], block, row) == 1 ? 1 : 2;
  for (const Register input : needs_[contribution]) {
    open = open * 2 + (operation::is_seen(block.column(input)[row]) ? 1 : 0);
  }
  return open;
}

std::string ShortFindings::words(std::size_t contribution, const Block& block, std::size_t row,
                                 const Inspection& inspection) {
  find(program_, block, row, contribution, finding_);
  sentence_.clear();
  sentences_.begin(inspection);
  sentences_.append(contribution, finding_, sentence_);
  std::string words = head(contribution, finding_.status);
  words += sentence_.text() == R"("")" ? json_text(readings_words(program_, finding_))
                                       : sentence_.text();
  words += "},";
  return words;
}

const std::string& ShortFindings::head(std::size_t contribution, Status status) {
  std::string& head = heads_[contribution][static_cast<std::size_t>(status)];
  if (head.empty()) {
    const Contribution& of = program_.contributions[contribution];
    JsonWriter json(JsonWriter::Layout::compact);
    json.begin_object();
    write_rule(json, program_, of.rule, of.side);
    json.text("status", in_words(status));
    head = json.take() + R"(,"words":)";
  }
  return head;
}

}  // namespace heelrule
