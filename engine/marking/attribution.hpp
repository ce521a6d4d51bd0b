// Which differences between two records made the difference between their scores.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "engine/model/inspection.hpp"
#include "engine/scoring/program.hpp"

namespace heelrule {

/// How many players the exact value is worked out for: 2^12 rows of the program.
constexpr std::size_t most_players = 12;

/// The Shapley value of each player (Shapley, A value for n-person games, 1953): what a player adds
/// to those who came before, averaged over every order in which all can come. The values add up to
/// worth of all less worth of none; players who add the same everywhere get the same; one who adds
/// nothing gets 0. `worth` has 2^players numbers: that of the group whose members are the bits of
/// the index.
///
///     shapley_values(2, {0, 1, 2, 5})  ->  2, 3
std::vector<double> shapley_values(std::size_t players, const std::vector<double>& worth);

/// The part of the difference that one trait has, both of its sides together, or all of the traits
/// of a section that differ.
struct ScoreShare {
  std::vector<std::size_t> traits;     ///< one, or those of a section; never empty
  std::optional<std::size_t> section;  ///< where the share is that of a section
  double points = 0;                   ///< that it added to the record's score

  bool operator==(const ScoreShare&) const = default;
};

struct Attribution {
  double reference_points = 0;     ///< 0 where nothing was seen
  double record_points = 0;        ///< 0 where nothing was seen
  bool by_section = false;         ///< more traits differ than are taken singly
  std::vector<ScoreShare> shares;  ///< what moved the score most comes first
};

/// Splits the score of `record` less that of `reference` among the traits whose values differ and
/// that a rule depends on, exactly: every mixture of the two records is a row of the program. Up to
/// `most_players` traits are taken one by one; beyond that the traits of a section go together, and
/// beyond as many sections the last ones go together. The shares add up to the difference in both
/// cases.
Attribution attribute(const Program& program, const Inspection& reference,
                      const Inspection& record);

}  // namespace heelrule
