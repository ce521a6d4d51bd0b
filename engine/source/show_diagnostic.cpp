#include "engine/source/show_diagnostic.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "engine/source/characters.hpp"

namespace heelrule {
namespace {

constexpr std::size_t widest_excerpt = 160;

std::string place(Span where, const Sources& sources) {
  const LinePosition at = sources.position(where.source, where.begin);
  return fmt::format("{}:{}:{}", shown_safely(sources.name(where.source)), at.line, at.column);
}

std::size_t shown_width(std::string_view text) { return character_count(shown_safely(text)); }

// How many bytes of a character lie before `at`, if `at` lies inside one.
std::size_t inside_character(std::string_view line, std::size_t at) {
  for (std::size_t back = 1; back <= 3 && back <= at && at < line.size(); ++back) {
    const std::size_t bytes = first_character(line.substr(at - back)).bytes;
    if (bytes > 0) {
      return bytes > back ? back : 0;
    }
  }
  return 0;
}

// The line with a mark below the span. Of a very long line only the part around the span is shown.
std::string excerpt(Span where, const Sources& sources) {
  std::string_view line = sources.line(where.source, where.begin);
  const LinePosition at = sources.position(where.source, where.begin);
  const std::string_view text = sources.text(where.source);
  const auto line_offset = static_cast<std::size_t>(line.data() - text.data());
  std::size_t begin = std::min<std::size_t>(where.begin - line_offset, line.size());
  std::size_t end = std::clamp<std::size_t>(
      where.end - std::min<std::size_t>(where.end, line_offset), begin, line.size());
  std::string_view before_cut;
  std::string_view after_cut;
  if (line.size() > widest_excerpt) {
    std::size_t first = begin > widest_excerpt / 2 ? begin - widest_excerpt / 2 : 0;
    first -= inside_character(line, first);
    std::size_t last = std::min(line.size(), first + widest_excerpt);
    last -= inside_character(line, last);
    before_cut = first > 0 ? "…" : "";
    after_cut = last < line.size() ? "…" : "";
    line = line.substr(first, last - first);
    begin -= first;
    end = std::clamp(end - first, begin, line.size());
  }
  const std::size_t indent = shown_width(line.substr(0, begin)) + character_count(before_cut);
  const std::size_t width = std::max<std::size_t>(shown_width(line.substr(begin, end - begin)), 1);
  std::string shown_line = fmt::format("{}{}{}", before_cut, shown_safely(line), after_cut);
  return fmt::format("{:>5} | {}\n      | {}^{}\n", at.line, shown_line, std::string(indent, ' '),
                     std::string(width - 1, '~'));
}

}  // namespace

std::string show(const Diagnostic& diagnostic, const Sources& sources) {
  const bool is_error = diagnostic.severity == Severity::error;
  std::string text = fmt::format("{}: {}: {}\n{}", place(diagnostic.where, sources),
                                 is_error ? "error" : "warning", shown_safely(diagnostic.message),
                                 excerpt(diagnostic.where, sources));
  for (const Note& note : diagnostic.notes) {
    text += fmt::format("{}: note: {}\n{}", place(note.where, sources), shown_safely(note.message),
                        excerpt(note.where, sources));
  }
  if (!diagnostic.hint.empty()) {
    text += fmt::format("hint: {}\n", shown_safely(diagnostic.hint));
  }
  return text;
}

std::string show(const Diagnostics& diagnostics, const Sources& sources) {
  std::string text;
  for (const Diagnostic& diagnostic : diagnostics.by_place()) {
    text += show(diagnostic, sources);
  }
  return text;
}

}  // namespace heelrule
