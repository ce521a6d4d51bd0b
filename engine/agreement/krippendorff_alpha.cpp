#include "engine/agreement/krippendorff_alpha.hpp"

#include <numeric>

#include "engine/agreement/resampling.hpp"

namespace heelrule {
namespace {

// Beyond that the metric hardly moves from draw to draw, and drawing would take minutes.
constexpr double most_ratings_to_resample = 20'000;

// What each two levels differ by, squared.
class Differences {
 public:
  Differences(Metric metric, const std::vector<double>& numbers, const std::vector<double>& used)
      : levels_(used.size()), squares_(used.size() * used.size(), 0) {
    for (std::size_t one = 0; one < levels_; ++one) {
      double between = used[one] / 2;
      for (std::size_t other = one + 1; other < levels_; ++other) {
        between += used[other] / 2;
        const double square = difference(metric, numbers[one], numbers[other], between);
        squares_[one * levels_ + other] = square * square;
        squares_[other * levels_ + one] = square * square;
        between += used[other] / 2;
      }
    }
  }

  double at(std::size_t one, std::size_t other) const { return squares_[one * levels_ + other]; }

 private:
  static double difference(Metric metric, double one, double other, double between) {
    switch (metric) {
      case Metric::nominal:
        return 1;
      case Metric::ordinal:
        return between;
      case Metric::interval:
        return one - other;
      case Metric::ratio:
        return one + other != 0 ? (one - other) / (one + other) : 0;
    }
    return 0;
  }

  std::size_t levels_;
  std::vector<double> squares_;
};

// One subject's share in the sums.
struct Unit {
  double ratings = 0;
  double within = 0;   // its pairs, each as much as one rating's share
  double against = 0;  // its ratings against all
};

struct Sums {
  std::vector<Unit> units;
  double ratings = 0;
  double within = 0;
  double all = 0;  // every rating against every other

  void add(const Unit& unit) {
    ratings += unit.ratings;
    within += unit.within;
    all += unit.against;
    units.push_back(unit);
  }

  // The chance that a rating meets itself is taken off.
  double alpha() const { return all > 0 ? 1 - (ratings - 1) * within / all : unknown; }
};

// The levels that a subject was given, and how often each.
struct UsedLevel {
  std::size_t level = 0;
  double count = 0;
};
using Pairable = std::vector<std::vector<UsedLevel>>;

Pairable pairable_subjects(const LevelCounts& counts) {
  Pairable result;
  for (std::size_t subject = 0; subject < counts.subjects(); ++subject) {
    if (counts.of_subject(subject) < 2) {
      continue;
    }
    result.emplace_back();
    for (std::size_t level = 0; level < counts.levels(); ++level) {
      if (const double count = counts.at(subject, level); count > 0) {
        result.back().push_back({level, count});
      }
    }
  }
  return result;
}

Unit unit_of(const std::vector<UsedLevel>& given, const Differences& differences,
             const std::vector<double>& against_all) {
  Unit unit;
  for (const UsedLevel& one : given) {
    unit.ratings += one.count;
    unit.against += one.count * against_all[one.level];
    for (const UsedLevel& other : given) {
      unit.within += one.count * other.count * differences.at(one.level, other.level);
    }
  }
  unit.within /= unit.ratings - 1;
  return unit;
}

Sums sums_of(const Pairable& subjects, const std::vector<std::size_t>& rows, Metric metric,
             const std::vector<double>& numbers) {
  std::vector<double> used(numbers.size(), 0);
  for (const std::size_t row : rows) {
    for (const UsedLevel& given : subjects[row]) {
      used[given.level] += given.count;
    }
  }
  const Differences differences(metric, numbers, used);
  std::vector<double> against_all(numbers.size(), 0);
  for (std::size_t one = 0; one < numbers.size(); ++one) {
    for (std::size_t other = 0; other < numbers.size(); ++other) {
      against_all[one] += used[other] * differences.at(one, other);
    }
  }
  Sums sums;
  for (const std::size_t row : rows) {
    sums.add(unit_of(subjects[row], differences, against_all));
  }
  return sums;
}

// How much alpha moves with each subject, as the ratio of sums that it is.
double standard_error(const Sums& sums) {
  const auto subjects = static_cast<double>(sums.units.size());
  const double ratings = sums.ratings / subjects;
  const double within = sums.within / subjects;
  const double all = sums.all / (subjects * subjects);
  double squares = 0;
  for (const Unit& unit : sums.units) {
    const double moved = (unit.within - within) * ratings / all +
                         (unit.ratings - ratings) * within / all -
                         2 * (unit.against / subjects - all) * ratings * within / (all * all);
    squares += moved * moved;
  }
  return std::sqrt(squares / (subjects * (subjects - 1)));
}

KrippendorffAlpha linearised(const Sums& sums) {
  KrippendorffAlpha result;
  result.pairable = sums.ratings;
  if (!(sums.all > 0)) {
    return result;
  }
  result.observed_disagreement = sums.within / sums.ratings;
  result.expected_disagreement = sums.all / (sums.ratings * (sums.ratings - 1));
  const auto freedom = static_cast<double>(sums.units.size()) - 1;
  result.estimate =
      student_estimate(sums.alpha(), freedom > 0 ? standard_error(sums) : unknown, freedom, -1, 1);
  return result;
}

// What the numbers of one subject, or of all, add up to.
struct NumberSums {
  double count = 0;
  double sum = 0;
  double squares = 0;

  void add(double number) {
    count += 1;
    sum += number;
    squares += number * number;
  }
};

// Squared differences of numbers come out of their sums, however many different ones there are.
// Taken from their mean, they lose no digits on the way.
Sums interval_sums(const Ratings& paired) {
  NumberSums raw;
  each_rating(paired, [&](std::size_t, std::size_t, double number) { raw.add(number); });
  const double mean = raw.sum / raw.count;
  NumberSums whole;
  std::vector<NumberSums> subjects(paired.subjects());
  each_rating(paired, [&](std::size_t subject, std::size_t, double number) {
    whole.add(number - mean);
    subjects[subject].add(number - mean);
  });
  Sums sums;
  for (const NumberSums& own : subjects) {
    const double within = 2 * (own.count * own.squares - own.sum * own.sum) / (own.count - 1);
    const double against =
        whole.count * own.squares - 2 * own.sum * whole.sum + own.count * whole.squares;
    sums.add({own.count, within, against});
  }
  return sums;
}

}  // namespace

KrippendorffAlpha krippendorff_alpha(const LevelCounts& counts, Metric metric,
                                     const std::vector<double>& numbers) {
  const Pairable subjects = pairable_subjects(counts);
  std::vector<std::size_t> rows(subjects.size());
  std::iota(rows.begin(), rows.end(), std::size_t{0});
  const Sums sums = sums_of(subjects, rows, metric, numbers);
  KrippendorffAlpha result = linearised(sums);
  if (metric == Metric::ordinal && result.estimate.is_known() &&
      sums.ratings <= most_ratings_to_resample) {
    result.estimate = resampled(sums.alpha(), subjects.size(), [&](const auto& drawn) {
      return sums_of(subjects, drawn, metric, numbers).alpha();
    });
  }
  return result;
}

KrippendorffAlpha interval_alpha(const Ratings& numbers) {
  return linearised(interval_sums(numbers.rated_by(2)));
}

}  // namespace heelrule
