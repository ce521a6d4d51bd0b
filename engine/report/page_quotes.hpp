// Names within sentences, as a page sets them off.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace heelrule {

/// Sentences mark a name by backquotes, which a terminal shows as they are. On a page stand quotes
/// in their place. One without its partner stays.
///
///     mix up `firm` and `soft`  ->  mix up ‘firm’ and ‘soft’
std::string page_quotes(std::string_view sentence);

/// Each of the sentences so.
std::vector<std::string> page_quotes(const std::vector<std::string>& sentences);

}  // namespace heelrule
