// Text from people made fit to stand in HTML and SVG.
#pragma once

#include <string>
#include <string_view>

namespace heelrule {

/// How many combining marks may follow each other: no script needs more, and towers of them are
/// drawn over the lines above.
constexpr int most_combining_marks = 4;

/// `text` as the content of an element or of a quoted attribute: `& < > " '` as references (WHATWG
/// HTML, 13.1.2); control characters other than tab and line feed, and bytes that are not UTF-8, as
/// U+FFFD, for XML 1.0 (2.2) forbids them even as references; bidirectional controls as `\u202e`,
/// as everywhere that text is shown; combining marks beyond `most_combining_marks` in a row left
/// out, with one U+FFFD in their place.
///
///     markup_text("a < b")  ->  "a &lt; b"
std::string markup_text(std::string_view text);

/// `text` as a string of CSS, with its quotes: every character but ASCII letters, digits and the
/// blank is a hexadecimal escape (CSS Syntax 3, 4.3.7), so that nothing of it is ever syntax, also
/// not of the HTML around. At most `most` characters; a longer one ends in `…`.
///
///     css_string("C-014", 40)  ->  "\"C\\00002d014\""
std::string css_string(std::string_view text, std::size_t most);

}  // namespace heelrule
