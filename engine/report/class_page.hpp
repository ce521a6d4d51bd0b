// How far a class agrees, as a page.
#pragma once

#include <string>

#include "engine/report/class_words.hpp"

namespace heelrule {

/// The whole HTML document: who stands apart, what confuses, what splits; a forest of the figures
/// with their intervals; a table of questions and students; a plot of the differences for each
/// measurement.
std::string class_page(const ClassStory& story);

}  // namespace heelrule
