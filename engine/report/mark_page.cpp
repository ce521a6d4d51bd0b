#include "engine/report/mark_page.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>

#include "engine/drawing/interval_rows.hpp"
#include "engine/drawing/ruler.hpp"
#include "engine/quantity/decimal.hpp"
#include "engine/quantity/quantity.hpp"
#include "engine/report/fill_template.hpp"
#include "engine/report/page_data.hpp"
#include "engine/report/page_frame.hpp"
#include "engine/report/page_quotes.hpp"
#include "engine/report/safety_parts.hpp"
#include "engine/report/verdict_words.hpp"

namespace heelrule {

std::string_view mark_head_template();
std::string_view mark_page_template();
std::string_view mark_overview_template();

namespace {

constexpr double full_points = 100;

// A code or a mark is not to be broken in the middle, however narrow its column.
constexpr std::string_view whole_words = ".marking table { overflow-wrap: normal; }";

BandFill fill_of_mark(std::size_t mark, std::size_t count) {
  return mark == 0 ? BandFill::open : mark + 1 == count ? BandFill::dense : BandFill::sparse;
}

// The marks lie on the ruler from the worst to the best.
Ruler mark_ruler(const MarkStory& story) {
  const std::vector<MarkBoundary>& marks = story.marking.marks;
  Ruler ruler{"mark-ruler", "Points and marks", {}, {}};
  for (std::size_t i = marks.size(); i-- > 0;) {
    RulerBand band;
    band.name = marks[i].name;
    band.fill = fill_of_mark(i, marks.size());
    band.words = fmt::format("{} (from {})", marks[i].name, shortest(marks[i].from));
    if (i > 0) {
      band.cut = marks[i - 1].from;
      band.cut_words = shortest(marks[i - 1].from);
    }
    ruler.bands.push_back(std::move(band));
  }
  ruler.notches.push_back(
      {*story.mark.points, 0, fmt::format("{} points", mark_points_words(story)), false});
  return ruler;
}

// A measure beside the reference: what would have been right in the frame.
std::string reading_ruler(const MarkStory& story, const Comparison& one) {
  const ReferenceItem& item = story.reference.items[one.item];
  const auto* measure = std::get_if<MeasureKind>(&story.program.rules.traits[item.trait].kind);
  if (measure == nullptr || !one.difference || one.tolerance <= 0) {
    return "";
  }
  const Unit unit = measure->unit;
  const double centre = plain_number(*item.value);
  const auto cut = [&](double at) { return std::optional(in_unit(at, unit)); };
  const auto cut_words = [&](double at) { return show(at, unit, 1); };
  Ruler ruler{fmt::format("reading-{}", one.item + 1), item_title(story, item), {}, {}};
  const double low = centre - one.tolerance;
  const double high = centre + one.tolerance;
  ruler.bands = {
      {"less", BandFill::dense, cut(low), cut_words(low), "less than the tolerance allows"},
      {"right", BandFill::open, cut(high), cut_words(high), "within tolerance of the reference"},
      {"more", BandFill::dense, std::nullopt, "", "more than the tolerance allows"}};
  ruler.notches = {
      {in_unit(centre + *one.difference, unit), 0,
       fmt::format("you {}", show(centre + *one.difference, unit)), false},
      {in_unit(centre, unit), 0, fmt::format("reference {}", show(centre, unit)), true}};
  return draw(ruler);
}

IntervalRows share_rows(const MarkStory& story) {
  IntervalRows picture{"shares", "What made the score differ", 0, 0, {}, {}};
  const std::vector<ScoreShare>& shares = story.mark.attribution.shares;
  const std::vector<std::string> points = share_points(story.mark.attribution);
  for (std::size_t i = 0; i < shares.size(); ++i) {
    IntervalRow row;
    row.name = share_title(story, shares[i]);
    row.value = shares[i].points;
    row.low = std::min(0.0, shares[i].points);
    row.high = std::max(0.0, shares[i].points);
    row.words = points[i];
    picture.from = std::min(picture.from, row.low);
    picture.to = std::max(picture.to, row.high);
    picture.rows.push_back(std::move(row));
  }
  const double step = stroke_step({0, std::max(picture.to - picture.from, 1.0)}, 6);
  picture.from = step * std::floor(picture.from / step);
  picture.to = step * std::ceil(std::max(picture.to, picture.from + step) / step);
  const auto strokes =
      static_cast<std::size_t>(std::lround((picture.to - picture.from) / step)) + 1;
  for (std::size_t i = 0; i < strokes; ++i) {
    picture.strokes.push_back(picture.from + step * static_cast<double>(i));
  }
  return picture;
}

void add_subject(const MarkStory& story, PageData& data) {
  const RuleSet& rules = story.program.rules;
  std::vector<std::string> parts;
  const auto add = [&](std::string_view label, const std::string& words) {
    if (!words.empty()) {
      parts.push_back(fmt::format("{}{}", label, words));
    }
  };
  add("client ", story.record.client);
  add("", story.record.shoe_label);
  add("on ", story.record.date);
  add("", reference_words(story.reference));
  add("rules ", std::string(rules.short_name()));
  add("edition ", rules.edition);
  add("", story.marking.title);
  data.each("head", parts);
}

// Which mark it is, of what, and whom the client is to see first.
std::string head(const MarkStory& story, std::string_view title) {
  PageData data;
  data.words("title", title);
  add_subject(story, data);
  const std::vector<std::string> refers = referrals_first(story);
  data.each("refers", refers);
  data.fact("any_refers", !refers.empty());
  return *fill_template(mark_head_template(), data);
}

PageFrame frame_of(const MarkStory& story, std::string title, std::string running_right) {
  PageFrame frame;
  frame.head = head(story, title);
  frame.title = std::move(title);
  frame.running_left = std::string(story.program.rules.title.in(story.languages));
  frame.running_right = std::move(running_right);
  frame.kind = "marking";
  frame.last = last_part(mark_cautions(story));
  frame.own_style = whole_words;
  return frame;
}

class StudentPage {
 public:
  StudentPage(const MarkStory& story, std::size_t place) : story_(story), place_(place) {}

