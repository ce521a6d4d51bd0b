#include "engine/drawing/ruler.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "engine/drawing/label_rows.hpp"

namespace heelrule {
namespace {

constexpr double far_away = 2;  // stretches of the cuts

// In pixels.
struct RulerSizes {
  double narrowest = 280;
  double letters = 12;  // height of the letters
  double row_height = 15;
  double bar_height = 16;
  double stem = 8;        // of a notch, above the bar
  double pointer = 4;     // half of its width
  bool has_words = true;  // of readings and bands
  std::string_view kind = "ruler";
};

constexpr RulerSizes small{150, 9, 10, 9, 6, 3, false, "ruler small"};

double stretch_of_cuts(const Ruler& ruler) {
  const std::size_t cuts = ruler.bands.size() - 1;
  if (cuts == 0) {
    return 0;
  }
  return *ruler.bands[cuts - 1].cut - *ruler.bands[0].cut;
}

class RulerDrawing {
 public:
  RulerDrawing(const Ruler& ruler, const RulerSizes& sizes)
      : ruler_(ruler), sizes_(sizes), reach_(reach(ruler)) {
    place_notches();
    place_bands();
    top_ = height_of(notch_places_) + sizes.stem;
    foot_ = top_ + sizes.bar_height;
    name_top_ = foot_ + (sizes.has_words ? 6 : 2) + height_of(cut_places_);
  }

  std::string draw() {
    const double height = name_top_ + height_of(name_places_) + (sizes_.has_words ? 4 : 0);
    SvgWriter svg =
        SvgWriter::stretching({ruler_.id, ruler_.title, description()}, height, sizes_.kind);
    draw_bands(svg);
    draw_strokes(svg);
    draw_notches(svg);
    return svg.take();
  }

 private:
  double height_of(const std::vector<LabelPlace>& places) const {
    return static_cast<double>(row_count(places)) * sizes_.row_height;
  }

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
    if (!sizes_.has_words) {
      return;
    }
    std::vector<Label> labels;
    for (const std::size_t i : notches_) {
      const RulerNotch& notch = ruler_.notches[i];
      labels.push_back({share(notch.value), label_width(notch.words, sizes_.letters)});
    }
    notch_places_ = beside_their_lines(labels);
  }

  // Words that run into each other would lie on each other's lines. Two of them stand to the left
  // and to the right of theirs; more of them go down like stairs, away from the nearer edge.
  std::vector<LabelPlace> beside_their_lines(const std::vector<Label>& labels) const {
    std::vector<LabelPlace> places = in_rows(labels, sizes_.narrowest);
    if (row_count(places) < 2) {
      return places;
    }
    const auto has_room = [&](const Label& label, Anchor anchor) {
      const double room = anchor == Anchor::end ? label.at : 100 - label.at;
      return label.width <= room / 100 * sizes_.narrowest;
    };
    const auto all_have_room = [&](Anchor anchor) {
      return std::all_of(labels.begin(), labels.end(),
                         [&](const Label& label) { return has_room(label, anchor); });
    };
    const std::size_t count = labels.size();
    if (count == 2 && has_room(labels[0], Anchor::end) && has_room(labels[1], Anchor::start)) {
      return {{0, Anchor::end, labels[0].at}, {0, Anchor::start, labels[1].at}};
    }
    const bool to_the_right = all_have_room(Anchor::start);
    if (!to_the_right && !all_have_room(Anchor::end)) {
      return places;
    }
    for (std::size_t i = 0; i < count; ++i) {
      places[i] = {to_the_right ? count - 1 - i : i, to_the_right ? Anchor::start : Anchor::end,
                   labels[i].at};
    }
    return places;
  }

  void place_bands() {
    std::vector<Label> names;
    std::vector<Label> cuts;
    for (std::size_t i = 0; i < ruler_.bands.size(); ++i) {
      const RulerBand& band = ruler_.bands[i];
      names.push_back(
          {(share(lower(i)) + share(upper(i))) / 2, label_width(band.name, sizes_.letters)});
      if (band.cut) {
        cuts.push_back({share(*band.cut), label_width(band.cut_words, sizes_.letters)});
      }
    }
    cut_places_ = in_rows(cuts, sizes_.narrowest);
    if (sizes_.has_words) {
      name_places_ = in_rows(names, sizes_.narrowest);
    }
  }

