#include "engine/report/doubt_data.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "engine/drawing/chance_bar.hpp"
#include "engine/report/chance_words.hpp"

namespace heelrule {
namespace {

class DoubtData {
 public:
  DoubtData(const ReportSubject& subject, const Doubt& doubt, PageData& data)
      : subject_(subject), doubt_(doubt), told_(*subject.doubt), data_(data) {}

  void add() {
    data_.words("sure", told_.grade);
    data_.markup("chance_picture", chance_picture());
    chances();
    data_.words("take_again_first", told_.take_again_first);
    take_again();
    data_.words("fewest", told_.fewest);
    data_.words("within_doubt", told_.within_doubt);
    data_.each("guarded", told_.guarded);
    data_.fact("any_guarded", !told_.guarded.empty());
    data_.each("better", told_.better);
    data_.fact("any_better", !told_.better.empty());
    for_a_client();
  }

 private:
  const std::vector<Grade>& grades() const { return subject_.program.rules.grades; }

  // From the worst grade to the best, as a score grows.
  std::string chance_picture() const {
    if (told_.chances.empty()) {
      return "";
    }
    ChanceBar bar{"chances", "How likely each grade is", {}};
    for (std::size_t i = doubt_.grades.size(); i-- > 0;) {
      const double chance = doubt_.grades[i].chance;
      bar.parts.push_back({chance,
                           fmt::format("{} {}", grades()[i].name.value, chance_words(chance)),
                           subject_.record.verdict.grade == i});
    }
    return draw(bar);
  }

  // The picture says it all but for what was not seen.
  void chances() {
    const bool any_open =
        std::any_of(doubt_.grades.begin(), doubt_.grades.end(),
                    [](const GradeDoubt& grade) { return grade.surely != grade.possibly; });
    if (!any_open) {
      return;
    }
    for (const auto& [grade, words] : told_.chances) {
      PageData& row = data_.add("chances");
      row.words("name", grade);
      row.words("words", words);
    }
    data_.fact("any_chances", !told_.chances.empty());
  }

  void take_again() {
    for (std::size_t i = 0; i < told_.take_again.size(); ++i) {
      const DoubtfulReading& reading = doubt_.readings[doubt_.take_again[i].reading];
      PageData& row = data_.add("take_again");
      row.words("ask", told_.take_again[i]);
      row.words("how", subject_.program.rules.traits[reading.trait].how.in(subject_.languages));
      row.fact("is_first", i == 0);
    }
  }

  // In plain words: a client is told that it is close, and only where scores are shown, how close.
  void for_a_client() {
    const auto& grade = subject_.record.verdict.grade;
    if (!grade) {
      return;
    }
    const RuleSet& rules = subject_.program.rules;
    const double chance = doubt_.grades[*grade].chance;
    const bool is_close = chance < rules.decision.clear_from;
    data_.fact("is_close", is_close);
    if (is_close && !told_.take_again.empty()) {
      data_.words("measure_again", told_.take_again.front());
    }
    if (rules.client.score) {
      data_.words("close_chance", chance_words(chance, rules.decision.clear_from));
    }
  }

  const ReportSubject& subject_;
  const Doubt& doubt_;
  const DoubtAccount& told_;
  PageData& data_;
};

}  // namespace

void add_doubt(const ReportSubject& subject, PageData& data) {
  if (const Doubt* doubt = subject.record.known_doubt()) {
    DoubtData(subject, *doubt, data).add();
  }
}

}  // namespace heelrule
