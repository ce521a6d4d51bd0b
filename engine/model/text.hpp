// Words that people read, in one or several languages.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "engine/source/span.hpp"

namespace heelrule {

/// One wording, with its language tag (BCP 47); the tag is empty where the author gave a plain
/// text.
struct Wording {
  std::string language;
  std::string words;
  Span where;

  bool operator==(const Wording&) const = default;
};

/// Which of several wordings to use: the one whose `language` comes first in `languages`; else the
/// plain one; else the first that was written. Precondition: there is one.
template <class Wordings>
std::size_t choose_language(const Wordings& wordings, std::span<const std::string> languages) {
  const auto find = [&](std::string_view language) {
    std::size_t at = 0;
    while (at < wordings.size() && wordings[at].language != language) {
      ++at;
    }
    return at;
  };
  for (const std::string& language : languages) {
    if (const std::size_t at = find(language); at < wordings.size()) {
      return at;
    }
  }
  const std::size_t plain = find("");
  return plain < wordings.size() ? plain : 0;
}

/// A text of the rule set. Empty where the author left it out.
struct Text {
  std::vector<Wording> wordings;

  bool empty() const { return wordings.empty(); }
  bool operator==(const Text&) const = default;

  /// The words in the language that `choose_language` finds, or an empty text.
  std::string_view in(std::span<const std::string> languages) const {
    return empty() ? std::string_view{}
                   : std::string_view(wordings[choose_language(wordings, languages)].words);
  }
};

}  // namespace heelrule
