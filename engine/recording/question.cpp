#include "engine/recording/question.hpp"

#include <fmt/format.h>

#include <array>
#include <cmath>

#include "engine/quantity/range.hpp"

namespace heelrule {
namespace {

constexpr double most_apart = 100;

// From which the units of one kind are chosen, the usual ones first.
constexpr std::array<Unit, 14> offered{
    Unit::millimetre, Unit::centimetre, Unit::inch,   Unit::metre, Unit::gram,
    Unit::kilogram,   Unit::second,     Unit::minute, Unit::hour,  Unit::day,
    Unit::week,       Unit::month,      Unit::year,   Unit::newton};

double size_of(Unit unit) { return facts(unit).factor * std::pow(10.0, facts(unit).shift); }

bool is_near(Unit one, Unit other) {
  const double ratio = size_of(one) / size_of(other);
  return ratio <= most_apart && ratio >= 1 / most_apart;
}

AnswerForm form_of(const TraitKind& kind) {
  if (std::holds_alternative<MeasureKind>(kind)) {
    return AnswerForm::measure;
  }
  if (std::holds_alternative<ScaleKind>(kind)) {
    return AnswerForm::scale;
  }
  if (std::holds_alternative<ChoiceKind>(kind)) {
    return AnswerForm::choice;
  }
  if (std::holds_alternative<FibresKind>(kind)) {
    return AnswerForm::fibres;
  }
  if (std::holds_alternative<ShoeSizeKind>(kind)) {
    return AnswerForm::shoe_size;
  }
  if (std::holds_alternative<SockRangeKind>(kind)) {
    return AnswerForm::sock_range;
  }
  return AnswerForm::yes_or_no;
}

// `soft, medium or firm`
std::string one_of(const std::vector<std::string_view>& words) {
  if (words.size() < 2) {
    return words.empty() ? std::string{} : std::string(words.front());
  }
  return fmt::format("{} or {}", fmt::join(words.begin(), words.end() - 1, ", "), words.back());
}

std::string measure_words(const Question& question) {
  std::vector<std::string_view> symbols;
  symbols.reserve(question.units.size());
  for (const Unit unit : question.units) {
    symbols.push_back(facts(unit).symbol);
  }
  std::string words = question.units.front() == Unit::count ? std::string("a whole number")
                                                            : "in " + one_of(symbols);
  if (question.plausible) {
    words += "; plausible is " + plausible_words(question);
  }
  return words;
}

}  // namespace

Question question(const RuleSet& rules, std::size_t trait) {
  const Trait& asked = rules.traits[trait];
  Question made;
  made.trait = trait;
  made.name = asked.name;
  made.is_safety = trait < rules.safety.size();
  made.ask = asked.ask;
  made.how = asked.how;
  made.per = asked.per;
  made.form = form_of(asked.kind);
  made.levels = levels_of(asked.kind);
  if (const auto* measure = std::get_if<MeasureKind>(&asked.kind)) {
    made.units = unit_choices(measure->unit);
    if (measure->plausible) {
      made.plausible = measure->plausible->value;
    }
  }
  return made;
}

std::vector<Unit> unit_choices(Unit own) {
  std::vector<Unit> choices{own};
  for (const Unit unit : offered) {
    if (unit != own && facts(unit).dimension == facts(own).dimension && is_near(unit, own)) {
      choices.push_back(unit);
    }
  }
  return choices;
}

std::string form_words(const Question& question) {
  switch (question.form) {
    case AnswerForm::measure:
      return measure_words(question);
    case AnswerForm::scale:
    case AnswerForm::choice: {
      std::vector<std::string_view> names;
      names.reserve(question.levels.size());
      for (const Level& level : question.levels) {
        names.push_back(level.name.value);
      }
      return one_of(names);
    }
    case AnswerForm::yes_or_no:
      return "yes or no";
    case AnswerForm::fibres:
      return "each fibre with its share, together 100 %";
    case AnswerForm::shoe_size:
      return "the size with its system, such as EU 39.5 or UK 6";
    case AnswerForm::sock_range:
      return "the range as printed, such as EU 39-42 or 24-26 cm";
  }
  return {};
}

std::string plausible_words(const Question& question) {
  return show(*question.plausible, question.units.front());
}

std::string_view in_words(AnswerForm form) {
  switch (form) {
    case AnswerForm::measure:
      return "measure";
    case AnswerForm::scale:
      return "scale";
    case AnswerForm::choice:
      return "choice";
    case AnswerForm::yes_or_no:
      return "yes or no";
    case AnswerForm::fibres:
      return "fibres";
    case AnswerForm::shoe_size:
      return "shoe size";
    case AnswerForm::sock_range:
      return "sock range";
  }
  return {};
}

}  // namespace heelrule
