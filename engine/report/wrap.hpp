// Text in lines of a readable width.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace heelrule {

/// `text` in lines of at most `width` characters, each begun with `indent` blanks and ended with a
/// line feed; the first line begins with `first` instead, which is part of the width. Breaks at
/// blanks; a longer word stays whole. Runs of blanks and line breaks become one blank. What a
/// terminal would obey is shown safely.
std::string wrapped(std::string_view text, std::size_t indent, std::string_view first,
                    std::size_t width = 80);

}  // namespace heelrule
