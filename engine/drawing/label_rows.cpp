#include "engine/drawing/label_rows.hpp"

#include <algorithm>

#include "engine/source/characters.hpp"

namespace heelrule {
namespace {

constexpr double gap = 6;  // between two labels of a row, in pixels

struct Taken {
  double from = 0;
  double to = 0;
};

bool touches(const Taken& a, const Taken& b) { return a.from < b.to + gap && b.from < a.to + gap; }

Taken stretch_of(const LabelPlace& place, double width, double narrowest) {
  const double at = place.at / 100 * narrowest;
  switch (place.anchor) {
    case Anchor::start:
      return {at, at + width};
    case Anchor::middle:
      return {at - width / 2, at + width / 2};
    case Anchor::end:
      return {at - width, at};
  }
  return {};
}

LabelPlace at_the_edges(const Label& label, double narrowest) {
  const double at = label.at / 100 * narrowest;
  if (at - label.width / 2 < 0) {
    return {0, Anchor::start, 0};
  }
  if (at + label.width / 2 > narrowest) {
    return {0, Anchor::end, 100};
  }
  return {0, Anchor::middle, label.at};
}

}  // namespace

std::vector<LabelPlace> in_rows(const std::vector<Label>& labels, double narrowest) {
  std::vector<LabelPlace> places;
  std::vector<std::vector<Taken>> rows;
  for (const Label& label : labels) {
    LabelPlace place = at_the_edges(label, narrowest);
    const Taken wanted = stretch_of(place, label.width, narrowest);
    const auto is_free = [&](const std::vector<Taken>& row) {
      return std::none_of(row.begin(), row.end(),
                          [&](const Taken& other) { return touches(wanted, other); });
    };
    const auto row = std::find_if(rows.begin(), rows.end(), is_free);
    place.row = static_cast<std::size_t>(row - rows.begin());
    if (row == rows.end()) {
      rows.emplace_back();
    }
    rows[place.row].push_back(wanted);
    places.push_back(place);
  }
  return places;
}

std::size_t row_count(const std::vector<LabelPlace>& places) {
  std::size_t count = 0;
  for (const LabelPlace& place : places) {
    count = std::max(count, place.row + 1);
  }
  return count;
}

double label_width(std::string_view words, double size) {
  return 0.58 * size * static_cast<double>(character_count(words));
}

}  // namespace heelrule
