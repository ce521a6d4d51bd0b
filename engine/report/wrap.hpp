// Text in lines of a readable width.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace heelrule {

/// `text` in lines of at most `width` columns, each begun with `indent` blanks and ended with a
/// line feed; the first line begins with `first` instead, which is part of the width. A column is
/// one code point, combining marks excepted, which take none. Breaks at blanks; a longer word stays
/// whole. Runs of blanks and line breaks become one blank. What a terminal would obey is shown
/// safely, and of the combining marks on one letter the first four.
///
///     wrapped("red and blue", 2, "- ", 8)  ->  "- red\n  and\n  blue\n"
std::string wrapped(std::string_view text, std::size_t indent, std::string_view first,
                    std::size_t width = 80);

}  // namespace heelrule
