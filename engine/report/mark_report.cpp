#include "engine/report/mark_report.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <iterator>
#include <limits>

#include "engine/report/json_writer.hpp"
#include "engine/report/text_page.hpp"
#include "engine/report/value_words.hpp"

namespace heelrule {
namespace {

constexpr double unknown_number = std::numeric_limits<double>::quiet_NaN();

class MarkWriter {
 public:
  explicit MarkWriter(std::span<const MarkStory> stories) : stories_(stories) {}

  std::string write() {
    const MarkStory& any = stories_.front();
    json_.begin_object();
    json_.text("format", "heelrule mark").number("version", mark_json_version);
    json_.text("rules", any.program.rules.short_name());
    json_.text("edition", any.program.rules.edition);
    json_.text("title", any.marking.title);
    boundaries(any.marking);
    reference(any);
    json_.key("records").begin_array();
    for (const MarkStory& story : stories_) {
      record(story);
    }
    json_.end_array();
    json_.texts("cautions", mark_cautions(any));
    json_.end_object();
    return json_.take() + "\n";
  }

 private:
  void boundaries(const MarkingRules& marking) {
    json_.key("marks").begin_array();
    for (const MarkBoundary& mark : marking.marks) {
      json_.begin_object().text("mark", mark.name).number("from", mark.from);
      json_.text("means", mark.means).end_object();
    }
    json_.end_array();
  }

  void verdict(const MarkStory& story, const Verdict& found) {
    const RuleSet& rules = story.program.rules;
    if (found.grade) {
      json_.text("grade", rules.grades[*found.grade].name.value);
    } else {
      json_.key("grade").null();
    }
    const auto points = found.score.points();
    json_.number_or_null("score", points.value_or(0), points.has_value());
    std::vector<std::string> musts;
    for (const Finding& finding : found.findings) {
      if (finding.cap && (musts.empty() || musts.back() != rules.rules[finding.rule].name)) {
        musts.push_back(rules.rules[finding.rule].name);
      }
    }
    json_.texts("musts_failed", musts);
    json_.texts("referrals", referrals(rules, found));
  }

  static std::vector<std::string> referrals(const RuleSet& rules, const Verdict& found) {
    std::vector<std::string> names;
    for (const SafetyAnswer& answer : found.safety) {
      if (answer.yes) {
        names.push_back(rules.traits[rules.safety[answer.question].trait].name);
      }
    }
    for (const Spoken& spoken : found.referrals) {
      const std::string& name = rules.rules[found.findings[spoken.finding].rule].name;
      if (std::find(names.begin(), names.end(), name) == names.end()) {
        names.push_back(name);
      }
    }
    return names;
  }

  void head(const Inspection& about) {
    json_.text("observer", about.observer).text("date", about.date);
    json_.text("client", about.client).text("shoe", about.shoe_label);
  }

  void reference(const MarkStory& story) {
    json_.key("reference").begin_object();
    head(story.reference.inspection);
    json_.number("panel", static_cast<double>(story.reference.panel));
    verdict(story, story.reference.verdict);
    json_.end_object();
  }

  void record(const MarkStory& story) {
    const Mark& mark = story.mark;
    json_.begin_object();
    head(story.record);
    name_of_mark("mark", story, mark.mark);
    name_of_mark("mark_without_caps", story, mark.uncapped);
    json_.number_or_null("points", mark.points.value_or(0), mark.points.has_value());
    json_.texts("says", mark_sentences(story));
    verdict(story, mark.verdict);
    json_.truth("grade_agrees", mark.verdict.grade == story.reference.verdict.grade);
    json_.texts("verdict_says", verdict_sentences(story));
    faults("critical", story, mark.critical.faults, critical_words);
    faults("on_the_edge", story, mark.critical.on_the_edge, edge_words);
    attribution(story);
    json_.key("traits").begin_array();
    for (const Comparison& one : mark.comparisons) {
      comparison(story, one);
    }
    json_.end_array().end_object();
  }

  void name_of_mark(std::string_view key, const MarkStory& story,
                    const std::optional<std::size_t>& mark) {
    if (mark) {
      json_.text(key, story.marking.marks[*mark].name);
    } else {
      json_.key(key).null();
    }
  }

