#include "engine/report/amendment_words.hpp"

#include <fmt/format.h>

#include "engine/report/place_words.hpp"

namespace heelrule {

std::vector<std::string> amendment_words(const RuleSet& rules, const Inspection& inspection,
                                         std::span<const std::string> languages) {
  std::vector<std::string> words;
  words.reserve(inspection.amendments.size());
  for (const Amendment& one : inspection.amendments) {
    words.push_back(fmt::format("{}. It was: {}. Changed by {} on {}{}{}.",
                                place_title(rules, one.answer, languages), one.was, one.by,
                                one.when, one.because.empty() ? "" : ": ", one.because));
  }
  return words;
}

}  // namespace heelrule
