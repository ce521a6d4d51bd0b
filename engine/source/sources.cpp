#include "engine/source/sources.hpp"

#include <algorithm>

#include "engine/source/characters.hpp"

namespace heelrule {

std::uint32_t Sources::add(std::string name, std::string text, std::uint64_t first_line) {
  Text entry{std::move(name), std::move(text), {0}, first_line};
  for (std::size_t at = 0; at < entry.text.size(); ++at) {
    if (entry.text[at] == '\n') {
      entry.line_starts.push_back(static_cast<std::uint32_t>(at + 1));
    }
  }
  texts_.push_back(std::move(entry));
  return static_cast<std::uint32_t>(texts_.size() - 1);
}

std::string_view Sources::text(Span span) const {
  const std::string_view all = texts_[span.source].text;
  const std::size_t begin = std::min<std::size_t>(span.begin, all.size());
  const std::size_t end = std::clamp<std::size_t>(span.end, begin, all.size());
  return all.substr(begin, end - begin);
}

std::size_t Sources::line_index(const Text& text, std::uint32_t offset) const {
  const auto after = std::upper_bound(text.line_starts.begin(), text.line_starts.end(), offset);
  return static_cast<std::size_t>(after - text.line_starts.begin()) - 1;
}

LinePosition Sources::position(std::uint32_t source, std::uint32_t offset) const {
  const Text& entry = texts_[source];
  const auto at = std::min(offset, static_cast<std::uint32_t>(entry.text.size()));
  const std::size_t index = line_index(entry, at);
  const std::uint32_t start = entry.line_starts[index];
  const std::string_view before = std::string_view(entry.text).substr(start, at - start);
  return {entry.first_line + index, static_cast<std::uint32_t>(character_count(before) + 1)};
}

std::string_view Sources::line(std::uint32_t source, std::uint32_t offset) const {
  const Text& entry = texts_[source];
  const auto at = std::min(offset, static_cast<std::uint32_t>(entry.text.size()));
  const std::uint32_t start = entry.line_starts[line_index(entry, at)];
  std::string_view rest = std::string_view(entry.text).substr(start);
  rest = rest.substr(0, rest.find('\n'));
  if (!rest.empty() && rest.back() == '\r') {
    rest.remove_suffix(1);
  }
  return rest;
}

}  // namespace heelrule
