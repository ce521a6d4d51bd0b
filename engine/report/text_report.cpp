#include "engine/report/text_report.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "engine/quantity/decimal.hpp"
#include "engine/report/account.hpp"
#include "engine/report/value_words.hpp"
#include "engine/report/wrap.hpp"
#include "engine/source/characters.hpp"

namespace heelrule {
namespace {

constexpr std::size_t width = 80;
constexpr std::string_view bold = "\x1b[1m";
constexpr std::string_view red = "\x1b[1;31m";
constexpr std::string_view plain = "\x1b[0m";

class TextWriter {
 public:
  TextWriter(const Program& program, const Inspection& inspection, const Verdict& verdict,
             const TextStyle& style)
      : program_(program),
        inspection_(inspection),
        verdict_(verdict),
        style_(style),
        account_(account(program, inspection, verdict, style.languages)) {}

  std::string write() {
    head();
    safety();
    grade();
    findings(Status::fail, "Failed");
    findings(Status::part, "Passed in part");
    passed();
    unseen();
    listed("Cautions", account_.cautions);
    advice();
    usual_cautions();
    return std::move(text_);
  }

 private:
  void line(std::string_view words) { text_ += wrapped(words, 0, ""); }

  void item(std::string_view words) { text_ += wrapped(words, 4, "  - "); }

  void detail(std::string_view words) { text_ += wrapped(words, 6, "      "); }

  std::string painted(std::string_view words, std::string_view colour) const {
    return style_.colour ? fmt::format("{}{}{}", colour, words, plain) : std::string(words);
  }

  void heading(std::string_view words, std::string_view colour = bold) {
    text_ += fmt::format("\n{}\n", painted(words, colour));
  }

  void head() {
    const std::string title = shown_safely(account_.title);
    text_ +=
        fmt::format("{}\n{}\n", painted(title, bold),
                    fmt::format("{}", std::string(std::min(character_count(title), width), '=')));
    std::string about;
    const auto add = [&](std::string_view label, std::string_view words) {
      if (!words.empty()) {
        about += fmt::format("{}{}{}", about.empty() ? "" : " · ", label, words);
      }
    };
    add("client ", inspection_.client);
    add("", inspection_.shoe_label);
    add("marked ", inspection_.shoe_marked);
    add("seen by ", inspection_.observer);
    add("on ", inspection_.date);
    add("rules ", program_.rules.name);
    add("edition ", program_.rules.edition);
    line(about);
    if (!inspection_.note.empty()) {
      line(fmt::format("Note: {}", inspection_.note));
    }
  }

  void safety() {
    const bool any_yes = verdict_.refers();
    if (any_yes) {
      heading("See a licensed practitioner first", red);
      for (const SafetyAccount& told : account_.safety) {
        if (!told.referral.empty()) {
          item(fmt::format("{} Yes{}. {}", told.question,
                           told.sides.empty() ? "" : fmt::format(", {}", told.sides),
                           told.referral));
        }
      }
      for (const Said& said : account_.referrals) {
        item(fmt::format("{}: {}", said.title, said.words));
      }
    }
    std::vector<std::string_view> unasked;
    for (const SafetyAccount& told : account_.safety) {
      if (!verdict_.safety[told.answer].asked) {
        unasked.push_back(told.question);
      }
    }
    if (!unasked.empty()) {
      heading("Safety questions that nobody answered: ask them first", red);
      for (const std::string_view question : unasked) {
        item(question);
      }
    } else if (!any_yes && !account_.safety.empty()) {
      heading("Safety");
      item("All safety questions were answered with no.");
    }
  }

  std::string points(double value) const { return score_words(value, program_.grade_bounds); }

  void grade() {
    heading(account_.grade.empty() ? std::string("No grade")
                                   : fmt::format("Grade: {}{}", account_.grade,
                                                 verdict_.stands ? "" : " (provisional)"));
    if (!account_.means.empty()) {
      item(account_.means);
    }
    if (const auto score = verdict_.score.points()) {
      std::string words = fmt::format("Score {} of 100", points(*score));
      if (verdict_.score.open_weight > 0) {
        words += fmt::format("; with what was not seen it can lie from {} to {}",
                             points(verdict_.score.lowest_points()),
                             points(verdict_.score.highest_points()));
      }
      item(words + ".");
    }
    if (!account_.caps.empty()) {
      item(account_.caps);
    }
    item(account_.certainty);
    if (!account_.would_settle.empty()) {
      item("To settle it, record:");
      for (const std::string& question : account_.would_settle) {
        text_ += wrapped(question, 8, "      - ");
      }
    }
    sections();
  }

