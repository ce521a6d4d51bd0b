#include "engine/doubt/fewest_readings.hpp"

#include <utility>

#include "engine/doubt/next_choice.hpp"
#include "engine/doubt/trial.hpp"

namespace heelrule {
namespace {

constexpr std::size_t most_combinations = 20'000;

// How many ways there are to choose `size` of `count` and move each up or down; counted no further
// than the limit.
std::size_t combinations(std::size_t count, std::size_t size) {
  std::size_t all = 1;
  for (std::size_t i = 0; i < size; ++i) {
    all = all * (count - i) / (i + 1);
  }
  return all << size;
}

class Search {
 public:
  Search(const Program& program, const Inspection& inspection,
         std::span<const DoubtfulReading> readings, std::size_t grade)
      : readings_(readings), grade_(grade), trial_(program, inspection) {}

  FewestReadings run() {
    FewestReadings found;
    for (std::size_t size = 1; size <= most_readings_at_once && size <= readings_.size(); ++size) {
      if (combinations(readings_.size(), size) > most_combinations) {
        break;
      }
      found.move = try_sets_of(size);
      found.tried = size;
      if (found.move) {
        break;
      }
    }
    return found;
  }

 private:
  // Keeps the first alternative with another grade, and then wants no more.
  auto moves() {
    return [&](const std::vector<OffReading>& off, std::optional<std::size_t> grade) {
      if (grade && *grade != grade_) {
        move_ = GradeMove{off, *grade};
      }
      return move_.has_value();
    };
  }

  std::optional<GradeMove> try_sets_of(std::size_t size) {
    std::vector<std::size_t> chosen = first_choice(size);
    bool is_found = false;
    do {
      is_found = try_both_ways(chosen);
    } while (!is_found && next_choice(chosen, readings_.size()));
    if (!is_found) {
      trial_.run(moves());
    }
    return std::exchange(move_, std::nullopt);
  }

  // Bit k of `ways` says whether the k-th reading goes up.
  bool try_both_ways(const std::vector<std::size_t>& chosen) {
    for (std::size_t ways = 0; ways < (std::size_t{1} << chosen.size()); ++ways) {
      std::vector<OffReading> off;
      off.reserve(chosen.size());
      for (std::size_t k = 0; k < chosen.size(); ++k) {
        off.push_back({chosen[k], ((ways >> k) & 1U) != 0});
      }
      const auto change = [&](const auto& set) {
        for (const OffReading& one : off) {
          const DoubtfulReading& reading = readings_[one.reading];
          for (const Register input : reading.inputs) {
            set(input, a_little_off(reading, one.up));
          }
        }
      };
      if (trial_.add(off, change, moves())) {
        return true;
      }
    }
    return false;
  }

  std::span<const DoubtfulReading> readings_;
  std::size_t grade_;
  Trial<std::vector<OffReading>> trial_;
  std::optional<GradeMove> move_;
};

}  // namespace

FewestReadings fewest_readings(const Program& program, const Inspection& inspection,
                               std::span<const DoubtfulReading> readings, std::size_t grade) {
  return Search(program, inspection, readings, grade).run();
}

}  // namespace heelrule
