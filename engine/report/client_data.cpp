#include "engine/report/client_data.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <chrono>
#include <cmath>
#include <vector>

#include "engine/fitting/fitting.hpp"
#include "engine/fitting/visit_of_record.hpp"
#include "engine/quantity/calendar_date.hpp"
#include "engine/report/foot_words.hpp"
#include "engine/report/growth_words.hpp"
#include "engine/report/value_words.hpp"

namespace heelrule {
namespace {

// What one sheet has room for, and a reader for.
constexpr std::size_t most_good = 4;
constexpr std::size_t most_changes = 5;

// An earlier visit tells how fast the feet grow, where both have a date.
std::optional<Fitting> fitting_of(const ReportSubject& subject) {
  const RuleSet& rules = subject.program.rules;
  const auto window = toe_window(rules);
  const auto now = visit_of_record(rules, subject.record.inspection);
  if (!window || !now) {
    return std::nullopt;
  }
  std::vector<Visit> visits;
  if (subject.earlier != nullptr && now->date) {
    const auto then = visit_of_record(rules, subject.earlier->inspection);
    if (then && then->date && *then->date < *now->date) {
      visits.push_back(*then);
    }
  }
  visits.push_back(*now);
  return fitting(visits, *window, is_for_children(rules));
}

// `3 October 2026`
std::string date_words(std::chrono::year_month_day date) {
  constexpr std::array<std::string_view, 12> months{
      "January", "February", "March",     "April",   "May",      "June",
      "July",    "August",   "September", "October", "November", "December"};
  return fmt::format("{} {} {}", static_cast<unsigned>(date.day()),
                     months.at(static_cast<unsigned>(date.month()) - 1),
                     static_cast<int>(date.year()));
}

class ClientWords {
 public:
  ClientWords(const ReportSubject& subject, PageData& data)
      : subject_(subject), data_(data), fitting_(fitting_of(subject)) {}

  void add() {
    good();
    change();
    if (fitting_ && !subject_.record.verdict.refers()) {
      shoe(*fitting_);
      socks(fitting_->sock);
    }
    come_back();
    signs();
  }

 private:
  // The weightiest of each section, so that a reader hears of all parts of the bench; of these the
  // weightiest.
  void good() {
    std::vector<const FindingAccount*> best(subject_.account.sections.size(), nullptr);
    std::size_t passed = 0;
    for (const FindingAccount& told : subject_.account.findings) {
      if (finding(told).status != Status::pass || finding(told).weight == 0) {
        continue;
      }
      ++passed;
      const FindingAccount*& known =
          best[subject_.program.rule_programs[finding(told).rule].section];
      if (known == nullptr || finding(told).weight > finding(*known).weight) {
        known = &told;
      }
    }
    std::erase(best, nullptr);
    std::stable_sort(best.begin(), best.end(), [&](const auto* a, const auto* b) {
      return finding(*a).weight > finding(*b).weight;
    });
    best.resize(std::min(best.size(), most_good));
    for (const FindingAccount* one : best) {
      PageData& entry = data_.add("good");
      entry.words("title", one->title);
      entry.words("words", one->because);
    }
    data_.fact("any_good", !best.empty());
    data_.words("more_good", passed > best.size() ? fmt::format("{}", passed - best.size()) : "");
  }

  const Finding& finding(const FindingAccount& told) const {
    return subject_.record.verdict.findings[told.finding];
  }

  // Two findings may say the same; a client needs it once.
  void change() {
    std::vector<const Said*> wanted;
    for (const Said& said : subject_.account.advice) {
      const auto says_the_same = [&](const Said* other) { return other->words == said.words; };
      if (std::none_of(wanted.begin(), wanted.end(), says_the_same)) {
        wanted.push_back(&said);
      }
    }
    data_.fact("any_change", !wanted.empty());
    for (std::size_t i = 0; i < wanted.size() && i < most_changes; ++i) {
      PageData& entry = data_.add("change");
      entry.words("title", wanted[i]->title);
      entry.words("words", wanted[i]->words);
      entry.fact("close", subject_.doubt != nullptr &&
                              subject_.doubt->findings[wanted[i]->finding].is_within_doubt);
    }
    if (wanted.size() > most_changes) {
      data_.words("more_change", fmt::format("{}", wanted.size() - most_changes));
    }
  }

  void shoe(const Fitting& fitting) {
    const ShoeAdvice& advice = fitting.shoe;
    data_.fact("buy", true);
    data_.words("longer_foot", in_words(advice.longer));
    data_.words("longer_length", show(advice.foot.value.value(), Unit::millimetre));
    data_.words("inside", from_to_words(advice.inside_least, advice.inside_most));
    data_.words("space", from_to_words(fitting.window.least, fitting.window.most));
    if (advice.width) {
      data_.words("width", show(advice.width->value.value(), Unit::millimetre));
    }
    for (const SizeToAsk& ask : advice.sizes) {
      if (ask.size) {
        data_.add("sizes").words("words", show(*ask.size));
      }
    }
    data_.fact("men_and_women", advice.wearer == Wearer::adult);
    if (advice.smaller) {
      data_.fact("fill_one", advice.smaller->remedy == Remedy::fill);
      data_.fact("two_pairs", advice.smaller->remedy == Remedy::two_pairs);
    }
  }

  void socks(const SockAdvice& advice) {
    if (advice.choose) {
      data_.words("socks_right", show(advice.marked[*advice.choose].range));
    } else if (!advice.marked.empty()) {
      data_.words("socks_wrong", show(advice.marked.front().range));
    }
    data_.words("socks_for", show(fitting_->shoe.foot.value.value(), Unit::centimetre));
    const bool cramps =
        std::any_of(advice.lost.begin(), advice.lost.end(),
                    [](const SockLengthLost& lost) { return lost.cramping != Cramping::free; });
    data_.fact("socks_cramp", cramps);
  }

  // What was answered with yes stands at the head of the page already.
  void signs() {
    bool any = false;
    for (const SafetyAccount& told : subject_.account.safety) {
      if (!subject_.record.verdict.safety[told.answer].yes) {
        data_.add("signs").words("words", told.question);
        any = true;
      }
    }
    data_.fact("any_signs", any);
  }

  void come_back() {
    if (fitting_ && fitting_->child) {
      const auto& date = fitting_->visit.date;
      const int days = fitting_->child->look_again;
      data_.words("come_back",
                  date ? date_words(days_after(*date, days)) : day_words(fitting_->visit, days));
      data_.fact("is_growing", true);
      return;
    }
    const auto& after = subject_.program.rules.client.come_back;
    if (!after) {
      return;
    }
    constexpr double seconds_in_a_day = 86'400;
    const auto date = find_date(subject_.record.inspection.date);
    const int days = static_cast<int>(std::lround(after->stored / seconds_in_a_day));
    data_.words("come_back", date ? date_words(days_after(*date, days))
                                  : fmt::format("in {}", show(after->stored, after->unit)));
  }

  const ReportSubject& subject_;
  PageData& data_;
  std::optional<Fitting> fitting_;
};

}  // namespace

void add_client_words(const ReportSubject& subject, PageData& data) {
  ClientWords(subject, data).add();
}

}  // namespace heelrule
