// Templates filled in: the one place that knows the library which does it.
#pragma once

#include <cstddef>
#include <initializer_list>
#include <string>
#include <string_view>

#include "engine/quantity/parsed.hpp"
#include "engine/report/page_data.hpp"

namespace heelrule {

/// How much a template may make: a list inside itself multiplies.
constexpr std::size_t most_page_bytes = std::size_t{64} << 20U;

/// A template of ours that others share: `{{> name}}` stands for all of it.
struct TemplatePart {
  std::string_view name;
  std::string_view text;
};

/// A template in the Mustache language (mustache(5)) filled with `data`. A name that is not there
/// is an empty text, and so is a part that is not among `parts`. A problem where the template is no
/// Mustache, or makes more than `most_page_bytes`.
///
///     fill_template("Dear {{name}}", data)  ->  "Dear C-014"
Parsed<std::string> fill_template(std::string_view text, const PageData& data,
                                  std::initializer_list<TemplatePart> parts = {});

}  // namespace heelrule
