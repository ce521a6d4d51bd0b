#include "engine/model/rule.hpp"

#include <algorithm>

namespace heelrule {

std::string in_words(const std::string& name) {
  std::string words = name;
  std::replace(words.begin(), words.end(), '_', ' ');
  return words;
}

}  // namespace heelrule
