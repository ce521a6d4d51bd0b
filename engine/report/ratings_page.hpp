// Agreement in a plain table of ratings, as a page.
#pragma once

#include <string>

#include "engine/agreement/table_agreement.hpp"
#include "engine/reading/read_ratings.hpp"

namespace heelrule {

/// The whole HTML document: what must be said first; every coefficient with its interval, as a
/// picture and in a sentence each; of levels how often each was used, of numbers how far they
/// scatter and how far each pair of observers lies apart.
std::string ratings_page(const RatingTable& table, const TableAgreement& agreement);

}  // namespace heelrule
