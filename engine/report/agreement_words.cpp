#include "engine/report/agreement_words.hpp"

#include <fmt/format.h>

#include "engine/quantity/decimal.hpp"

namespace heelrule {
namespace {

std::string chance_words(const Coefficient& coefficient, std::string_view which_chance) {
  const double value = coefficient.estimate.value;
  if (value < 0) {
    return fmt::format("The observers agree less often than {} would make them.", which_chance);
  }
  return fmt::format("Of the agreement that {} would not have given, {} was reached.", which_chance,
                     share_words(value));
}

std::string alpha_words(double value) {
  return value > 1 ? std::string{}
                   : fmt::format(
                         "Ratings of one subject differ by {} of what ratings dealt out at "
                         "random would.",
                         share_words(1 - value));
}

std::string correlation_words(double value, std::string_view of_what, std::string_view rest) {
  if (value < 0) {
    return "Ratings of one subject are no more alike than those of different subjects.";
  }
  return fmt::format("{} of the spread of {} is spread of the subjects; the rest is error, {}.",
                     share_words(value), of_what, rest);
}

struct RemarkWords {
  std::span<const std::string> levels;

  std::string name(std::size_t level) const {
    return level < levels.size() ? levels[level] : fmt::format("{}", level);
  }

  std::string operator()(const FewSubjects& few) const {
    return fmt::format(
        "Only {} {} rated by more than one observer: too few to be sure of anything. Look at how "
        "wide the intervals are.",
        with_places(few.subjects, 0), few.subjects == 1 ? "subject was" : "subjects were");
  }
  std::string operator()(const NobodyPaired&) const {
    return "No subject was rated by two observers, so nothing can be said of agreement.";
  }
  std::string operator()(const OneLevelOnly& one) const {
    return fmt::format(
        "Every rating is `{}`. That the observers agree shows little: whether they would tell it "
        "from anything else was not put to the test.",
        name(one.level));
  }
  std::string operator()(const Prevalence& seen) const {
    return fmt::format(
        "The observers agree on {} of the pairs, and kappa is {} all the same. Both are right: {} "
        "of "
        "the ratings are `{}`, so chance alone would give much agreement, and kappa takes that "
        "off. "
        "It rests on the few cases that are something else. Gwet's AC1, which minds that less, is "
        "{}. To know more, show the observers more of the rare cases.",
        share_words(seen.agreement), figure_words(seen.kappa), share_words(seen.common_share),
        name(seen.common_level), figure_words(seen.ac1));
  }
  std::string operator()(const AlikeSubjects& alike) const {
    return fmt::format(
        "Krippendorff's alpha is low ({}), and so is the intraclass correlation, though readings "
        "of "
        "one subject lie close together (technical error {}). The subjects themselves hardly "
        "differ "
        "(standard deviation {}), and both figures only tell how well they can be told apart.",
        figure_words(alike.alpha), with_places(alike.technical_error, 2),
        with_places(alike.subject_deviation, 2));
  }
};

}  // namespace

std::string figure_words(double value) {
  if (std::isnan(value)) {
    return "–";
  }
  const bool near_one = value < 1 && value >= 0.995;
  return fmt::format("{:.{}f}", value == 0 ? 0 : value, near_one ? 3 : 2);
}

std::string share_words(double share) {
  if (std::isnan(share)) {
    return "–";
  }
  const double percent = 100 * share;
  if (percent > 0 && percent < 0.5) {
    return "under 1 %";
  }
  if (percent < 100 && percent >= 99.5) {
    return "over 99 %";
  }
  return fmt::format("{:.0f} %", percent);
}

std::string estimate_words(const Estimate& estimate) {
  return estimate.interval.is_known() ? fmt::format("{} ({} to {})", figure_words(estimate.value),
                                                    figure_words(estimate.interval.low),
                                                    figure_words(estimate.interval.high))
                                      : figure_words(estimate.value);
}

std::string meaning_words(const Coefficient& coefficient) {
  const double value = coefficient.estimate.value;
  if (std::isnan(value)) {
    return "It cannot be worked out: the ratings do not differ, or too few were made.";
  }
  constexpr std::string_view with_observers = "differences between observers included";
  constexpr std::string_view without_observers = "steady differences between observers left out";
  switch (coefficient.name) {
    case CoefficientName::percent_agreement:
      return fmt::format(
          "Of all pairs of ratings of one subject, {} agree{}.", share_words(value),
          coefficient.weighting == Weighting::unweighted ? "" : ", near misses counted in part");
    case CoefficientName::free_margin_kappa:
      return chance_words(coefficient, "choosing each level as often as every other");
    case CoefficientName::cohen_kappa:
    case CoefficientName::mean_cohen_kappa:
      return chance_words(coefficient, "chance, each observer keeping to their own habits,");
    case CoefficientName::fleiss_kappa:
      return chance_words(coefficient, "chance");
    case CoefficientName::gwet_ac1:
    case CoefficientName::gwet_ac2:
      return chance_words(coefficient, "chance, where a rating is hard to make,");
    case CoefficientName::krippendorff_alpha:
      return alpha_words(value);
    case CoefficientName::icc_1_1:
    case CoefficientName::icc_2_1:
      return correlation_words(value, "single ratings", with_observers);
    case CoefficientName::icc_3_1:
      return correlation_words(value, "single ratings", without_observers);
    case CoefficientName::icc_1_k:
    case CoefficientName::icc_2_k:
      return correlation_words(value, "the means of all observers", with_observers);
    case CoefficientName::icc_3_k:
      return correlation_words(value, "the means of all observers", without_observers);
  }
  return {};
}

std::string remark_words(const Remark& remark, std::span<const std::string> levels) {
  return std::visit(RemarkWords{levels}, remark);
}

}  // namespace heelrule
