#include "engine/report/then_and_now.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <string>
#include <vector>

#include "engine/model/same_finding.hpp"
#include "engine/quantity/settle.hpp"
#include "engine/report/value_words.hpp"
#include "engine/report/verdict_words.hpp"

namespace heelrule {
namespace {

constexpr std::array<Side, 3> all_sides{Side::none, Side::left, Side::right};

// What one finding adds to the score in points, of the weight that was seen.
double points_of(const Verdict& verdict, const Finding& finding) {
  return verdict.score.weight > 0
             ? 100 * finding.weight * (finding.credit / full_credit) / verdict.score.weight
             : 0;
}

struct MovedFinding {
  std::size_t now = 0;
  const Finding* then = nullptr;
  double points = 0;
};

const Readings* readings_of(const GradedRecord& record, std::size_t trait, Side side) {
  const Observation* seen = record.inspection.find(trait, side);
  return seen == nullptr ? nullptr : std::get_if<Readings>(&seen->value);
}

class Comparison {
 public:
  Comparison(const ReportSubject& subject, PageData& data)
      : subject_(subject), now_(subject.record), then_(*subject.earlier), data_(data) {}

  void add() {
    data_.fact("compares", true);
    data_.words("then_date", then_.inspection.date.empty() ? "earlier" : then_.inspection.date);
    data_.words("now_date", now_.inspection.date.empty() ? "now" : now_.inspection.date);
    data_.words("then_grade", grade_of(then_.verdict));
    data_.words("then_points", points_words(subject_.program, then_.verdict));
    data_.words("why_moved", why());
    add_moved();
    add_measures();
    add_growth();
  }

 private:
  std::string_view grade_of(const Verdict& verdict) const {
    return grade_words(subject_.program, verdict);
  }

  std::vector<std::string> failed_musts(const Verdict& verdict) const {
    std::vector<std::string> titles;
    for (const Finding& finding : verdict.findings) {
      if (finding.cap) {
        titles.push_back(
            rule_title(subject_.program.rules.rules[finding.rule], subject_.languages));
      }
    }
    return titles;
  }

  // The musts that failed at one of the two dates only.
  std::string must_words(const Verdict& in, const Verdict& not_in, std::string_view words) const {
    const std::vector<std::string> others = failed_musts(not_in);
    std::vector<std::string> titles = failed_musts(in);
    std::erase_if(titles, [&](const std::string& title) {
      return std::find(others.begin(), others.end(), title) != others.end();
    });
    return titles.empty() ? "" : fmt::format(" {}: {}.", words, fmt::join(titles, "; "));
  }

  std::string why() const {
    const std::string_view before = grade_of(then_.verdict);
    const std::string_view after = grade_of(now_.verdict);
    std::string words = before == after
                            ? fmt::format("The grade is {}, as it was.", after)
                            : fmt::format("The grade went from {} to {}.", before, after);
    const std::string points_before = points_words(subject_.program, then_.verdict);
    const std::string points_after = points_words(subject_.program, now_.verdict);
    if (!points_before.empty() && !points_after.empty()) {
      words += points_before == points_after
                   ? fmt::format(" The score is {}, as it was.", points_after)
                   : fmt::format(" The score went from {} to {}.", points_before, points_after);
    }
    words += must_words(now_.verdict, then_.verdict, "Musts that fail now");
    words += must_words(then_.verdict, now_.verdict, "Musts that no longer fail");
    if (then_.verdict.score.open_weight != now_.verdict.score.open_weight) {
      words += " Not the same was seen both times, so part of the difference may come from that.";
    }
    return words;
  }

  // What was seen at one date alone has not moved; it is counted.
  void add_moved() {
    std::vector<MovedFinding> moved;
    std::size_t seen_once = 0;
    for (std::size_t i = 0; i < now_.verdict.findings.size(); ++i) {
      const Finding& finding = now_.verdict.findings[i];
      const Finding* other = same_finding(then_.verdict, finding);
      if (other == nullptr || is_judged(other->status) != is_judged(finding.status)) {
        ++seen_once;
      } else if (other->status != finding.status || other->credit != finding.credit) {
        moved.push_back(
            {i, other, points_of(now_.verdict, finding) - points_of(then_.verdict, *other)});
      }
    }
    std::stable_sort(moved.begin(), moved.end(), [](const MovedFinding& a, const MovedFinding& b) {
      return a.points < b.points;
    });
    data_.words("seen_once", seen_once > 0 ? fmt::format("{}", seen_once) : "");
    data_.fact("any_moved", !moved.empty());
    for (const MovedFinding& one : moved) {
      const Finding& finding = now_.verdict.findings[one.now];
      PageData& row = data_.add("moved");
      row.words("title", subject_.account.findings[one.now].title);
      row.words("then_status", in_words(one.then->status));
      row.words("then_read", readings_words(subject_.program, *one.then));
      row.words("now_status", in_words(finding.status));
      row.words("now_read", readings_words(subject_.program, finding));
    }
  }

  void add_measures() {
    const std::vector<Trait>& traits = subject_.program.rules.traits;
    bool any_feet = false;
    bool any_shoes = false;
    for (std::size_t trait = 0; trait < traits.size(); ++trait) {
      for (const Side side : all_sides) {
        const Readings* before = readings_of(then_, trait, side);
        const Readings* after = readings_of(now_, trait, side);
        if (before == nullptr || after == nullptr) {
          continue;
        }
        const bool is_shoe = traits[trait].per == Per::shoe || traits[trait].per == Per::pair;
        add_measure(trait, side, mean(*before), mean(*after),
                    data_.add(is_shoe ? "shoes_then" : "feet_then"));
        (is_shoe ? any_shoes : any_feet) = true;
      }
    }
    data_.fact("any_feet_then", any_feet);
    data_.fact("any_shoes_then", any_shoes);
  }

  // In words for those who do not read tables.
  void add_growth() {
    const auto length = subject_.program.rules.find_trait("foot_length");
    for (const Side side : {Side::left, Side::right}) {
      const Readings* before = length ? readings_of(then_, *length, side) : nullptr;
      const Readings* after = length ? readings_of(now_, *length, side) : nullptr;
      if (before != nullptr && after != nullptr && mean(*after) > mean(*before)) {
        const double grown = settled(mean(*after) - mean(*before));
        PageData& entry = data_.add("grew");
        entry.words("side", in_words(side));
        entry.words("by", distance_words(subject_.program.traits[*length].unit, grown));
      }
    }
  }

  void add_measure(std::size_t trait, Side side, double before, double after, PageData& row) const {
    const Unit unit = subject_.program.traits[trait].unit;
    const double change = settled(after - before);
    const std::string size = distance_words(unit, change < 0 ? -change : change);
    row.words("ask", subject_.program.rules.traits[trait].ask.in(subject_.languages));
    row.words("side", in_words(side));
    row.words("then", value_words(subject_.program, trait, before, {}));
    row.words("now", value_words(subject_.program, trait, after, {}));
    row.words("change", change == 0  ? "the same"
                        : change > 0 ? fmt::format("{} more", size)
                                     : fmt::format("{} less", size));
  }

  const ReportSubject& subject_;
  const GradedRecord& now_;
  const GradedRecord& then_;
  PageData& data_;
};

}  // namespace

void add_then_and_now(const ReportSubject& subject, PageData& data) {
  if (subject.earlier != nullptr) {
    Comparison(subject, data).add();
  }
}

}  // namespace heelrule