  void draw_bands(SvgWriter& svg) const {
    for (std::size_t i = 0; i < ruler_.bands.size(); ++i) {
      const double from = share(lower(i));
      const double to = share(upper(i));
      svg.box({percent(from), top_}, percent(to - from), sizes_.bar_height,
              fill_words(ruler_.bands[i].fill));
      if (sizes_.has_words) {
        const LabelPlace& name = name_places_[i];
        svg.text({percent(name.at), baseline(name_top_, name)}, ruler_.bands[i].name, name.anchor,
                 ruler_.bands[i].fill == BandFill::open ? "band-name wanted" : "band-name");
      }
      if (ruler_.bands[i].cut) {
        const LabelPlace& cut = cut_places_[i];
        const double down = baseline(foot_ + (sizes_.has_words ? 3 : 1), cut);
        svg.line({percent(to), foot_}, {percent(to), down - sizes_.letters + 1}, "cut");
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
      svg.line({percent(at), top_},
               {percent(at), top_ + sizes_.bar_height * (is_fifth ? 7 : 4) / 16}, "stroke");
    }
    for (std::size_t i = 0; i < ruler_.bands.size(); ++i) {
      if (ruler_.bands[i].fill == BandFill::open) {
        const double from = share(lower(i));
        svg.box({percent(from), top_}, percent(share(upper(i)) - from), sizes_.bar_height,
                "window");
      }
    }
  }

  void draw_notches(SvgWriter& svg) const {
    for (std::size_t place = 0; place < notches_.size(); ++place) {
      const RulerNotch& notch = ruler_.notches[notches_[place]];
      const std::string_view kind = notch.earlier ? "earlier" : "notch";
      const double at = share(notch.value);
      if (notch.doubt > 0) {
        const double from = share(notch.value - notch.doubt);
        svg.box({percent(from), top_ - 3}, percent(share(notch.value + notch.doubt) - from),
                sizes_.bar_height + 3, fmt::format("{} doubt", kind));
      }
      const double words_foot = sizes_.has_words ? draw_words(svg, notch, notch_places_[place]) : 0;
      svg.line({percent(at), words_foot}, {percent(at), foot_}, kind);
      svg.shape({percent(at), top_}, beyond(notch), true, kind);
    }
  }

  // Gives where the line down from them begins.
  double draw_words(SvgWriter& svg, const RulerNotch& notch, const LabelPlace& label) const {
    const std::size_t rows = row_count(notch_places_);
    const double down = static_cast<double>(rows - label.row) * sizes_.row_height - 3;
    svg.text({percent(label.at), down}, notch.words, label.anchor,
             notch.earlier ? "earlier-words" : "notch-words");
    return down + 3;
  }

  // A pointer down to the bar; of a reading that is not reached, out over its end.
  std::array<Point, 3> beyond(const RulerNotch& notch) const {
    const double half = sizes_.pointer;
    const double long_by = sizes_.stem - 1;
    const double middle = sizes_.bar_height / 2;
    if (notch.value < reach_.from) {
      return {{{0, middle - half - 1}, {0, middle + half + 1}, {-long_by, middle}}};
    }
    if (notch.value > reach_.to) {
      return {{{0, middle - half - 1}, {0, middle + half + 1}, {long_by, middle}}};
    }
    return {{{-half, -long_by}, {half, -long_by}, {0, 0}}};
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

  double baseline(double top, const LabelPlace& label) const {
    return top + static_cast<double>(label.row + 1) * sizes_.row_height - 2;
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
  const RulerSizes& sizes_;
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

double stroke_step(const RulerReach& reach, double most) {
  const double length = reach.to - reach.from;
  double step = std::pow(10, std::floor(std::log10(length / most)));
  for (const double factor : {2.0, 2.5, 2.0}) {
    if (length / step <= most) {
      break;
    }
    step *= factor;
  }
  return step;
}

std::string draw(const Ruler& ruler) {
  const RulerSizes full;
  return RulerDrawing(ruler, full).draw();
}

std::string draw_small(const Ruler& ruler) { return RulerDrawing(ruler, small).draw(); }

}  // namespace heelrule