  std::string write() {
    const std::string title = fmt::format("Mark of {}", student_name(story_.record, place_));
    mark();
    faults("critical", story_.mark.critical.faults, critical_words);
    faults("edge", story_.mark.critical.on_the_edge, edge_words);
    data_.each("verdict", page_quotes(verdict_sentences(story_)));
    attribution();
    items("lessons", is_fault);
    items("within", [](Likeness likeness) { return likeness == Likeness::within; });
    items("not_held", [](Likeness likeness) { return likeness == Likeness::not_held; });
    PageFrame frame = frame_of(story_, title, student_name(story_.record, place_));
    frame.body = *fill_template(mark_page_template(), data_);
    return framed_page(frame);
  }

 private:
  void mark() {
    const Mark& mark = story_.mark;
    data_.words("mark", mark.mark ? story_.marking.marks[*mark.mark].name : "no mark");
    data_.each("mark_says", page_quotes(mark_sentences(story_)));
    if (mark.points) {
      data_.markup("mark_picture", draw(mark_ruler(story_)));
    }
  }

  template <class Words>
  void faults(std::string_view list, const std::vector<CriticalFault>& all, Words words) {
    data_.fact(fmt::format("any_{}", list), !all.empty());
    for (const CriticalFault& fault : all) {
      data_.add(list).words("words", page_quotes(words(story_, fault)));
    }
  }

  void attribution() {
    const Attribution& found = story_.mark.attribution;
    data_.fact("any_shares", !found.shares.empty());
    if (!found.shares.empty()) {
      data_.words("share_says", share_words(story_));
      data_.markup("share_picture", draw(share_rows(story_)));
    }
  }

  void items(std::string_view list, bool (*wanted)(Likeness)) {
    const std::vector<TaughtItem> taught = taught_items(story_, wanted);
    data_.fact(fmt::format("any_{}", list), !taught.empty());
    for (const TaughtItem& one : taught) {
      PageData& entry = data_.add(list);
      entry.words("title", one.title);
      entry.words("outcome", in_words(one.likeness));
      entry.words("weight", one.weight > 0 ? with_places(one.weight, 1) : "");
      entry.words("says", page_quotes(one.says));
      entry.words("panel", one.panel);
      entry.words("how", one.how);
      entry.markup("picture", reading_ruler(story_, story_.mark.comparisons[one.comparison]));
    }
  }

