// How far a class agrees, in words.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "engine/agreement/class_agreement.hpp"

namespace heelrule {

/// A class as it is told of: the rule set, its records, and what came of them.
struct ClassStory {
  const Program& program;
  const ClassTable& table;
  const ClassAgreement& agreement;
  std::vector<std::string> languages;  ///< what `fallback_order` gives
  std::size_t left_out = 0;            ///< records that could not be used
};

/// The question of a trait, the title of a section, `Score` or `Grade`.
std::string topic_title(const ClassStory& story, const Topic& topic);

/// `trait`, `section`, `score`, `grade`; and the name in the rule set, empty for the last two.
std::string_view topic_kind(const Topic& topic);
std::string topic_name(const ClassStory& story, const Topic& topic);

/// The names of a topic's levels, lowest first; none of numbers.
std::vector<std::string> topic_levels(const ClassStory& story, const Topic& topic);

/// The symbol of the unit in which a topic's numbers are: `mm`, `points`; may be empty.
std::string topic_unit(const ClassStory& story, const Topic& topic);

/// Sentences, each with what to do.
std::string apart_words(const ClassStory& story, const StandsApart& one);
std::string confusing_words(const ClassStory& story, const Confusing& one);
std::string split_words(const ClassStory& story, const SplitShoe& one);

/// `lenient`, `reads high` …
std::string_view in_words(StandsApart::How how);

/// What must be read beside the figures of a topic, the number of its subjects aside, which is told
/// once for the whole class.
std::vector<std::string> topic_remarks(const ClassStory& story, const TopicAgreement& topic);

/// What must be said of the class as a whole: records that were left out, so few shoes or students
/// that little is sure, gaps.
std::vector<std::string> class_remarks(const ClassStory& story);

/// A number in a topic's unit: `1.8 mm`.
std::string measured_words(double value, std::string_view unit);
std::string measured_words(const Estimate& estimate, std::string_view unit);

}  // namespace heelrule