  template <class Words>
  void faults(std::string_view key, const MarkStory& story, const std::vector<CriticalFault>& all,
              Words words) {
    const RuleSet& rules = story.program.rules;
    json_.key(key).begin_array();
    for (const CriticalFault& fault : all) {
      json_.begin_object().text("kind", in_words(fault.kind));
      json_.text("about", is_about_safety(fault)
                              ? rules.traits[rules.safety[fault.about].trait].name
                              : rules.rules[fault.about].name);
      name_of_mark("caps", story, fault.cap);
      json_.text("says", words(story, fault)).end_object();
    }
    json_.end_array();
  }

  void attribution(const MarkStory& story) {
    const RuleSet& rules = story.program.rules;
    const Attribution& found = story.mark.attribution;
    json_.key("score_difference").begin_object();
    json_.number("points", found.record_points - found.reference_points);
    json_.text("by", found.by_section ? "section" : "trait");
    json_.key("shares").begin_array();
    for (const ScoreShare& share : found.shares) {
      std::vector<std::string> names;
      names.reserve(share.traits.size());
      for (const std::size_t trait : share.traits) {
        names.push_back(rules.traits[trait].name);
      }
      json_.begin_object().texts("traits", names);
      if (share.section) {
        json_.text("section", rules.sections[*share.section].name.value);
      } else {
        json_.key("section").null();
      }
      json_.number("points", share.points).end_object();
    }
    json_.end_array().end_object();
  }

  // In the unit of the trait, in levels, or as a fraction of the whole.
  static double amount(const Trait& trait, double stored) {
    const auto* measure = std::get_if<MeasureKind>(&trait.kind);
    return measure == nullptr ? stored : in_unit(stored, measure->unit);
  }

  void comparison(const MarkStory& story, const Comparison& one) {
    const ReferenceItem& item = story.reference.items[one.item];
    const Trait& trait = story.program.rules.traits[item.trait];
    json_.begin_object().text("trait", trait.name).text("side", in_words(item.side));
    json_.text("outcome", in_words(one.likeness));
    json_.number("credit", one.credit).number("weight", one.weight);
    json_.text("recorded", recorded_value(story, item));
    json_.text("reference", reference_value(story, item));
    const auto number = [&](const char* key, const Value* value) {
      const double plain = value == nullptr ? unknown_number : plain_number(*value);
      json_.number_or_null(key, amount(trait, plain), !std::isnan(plain));
    };
    const Observation* recorded = story.record.find(item.trait, item.side);
    number("recorded_number", recorded == nullptr ? nullptr : &recorded->value);
    number("reference_number", item.value ? &*item.value : nullptr);
    json_.number_or_null("difference", amount(trait, one.difference.value_or(0)),
                         one.difference.has_value());
    json_.number("tolerance", amount(trait, one.tolerance));
    json_.text("tolerance_from", in_words(one.source));
    json_.number_or_null("normalised_error", one.normalised_error.value_or(0),
                         one.normalised_error.has_value());
    json_.key("panel").begin_object();
    json_.number("asked", static_cast<double>(item.asked));
    json_.number("agreed", static_cast<double>(item.agreed));
    json_.number("spread", amount(trait, item.deviation));
    json_.truth("split", item.state == ReferenceState::split).end_object();
    json_.text("says", comparison_words(story, one));
    json_.text("how", how_words(story, item)).end_object();
  }

  std::span<const MarkStory> stories_;
  JsonWriter json_;
};

void joined_line(TextPage& page, const std::vector<std::string>& parts) {
  std::vector<std::string> kept;
  std::copy_if(parts.begin(), parts.end(), std::back_inserter(kept),
               [](const std::string& part) { return !part.empty(); });
  page.line(fmt::format("{}", fmt::join(kept, " · ")));
}

class MarkText {
 public:
  MarkText(TextPage& page, const MarkStory& story, std::size_t place)
      : page_(page), story_(story), place_(place) {}

  void write() {
    head();
    refers();
    mark();
    critical();
    heading_with_items("Verdict", verdict_sentences(story_));
    attribution();
    faults();
    others("Within tolerance", [](Likeness likeness) { return likeness == Likeness::within; });
    others("Not counted", [](Likeness likeness) { return likeness == Likeness::not_held; });
    heading_with_items("Please note", mark_cautions(story_));
  }

