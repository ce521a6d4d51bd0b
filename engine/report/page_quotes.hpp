// Names within sentences, as a page sets them off.
#pragma once

#include <string>
#include <string_view>

namespace heelrule {

/// Sentences mark a name by backquotes, which a terminal shows as they are. On a page stand quotes
/// in their place. One without its partner stays.
///
///     mix up `firm` and `soft`  ->  mix up ‘firm’ and ‘soft’
std::string page_quotes(std::string_view sentence);

}  // namespace heelrule
