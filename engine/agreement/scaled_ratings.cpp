#include "engine/agreement/scaled_ratings.hpp"

#include <algorithm>
#include <numeric>
#include <utility>

namespace heelrule {
namespace {

template <class Change>
Ratings changed(const Ratings& ratings, const Change& change) {
  Ratings result(ratings.subjects(), ratings.observers());
  each_rating(ratings, [&](std::size_t subject, std::size_t observer, double rating) {
    result.set(subject, observer, change(rating));
  });
  return result;
}

std::vector<double> different_numbers(const Ratings& ratings) {
  std::vector<double> found;
  each_rating(ratings, [&](std::size_t, std::size_t, double rating) { found.push_back(rating); });
  std::sort(found.begin(), found.end());
  found.erase(std::unique(found.begin(), found.end()), found.end());
  return found;
}

}  // namespace

ScaledRatings level_ratings(Ratings indices, std::size_t levels, bool ordered) {
  std::vector<double> numbers(levels);
  std::iota(numbers.begin(), numbers.end(), 0.0);
  return {ordered ? RatingKind::levels : RatingKind::names, std::move(indices), std::move(numbers),
          Ratings(0, 0)};
}

ScaledRatings numbered_level_ratings(Ratings indices, std::vector<double> numbers) {
  Ratings values =
      changed(indices, [&](double index) { return numbers[static_cast<std::size_t>(index)]; });
  return {RatingKind::levels, std::move(indices), std::move(numbers), std::move(values)};
}

ScaledRatings measured_ratings(Ratings numbers) {
  std::vector<double> found = different_numbers(numbers);
  if (found.size() > most_number_levels) {
    return {RatingKind::numbers, Ratings(0, 0), {}, std::move(numbers)};
  }
  Ratings indices = changed(numbers, [&](double number) {
    return static_cast<double>(std::lower_bound(found.begin(), found.end(), number) -
                               found.begin());
  });
  return {RatingKind::numbers, std::move(indices), std::move(found), std::move(numbers)};
}

ScaledRatings scaled_ratings(const RatingTable& table) {
  Ratings cells(table.subjects.size(), table.observers.size());
  for (std::size_t i = 0; i < table.cells.size(); ++i) {
    cells.set(i / table.observers.size(), i % table.observers.size(), table.cells[i]);
  }
  if (table.kind == RatingKind::numbers) {
    return measured_ratings(std::move(cells));
  }
  if (!table.level_numbers.empty()) {
    return numbered_level_ratings(std::move(cells), table.level_numbers);
  }
  return level_ratings(std::move(cells), table.levels.size(), table.kind == RatingKind::levels);
}

}  // namespace heelrule
