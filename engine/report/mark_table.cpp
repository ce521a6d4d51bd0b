#include "engine/report/mark_table.hpp"

#include <fmt/format.h>

#include <array>
#include <optional>

#include "engine/quantity/decimal.hpp"
#include "engine/report/verdict_words.hpp"
#include "engine/source/csv_cell.hpp"

namespace heelrule {
namespace {

constexpr std::string_view names =
    "student,client,shoe,date,mark,points,mark_without_caps,critical,critical_faults,right,within,"
    "off,missed,invented,not_held,grade,reference_grade,grade_agrees,score,reference_score";

class RowWriter {
 public:
  void text(std::string_view words) {
    begin();
    append_csv_cell(row_, words);
  }
  void number(const std::optional<double>& value) {
    begin();
    row_ += value ? shortest(*value) : "";
  }
  void bare(std::string_view words) {
    begin();
    row_ += words;
  }
  std::string take() { return std::move(row_) + "\r\n"; }

 private:
  void begin() {
    row_ += is_first_ ? "" : ",";
    is_first_ = false;
  }

  std::string row_;
  bool is_first_ = true;
};

std::string name_of(const MarkStory& story, const std::optional<std::size_t>& mark) {
  return mark ? story.marking.marks[*mark].name : "";
}

std::string grade_of(const MarkStory& story, const Verdict& verdict) {
  return verdict.grade ? story.program.rules.grades[*verdict.grade].name.value : "";
}

std::optional<double> number_in(const std::string& words) {
  const auto found = parse_decimal(words);
  return found ? std::optional(scaled(*found)) : std::nullopt;
}

std::string critical_of(const MarkStory& story) {
  const RuleSet& rules = story.program.rules;
  std::string words;
  for (const CriticalFault& fault : story.mark.critical.faults) {
    const std::string& about = is_about_safety(fault)
                                   ? rules.traits[rules.safety[fault.about].trait].name
                                   : rules.rules[fault.about].name;
    words += fmt::format("{}{}: {}", words.empty() ? "" : "; ", in_words(fault.kind), about);
  }
  return words;
}

void append_row(std::string& table, const MarkStory& story) {
  const Mark& mark = story.mark;
  RowWriter row;
  for (const std::string* words : {&story.record.observer, &story.record.client,
                                   &story.record.shoe_label, &story.record.date}) {
    row.text(*words);
  }
  row.text(name_of(story, mark.mark));
  row.number(number_in(mark_points_words(story)));
  row.text(name_of(story, mark.uncapped));
  row.number(static_cast<double>(mark.critical.faults.size()));
  row.text(critical_of(story));
  for (const Likeness likeness : {Likeness::right, Likeness::within, Likeness::off,
                                  Likeness::missed, Likeness::invented, Likeness::not_held}) {
    row.number(static_cast<double>(mark.count(likeness)));
  }
  row.text(grade_of(story, mark.verdict));
  row.text(grade_of(story, story.reference.verdict));
  row.bare(mark.verdict.grade == story.reference.verdict.grade ? "yes" : "no");
  row.number(number_in(points_words(story.program, mark.verdict)));
  row.number(number_in(points_words(story.program, story.reference.verdict)));
  table += row.take();
}

}  // namespace

std::string mark_table(std::span<const MarkStory> stories) {
  std::string table(names);
  table += "\r\n";
  for (const MarkStory& story : stories) {
    append_row(table, story);
  }
  return table;
}

}  // namespace heelrule
