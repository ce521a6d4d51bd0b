#include "engine/drawing/chance_bar.hpp"

#include <fmt/format.h>

#include <vector>

#include "engine/drawing/label_rows.hpp"
#include "engine/drawing/svg.hpp"

namespace heelrule {
namespace {

constexpr double narrowest = 280;  // pixels
constexpr double letters = 12;     // height of the letters
constexpr double row_height = 15;
constexpr double bar_height = 14;

class ChanceDrawing {
 public:
  explicit ChanceDrawing(const ChanceBar& bar) : bar_(bar) {
    std::vector<Label> labels;
    double from = 0;
    for (const ChancePart& part : bar.parts) {
      starts_.push_back(100 * from);
      labels.push_back({100 * (from + part.chance / 2), label_width(part.words, letters)});
      from += part.chance;
    }
    places_ = in_rows(labels, narrowest);
  }

  std::string draw() const {
    const double height = bar_height + 5 + static_cast<double>(row_count(places_)) * row_height;
    SvgWriter svg = SvgWriter::stretching({bar_.id, bar_.title, description()}, height, "chances");
    for (std::size_t i = 0; i < bar_.parts.size(); ++i) {
      draw_part(svg, i);
    }
    return svg.take();
  }

 private:
  void draw_part(SvgWriter& svg, std::size_t index) const {
    const ChancePart& part = bar_.parts[index];
    const LabelPlace& place = places_[index];
    const double wide = 100 * part.chance;
    const double down = bar_height + 3 + static_cast<double>(place.row + 1) * row_height - 3;
    svg.box({percent(starts_[index]), 1}, percent(wide), bar_height - 1,
            part.is_chosen ? "part chosen" : "part");
    const double middle = starts_[index] + wide / 2;
    svg.line({percent(middle), bar_height}, {percent(middle), down - letters + 2}, "lead");
    svg.text({percent(place.at), down}, part.words, place.anchor,
             part.is_chosen ? "part-words chosen" : "part-words");
  }

  std::string description() const {
    std::string words;
    for (const ChancePart& part : bar_.parts) {
      words += fmt::format("{}{}", words.empty() ? "" : "; ", part.words);
    }
    return words + ".";
  }

  const ChanceBar& bar_;
  std::vector<double> starts_;  // in percent
  std::vector<LabelPlace> places_;
};

}  // namespace

std::string draw(const ChanceBar& bar) {
  ChanceBar shown = bar;
  std::erase_if(shown.parts, [](const ChancePart& part) { return part.chance <= 0; });
  return ChanceDrawing(shown).draw();
}

}  // namespace heelrule
