// Agreement in a plain table of ratings: as text, and as JSON.
#pragma once

#include <string>

#include "engine/agreement/table_agreement.hpp"
#include "engine/reading/read_ratings.hpp"

namespace heelrule {

/// Rises when a key of the JSON changes its meaning or goes.
constexpr int ratings_json_version = 1;

/// One object, ended with a line feed; described in ratings.schema.json. What cannot be worked out
/// is null.
std::string ratings_json(const RatingTable& table, const TableAgreement& agreement);

/// What must be said first, then each coefficient with its interval and what it means.
std::string ratings_text(const RatingTable& table, const TableAgreement& agreement, bool colour);

}  // namespace heelrule