 private:
  void head() {
    const Inspection& record = story_.record;
    page_.title(fmt::format("Mark of {}", student_name(record, place_)));
    joined_line(page_, {record.client.empty() ? "" : "client " + record.client, record.shoe_label,
                        record.date.empty() ? "" : "on " + record.date});
    const RuleSet& rules = story_.program.rules;
    joined_line(page_,
                {reference_words(story_.reference), fmt::format("rules {}", rules.short_name()),
                 rules.edition.empty() ? "" : "edition " + rules.edition, story_.marking.title});
  }

  void refers() {
    const std::vector<std::string> said = referrals_first(story_);
    if (!said.empty()) {
      page_.heading("See a licensed practitioner first", TextPage::Tone::urgent);
      page_.line("By the reference this client is to be seen by one before anything else:");
      for (const std::string& sentence : said) {
        page_.item(sentence);
      }
    }
  }

  void mark() {
    const Mark& mark = story_.mark;
    page_.heading(mark.mark ? fmt::format("Mark: {}", story_.marking.marks[*mark.mark].name)
                            : "No mark");
    for (const std::string& sentence : mark_sentences(story_)) {
      page_.item(sentence);
    }
  }

  void critical() {
    const CriticalFaults& found = story_.mark.critical;
    if (!found.faults.empty()) {
      page_.heading("Critical", TextPage::Tone::urgent);
      for (const CriticalFault& fault : found.faults) {
        page_.item(critical_words(story_, fault));
      }
    }
    if (!found.on_the_edge.empty()) {
      page_.heading("On the edge");
      for (const CriticalFault& fault : found.on_the_edge) {
        page_.item(edge_words(story_, fault));
      }
    }
  }

  void heading_with_items(std::string_view heading, const std::vector<std::string>& items) {
    page_.heading(heading);
    for (const std::string& item : items) {
      page_.item(item);
    }
  }

  void attribution() {
    const Attribution& found = story_.mark.attribution;
    if (found.shares.empty()) {
      return;
    }
    page_.heading("What made the score differ");
    page_.line(share_words(story_));
    const std::vector<std::string> points = share_points(found);
    for (std::size_t i = 0; i < points.size(); ++i) {
      page_.item(fmt::format("{} points: {}", points[i], share_title(story_, found.shares[i])));
    }
  }

  void labelled(std::string_view label, const std::string& words) {
    if (!words.empty()) {
      page_.detail(fmt::format("{}: {}", label, words));
    }
  }

  void faults() {
    const std::vector<TaughtItem> taught = taught_items(story_, is_fault);
    if (taught.empty()) {
      return;
    }
    page_.heading("To learn from");
    for (const TaughtItem& one : taught) {
      page_.item(fmt::format("{}: {}", one.title, in_words(one.likeness)));
      page_.detail(one.says);
      labelled("Panel", one.panel.empty() ? "" : one.panel + ".");
      labelled("How", one.how);
    }
  }

  void others(std::string_view heading, bool (*wanted)(Likeness)) {
    const std::vector<TaughtItem> taught = taught_items(story_, wanted);
    if (!taught.empty()) {
      page_.heading(heading);
    }
    for (const TaughtItem& one : taught) {
      page_.item(fmt::format("{}: {}", one.title, one.says));
      labelled("Panel", one.panel.empty() ? "" : one.panel + ".");
    }
  }

  TextPage& page_;
  const MarkStory& story_;
  std::size_t place_;
};

void write_all(TextPage& page, std::span<const MarkStory> stories) {
  page.title("All records");
  std::vector<std::pair<std::string, std::string>> rows;
  for (std::size_t i = 0; i < stories.size(); ++i) {
    const Mark& mark = stories[i].mark;
    rows.emplace_back(
        student_name(stories[i].record, i),
        fmt::format("{}, {} points; {} critical; {}",
                    mark.mark ? stories[i].marking.marks[*mark.mark].name : "no mark",
                    mark_points_words(stories[i]), mark.critical.faults.size(), count_words(mark)));
  }
  page.table(rows);
}

}  // namespace

std::string mark_json(std::span<const MarkStory> stories) { return MarkWriter(stories).write(); }

std::string mark_text(std::span<const MarkStory> stories, bool colour) {
  std::string all;
  for (std::size_t i = 0; i < stories.size(); ++i) {
    TextPage page(colour);
    MarkText(page, stories[i], i).write();
    all += (i == 0 ? "" : "\n\n") + page.take();
  }
  if (stories.size() > 1) {
    TextPage page(colour);
    write_all(page, stories);
    all += "\n\n" + page.take();
  }
  return all;
}

}  // namespace heelrule
