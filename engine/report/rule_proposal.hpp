// What a class teaches about the rule set that it used, as a small rule file to look through.
#pragma once

#include <string>
#include <string_view>

#include "engine/report/class_words.hpp"

namespace heelrule {

/// A rule file that builds on `base`, the name of the rule set by which the class recorded, and
/// changes in it what the class showed: the `doubt` of each measurement to the technical error, and
/// the `confusion` of each scale to how often a level was taken for the next one (see
/// `level_confusion`), with what the rule set states and what it rests on beside it. All values
/// stand in quotes. A trait of which fewer than `fewest_to_propose` readings are left when one for
/// each subject is taken off, or of which hardly any differ, is named, and left as it is.
std::string rule_proposal(const ClassStory& story, std::string_view base);

/// Chosen by us: the technical error is then known to about a quarter of itself.
constexpr double fewest_to_propose = 10;

/// Two digits that count, as a unit of measure is stated: 0.8437 is `0.84`, 12.31 is `12`.
std::string proposed_number(double value);

}  // namespace heelrule
