#include "engine/agreement/chance_corrected.hpp"

namespace heelrule {
namespace {

struct Observed {
  double share = 0;
  double pairable = 0;             // subjects with two ratings or more
  std::vector<double> of_subject;  // unknown where there is no pair
};

Observed observed_agreement(const LevelCounts& counts, const LevelWeights& weights) {
  Observed result;
  for (std::size_t subject = 0; subject < counts.subjects(); ++subject) {
    const double agreement = pair_agreement(counts, subject, weights);
    result.of_subject.push_back(agreement);
    if (!std::isnan(agreement)) {
      result.share += agreement;
      result.pairable += 1;
    }
  }
  result.share = result.pairable > 0 ? result.share / result.pairable : unknown;
  return result;
}

double standard_error(const Observed& observed, double value, double expected,
                      std::span<const double> expected_of) {
  const auto subjects = static_cast<double>(observed.of_subject.size());
  double squares = 0;
  for (std::size_t subject = 0; subject < observed.of_subject.size(); ++subject) {
    const double agreement = observed.of_subject[subject];
    const double own = std::isnan(agreement)
                           ? 0
                           : subjects / observed.pairable * (agreement - expected) / (1 - expected);
    const double moved = own - 2 * (1 - value) * (expected_of[subject] - expected) / (1 - expected);
    squares += (moved - value) * (moved - value);
  }
  return std::sqrt(squares / (subjects * (subjects - 1)));
}

}  // namespace

ChanceCorrected chance_corrected(const LevelCounts& counts, const LevelWeights& weights,
                                 double expected, std::span<const double> expected_of) {
  const Observed observed = observed_agreement(counts, weights);
  ChanceCorrected result{{}, observed.share, expected};
  if (std::isnan(observed.share) || !(expected < 1)) {
    return result;
  }
  const double value = (observed.share - expected) / (1 - expected);
  const auto freedom = static_cast<double>(counts.subjects()) - 1;
  const double error =
      freedom > 0 ? standard_error(observed, value, expected, expected_of) : unknown;
  result.estimate = student_estimate(value, error, freedom, -1, 1);
  return result;
}

std::vector<double> mean_shares(const LevelCounts& counts) {
  std::vector<double> shares(counts.levels(), 0);
  const auto subjects = static_cast<double>(counts.subjects());
  for (std::size_t subject = 0; subject < counts.subjects(); ++subject) {
    const double ratings = counts.of_subject(subject);
    for (std::size_t level = 0; level < counts.levels(); ++level) {
      shares[level] += counts.at(subject, level) / ratings / subjects;
    }
  }
  return shares;
}

double drawn_agreement(std::span<const double> shares, const LevelWeights& weights) {
  double sum = 0;
  for (std::size_t one = 0; one < shares.size(); ++one) {
    for (std::size_t other = 0; other < shares.size(); ++other) {
      sum += weights.at(one, other) * shares[one] * shares[other];
    }
  }
  return sum;
}

}  // namespace heelrule
