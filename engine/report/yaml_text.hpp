// A text as YAML that cannot be read as anything else.
#pragma once

#include <string>
#include <string_view>

namespace heelrule {

/// `value` in double quotes (YAML 1.2.2, section 7.3.1): always quoted, so that `no` and `010` stay
/// texts for every reader of YAML. Control characters, those of text direction, and line and
/// paragraph separators are escaped; a byte that is not UTF-8 becomes U+FFFD. One line stays one
/// line.
///
///     yaml_text("12\" boot")  ->  "\"12\\\" boot\""
std::string yaml_text(std::string_view value);

}  // namespace heelrule
