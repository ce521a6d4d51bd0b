#include "engine/drawing/ruler.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "engine/drawing/label_rows.hpp"

namespace heelrule {
namespace {

constexpr double narrowest = 280;  // pixels
constexpr double letters = 12;     // height of the letters
constexpr double row_height = 15;
constexpr double bar_height = 16;
constexpr double stem = 8;  // of a notch, above the bar
constexpr double most_strokes = 30;
constexpr double far_away = 2;  // stretches of the cuts

double stretch_of_cuts(const Ruler& ruler) {
  const std::size_t cuts = ruler.bands.size() - 1;
  if (cuts == 0) {
    return 0;
  }
  return *ruler.bands[cuts - 1].cut - *ruler.bands[0].cut;
}

class RulerDrawing {
 public:
  explicit RulerDrawing(const Ruler& ruler) : ruler_(ruler), reach_(reach(ruler)) {
    place_notches();
    place_bands();
    top_ = static_cast<double>(row_count(notch_places_)) * row_height + stem;
    foot_ = top_ + bar_height;
    name_top_ = foot_ + 6 + static_cast<double>(row_count(cut_places_)) * row_height;
  }

  std::string draw() {
    const double height = name_top_ + static_cast<double>(row_count(name_places_)) * row_height + 4;
    SvgWriter svg =
        SvgWriter::stretching({ruler_.id, ruler_.title, description()}, height, "ruler");
    draw_bands(svg);
    draw_strokes(svg);
    draw_notches(svg);
    return svg.take();
  }

 private:
  double share(double value) const {
    const double part = (value - reach_.from) / (reach_.to - reach_.from);
    return 100 * std::clamp(part, 0.0, 1.0);
  }

  double lower(std::size_t band) const {
    return band == 0 ? reach_.from : *ruler_.bands[band - 1].cut;
  }
  double upper(std::size_t band) const {
    return ruler_.bands[band].cut ? *ruler_.bands[band].cut : reach_.to;
  }

  // By place, so that neighbours on the ruler are neighbours in their row.
  void place_notches() {
    for (std::size_t i = 0; i < ruler_.notches.size(); ++i) {
      notches_.push_back(i);
    }
    std::stable_sort(notches_.begin(), notches_.end(), [&](std::size_t a, std::size_t b) {
      return ruler_.notches[a].value < ruler_.notches[b].value;
    });
    std::vector<Label> labels;
    for (const std::size_t i : notches_) {
      const RulerNotch& notch = ruler_.notches[i];
      labels.push_back({share(notch.value), label_width(notch.words, letters)});
    }
    notch_places_ = in_rows(labels, narrowest);
  }

  void place_bands() {
    std::vector<Label> names;
    std::vector<Label> cuts;
    for (std::size_t i = 0; i < ruler_.bands.size(); ++i) {
      const RulerBand& band = ruler_.bands[i];
      names.push_back({(share(lower(i)) + share(upper(i))) / 2, label_width(band.name, letters)});
      if (band.cut) {
        cuts.push_back({share(*band.cut), label_width(band.cut_words, letters)});
      }
    }
    name_places_ = in_rows(names, narrowest);
    cut_places_ = in_rows(cuts, narrowest);
  }

  void draw_bands(SvgWriter& svg) const {
    for (std::size_t i = 0; i < ruler_.bands.size(); ++i) {
      const double from = share(lower(i));
      const double to = share(upper(i));
      svg.box({percent(from), top_}, percent(to - from), bar_height,
              fill_words(ruler_.bands[i].fill));
      const LabelPlace& name = name_places_[i];
      svg.text({percent(name.at), baseline(name_top_, name)}, ruler_.bands[i].name, name.anchor,
               ruler_.bands[i].fill == BandFill::open ? "band-name wanted" : "band-name");
      if (ruler_.bands[i].cut) {
        const LabelPlace& cut = cut_places_[i];
        const double down = baseline(foot_ + 3, cut);
        svg.line({percent(to), foot_}, {percent(to), down - letters + 1}, "cut");
        svg.text({percent(cut.at), down}, ruler_.bands[i].cut_words, cut.anchor, "cut-words");
      }
    }
  }

  // The frame of what is wanted comes last, so that no neighbour covers it.
  void draw_strokes(SvgWriter& svg) const {
    const double step = stroke_step(reach_);
    const double first = std::ceil(reach_.from / step - 1e-9);
    for (double i = first; i * step <= reach_.to + step * 1e-9; ++i) {
      const bool is_fifth = std::fmod(std::fabs(i), 5) < 0.5;
      const double at = share(i * step);
      svg.line({percent(at), top_}, {percent(at), top_ + (is_fifth ? 7 : 4)}, "stroke");
    }
    for (std::size_t i = 0; i < ruler_.bands.size(); ++i) {
      if (ruler_.bands[i].fill == BandFill::open) {
        const double from = share(lower(i));
        svg.box({percent(from), top_}, percent(share(upper(i)) - from), bar_height, "window");
      }
    }
  }

