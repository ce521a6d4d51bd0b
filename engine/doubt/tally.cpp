#include "engine/doubt/tally.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include "engine/scoring/grade_reach.hpp"
#include "engine/scoring/joining.hpp"

namespace heelrule {
namespace {

class Counting {
 public:
  Counting(const Program& program, std::span<const Watched> watched)
      : program_(program), watched_(watched) {
    tally_.grades.resize(program.grade_bounds.size());
    tally_.findings.resize(program.contributions.size());
    for (const Watched& one : watched) {
      tally_.values.emplace_back().bands.resize(
          program.rule_programs[one.rule].scale.credits.size());
    }
  }

  /// The record as it stands, in row 0 of an evaluated block: what draws are compared with.
  void compare_with(const Block& block) {
    for (const Contribution& contribution : program_.contributions) {
      plain_credits_.push_back(joined_credit(contribution, block, 0));
    }
    for (const Watched& one : watched_) {
      plain_values_.push_back(block.column(one.value)[0]);
    }
  }

  void count(const Block& block, std::size_t rows) {
    tally_.draws += rows;
    for (std::size_t row = 0; row < rows; ++row) {
      count_grade(grade_reach(program_, block.outcome(row)));
    }
    for (std::size_t i = 0; i < program_.contributions.size(); ++i) {
      count_finding(program_.contributions[i], plain_credits_[i], tally_.findings[i], block, rows);
    }
    for (std::size_t i = 0; i < watched_.size(); ++i) {
      count_value(watched_[i], plain_values_[i], tally_.values[i], block, rows);
    }
  }

  Tally take() { return std::move(tally_); }

 private:
  void count_grade(const GradeReach& reach) {
    if (reach.grade) {
      ++tally_.grades[*reach.grade].given;
    }
    if (reach.lowest == reach.highest) {
      ++tally_.grades[reach.lowest].surely;
    }
    for (std::size_t grade = reach.highest; grade <= reach.lowest; ++grade) {
      ++tally_.grades[grade].possibly;
    }
  }

  static void count_finding(const Contribution& contribution, double plain, FindingCount& count,
                            const Block& block, std::size_t rows) {
    for (std::size_t row = 0; row < rows; ++row) {
      const double credit = joined_credit(contribution, block, row);
      const Status status = status_of(applies_to(contribution, block, row), credit);
      ++count.statuses[static_cast<std::size_t>(status)];
      const bool same = credit == plain || (credit != credit && plain != plain);
      count.varies = count.varies || !same;
    }
  }

  void count_value(const Watched& watched, double plain, ValueCount& count, const Block& block,
                   std::size_t rows) const {
    const CreditScale& scale = program_.rule_programs[watched.rule].scale;
    const Column& values = block.column(watched.value);
    for (std::size_t row = 0; row < rows; ++row) {
      if (!operation::is_seen(values[row])) {
        continue;
      }
      ++count.seen;
      ++count.bands[scale.band(values[row])];
      const double difference = values[row] - plain;
      count.sum += difference;
      count.squares += difference * difference;
    }
  }

  const Program& program_;
  std::span<const Watched> watched_;
  std::vector<double> plain_credits_;
  std::vector<double> plain_values_;
  Tally tally_;
};

}  // namespace

double ValueCount::deviation() const {
  if (seen < 2) {
    return 0;
  }
  const auto count = static_cast<double>(seen);
  return std::sqrt(std::max(0.0, squares - sum * sum / count) / (count - 1));
}

Tally tally(const Program& program, const Inspection& inspection,
            std::span<const DoubtfulReading> readings, std::span<const Watched> watched) {
  Block block(program);
  fill_rows(program, inspection, block);
  evaluate(program, block);
  Counting counting(program, watched);
  counting.compare_with(block);
  const std::size_t wanted = readings.empty() ? 1 : draw_count;
  for (std::size_t first = 0; first < wanted; first += block_rows) {
    draw(readings, Sample::first, first, block);
    evaluate(program, block);
    counting.count(block, std::min(block_rows, wanted - first));
  }
  return counting.take();
}

}  // namespace heelrule
