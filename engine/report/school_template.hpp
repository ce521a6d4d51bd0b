// A school's own template for the body of a graded page, looked at before it is used.
#pragma once

#include <string>
#include <string_view>

#include "engine/quantity/parsed.hpp"

namespace heelrule {

/// A template in two parts.
struct SchoolTemplate {
  std::string style;  ///< CSS, which reaches the body of the page and nothing around it
  std::string body;   ///< Mustache, to be filled with `report_data`
};

/// The largest template, in bytes.
constexpr std::size_t most_template_bytes = std::size_t{256} << 10U;

/// Reads a template: one `<style>` element at its beginning, if it has one, and then the body. A
/// problem where the style could leave its place: unbalanced brackets or quotes, or `url(`.
Parsed<SchoolTemplate> school_template(std::string_view text);

/// Looks at a body that has been filled, for it stands between what a practitioner must see first
/// and the cautions, and nothing in it may swallow or close what is around it: plain elements for
/// text, lists, tables and pictures, each closed where it was opened, with attributes in double
/// quotes; no comments. The problem names the first place that is none of these, and is empty for a
/// sound body.
Problem body_problem(std::string_view body);

/// The style of a school, limited to the body of the page (CSS Cascading and Inheritance 6, 2.5:
/// scoped styles).
std::string scoped(std::string_view style);

/// A body of a school in the box that keeps it in its place: what it draws ends at its edges.
std::string boxed(std::string_view body);

}  // namespace heelrule
