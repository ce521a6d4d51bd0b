#include "engine/report/agreement_names.hpp"

#include <fmt/format.h>

namespace heelrule {
namespace {

std::string_view plain_title(CoefficientName name) {
  switch (name) {
    case CoefficientName::percent_agreement:
      return "Agreement as counted";
    case CoefficientName::free_margin_kappa:
      return "Kappa with free margins";
    case CoefficientName::cohen_kappa:
      return "Cohen's kappa";
    case CoefficientName::mean_cohen_kappa:
      return "Cohen's kappa, mean of all pairs";
    case CoefficientName::fleiss_kappa:
      return "Fleiss's kappa";
    case CoefficientName::gwet_ac1:
      return "Gwet's AC1";
    case CoefficientName::gwet_ac2:
      return "Gwet's AC2";
    case CoefficientName::krippendorff_alpha:
      return "Krippendorff's alpha";
    case CoefficientName::icc_1_1:
      return "ICC(1,1), one-way, single rating";
    case CoefficientName::icc_2_1:
      return "ICC(2,1), agreement, single rating";
    case CoefficientName::icc_3_1:
      return "ICC(3,1), consistency, single rating";
    case CoefficientName::icc_1_k:
      return "ICC(1,k), one-way, mean of all";
    case CoefficientName::icc_2_k:
      return "ICC(2,k), agreement, mean of all";
    case CoefficientName::icc_3_k:
      return "ICC(3,k), consistency, mean of all";
  }
  return {};
}

}  // namespace

std::string_view key_of(CoefficientName name) {
  switch (name) {
    case CoefficientName::percent_agreement:
      return "percent_agreement";
    case CoefficientName::free_margin_kappa:
      return "free_margin_kappa";
    case CoefficientName::cohen_kappa:
      return "cohen_kappa";
    case CoefficientName::mean_cohen_kappa:
      return "mean_cohen_kappa";
    case CoefficientName::fleiss_kappa:
      return "fleiss_kappa";
    case CoefficientName::gwet_ac1:
      return "gwet_ac1";
    case CoefficientName::gwet_ac2:
      return "gwet_ac2";
    case CoefficientName::krippendorff_alpha:
      return "krippendorff_alpha";
    case CoefficientName::icc_1_1:
      return "icc_1_1";
    case CoefficientName::icc_2_1:
      return "icc_2_1";
    case CoefficientName::icc_3_1:
      return "icc_3_1";
    case CoefficientName::icc_1_k:
      return "icc_1_k";
    case CoefficientName::icc_2_k:
      return "icc_2_k";
    case CoefficientName::icc_3_k:
      return "icc_3_k";
  }
  return {};
}

std::string_view key_of(Weighting weighting) {
  switch (weighting) {
    case Weighting::unweighted:
      return "unweighted";
    case Weighting::linear:
      return "linear";
    case Weighting::quadratic:
      return "quadratic";
  }
  return {};
}

std::string_view key_of(Metric metric) {
  switch (metric) {
    case Metric::nominal:
      return "nominal";
    case Metric::ordinal:
      return "ordinal";
    case Metric::interval:
      return "interval";
    case Metric::ratio:
      return "ratio";
  }
  return {};
}

std::string_view key_of(IntervalBy by) {
  switch (by) {
    case IntervalBy::none:
      return "none";
    case IntervalBy::normal:
      return "normal";
    case IntervalBy::student:
      return "student";
    case IntervalBy::f:
      return "f";
    case IntervalBy::chi_squared:
      return "chi_squared";
    case IntervalBy::score:
      return "score";
    case IntervalBy::resampling:
      return "resampling";
  }
  return {};
}

std::string_view key_of(RatingKind kind) {
  switch (kind) {
    case RatingKind::names:
      return "names";
    case RatingKind::levels:
      return "levels";
    case RatingKind::numbers:
      return "numbers";
  }
  return {};
}

std::string title_of(const Coefficient& coefficient) {
  const std::string_view title = plain_title(coefficient.name);
  if (coefficient.weighting && *coefficient.weighting != Weighting::unweighted) {
    return fmt::format("{}, {} weights", title, key_of(*coefficient.weighting));
  }
  if (coefficient.metric) {
    return fmt::format("{}, {}", title, key_of(*coefficient.metric));
  }
  return std::string(title);
}

}  // namespace heelrule