  const MarkStory& story_;
  std::size_t place_;
  PageData data_;
};

std::string_view sign_of(Likeness likeness) {
  switch (likeness) {
    case Likeness::right:
      return "=";
    case Likeness::within:
      return "≈";
    case Likeness::off:
      return "≠";
    case Likeness::missed:
      return "–";
    case Likeness::invented:
      return "+";
    case Likeness::not_held:
      return "·";
  }
  return {};
}

class Overview {
 public:
  Overview(std::span<const MarkStory> stories, const std::vector<std::string>& files)
      : stories_(stories), files_(files) {}

  std::string write() {
    const MarkStory& any = stories_.front();
    for (std::size_t i = 0; i < stories_.size(); ++i) {
      add_row(i);
      data_.add("students").words("words", student_name(stories_[i].record, i));
    }
    data_.markup("points_picture", draw(points_rows()));
    for (std::size_t item = 0; item < any.reference.items.size(); ++item) {
      add_question(item);
    }
    PageFrame frame =
        frame_of(any, "Marks of all records", fmt::format("{} records", stories_.size()));
    frame.body = *fill_template(mark_overview_template(), data_);
    return framed_page(frame);
  }

 private:
  void add_row(std::size_t place) {
    const MarkStory& story = stories_[place];
    const Mark& mark = story.mark;
    PageData& row = data_.add("records");
    row.words("name", student_name(story.record, place));
    row.words("file", files_[place]);
    row.words("mark", mark.mark ? story.marking.marks[*mark.mark].name : "no mark");
    row.words("points", mark_points_words(story));
    row.words("grade", grade_words(story.program, mark.verdict));
    row.fact("differs", mark.verdict.grade != story.reference.verdict.grade);
    row.words("expected", grade_words(story.program, story.reference.verdict));
    row.words("counts", count_words(mark));
    for (const CriticalFault& fault : mark.critical.faults) {
      row.add("critical").words("words", critical_title(story, fault));
    }
  }

  IntervalRows points_rows() const {
    IntervalRows picture{"points", "Points of all records", 0, full_points, {}, {}};
    for (const MarkBoundary& mark : stories_.front().marking.marks) {
      picture.strokes.insert(picture.strokes.begin(), mark.from);
    }
    picture.strokes.push_back(full_points);
    for (std::size_t i = 0; i < stories_.size(); ++i) {
      IntervalRow row;
      row.name = student_name(stories_[i].record, i);
      row.value = stories_[i].mark.points.value_or(std::numeric_limits<double>::quiet_NaN());
      row.words = fmt::format("{} {}", mark_points_words(stories_[i]), name_of_mark(i));
      picture.rows.push_back(std::move(row));
    }
    return picture;
  }

  std::string name_of_mark(std::size_t place) const {
    const auto& mark = stories_[place].mark.mark;
    return mark ? stories_[place].marking.marks[*mark].name : "no mark";
  }

  static const Comparison* comparison_of(const MarkStory& story, std::size_t item) {
    const auto found = std::find_if(story.mark.comparisons.begin(), story.mark.comparisons.end(),
                                    [&](const Comparison& one) { return one.item == item; });
    return found == story.mark.comparisons.end() ? nullptr : &*found;
  }

  void add_question(std::size_t item) {
    const MarkStory& any = stories_.front();
    std::vector<const Comparison*> all;
    for (const MarkStory& story : stories_) {
      all.push_back(comparison_of(story, item));
    }
    if (std::all_of(all.begin(), all.end(), [](const Comparison* one) { return one == nullptr; })) {
      return;
    }
    PageData& row = data_.add("questions");
    row.words("title", item_title(any, any.reference.items[item]));
    std::size_t faults = 0;
    for (const Comparison* one : all) {
      PageData& cell = row.add("cells");
      const bool is_faulty = one != nullptr && is_fault(one->likeness);
      cell.words("words", one == nullptr ? "" : sign_of(one->likeness));
      cell.words("says", one == nullptr ? "nothing recorded" : in_words(one->likeness));
      cell.fact("far", is_faulty);
      faults += is_faulty ? 1 : 0;
    }
    row.words("faults", fmt::format("{}", faults));
  }

  std::span<const MarkStory> stories_;
  const std::vector<std::string>& files_;
  PageData data_;
};

}  // namespace

std::string mark_page(const MarkStory& story, std::size_t place) {
  return StudentPage(story, place).write();
}

std::string mark_overview(std::span<const MarkStory> stories,
                          const std::vector<std::string>& files) {
  return Overview(stories, files).write();
}

}  // namespace heelrule
