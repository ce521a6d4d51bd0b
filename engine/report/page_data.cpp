#include "engine/report/page_data.hpp"

#include <algorithm>
#include <utility>

#include "engine/drawing/markup.hpp"

namespace heelrule {

void PageData::words(std::string_view name, std::string_view text) {
  if (!text.empty()) {
    entries_.push_back({std::string(name), Words{markup_text(text)}});
  }
}

void PageData::markup(std::string_view name, std::string markup) {
  if (!markup.empty()) {
    entries_.push_back({std::string(name), Markup{std::move(markup)}});
  }
}

void PageData::fact(std::string_view name, bool is_so) {
  if (is_so) {
    entries_.push_back({std::string(name), List(1)});
  }
}

PageData& PageData::add(std::string_view list) {
  const auto found = std::find_if(entries_.begin(), entries_.end(),
                                  [&](const Entry& entry) { return entry.name == list; });
  if (found == entries_.end()) {
    entries_.push_back({std::string(list), List(1)});
    return std::get<List>(entries_.back().value).back();
  }
  return std::get<List>(found->value).emplace_back();
}

void PageData::each(std::string_view list, const std::vector<std::string>& texts) {
  for (const std::string& text : texts) {
    add(list).words("words", text);
  }
}

}  // namespace heelrule