  void sections() {
    std::size_t longest = 0;
    for (std::size_t i = 0; i < account_.sections.size(); ++i) {
      if (is_used(verdict_.sections[i])) {
        longest = std::max(longest, character_count(account_.sections[i]));
      }
    }
    text_ += '\n';
    for (std::size_t i = 0; i < account_.sections.size(); ++i) {
      const Score& score = verdict_.sections[i];
      if (!is_used(score)) {
        continue;
      }
      const std::string title = shown_safely(account_.sections[i]);
      const auto got = score.points();
      std::string words =
          got ? fmt::format("{:>5} of 100", fmt::format("{:.1f}", *got)) : std::string("not seen");
      if (got && score.open_weight > 0) {
        words += fmt::format(", {:.1f} to {:.1f}", score.lowest_points(), score.highest_points());
      }
      text_ +=
          fmt::format("  {}{}  {}\n", title,
                      std::string(longest - std::min(longest, character_count(title)), ' '), words);
    }
  }

  static bool is_used(const Score& score) { return score.weight + score.open_weight > 0; }

  std::string worth(const Finding& finding) const {
    const double earned = finding.weight * finding.credit / full_credit / weight_step;
    const Rule& rule = program_.rules.rules[finding.rule];
    return fmt::format("earns {} of {}{}", with_places(earned, 2),
                       with_places(finding.weight / weight_step, 2), rule.caps ? ", must" : "");
  }

  void findings(Status status, std::string_view title) {
    bool any = false;
    for (const FindingAccount& told : account_.findings) {
      const Finding& finding = verdict_.findings[told.finding];
      if (finding.status != status) {
        continue;
      }
      if (!any) {
        heading(title, status == Status::fail ? red : bold);
      }
      any = true;
      item(fmt::format("{}: {} ({})", told.title, told.readings, worth(finding)));
      if (!told.sentence.empty()) {
        detail(told.sentence);
      }
      detail(fmt::format("Why: {}", told.because));
      detail(fmt::format("Source: {}", told.source));
      notes(told);
    }
  }

  void notes(const FindingAccount& told) {
    for (const std::string& note : told.notes) {
      detail(fmt::format("Noted: {}", note));
    }
  }

  void passed() {
    bool any = false;
    for (const FindingAccount& told : account_.findings) {
      if (verdict_.findings[told.finding].status != Status::pass) {
        continue;
      }
      if (!any) {
        heading("Passed");
      }
      any = true;
      item(fmt::format("{}: {}", told.title, told.readings));
      if (told.own_words) {
        detail(told.sentence);
      }
      notes(told);
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
        heading("Not seen");
      }
      any = true;
      item(fmt::format("{}. {}", told.title, told.sentence));
    }
  }

  void listed(std::string_view title, const std::vector<Said>& all) {
    if (all.empty()) {
      return;
    }
    heading(title);
    for (const Said& said : all) {
      item(fmt::format("{}: {}", said.title, said.words));
    }
  }

  void advice() {
    if (!account_.advice.empty()) {
      heading("Advice, what gains most first");
    }
    std::size_t number = 0;
    for (const Said& said : account_.advice) {
      const Finding& finding = verdict_.findings[said.finding];
      const std::string gain = finding.gain > 0
                                   ? fmt::format(" (up to {} points)", with_places(finding.gain, 1))
                                   : std::string{};
      text_ += wrapped(fmt::format("{}: {}{}", said.title, said.words, gain), 5,
                       fmt::format("{:>3}. ", ++number));
    }
    if (!account_.held_advice.empty()) {
      heading("Advice held back");
      item(fmt::format("{} held back until a licensed practitioner has seen the feet.",
                       account_.held_advice.size() == 1
                           ? std::string("1 piece of advice is")
                           : fmt::format("{} pieces of advice are", account_.held_advice.size())));
    }
  }

  void usual_cautions() {
    heading("Please note");
    for (const std::string& caution : account_.usual_cautions) {
      item(caution);
    }
    item("This report follows house rules. Local codes and licensed practice come before them.");
  }

  const Program& program_;
  const Inspection& inspection_;
  const Verdict& verdict_;
  const TextStyle& style_;
  Account account_;
  std::string text_;
};

}  // namespace

std::string text_report(const Program& program, const Inspection& inspection,
                        const Verdict& verdict, const TextStyle& style) {
  return TextWriter(program, inspection, verdict, style).write();
}

}  // namespace heelrule
