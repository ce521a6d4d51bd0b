#include "engine/agreement/level_confusion.hpp"

#include "engine/agreement/percent_agreement.hpp"

namespace heelrule {
namespace {

double agreement_of(double confusion, double at_the_ends) {
  const double half = confusion / 2;
  const double middle = (1 - confusion) * (1 - confusion) + confusion * half;
  const double end = (1 - half) * (1 - half) + half * half;
  return at_the_ends * end + (1 - at_the_ends) * middle;
}

// Agreement falls as confusion rises, so halving finds it.
double confusion_of(double agreement, double at_the_ends) {
  constexpr int halvings = 50;
  double low = 0;
  double high = most_confusion;
  for (int i = 0; i < halvings; ++i) {
    const double middle = (low + high) / 2;
    (agreement_of(middle, at_the_ends) > agreement ? low : high) = middle;
  }
  return low;
}

}  // namespace

Estimate level_confusion(const LevelCounts& counts) {
  const LevelWeights same(counts.levels(), Weighting::unweighted);
  const Estimate agreement = percent_agreement(counts, same).estimate;
  if (!agreement.is_known() || counts.levels() < 2) {
    return {};
  }
  const std::vector<double> shares = mean_shares(counts);
  const double at_the_ends = shares.front() + shares.back();
  Estimate result{confusion_of(agreement.value, at_the_ends), unknown, {}, agreement.by};
  if (agreement.interval.is_known()) {
    result.interval = {confusion_of(agreement.interval.high, at_the_ends),
                       confusion_of(agreement.interval.low, at_the_ends)};
  }
  return result;
}

}  // namespace heelrule
