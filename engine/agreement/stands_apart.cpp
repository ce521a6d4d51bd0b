#include "engine/agreement/stands_apart.hpp"

#include <algorithm>
#include <utility>

namespace heelrule {
namespace {

constexpr double least_points = 2;
constexpr double wide_spread = 2;
constexpr double least_at_odds = 0.05;  // of the answers

class Search {
 public:
  Search(const Program& program, const std::vector<TopicAgreement>& topics, std::size_t observers)
      : program_(program), topics_(topics), observers_(observers) {}

  std::vector<StandsApart> run() {
    judge_scores();
    judge_answers();
    judge_readings();
    return std::move(apart_);
  }

 private:
  bool stands_apart(std::size_t observer) const {
    return std::any_of(apart_.begin(), apart_.end(),
                       [&](const StandsApart& one) { return one.observer == observer; });
  }

  void judge_scores() {
    const TopicAgreement* score = find_topic(topics_, Topic::Kind::score);
    if (score == nullptr) {
      return;
    }
    for (const Standing& one : far_biases(score->rated.ratings.numbers)) {
      if (std::fabs(one.bias.value) >= least_points) {
        apart_.push_back({one.observer,
                          one.bias.value > 0 ? StandsApart::How::lenient : StandsApart::How::severe,
                          std::nullopt, one});
      }
    }
    for (const Standing& one : far_spreads(score->rated.ratings.numbers)) {
      if (one.spread >= wide_spread * one.others_spread) {
        apart_.push_back({one.observer, StandsApart::How::scattered, std::nullopt, one});
      }
    }
  }

  // How often each student meets the others, topic by topic. Whoever gives more points meets the
  // others less, too, and that has been said.
  void judge_answers() {
    std::vector<const TopicAgreement*> named;
    for (const TopicAgreement& topic : topics_) {
      if (topic.is_of_levels() && is_recorded_trait(program_, topic.rated.topic)) {
        named.push_back(&topic);
      }
    }
    Ratings meeting(named.size(), observers_);
    for (std::size_t row = 0; row < named.size(); ++row) {
      for (std::size_t observer = 0; observer < meeting.observers(); ++observer) {
        meeting.set(row, observer, named[row]->students[observer].meets);
      }
    }
    for (const Standing& one : far_biases(meeting)) {
      if (one.bias.value <= -least_at_odds && !stands_apart(one.observer)) {
        apart_.push_back({one.observer, StandsApart::How::at_odds, std::nullopt, one});
      }
    }
  }

  void judge_readings() {
    for (std::size_t i = 0; i < topics_.size(); ++i) {
      const TopicAgreement& topic = topics_[i];
      if (topic.is_of_levels() || !is_recorded_trait(program_, topic.rated.topic)) {
        continue;
      }
      const double least =
          stated_doubt(program_, topic.rated.topic).value_or(topic.error->technical.value / 2);
      for (const Standing& one : far_biases(topic.rated.ratings.numbers)) {
        if (std::fabs(one.bias.value) >= least) {
          apart_.push_back(
              {one.observer,
               one.bias.value > 0 ? StandsApart::How::reads_high : StandsApart::How::reads_low, i,
               one});
        }
      }
    }
  }

  const Program& program_;
  const std::vector<TopicAgreement>& topics_;
  std::size_t observers_;
  std::vector<StandsApart> apart_;
};

}  // namespace

std::vector<StandsApart> who_stands_apart(const Program& program,
                                          const std::vector<TopicAgreement>& topics,
                                          std::size_t observers) {
  return Search(program, topics, observers).run();
}

}  // namespace heelrule
