#include "engine/report/text_report.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <initializer_list>
#include <optional>
#include <utility>
#include <vector>

#include "engine/report/account.hpp"
#include "engine/report/amendment_words.hpp"
#include "engine/report/doubt_account.hpp"
#include "engine/report/text_page.hpp"
#include "engine/report/verdict_words.hpp"

namespace heelrule {
namespace {

using Tone = TextPage::Tone;

constexpr std::size_t most_questions = 10;  // that a reader takes in at the head of a report

class TextWriter {
 public:
  TextWriter(const Program& program, const Inspection& inspection, const Verdict& verdict,
             const TextStyle& style, const Doubt* doubt)
      : program_(program),
        inspection_(inspection),
        verdict_(verdict),
        page_(style.colour),
        account_(account(program, inspection, verdict, style.languages)),
        languages_(fallback_order(style.languages, program.rules)) {
    if (doubt != nullptr) {
      doubt_ = doubt_account(program, verdict, *doubt, account_, style.languages);
    }
  }

  std::string write() {
    head();
    safety();
    grade();
    how_sure();
    findings(Status::fail, "Failed");
    findings(Status::part, "Passed in part");
    passed();
    unseen();
    not_applicable();
    listed("Cautions", account_.cautions);
    advice();
    better_grades();
    amendments();
    usual_cautions();
    return page_.take();
  }

 private:
  void amendments() {
    const auto words = amendment_words(program_.rules, inspection_, languages_);
    if (!words.empty()) {
      page_.heading("Amended after it was recorded");
    }
    for (const std::string& one : words) {
      page_.item(one);
    }
  }

  void head() {
    page_.title(account_.title);
    line_of({{"client ", inspection_.client},
             {"", inspection_.shoe_label},
             {"marked ", inspection_.shoe_marked}});
    line_of({{"seen by ", inspection_.observer}, {"on ", inspection_.date}});
    line_of({{"rules ", program_.rules.name},
             {"edition ", program_.rules.edition},
             {"recorded for ", other_rules(program_, inspection_)}});
    line_of({{"Note: ", inspection_.note}});
  }

  // The parts that are known, each after its label.
  void line_of(std::initializer_list<std::pair<std::string_view, std::string_view>> parts) {
    std::string words;
    for (const auto& [label, part] : parts) {
      if (!part.empty()) {
        words += fmt::format("{}{}{}", words.empty() ? "" : " · ", label, part);
      }
    }
    page_.line(words);
  }

  void safety() {
    if (verdict_.refers()) {
      page_.heading("See a licensed practitioner first", Tone::urgent);
      for (const SafetyAccount* told : answered(Answered::yes)) {
        page_.item(referral_sentence(*told));
        notes(told->notes);
      }
      for (const Said& said : account_.referrals) {
        page_.item(referral_sentence(said));
      }
    }
    const auto open = answered(Answered::not_at_all);
    if (!open.empty()) {
      page_.heading("Safety questions without an answer: ask them first", Tone::urgent);
    }
    for (const SafetyAccount* told : open) {
      page_.item(fmt::format("{}{}", told->question,
                             told->reason.empty() ? "" : fmt::format(" ({})", told->reason)));
      notes(told->notes);
    }
    denied();
  }

  // The questions that were answered with no: in one sentence, and each that has a note.
  void denied() {
    auto all = answered(Answered::no);
    const bool nothing_else = !all.empty() && all.size() == account_.safety.size();
    std::erase_if(all, [](const SafetyAccount* told) { return told->notes.empty(); });
    if (!all.empty() || nothing_else) {
      page_.heading("Safety");
    }
    if (nothing_else) {
      page_.item("All safety questions were answered with no.");
    }
    for (const SafetyAccount* told : all) {
      page_.item(fmt::format("{} No.", told->question));
      notes(told->notes);
    }
  }

  std::vector<const SafetyAccount*> answered(Answered how) const {
    return answered_with(how, account_, verdict_);
  }

  void grade() {
    page_.heading(account_.grade.empty() ? std::string("No grade")
                                         : fmt::format("Grade: {}{}", account_.grade,
                                                       verdict_.stands ? "" : " (provisional)"));
    if (!account_.means.empty()) {
      page_.item(account_.means);
    }
    if (verdict_.score.points()) {
      page_.item(score_sentence(program_, verdict_));
    }
    if (!account_.caps.empty()) {
      page_.item(account_.caps);
    }
    page_.item(account_.certainty);
    would_settle();
    sections();
  }

  // The weightiest questions; all of them stand under `Not seen` too.
  void would_settle() {
    const std::vector<std::string>& all = account_.would_settle;
    if (all.empty()) {
      return;
    }
    page_.item(account_.grade.empty() ? "For a grade, record:" : "To settle it, record:");
    const std::size_t told = all.size() > most_questions ? most_questions : all.size();
    for (std::size_t i = 0; i < told; ++i) {
      page_.inner_item(all[i]);
    }
    if (told < all.size()) {
      page_.inner_item(fmt::format("and {} more, listed under \"Not seen\"", all.size() - told));
    }
  }

