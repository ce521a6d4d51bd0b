#include "engine/drawing/score_bars.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "engine/drawing/label_rows.hpp"
#include "engine/drawing/svg.hpp"

namespace heelrule {
namespace {

constexpr double narrowest = 300;  // pixels
constexpr double letters = 12;     // height of the letters
constexpr double row_height = 16;
constexpr double bar_height = 9;
constexpr double sum_height = 14;
constexpr double gap = 9;  // below each bar

double clamped(double points) { return std::clamp(points, 0.0, 100.0); }

// Name and words share a row where both have room in it.
bool is_in_one_row(const ScoreBar& bar) {
  return label_width(bar.name, letters) + label_width(bar.words, letters) + letters < narrowest;
}

double height_of(const ScoreBar& bar) { return bar.is_sum ? sum_height : bar_height; }

class BarsDrawing {
 public:
  explicit BarsDrawing(const ScoreBars& bars) : bars_(bars) {
    std::vector<Label> labels;
    labels.reserve(bars.marks.size());
    for (const ScoreMark& mark : bars.marks) {
      labels.push_back({clamped(mark.from), label_width(words_of(mark), letters)});
    }
    mark_places_ = in_rows(labels, narrowest);
  }

  std::string draw() {
    SvgWriter svg = SvgWriter::stretching({bars_.id, bars_.title, description()}, height(), "bars");
    double top = 0;
    for (const ScoreBar& bar : bars_.bars) {
      top = draw_bar(svg, bar, top);
    }
    return svg.take();
  }

 private:
  static std::string words_of(const ScoreMark& mark) {
    return fmt::format("{} {}", mark.name, mark.from);
  }

  double marks_height() const { return static_cast<double>(row_count(mark_places_)) * row_height; }

  double height() const {
    double sum = 0;
    for (const ScoreBar& bar : bars_.bars) {
      sum += (is_in_one_row(bar) ? 1 : 2) * row_height + height_of(bar) + gap +
             (bar.is_sum ? marks_height() : 0);
    }
    return sum;
  }

  double draw_bar(SvgWriter& svg, const ScoreBar& bar, double top) const {
    double down = top + row_height;
    svg.text({percent(0), down - 4}, bar.name, Anchor::start, bar.is_sum ? "name sum" : "name");
    if (is_in_one_row(bar)) {
      svg.text({percent(100), down - 4}, bar.words, Anchor::end, "points");
    } else {
      down += row_height;
      svg.text({percent(0), down - 4}, bar.words, Anchor::start, "points");
    }
    const double height = height_of(bar);
    svg.box({percent(0), down}, percent(100), height, "frame");
    if (bar.highest > bar.lowest) {
      const double from = clamped(bar.lowest);
      const double to = clamped(bar.highest);
      svg.box({percent(from), down}, percent(to - from), height, "reach");
      svg.line({percent(from), down}, {percent(from), down + height}, "end");
      svg.line({percent(to), down}, {percent(to), down + height}, "end");
    }
    if (bar.points) {
      svg.box({percent(0), down + height / 3}, percent(clamped(*bar.points)), height / 3, "earned");
    }
    if (bar.is_sum) {
      draw_marks(svg, down + height);
      down += marks_height();
    }
    return down + height + gap;
  }

  void draw_marks(SvgWriter& svg, double top) const {
    for (std::size_t i = 0; i < bars_.marks.size(); ++i) {
      const LabelPlace& place = mark_places_[i];
      const double at = clamped(bars_.marks[i].from);
      const double down = top + static_cast<double>(place.row + 1) * row_height - 3;
      svg.line({percent(at), top - sum_height}, {percent(at), down - letters + 2}, "mark");
      svg.text({percent(place.at), down}, words_of(bars_.marks[i]), place.anchor, "mark-words");
    }
  }

  std::string description() const {
    std::string words;
    for (const ScoreBar& bar : bars_.bars) {
      words += fmt::format("{}{}: {}", words.empty() ? "" : "; ", bar.name, bar.words);
    }
    std::string marks;
    for (const ScoreMark& mark : bars_.marks) {
      marks +=
          fmt::format("{}{} from {}", marks.empty() ? " Grades: " : "; ", mark.name, mark.from);
    }
    return words + "." + marks + (marks.empty() ? "" : ".");
  }

  const ScoreBars& bars_;
  std::vector<LabelPlace> mark_places_;
};

}  // namespace

std::string draw(const ScoreBars& bars) { return BarsDrawing(bars).draw(); }

}  // namespace heelrule
