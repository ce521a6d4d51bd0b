#include "engine/marking/attribution.hpp"

#include <algorithm>
#include <bit>
#include <cmath>
#include <map>

#include "engine/formula/operation.hpp"
#include "engine/model/verdict.hpp"
#include "engine/scoring/block.hpp"
#include "engine/scoring/fill_row.hpp"
#include "engine/scoring/rule_needs.hpp"

namespace heelrule {
namespace {

double points_of(const Outcome& outcome) {
  return Score{outcome.earned, outcome.weight, outcome.open_weight}.points().value_or(0);
}

bool differ(double a, double b) {
  return operation::is_seen(a) != operation::is_seen(b) || (operation::is_seen(a) && a != b);
}

// A player of the game: traits whose values all come from the record, or all from the reference.
struct Player {
  std::vector<std::size_t> traits;
  std::optional<std::size_t> section;
};

class Game {
 public:
  Game(const Program& program, const Inspection& reference, const Inspection& record)
      : program_(program), both_(program), sections_(sections_of_rules(program)) {
    fill_row(program, reference, both_, 0);
    fill_row(program, record, both_, 1);
  }

  Attribution play() {
    Attribution found;
    const std::vector<Player> players = choose_players();
    const std::vector<double> worth = worths(players);
    found.reference_points = worth.front();
    found.record_points = worth.back();
    found.by_section = std::any_of(players.begin(), players.end(),
                                   [](const Player& one) { return one.section.has_value(); });
    const std::vector<double> values = shapley_values(players.size(), worth);
    for (std::size_t i = 0; i < players.size(); ++i) {
      found.shares.push_back({players[i].traits, players[i].section, values[i]});
    }
    std::stable_sort(found.shares.begin(), found.shares.end(),
                     [](const ScoreShare& a, const ScoreShare& b) {
                       return std::fabs(a.points) > std::fabs(b.points);
                     });
    return found;
  }

 private:
  std::vector<std::size_t> differing_traits() const {
    std::vector<std::size_t> traits;
    for (Register i = 0; i < program_.inputs.size(); ++i) {
      const std::size_t trait = program_.inputs[i].input.trait;
      if (sections_[trait] && differ(both_.column(i)[0], both_.column(i)[1])) {
        traits.push_back(trait);
      }
    }
    std::sort(traits.begin(), traits.end());
    traits.erase(std::unique(traits.begin(), traits.end()), traits.end());
    return traits;
  }

  std::vector<Player> choose_players() const {
    const std::vector<std::size_t> traits = differing_traits();
    std::vector<Player> players;
    if (traits.size() <= most_players) {
      for (const std::size_t trait : traits) {
        players.push_back({{trait}, std::nullopt});
      }
      return players;
    }
    std::map<std::size_t, std::vector<std::size_t>> by_section;
    for (const std::size_t trait : traits) {
      by_section[*sections_[trait]].push_back(trait);
    }
    for (auto& [section, members] : by_section) {
      if (players.size() < most_players) {
        players.push_back({std::move(members), section});
      } else {
        std::vector<std::size_t>& last = players.back().traits;
        last.insert(last.end(), members.begin(), members.end());
      }
    }
    return players;
  }

  // The score of every mixture: of the players in the index from the record, of all else from the
  // reference.
  std::vector<double> worths(const std::vector<Player>& players) {
    std::vector<std::optional<std::size_t>> player_of(program_.traits.size());
    for (std::size_t i = 0; i < players.size(); ++i) {
      for (const std::size_t trait : players[i].traits) {
        player_of[trait] = i;
      }
    }
    const std::size_t count = std::size_t{1} << players.size();
    std::vector<double> worth(count);
    Block block(program_);
    for (std::size_t first = 0; first < count; first += block_rows) {
      const std::size_t rows = std::min(block_rows, count - first);
      for (Register i = 0; i < program_.inputs.size(); ++i) {
        const auto player = player_of[program_.inputs[i].input.trait];
        for (std::size_t row = 0; row < rows; ++row) {
          const bool from_record = player && ((first + row) >> *player & 1U) != 0;
          block.column(i)[row] = both_.column(i)[from_record ? 1 : 0];
        }
      }
      evaluate(program_, block);
      for (std::size_t row = 0; row < rows; ++row) {
        worth[first + row] = points_of(block.outcome(row));
      }
    }
    return worth;
  }

  const Program& program_;
  Block both_;                                        // row 0: the reference; row 1: the record
  std::vector<std::optional<std::size_t>> sections_;  // by trait; nothing: no rule needs it
};

}  // namespace

std::vector<double> shapley_values(std::size_t players, const std::vector<double>& worth) {
  // How often a group of a size comes before a given player: size!·(players − 1 − size)!/players!
  std::vector<double> chance(players, players == 0 ? 0 : 1.0 / static_cast<double>(players));
  for (std::size_t size = 1; size < players; ++size) {
    chance[size] =
        chance[size - 1] * static_cast<double>(size) / static_cast<double>(players - size);
  }
  std::vector<double> values(players, 0);
  for (std::size_t group = 0; group < worth.size(); ++group) {
    for (std::size_t player = 0; player < players; ++player) {
      const std::size_t member = std::size_t{1} << player;
      if ((group & member) == 0) {
        const auto size = static_cast<std::size_t>(std::popcount(group));
        values[player] += chance[size] * (worth[group | member] - worth[group]);
      }
    }
  }
  return values;
}

Attribution attribute(const Program& program, const Inspection& reference,
                      const Inspection& record) {
  return Game(program, reference, record).play();
}

}  // namespace heelrule
