#include "engine/report/finding_data.hpp"

#include <fmt/format.h>

#include <utility>

#include "engine/model/same_finding.hpp"
#include "engine/report/finding_ruler.hpp"
#include "engine/report/verdict_words.hpp"

namespace heelrule {
namespace {

// A finding of the record with its doubt, where that is known.
DoubtedFinding with_doubt(const GradedRecord& record, const Finding& finding) {
  const auto place = static_cast<std::size_t>(&finding - record.verdict.findings.data());
  return {finding, record.doubt ? &record.doubt->findings[place] : nullptr};
}

std::optional<Ruler> ruler_of(const ReportSubject& subject, const FindingAccount& told) {
  const GradedRecord& record = subject.record;
  const Finding& finding = record.verdict.findings[told.finding];
  std::optional<DoubtedFinding> earlier;
  if (subject.earlier != nullptr) {
    if (const Finding* before = same_finding(subject.earlier->verdict, finding)) {
      earlier.emplace(with_doubt(*subject.earlier, *before));
    }
  }
  return finding_ruler(subject.program, ruler_id(told.finding), told.title,
                       with_doubt(record, finding), earlier);
}

// How a trait that was worked out came about: its name and its formula.
std::string formula(const ReportSubject& subject, const Finding& finding) {
  const Trait& trait =
      subject.program.rules.traits[subject.program.rule_programs[finding.rule].trait];
  const auto* derived = std::get_if<DerivedKind>(&trait.kind);
  return derived == nullptr ? "" : fmt::format("{} = {}", trait.name, derived->formula.value);
}

void add_finding(const ReportSubject& subject, const FindingAccount& told, PageData& entry) {
  const Finding& finding = subject.record.verdict.findings[told.finding];
  const Trait& trait =
      subject.program.rules.traits[subject.program.rule_programs[finding.rule].trait];
  entry.words("title", told.title);
  entry.words("read", told.readings);
  entry.words("says", told.sentence);
  entry.fact("own_words", told.own_words);
  if (is_judged(finding.status)) {
    entry.words("worth", worth_words(subject.program, finding));
  }
  entry.fact("must", subject.program.rules.rules[finding.rule].caps.has_value());
  entry.words("because", told.because);
  entry.words("source", told.source);
  entry.words("formula", formula(subject, finding));
  entry.words("how", trait.how.in(subject.languages));
  entry.each("notes", told.notes);
  if (subject.doubt != nullptr) {
    const FindingDoubtAccount& doubt = subject.doubt->findings[told.finding];
    entry.words("doubt", doubt.sentence);
    entry.words("sureness", doubt.words);
    entry.fact("is_within_doubt", doubt.is_within_doubt);
  }
  if (auto ruler = ruler_of(subject, told)) {
    entry.markup("picture", draw(*ruler));
    ruler->id = fmt::format("small-{}", ruler->id);
    entry.markup("small_picture", draw_small(*ruler));
  }
}

// A heading with all findings of one status; nothing where there are none.
void add_group(const ReportSubject& subject, Status status, std::string_view heading,
               PageData& data) {
  PageData group;
  bool any = false;
  for (const FindingAccount& told : subject.account.findings) {
    if (subject.record.verdict.findings[told.finding].status == status) {
      add_finding(subject, told, group.add("findings"));
      any = true;
    }
  }
  if (any) {
    group.words("heading", heading);
    group.fact("is_failed", status == Status::fail);
    data.add("groups") = std::move(group);
  }
}

bool has_bands(const ReportSubject& subject, const FindingAccount& told) {
  const Finding& finding = subject.record.verdict.findings[told.finding];
  return !subject.program.rules.rules[finding.rule].bands.empty();
}

// What passed stands in a list of its own kind as well.
void add_passed(const ReportSubject& subject, PageData& data) {
  bool any_measure = false;
  bool any_level = false;
  for (const FindingAccount& told : subject.account.findings) {
    if (subject.record.verdict.findings[told.finding].status != Status::pass) {
      continue;
    }
    PageData entry;
    add_finding(subject, told, entry);
    const bool is_measure = has_bands(subject, told);
    (is_measure ? any_measure : any_level) = true;
    data.add(is_measure ? "passed_measure" : "passed_level") = entry;
    data.add("passed") = std::move(entry);
  }
  data.fact("any_passed", any_measure || any_level);
  data.fact("any_passed_measure", any_measure);
  data.fact("any_passed_level", any_level);
}

void add_not_seen(const ReportSubject& subject, PageData& data) {
  bool any = false;
  for (const FindingAccount& told : subject.account.findings) {
    if (subject.record.verdict.findings[told.finding].status == Status::not_seen) {
      add_finding(subject, told, data.add("not_seen"));
      any = true;
    }
  }
  data.fact("any_not_seen", any);
}

}  // namespace

void add_findings(const ReportSubject& subject, PageData& data) {
  add_group(subject, Status::fail, "Failed", data);
  add_group(subject, Status::part, "Passed in part", data);
  add_passed(subject, data);
  add_not_seen(subject, data);
  std::vector<std::string_view> others;
  for (const FindingAccount& told : subject.account.findings) {
    if (subject.record.verdict.findings[told.finding].status == Status::does_not_apply) {
      others.push_back(told.title);
    }
  }
  data.words("not_applicable", others.empty() ? "" : fmt::format("{}.", fmt::join(others, "; ")));
}

}  // namespace heelrule