  void draw_notches(SvgWriter& svg) const {
    for (std::size_t place = 0; place < notches_.size(); ++place) {
      const RulerNotch& notch = ruler_.notches[notches_[place]];
      const LabelPlace& label = notch_places_[place];
      const std::string_view kind = notch.earlier ? "earlier" : "notch";
      const double at = share(notch.value);
      const std::size_t rows = row_count(notch_places_);
      const double down = static_cast<double>(rows - label.row) * row_height - 3;
      if (notch.doubt > 0) {
        const double from = share(notch.value - notch.doubt);
        svg.box({percent(from), top_ - 3}, percent(share(notch.value + notch.doubt) - from),
                bar_height + 3, fmt::format("{} doubt", kind));
      }
      svg.line({percent(at), down + 3}, {percent(at), foot_}, kind);
      svg.shape({percent(at), top_}, beyond(notch), true, kind);
      svg.text({percent(label.at), down}, notch.words, label.anchor, fmt::format("{}-words", kind));
    }
  }

  // A pointer down to the bar; of a reading that is not reached, out over its end.
  std::array<Point, 3> beyond(const RulerNotch& notch) const {
    if (notch.value < reach_.from) {
      return {{{0, 3}, {0, 13}, {-7, 8}}};
    }
    if (notch.value > reach_.to) {
      return {{{0, 3}, {0, 13}, {7, 8}}};
    }
    return {{{-4, -7}, {4, -7}, {0, 0}}};
  }

  static std::string_view fill_words(BandFill fill) {
    switch (fill) {
      case BandFill::open:
        return "band open";
      case BandFill::sparse:
        return "band sparse";
      case BandFill::dense:
        return "band dense";
    }
    return "";
  }

  static double baseline(double top, const LabelPlace& label) {
    return top + static_cast<double>(label.row + 1) * row_height - 2;
  }

  std::string description() const {
    std::string words;
    for (const RulerNotch& notch : ruler_.notches) {
      words += fmt::format("{}{}{}", words.empty() ? "Read: " : "; ",
                           notch.earlier ? "earlier " : "", notch.words);
    }
    words += fmt::format("{}On the ruler from low to high:", words.empty() ? "" : ". ");
    for (std::size_t i = 0; i < ruler_.bands.size(); ++i) {
      words += fmt::format("{} {}", i == 0 ? "" : ";", ruler_.bands[i].words);
    }
    return words + ".";
  }

  const Ruler& ruler_;
  RulerReach reach_;
  std::vector<std::size_t> notches_;  // by value
  std::vector<LabelPlace> notch_places_;
  std::vector<LabelPlace> cut_places_;
  std::vector<LabelPlace> name_places_;
  double top_ = 0;
  double foot_ = 0;
  double name_top_ = 0;
};

}  // namespace

RulerReach reach(const Ruler& ruler) {
  double lowest = 0;
  double highest = 0;
  bool any = false;
  const auto take = [&](double from, double to) {
    lowest = any ? std::min(lowest, from) : from;
    highest = any ? std::max(highest, to) : to;
    any = true;
  };
  for (const RulerBand& band : ruler.bands) {
    if (band.cut) {
      take(*band.cut, *band.cut);
    }
  }
  const double first_cut = lowest;
  const double last_cut = highest;
  for (const RulerNotch& notch : ruler.notches) {
    take(notch.value - notch.doubt, notch.value + notch.doubt);
  }
  const bool has_cuts = ruler.bands.size() > 1;
  const double of_cuts = stretch_of_cuts(ruler);
  const double around = std::max(std::fabs(first_cut), std::fabs(last_cut));
  const double unit = of_cuts > 0 ? of_cuts : has_cuts && around > 0 ? around : highest - lowest;
  const double stretch = unit > 0 ? unit : 1;
  const double least_end = 0.35 * stretch;
  const double from = has_cuts ? std::max(lowest, first_cut - far_away * stretch) : lowest;
  const double to = has_cuts ? std::min(highest, last_cut + far_away * stretch) : highest;
  const double low_end = std::min(from - 0.12 * stretch, (has_cuts ? first_cut : from) - least_end);
  const double high_end = std::max(to + 0.12 * stretch, (has_cuts ? last_cut : to) + least_end);
  return {lowest >= 0 && low_end < 0 ? 0 : low_end, high_end};
}

double stroke_step(const RulerReach& reach) {
  const double length = reach.to - reach.from;
  double step = std::pow(10, std::floor(std::log10(length / most_strokes)));
  for (const double factor : {2.0, 2.5, 2.0}) {
    if (length / step <= most_strokes) {
      break;
    }
    step *= factor;
  }
  return step;
}

std::string draw(const Ruler& ruler) { return RulerDrawing(ruler).draw(); }

}  // namespace heelrule
