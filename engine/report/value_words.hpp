// Values in words, so that no printed number contradicts the verdict beside it.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "engine/model/verdict.hpp"
#include "engine/scoring/program.hpp"

namespace heelrule {

/// `left`, `right`, or an empty text.
std::string_view in_words(Side side);

/// The side of a reading as sentences name it: `both` where the sides are alike, and nothing where
/// the finding is of one side alone and its title says which.
std::string_view side_words(const Finding& finding, const SideReading& reading);

/// A value of a trait: `9.5 mm`, `firm`, `yes`. A number gets as many decimals as it takes to lie
/// on the same side of each of `cuts` (stored unit) as the exact one: 9.96 mm is not printed as 10
/// mm beside a cut point of 10 mm.
std::string value_words(const Program& program, std::size_t trait, double value,
                        std::span<const double> cuts);

/// A distance in the trait's unit; one that is above 0 is never printed as 0.
std::string distance_words(Unit unit, double distance);

/// A score in points with one decimal, cut and not rounded where rounding would lift it to or over
/// a boundary of a grade that it does not reach: 79.96 is `79.9` where a grade begins at 80. More
/// decimals where one cannot show that it reaches a boundary: 79.94 is `79.94` where a grade begins
/// there. `bounds` are in thousandths.
std::string score_words(double points, std::span<const GradeBound> bounds);

/// What a finding read, side by side: `left 8 mm, right 9 mm`, `both 12 mm`, `firm`. Empty where
/// nothing was seen.
std::string readings_words(const Program& program, const Finding& finding);

/// A band and where it lies: `close (6 mm to below 10 mm)`; a level is its own name.
std::string band_words(const Program& program, std::size_t rule, std::size_t band);

/// Fills the slots of a phrase for one reading of a finding.
std::string fill(const Phrase& phrase, std::span<const std::string> languages,
                 const Program& program, const Finding& finding, const SideReading& reading);

}  // namespace heelrule
