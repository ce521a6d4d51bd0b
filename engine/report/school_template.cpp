#include "engine/report/school_template.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <vector>

#include "engine/source/characters.hpp"

namespace heelrule {
namespace {

constexpr std::string_view style_opening = "<style>";
constexpr std::string_view style_closing = "</style>";

// Elements that swallow nothing and that nothing else closes. `article` is not among them: the box
// around the body is made of it, so that no end tag of a body can close the box.
constexpr auto html_elements = std::to_array<std::string_view>(
    {"abbr",   "b",     "blockquote", "caption", "cite",  "code",       "col",    "colgroup",
     "dd",     "div",   "dl",         "dt",      "em",    "figcaption", "figure", "footer",
     "h2",     "h3",    "h4",         "h5",      "h6",    "header",     "i",      "li",
     "nav",    "ol",    "p",          "q",       "s",     "section",    "small",  "span",
     "strong", "sub",   "sup",        "svg",     "table", "tbody",      "td",     "tfoot",
     "th",     "thead", "time",       "tr",      "u",     "ul"});
constexpr auto empty_elements = std::to_array<std::string_view>({"br", "hr", "wbr"});
constexpr auto svg_elements = std::to_array<std::string_view>(
    {"circle", "desc", "g", "line", "path", "rect", "svg", "text", "title"});

template <std::size_t count>
bool is_one_of(const std::array<std::string_view, count>& all, std::string_view name) {
  return std::find(all.begin(), all.end(), name) != all.end();
}

bool is_letter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }
bool is_blank(char c) { return c == ' ' || c == '\n' || c == '\t' || c == '\r'; }
bool is_name_part(char c) { return is_letter(c) || (c >= '0' && c <= '9') || c == '-'; }

class BodyReader {
 public:
  explicit BodyReader(std::string_view body) : body_(body) {}

  Problem read() {
    while (at_ < body_.size() && problem_.message.empty()) {
      at_ = std::min(body_.find('<', at_), body_.size());
      if (at_ < body_.size()) {
        read_tag();
      }
    }
    if (problem_.message.empty() && !open_.empty()) {
      problem_ = {fmt::format("the template does not close `<{}>`", open_.back()),
                  fmt::format("write `</{}>`", open_.back())};
    }
    return problem_;
  }

 private:
  char now() const { return at_ < body_.size() ? body_[at_] : '\0'; }

  void skip_blanks() {
    while (is_blank(now())) {
      ++at_;
    }
  }

  std::string_view take_name() {
    const std::size_t begin = at_;
    while (is_name_part(now()) || now() == ':') {
      ++at_;
    }
    return body_.substr(begin, at_ - begin);
  }

  void fail(std::string message, std::string hint) {
    const auto line =
        std::count(body_.begin(), body_.begin() + static_cast<std::ptrdiff_t>(at_), '\n');
    problem_ = {fmt::format("{}, in line {} of the page's body", message, line + 1),
                std::move(hint)};
  }

  void read_tag() {
    ++at_;
    const bool closes = now() == '/';
    at_ += closes ? 1 : 0;
    if (!is_letter(now())) {
      return fail("the template has a `<` that begins no element",
                  "write `&lt;` for the sign, and leave comments out");
    }
    const std::string_view name = take_name();
    if (closes) {
      return close(name);
    }
    const bool inside_picture = std::find(open_.begin(), open_.end(), "svg") != open_.end();
    const bool is_known = inside_picture
                              ? is_one_of(svg_elements, name)
                              : is_one_of(html_elements, name) || is_one_of(empty_elements, name);
    if (!is_known) {
      return fail(
          fmt::format("the template has `<{}>`, which a report may not hold", shown_safely(name)),
          "use elements for text, lists and tables");
    }
    read_attributes(name);
  }

  void read_attributes(std::string_view element) {
    while (problem_.message.empty()) {
      skip_blanks();
      if (now() == '>') {
        ++at_;
        if (!is_one_of(empty_elements, element)) {
          open_.push_back(element);
        }
        return;
      }
      if (body_.substr(at_).starts_with("/>")) {
        at_ += 2;
        const bool may_end_here = is_one_of(empty_elements, element) || is_inside_picture();
        return may_end_here ? void()
                            : fail(fmt::format("the template closes `<{}/>` in itself", element),
                                   fmt::format("write `<{0}></{0}>`", element));
      }
      read_attribute(element);
    }
  }

  bool is_inside_picture() const {
    return std::find(open_.begin(), open_.end(), "svg") != open_.end();
  }

