#include "engine/formula/type_words.hpp"

#include <fmt/format.h>

namespace heelrule {

std::string in_words(const Type& type, const RuleSet& rules) {
  switch (type.kind) {
    case Type::Kind::number: {
      const std::string words = in_words(type.dimension);
      return (words.starts_with("angle") ? "an " : "a ") + words;
    }
    case Type::Kind::yes_no:
      return "yes or no";
    case Type::Kind::level:
      return fmt::format("a {} of `{}`", type.ordered ? "level" : "choice",
                         rules.traits[type.scale].name);
    case Type::Kind::fibres:
      return "a fibre content";
    case Type::Kind::shoe_size:
      return "a shoe size";
    case Type::Kind::sock_range:
      return "a sock range";
  }
  return {};
}

}  // namespace heelrule
