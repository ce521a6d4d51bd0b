// How the credits of two sides become one, and what that makes of a rule.
#pragma once

#include "engine/formula/operation.hpp"
#include "engine/model/verdict.hpp"
#include "engine/scoring/block.hpp"

namespace heelrule {

/// The side with less credit counts. One that earns nothing decides alone, since the other cannot
/// be worse; else it is *not seen* until both are seen.
inline double worse_of(double a, double b) {
  const double both = a + b == a + b ? (b < a ? b : a) : operation::not_seen;
  return ((a == 0) | (b == 0)) ? 0.0 : both;
}

/// The mean of both; *not seen* if either is.
inline double mean_of(double a, double b) { return (a + b) / 2; }

/// Calls `function(credit)`, where `credit(row)` is the joined credit of a contribution in a row of
/// an evaluated block; *not seen* where it is open. So a loop over rows has the choice before it.
template <class Function>
auto with_joined_credit(const Contribution& contribution, const Block& block, Function function) {
  const Column& a = block.column(contribution.credits[0]);
  const Column& b =
      contribution.joining == Joining::single ? a : block.column(contribution.credits[1]);
  switch (contribution.joining) {
    case Joining::single:
      break;
    case Joining::worse:
      return function([&](std::size_t row) { return worse_of(a[row], b[row]); });
    case Joining::mean:
      return function([&](std::size_t row) { return mean_of(a[row], b[row]); });
  }
  return function([&](std::size_t row) { return a[row]; });
}

/// The same of one row.
inline double joined_credit(const Contribution& contribution, const Block& block, std::size_t row) {
  return with_joined_credit(contribution, block, [&](auto credit) { return credit(row); });
}

/// Whether a contribution applies in one row: 1, 0, or *not seen*.
inline double applies_to(const Contribution& contribution, const Block& block, std::size_t row) {
  return contribution.applies == no_register ? 1.0 : block.column(contribution.applies)[row];
}

/// What a credit makes of a rule that applies, does not, or may.
inline Status status_of(double applies, double credit) {
  if (applies == 0) {
    return Status::does_not_apply;
  }
  if (applies != 1 || !operation::is_seen(credit)) {
    return Status::not_seen;
  }
  return credit == full_credit ? Status::pass : credit == 0 ? Status::fail : Status::part;
}

}  // namespace heelrule