  void read_attribute(std::string_view element) {
    const std::string_view name = take_name();
    const bool is_written_out = !name.empty() && body_.substr(at_).starts_with("=\"");
    const std::size_t end = is_written_out ? body_.find('"', at_ + 2) : std::string_view::npos;
    if (end == std::string_view::npos ||
        body_.substr(at_, end - at_).find('<') != std::string_view::npos) {
      return fail(fmt::format("an attribute of `<{}>` is not written as NAME=\"VALUE\"", element),
                  "put its value in double quotes");
    }
    if (name.starts_with("on")) {
      return fail(
          fmt::format("the template has `{}`, and a report runs no script", shown_safely(name)),
          "leave it out");
    }
    at_ = end + 1;
  }

  void close(std::string_view name) {
    skip_blanks();
    if (open_.empty() || open_.back() != name || now() != '>') {
      const std::string last =
          open_.empty() ? "" : fmt::format("write `</{}>` first", open_.back());
      return fail(
          fmt::format("the template closes `</{}>` where it is not open", shown_safely(name)),
          last);
    }
    open_.pop_back();
    ++at_;
  }

  std::string_view body_;
  std::size_t at_ = 0;
  std::vector<std::string_view> open_;
  Problem problem_;
};

char counterpart(char bracket) {
  switch (bracket) {
    case '{':
      return '}';
    case '(':
      return ')';
    default:
      return ']';
  }
}

// Walks over a style as CSS Syntax 3 cuts it into tokens, as far as brackets go.
class StyleReader {
 public:
  explicit StyleReader(std::string_view style) : style_(style) {}

  Problem read() {
    for (at_ = 0; at_ < style_.size(); ++at_) {
      if (!step()) {
        return {
            "the style of the template could leave its place: its brackets, quotes or comments "
            "do not close as they were opened",
            "close each of them, and write no `url(` and no backslash"};
      }
    }
    return open_.empty() ? Problem{}
                         : Problem{fmt::format("the style of the template does not close a `{}`",
                                               open_.back()),
                                   "close it"};
  }

 private:
  bool step() {
    const char c = style_[at_];
    const std::string_view rest = style_.substr(at_);
    if (rest.starts_with("/*")) {
      return jump(style_.find("*/", at_ + 2), 1);
    }
    if (c == '"' || c == '\'') {
      const std::size_t end = style_.find(c, at_ + 1);
      const bool in_one_line = style_.substr(at_, end - at_).find('\n') == std::string_view::npos;
      return in_one_line && jump(end, 0);
    }
    if (c == '{' || c == '(' || c == '[') {
      open_ += c;
    } else if (c == '}' || c == ')' || c == ']') {
      const bool is_open = !open_.empty() && counterpart(open_.back()) == c;
      open_.resize(open_.size() - (is_open ? 1 : 0));
      return is_open;
    }
    return c != '\\' && c != '<' && !is_address(rest);
  }

  static bool is_address(std::string_view rest) {
    return rest.size() >= 4 && (rest[0] == 'u' || rest[0] == 'U') &&
           (rest[1] == 'r' || rest[1] == 'R') && (rest[2] == 'l' || rest[2] == 'L') &&
           rest[3] == '(';
  }

  bool jump(std::size_t to, std::size_t beyond) {
    at_ = to + beyond;
    return to != std::string_view::npos;
  }

  std::string_view style_;
  std::size_t at_ = 0;
  std::string open_;
};

}  // namespace

Parsed<SchoolTemplate> school_template(std::string_view text) {
  if (text.size() > most_template_bytes) {
    return Problem{fmt::format("the template is larger than {} KiB", most_template_bytes >> 10U),
                   "make it smaller"};
  }
  if (const auto offence = first_offence(text)) {
    return Problem{fmt::format("the template holds {}", offence->what), "save it as plain UTF-8"};
  }
  SchoolTemplate made;
  text.remove_prefix(std::min(text.find_first_not_of(" \t\r\n"), text.size()));
  if (text.starts_with(style_opening)) {
    const std::size_t end = text.find(style_closing);
    if (end == std::string_view::npos) {
      return Problem{"the template does not close `<style>`", "write `</style>`"};
    }
    made.style = text.substr(style_opening.size(), end - style_opening.size());
    text.remove_prefix(end + style_closing.size());
  }
  if (Problem problem = StyleReader(made.style).read(); !problem.message.empty()) {
    return problem;
  }
  made.body = text;
  return made;
}

Problem body_problem(std::string_view body) { return BodyReader(body).read(); }

std::string scoped(std::string_view style) {
  return style.empty() ? "" : fmt::format("@scope (.school) {{\n{}\n}}\n", style);
}

std::string boxed(std::string_view body) {
  return fmt::format("<article class=\"box\"><article class=\"school\">\n{}</article></article>\n",
                     body);
}

}  // namespace heelrule
