#include "engine/agreement/intraclass.hpp"

namespace heelrule {
namespace {

// The correlation of means of k ratings whose single ones correlate so (Spearman and Brown).
// It falls without an end toward single ones of −1 / (k − 1), and says nothing from there on.
double stepped_up(double single, double k) {
  constexpr double dust = 1e-9;
  const double scale = 1 + (k - 1) * single;
  return scale > dust ? k * single / scale : unknown;
}

// From the ratio of mean squares and the freedoms of both.
Interval single_interval(double ratio, double above, double below, double k) {
  const double low = ratio / f_quantile(upper_tail, above, below);
  const double high = ratio * f_quantile(upper_tail, below, above);
  return {(low - 1) / (low + k - 1), (high - 1) / (high + k - 1)};
}

Interval agreement_interval(const MeanSquares& squares, double value) {
  const double n = squares.subjects;
  const double k = squares.observers;
  const double ratio = squares.between_observers / squares.residual;
  const double own = n * (1 + (k - 1) * value) - k * value;
  const double above = (k - 1) * (n - 1) * std::pow(k * value * ratio + own, 2);
  const double below = (n - 1) * k * k * value * value * ratio * ratio + own * own;
  const double freedom = above / below;
  const double others = k * squares.between_observers + (k * n - k - n) * squares.residual;
  const double low = f_quantile(upper_tail, n - 1, freedom);
  const double high = f_quantile(upper_tail, freedom, n - 1);
  return {n * (squares.between_subjects - low * squares.residual) /
              (low * others + n * squares.between_subjects),
          n * (high * squares.between_subjects - squares.residual) /
              (others + n * high * squares.between_subjects)};
}

double one_way(const MeanSquares& squares) {
  return (squares.between_subjects - squares.within_subjects) /
         (squares.between_subjects + (squares.observers - 1) * squares.within_subjects);
}

double consistency(const MeanSquares& squares) {
  return (squares.between_subjects - squares.residual) /
         (squares.between_subjects + (squares.observers - 1) * squares.residual);
}

double agreement(const MeanSquares& squares) {
  const double k = squares.observers;
  return (squares.between_subjects - squares.residual) /
         (squares.between_subjects + (k - 1) * squares.residual +
          k * (squares.between_observers - squares.residual) / squares.subjects);
}

Estimate with(double value, Interval interval) {
  if (std::isnan(value)) {
    return {};
  }
  if (value == 1) {  // ratios of mean squares without an end
    return {value, unknown, {1, 1}, IntervalBy::f};
  }
  if (!interval.is_known()) {
    return {value, unknown, {}, IntervalBy::none};
  }
  return {value, unknown, interval, IntervalBy::f};
}

Estimate single(const MeanSquares& squares, IntraclassForm form) {
  const double k = squares.observers;
  switch (form) {
    case IntraclassForm::one_way_single:
    case IntraclassForm::one_way_mean:
      return with(one_way(squares),
                  single_interval(squares.between_subjects / squares.within_subjects,
                                  squares.subject_freedom(), squares.within_freedom(), k));
    case IntraclassForm::agreement_single:
    case IntraclassForm::agreement_mean: {
      const double value = agreement(squares);
      return with(value, agreement_interval(squares, value));
    }
    case IntraclassForm::consistency_single:
    case IntraclassForm::consistency_mean:
      return with(consistency(squares),
                  single_interval(squares.between_subjects / squares.residual,
                                  squares.subject_freedom(), squares.residual_freedom(), k));
  }
  return {};
}

bool is_of_means(IntraclassForm form) {
  return form == IntraclassForm::one_way_mean || form == IntraclassForm::agreement_mean ||
         form == IntraclassForm::consistency_mean;
}

}  // namespace

Estimate intraclass(const MeanSquares& squares, IntraclassForm form) {
  if (!squares.is_known()) {
    return {};
  }
  Estimate result = single(squares, form);
  if (is_of_means(form) && result.is_known()) {
    const double k = squares.observers;
    result.value = stepped_up(result.value, k);
    result.interval.low = stepped_up(result.interval.low, k);
    result.interval.high = stepped_up(result.interval.high, k);
    if (!result.is_known() || !result.interval.is_known()) {
      return {result.value, unknown, {}, IntervalBy::none};
    }
  }
  return result;
}

}  // namespace heelrule
