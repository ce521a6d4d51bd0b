#include "engine/report/page_frame.hpp"

#include <fmt/format.h>

#include "engine/drawing/markup.hpp"
#include "engine/drawing/svg.hpp"
#include "engine/report/fill_template.hpp"

namespace heelrule {

std::string_view page_frame_template();
std::string_view page_style();

namespace {

constexpr std::size_t most_of_a_running_head = 40;  // characters, so that one line holds two

// A `<` could end the element that holds the style.
std::string without_tags(std::string_view style) {
  std::string safe;
  for (const char c : style) {
    safe += c == '<' ? std::string_view("\\3c ") : std::string_view(&c, 1);
  }
  return safe;
}

// Whose words stand at the edge of a sheet: CSS alone puts them there.
std::string running_heads(const PageFrame& frame) {
  return fmt::format("@page{{@top-left{{content:{}}}@top-right{{content:{}}}}}",
                     css_string(frame.running_left, most_of_a_running_head),
                     css_string(frame.running_right, most_of_a_running_head));
}

}  // namespace

std::string framed_page(const PageFrame& frame) {
  PageData data;
  data.words("title", frame.title);
  data.words("kind", frame.kind);
  data.markup("school_style", without_tags(frame.style));
  data.markup("style", std::string(page_style()) + std::string(drawing_style()) + frame.own_style);
  data.markup("running_heads", running_heads(frame));
  data.markup("patterns", std::string(picture_patterns()));
  data.markup("head", frame.head);
  data.markup("first", frame.first);
  data.markup("body", frame.body);
  data.markup("last", frame.last);
  if (frame.mark) {
    data.words("mark", frame.mark->address());
  }
  if (frame.script) {
    data.markup("script", frame.script->text);
    data.words("script_digest", frame.script->digest);
  }
  return *fill_template(page_frame_template(), data);
}

}  // namespace heelrule
