// Templates filled in: the one place that knows the library which does it.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

#include "engine/quantity/parsed.hpp"
#include "engine/report/page_data.hpp"

namespace heelrule {

/// How much a template may make: a list inside itself multiplies.
constexpr std::size_t most_page_bytes = std::size_t{64} << 20U;

/// A template in the Mustache language (mustache(5)) filled with `data`. A name that is not there
/// is an empty text. A problem where the template is no Mustache, or makes more than
/// `most_page_bytes`.
///
///     fill_template("Dear {{name}}", data)  ->  "Dear C-014"
Parsed<std::string> fill_template(std::string_view text, const PageData& data);

}  // namespace heelrule
