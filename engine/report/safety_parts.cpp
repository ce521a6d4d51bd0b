#include "engine/report/safety_parts.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <string_view>

#include "engine/report/fill_template.hpp"
#include "engine/report/verdict_words.hpp"

namespace heelrule {

std::string_view first_part_template();
std::string_view last_part_template();

namespace {

// Findings that say the same say it together.
std::vector<Said> said_once(const std::vector<Said>& all) {
  std::vector<Said> once;
  for (const Said& said : all) {
    const auto known = std::find_if(once.begin(), once.end(),
                                    [&](const Said& one) { return one.words == said.words; });
    if (known == once.end()) {
      once.push_back(said);
    } else {
      known->title += fmt::format("; {}", said.title);
    }
  }
  return once;
}

void add_said(std::string_view list, const std::vector<Said>& all, PageData& data) {
  for (const Said& said : said_once(all)) {
    PageData& entry = data.add(list);
    entry.words("title", said.title);
    entry.words("words", said.words);
  }
}

void add_answer(const SafetyAccount& told, PageData& entry) {
  entry.words("question", told.question);
  entry.words("sides", told.sides);
  entry.words("referral", told.referral);
  entry.words("reason", told.reason);
  entry.each("notes", told.notes);
}

}  // namespace

std::string first_part(const ReportSubject& subject) {
  const Account& account = subject.account;
  const Verdict& verdict = subject.record.verdict;
  PageData data;
  data.fact("refers", verdict.refers());
  for (const SafetyAccount* told : answered_with(Answered::yes, account, verdict)) {
    add_answer(*told, data.add("yes"));
  }
  add_said("referrals", account.referrals, data);
  const auto open = answered_with(Answered::not_at_all, account, verdict);
  data.fact("any_open", !open.empty());
  for (const SafetyAccount* told : open) {
    add_answer(*told, data.add("open"));
  }
  const auto denied = answered_with(Answered::no, account, verdict);
  data.fact("all_denied", !denied.empty() && denied.size() == account.safety.size());
  for (const SafetyAccount* told : denied) {
    if (!told->notes.empty()) {
      add_answer(*told, data.add("denied_with_note"));
    }
  }
  return *fill_template(first_part_template(), data);
}

std::string last_part(const ReportSubject& subject) {
  PageData data;
  data.fact("any_caution", !subject.account.cautions.empty());
  add_said("cautions", subject.account.cautions, data);
  data.each("usual", subject.account.usual_cautions);
  return *fill_template(last_part_template(), data);
}

std::string last_part(const std::vector<std::string>& usual_cautions) {
  PageData data;
  data.each("usual", usual_cautions);
  return *fill_template(last_part_template(), data);
}

}  // namespace heelrule
