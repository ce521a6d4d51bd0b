#include "engine/agreement/ratings.hpp"

#include <algorithm>

namespace heelrule {

std::size_t Ratings::count() const {
  return static_cast<std::size_t>(
      std::count_if(cells_.begin(), cells_.end(), [](double cell) { return !std::isnan(cell); }));
}

Ratings Ratings::rated_by(std::size_t least) const {
  std::vector<std::size_t> chosen;
  for (std::size_t subject = 0; subject < subjects_; ++subject) {
    std::size_t found = 0;
    for (std::size_t observer = 0; observer < observers_; ++observer) {
      found += has(subject, observer) ? 1 : 0;
    }
    if (found >= least) {
      chosen.push_back(subject);
    }
  }
  return rows(chosen);
}

Ratings Ratings::rows(const std::vector<std::size_t>& chosen) const {
  Ratings result(chosen.size(), observers_);
  for (std::size_t row = 0; row < chosen.size(); ++row) {
    const auto from = cells_.begin() + static_cast<std::ptrdiff_t>(chosen[row] * observers_);
    std::copy_n(from, observers_,
                result.cells_.begin() + static_cast<std::ptrdiff_t>(row * observers_));
  }
  return result;
}

Ratings Ratings::without(std::size_t observer) const {
  Ratings result(subjects_, observers_ - 1);
  for (std::size_t subject = 0; subject < subjects_; ++subject) {
    for (std::size_t other = 0, column = 0; other < observers_; ++other) {
      if (other != observer) {
        result.set(subject, column++, at(subject, other));
      }
    }
  }
  return result;
}

}  // namespace heelrule