  void sections() {
    std::vector<std::pair<std::string, std::string>> rows;
    for (std::size_t i = 0; i < account_.sections.size(); ++i) {
      const Score& score = verdict_.sections[i];
      if (score.weight + score.open_weight > 0) {
        rows.emplace_back(account_.sections[i], section_score_words(score));
      }
    }
    page_.table(rows);
  }

  void how_sure() {
    if (!doubt_) {
      return;
    }
    page_.heading("How sure this is");
    for (const std::string* words :
         {&doubt_->grade, &doubt_->take_again_first, &doubt_->fewest, &doubt_->within_doubt}) {
      if (!words->empty()) {
        page_.item(*words);
      }
    }
    for (const std::string& words : doubt_->guarded) {
      page_.item(words);
    }
    page_.item("A ± holds two standard uncertainties: the truth lies within it 19 times in 20.");
    if (!doubt_->chances.empty()) {
      page_.table(doubt_->chances);
    }
  }

  bool is_within_doubt(const FindingAccount& told) const {
    return doubt_ && doubt_->findings[told.finding].is_within_doubt;
  }

  // What is said of the doubt of a finding.
  void doubt_of(const FindingAccount& told) {
    if (doubt_ && !doubt_->findings[told.finding].sentence.empty()) {
      page_.detail(doubt_->findings[told.finding].sentence);
    }
  }

  void findings(Status status, std::string_view title) {
    bool any = false;
    for (const FindingAccount& told : account_.findings) {
      const Finding& finding = verdict_.findings[told.finding];
      if (finding.status != status) {
        continue;
      }
      if (!any) {
        page_.heading(title, status == Status::fail ? Tone::urgent : Tone::usual);
      }
      any = true;
      page_.item(
          fmt::format("{}: {} ({})", told.title, told.readings, worth_words(program_, finding)));
      if (!told.sentence.empty()) {
        page_.detail(told.sentence);
      }
      doubt_of(told);
      page_.detail(fmt::format("Why: {}", told.because));
      page_.detail(fmt::format("Source: {}", told.source));
      notes(told.notes);
    }
  }

  void notes(const std::vector<std::string>& all) {
    for (const std::string& note : all) {
      page_.detail(fmt::format("Noted: {}", note));
    }
  }

  void passed() {
    bool any = false;
    for (const FindingAccount& told : account_.findings) {
      if (verdict_.findings[told.finding].status != Status::pass) {
        continue;
      }
      if (!any) {
        page_.heading("Passed");
      }
      any = true;
      page_.item(fmt::format("{}: {}", told.title, told.readings));
      if (told.own_words) {
        page_.detail(told.sentence);
      }
      if (is_within_doubt(told)) {
        doubt_of(told);
      }
      notes(told.notes);
    }
  }

  void unseen() {
    bool any = false;
    for (const FindingAccount& told : account_.findings) {
      const Finding& finding = verdict_.findings[told.finding];
      if (finding.status != Status::not_seen) {
        continue;
      }
      if (!any) {
        page_.heading("Not seen");
      }
      any = true;
      page_.item(fmt::format("{}. {}", told.title, told.sentence));
      notes(told.notes);
    }
  }

  void not_applicable() {
    std::vector<std::string_view> titles;
    for (const FindingAccount& told : account_.findings) {
      if (verdict_.findings[told.finding].status == Status::does_not_apply) {
        titles.push_back(told.title);
      }
    }
    if (!titles.empty()) {
      page_.heading("Does not apply here");
      page_.item(fmt::format("{}.", fmt::join(titles, "; ")));
    }
  }

  void listed(std::string_view title, const std::vector<Said>& all) {
    if (all.empty()) {
      return;
    }
    page_.heading(title);
    for (const Said& said : all) {
      page_.item(fmt::format("{}: {}", said.title, said.words));
    }
  }

  void advice() {
    if (!account_.advice.empty()) {
      page_.heading("Advice, what gains most first");
    }
    std::size_t number = 0;
    for (const Said& said : account_.advice) {
      page_.numbered(++number, fmt::format("{}: {}{}", said.title, said.words,
                                           gain_words(verdict_.findings[said.finding].gain)));
    }
    if (!account_.held_advice.empty()) {
      page_.heading("Advice held back");
      page_.item(held_back_words(account_.held_advice.size()));
    }
  }

  void better_grades() {
    if (!doubt_ || doubt_->better.empty()) {
      return;
    }
    page_.heading("What would make it better");
    for (const std::string& words : doubt_->better) {
      page_.item(words);
    }
    page_.item(
        "Try it on before you trust it: the grade is worked out as if the change did what "
        "the house expects.");
  }

  void usual_cautions() {
    page_.heading("Please note");
    for (const std::string& caution : account_.usual_cautions) {
      page_.item(caution);
    }
  }

  const Program& program_;
  const Inspection& inspection_;
  const Verdict& verdict_;
  TextPage page_;
  Account account_;
  std::vector<std::string> languages_;
  std::optional<DoubtAccount> doubt_;
};

}  // namespace

std::string text_report(const Program& program, const Inspection& inspection,
                        const Verdict& verdict, const TextStyle& style, const Doubt* doubt) {
  return TextWriter(program, inspection, verdict, style, doubt).write();
}

}  // namespace heelrule
