#include "engine/report/mark_words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "engine/quantity/decimal.hpp"
#include "engine/quantity/quantity.hpp"
#include "engine/quantity/settle.hpp"
#include "engine/report/account.hpp"
#include "engine/report/recorded_words.hpp"
#include "engine/report/value_words.hpp"
#include "engine/report/verdict_words.hpp"

namespace heelrule {
namespace {

const Trait& trait_of(const MarkStory& story, const ReferenceItem& item) {
  return story.program.rules.traits[item.trait];
}

std::string levels_words(double levels) {
  const std::string number = with_places(std::fabs(levels), 1);
  return fmt::format("{} {}", number, number == "1" ? "level" : "levels");
}

// An amount of what a trait is measured in. Rounded up where it is a limit, so that what lies
// within does not look as if it lay beyond.
std::string amount_words(const Trait& trait, double amount) {
  if (const auto* measure = std::get_if<MeasureKind>(&trait.kind)) {
    return distance_words(measure->unit, std::fabs(amount));
  }
  return std::holds_alternative<ScaleKind>(trait.kind) ? levels_words(amount)
                                                       : show(std::fabs(amount), Unit::percent);
}

std::string not_seen_reason(const Inspection& inspection, const ReferenceItem& item) {
  const Observation* found = inspection.find(item.trait, item.side);
  const auto* not_seen = found == nullptr ? nullptr : std::get_if<NotSeen>(&found->value);
  return not_seen == nullptr ? "" : not_seen->reason;
}

std::string_view direction(const Trait& trait, double difference) {
  const bool is_scale = std::holds_alternative<ScaleKind>(trait.kind);
  return difference > 0 ? (is_scale ? "higher" : "more") : (is_scale ? "lower" : "less");
}

// `: yours is 5 mm less, and up to 2.8 mm would have been right`
std::string off_words(const Comparison& one, const Trait& trait) {
  if (!one.difference) {
    return "";
  }
  std::string words = fmt::format(": yours is {} {}", amount_words(trait, *one.difference),
                                  direction(trait, *one.difference));
  if (one.tolerance > 0) {
    words +=
        fmt::format(", and up to {} would have been right", amount_words(trait, one.tolerance));
  } else if (std::holds_alternative<MeasureKind>(trait.kind)) {
    words += ", and no tolerance is known for it";
  }
  if (one.credit > 0) {
    words += fmt::format(", which earns {} of the credit", show(one.credit, Unit::percent));
  }
  return words;
}

// What a level means, where the rule set describes it.
std::string meaning_words(const MarkStory& story, const ReferenceItem& item) {
  const auto* seen = item.value ? std::get_if<LevelSeen>(&*item.value) : nullptr;
  if (seen == nullptr) {
    return "";
  }
  const Level& level = levels_of(trait_of(story, item).kind)[seen->level];
  const std::string_view meaning = level.meaning.in(story.languages);
  return meaning.empty() ? ""
                         : fmt::format(" `{}` means: {}{}", in_words(level.name.value), meaning,
                                       meaning.ends_with('.') ? "" : ".");
}

std::string with_reason(std::string words, const std::string& reason) {
  return reason.empty() ? words + "." : fmt::format("{} (“{}”).", words, reason);
}

std::string not_held_words(const MarkStory& story, const ReferenceItem& item) {
  const std::string yours = recorded_value(story, item);
  const std::string said = yours.empty() || yours == "not seen"
                               ? std::string("You recorded nothing")
                               : fmt::format("You recorded {}", yours);
  if (item.state == ReferenceState::silent) {
    return fmt::format("{}; the reference says nothing of it, so it does not count.", said);
  }
  return fmt::format("{}; the panel itself is split about it, so it does not count.", said);
}

std::string rule_words(const MarkStory& story, std::size_t rule) {
  return rule_title(story.program.rules.rules[rule], story.languages);
}

std::string question_words(const MarkStory& story, std::size_t question) {
  const std::size_t trait = story.program.rules.safety[question].trait;
  return std::string(story.program.rules.traits[trait].ask.in(story.languages));
}

std::vector<std::size_t> failed_musts(const Verdict& verdict) {
  std::vector<std::size_t> rules;
  for (const Finding& finding : verdict.findings) {
    if (finding.cap) {
      rules.push_back(finding.rule);
    }
  }
  rules.erase(std::unique(rules.begin(), rules.end()), rules.end());
  return rules;
}

std::vector<std::string> referral_titles(const MarkStory& story, const Verdict& verdict) {
  std::vector<std::string> titles;
  for (const SafetyAnswer& answer : verdict.safety) {
    if (answer.yes) {
      titles.push_back(question_words(story, answer.question));
    }
  }
  for (const Spoken& spoken : verdict.referrals) {
    std::string title = rule_words(story, verdict.findings[spoken.finding].rule);
    if (std::find(titles.begin(), titles.end(), title) == titles.end()) {
      titles.push_back(std::move(title));
    }
  }
  return titles;
}

std::vector<std::string> must_titles(const MarkStory& story, const Verdict& verdict) {
  std::vector<std::string> titles;
  for (const std::size_t rule : failed_musts(verdict)) {
    titles.push_back(rule_words(story, rule));
  }
  return titles;
}

std::string listed(const std::vector<std::string>& titles, std::string_view none) {
  return titles.empty() ? std::string(none) : fmt::format("“{}”", fmt::join(titles, "”, “"));
}

std::string beside(std::string_view what, const std::vector<std::string>& yours,
                   const std::vector<std::string>& theirs) {
  if (yours == theirs) {
    return fmt::format("{}: {}, as by the reference.", what, listed(yours, "none"));
  }
  return fmt::format("{}: by your record {}; by the reference {}.", what, listed(yours, "none"),
                     listed(theirs, "none"));
}

// Said beside a trait that moved the score although it is no fault.
std::string_view excuse_words(const MarkStory& story, std::size_t trait) {
  bool is_within = false;
  for (const Comparison& one : story.mark.comparisons) {
    if (story.reference.items[one.item].trait == trait) {
      if (is_fault(one.likeness)) {
        return "";
      }
      is_within = is_within || one.likeness == Likeness::within;
    }
  }
  return is_within ? " (within tolerance)" : " (not counted)";
}

std::string signed_points(double points) {
  const std::string words = with_places(std::fabs(points), 2);
  return words == "0" ? words : (points > 0 ? "+" : "−") + words;
}

}  // namespace

std::string_view in_words(Likeness likeness) {
  switch (likeness) {
    case Likeness::right:
      return "right";
    case Likeness::within:
      return "within tolerance";
    case Likeness::off:
      return "off";
    case Likeness::missed:
      return "missed";
    case Likeness::invented:
      return "invented";
    case Likeness::not_held:
      return "not held";
  }
  return {};
}

std::string_view in_words(ToleranceSource source) {
  switch (source) {
    case ToleranceSource::none:
      return "none";
    case ToleranceSource::trainer:
      return "trainer";
    case ToleranceSource::uncertainty:
      return "uncertainty";
    case ToleranceSource::panel:
      return "panel";
  }
  return {};
}

std::string_view in_words(CriticalKind kind) {
  switch (kind) {
    case CriticalKind::must_passed_over:
      return "must passed over";
    case CriticalKind::must_failed:
      return "must failed";
    case CriticalKind::safety_missed:
      return "safety missed";
    case CriticalKind::safety_denied:
      return "safety denied";
    case CriticalKind::referral_missed:
      return "referral missed";
  }
  return {};
}

std::string student_name(const Inspection& record, std::size_t place) {
  return record.observer.empty() ? fmt::format("record {}", place + 1) : record.observer;
}

std::string item_title(const MarkStory& story, const ReferenceItem& item) {
  const Trait& trait = trait_of(story, item);
  const std::string_view side = in_words(item.side);
  return side.empty() ? std::string(trait.ask.in(story.languages))
                      : fmt::format("{} ({})", trait.ask.in(story.languages), side);
}

std::string recorded_value(const MarkStory& story, const ReferenceItem& item) {
  const Observation* found = story.record.find(item.trait, item.side);
  return found == nullptr ? "" : recorded_words(story.program.rules, *found);
}

std::string reference_value(const MarkStory& story, const ReferenceItem& item) {
  if (story.reference.panel == 1) {
    const Observation* found = story.reference.inspection.find(item.trait, item.side);
    return found == nullptr ? "" : recorded_words(story.program.rules, *found);
  }
  if (!item.value) {
    return item.state == ReferenceState::silent ? "" : "not seen";
  }
  const auto* measure = std::get_if<MeasureKind>(&trait_of(story, item).kind);
  if (measure != nullptr) {
    return show(plain_number(*item.value), measure->unit);
  }
  return recorded_words(story.program.rules, {item.trait, item.side, *item.value, {}, {}});
}

std::string comparison_words(const MarkStory& story, const Comparison& one) {
  const ReferenceItem& item = story.reference.items[one.item];
  const Trait& trait = trait_of(story, item);
  const std::string yours = recorded_value(story, item);
  const std::string theirs = reference_value(story, item);
  switch (one.likeness) {
    case Likeness::right:
      return fmt::format("You recorded {}, as the reference does.", yours);
    case Likeness::within:
      return fmt::format(
          "You recorded {}; the reference says {}: {} {}, within the tolerance of "
          "{}.",
          yours, theirs, amount_words(trait, *one.difference), direction(trait, *one.difference),
          amount_words(trait, one.tolerance));
    case Likeness::off:
      return fmt::format("You recorded {}; the reference says {}{}.{}", yours, theirs,
                         off_words(one, trait), meaning_words(story, item));
    case Likeness::missed:
      return with_reason("You did not record this", not_seen_reason(story.record, item)) +
             fmt::format(" The reference says {}.{}", theirs, meaning_words(story, item));
    case Likeness::invented:
      return with_reason(
                 fmt::format("You recorded {}; the reference says that it is not to be seen",
                             yours),
                 not_seen_reason(story.reference.inspection, item)) +
             " Write `not seen` where you did not see it yourself.";
    case Likeness::not_held:
      return not_held_words(story, item);
  }
  return {};
}

std::string how_words(const MarkStory& story, const ReferenceItem& item) {
  return std::string(trait_of(story, item).how.in(story.languages));
}

std::string panel_words(const MarkStory& story, const ReferenceItem& item) {
  if (story.reference.panel == 1 || item.asked == 0) {
    return "";
  }
  const auto* measure = std::get_if<MeasureKind>(&trait_of(story, item).kind);
  const bool is_mean = measure != nullptr && item.value && item.asked > 1;
  return is_mean ? fmt::format("{} of {} within tolerance, spread {}", item.agreed, item.asked,
                               show(item.deviation, measure->unit, 2))
                 : fmt::format("{} of {} say so", item.agreed, item.asked);
}

std::string critical_words(const MarkStory& story, const CriticalFault& fault) {
  const std::string cap =
      fault.cap ? fmt::format(" The mark is at best `{}`.", story.marking.marks[*fault.cap].name)
                : "";
  switch (fault.kind) {
    case CriticalKind::must_passed_over:
      return fmt::format(
          "“{}” must pass, and by the reference it fails. Your record does not show "
          "that.{}",
          rule_words(story, fault.about), cap);
    case CriticalKind::must_failed:
      return fmt::format("“{}” must pass, and by the reference it does. By your record it fails.{}",
                         rule_words(story, fault.about), cap);
    case CriticalKind::safety_missed:
      return fmt::format(
          "The safety question “{}” has no answer. It comes before everything "
          "else.{}",
          question_words(story, fault.about), cap);
    case CriticalKind::safety_denied:
      return fmt::format(
          "The safety question “{}” was answered with no, and the reference says yes: "
          "this client is to see a licensed practitioner first.{}",
          question_words(story, fault.about), cap);
    case CriticalKind::referral_missed:
      return fmt::format(
          "“{}” refers to a licensed practitioner by the reference, and not by your "
          "record.{}",
          rule_words(story, fault.about), cap);
  }
  return {};
}

std::string critical_title(const MarkStory& story, const CriticalFault& fault) {
  return fmt::format(
      "{}: {}", in_words(fault.kind),
      is_about_safety(fault) ? question_words(story, fault.about) : rule_words(story, fault.about));
}

std::string edge_words(const MarkStory& story, const CriticalFault& fault) {
  return fmt::format(
      "“{}” comes out otherwise than by the reference, but what you recorded for it "
      "is right or within tolerance, or the panel is split. It stands on the edge, "
      "and is not held against you.",
      is_about_safety(fault) ? question_words(story, fault.about) : rule_words(story, fault.about));
}

std::vector<std::string> referrals_first(const MarkStory& story) {
  const Verdict& verdict = story.reference.verdict;
  const Account told = account(story.program, story.reference.inspection, verdict, story.languages);
  return referral_sentences(told, verdict);
}

std::string mark_points_words(const MarkStory& story) {
  if (!story.mark.points) {
    return "–";
  }
  std::vector<GradeBound> bounds;
  bounds.reserve(story.marking.marks.size());
  for (const MarkBoundary& mark : story.marking.marks) {
    bounds.push_back(mark.from * 1000);
  }
  return score_words(*story.mark.points, bounds);
}

std::vector<std::string> mark_sentences(const MarkStory& story) {
  const Mark& mark = story.mark;
  if (!mark.mark) {
    return {"There is no mark: nothing that both records could be compared by carries weight."};
  }
  std::vector<std::string> said{
      fmt::format("{} of 100 points: {}.", mark_points_words(story), count_words(mark))};
  const MarkBoundary& got = story.marking.marks[*mark.mark];
  if (!got.means.empty()) {
    said.push_back(got.means);
  }
  if (mark.mark != mark.uncapped) {
    said.push_back(
        fmt::format("The points alone would give `{}`; critical faults leave `{}` at "
                    "best.",
                    story.marking.marks[*mark.uncapped].name, got.name));
  }
  return said;
}

std::vector<std::string> verdict_sentences(const MarkStory& story) {
  const Verdict& yours = story.mark.verdict;
  const Verdict& theirs = story.reference.verdict;
  std::vector<std::string> said;
  const std::string_view grade = grade_words(story.program, yours);
  said.push_back(grade == grade_words(story.program, theirs)
                     ? fmt::format("By your record the grade is `{}`, as by the reference.", grade)
                     : fmt::format("By your record the grade is `{}`, and by the reference `{}`.",
                                   grade, grade_words(story.program, theirs)));
  const auto points = [&](const Verdict& verdict) {
    const std::string words = points_words(story.program, verdict);
    return words.empty() ? "–" : words;
  };
  said.push_back(
      fmt::format("Score {} of 100; by the reference {}.", points(yours), points(theirs)));
  said.push_back(beside("Musts that fail", must_titles(story, yours), must_titles(story, theirs)));
  said.push_back(beside("See a licensed practitioner first", referral_titles(story, yours),
                        referral_titles(story, theirs)));
  return said;
}

std::string share_title(const MarkStory& story, const ScoreShare& share) {
  const RuleSet& rules = story.program.rules;
  if (!share.section) {
    const std::size_t trait = share.traits.front();
    return fmt::format("{}{}", rules.traits[trait].ask.in(story.languages),
                       excuse_words(story, trait));
  }
  return fmt::format("{} ({} {})", rules.sections[*share.section].title.in(story.languages),
                     share.traits.size(), share.traits.size() == 1 ? "question" : "questions");
}

std::vector<std::string> share_points(const Attribution& attribution) {
  constexpr double steps = 100;  // to a point
  const double all = std::round((attribution.record_points - attribution.reference_points) * steps);
  std::vector<double> whole;
  std::vector<std::size_t> order;
  double sum = 0;
  for (const ScoreShare& share : attribution.shares) {
    whole.push_back(std::floor(settled(share.points * steps)));
    sum += whole.back();
    order.push_back(order.size());
  }
  const auto taken = [&](std::size_t i) {
    return settled(attribution.shares[i].points * steps) - whole[i];
  };
  std::stable_sort(order.begin(), order.end(),
                   [&](std::size_t a, std::size_t b) { return taken(a) > taken(b); });
  for (std::size_t i = 0; i < order.size() && sum < all; ++i) {
    whole[order[i]] += 1;
    sum += 1;
  }
  std::vector<std::string> words;
  words.reserve(whole.size());
  for (const double share : whole) {
    words.push_back(signed_points(share / steps));
  }
  return words;
}

std::vector<TaughtItem> taught_items(const MarkStory& story, bool (*wanted)(Likeness)) {
  std::vector<TaughtItem> taught;
  std::size_t last_trait = 0;
  for (const Comparison& one : story.mark.comparisons) {
    if (!wanted(one.likeness)) {
      continue;
    }
    const ReferenceItem& item = story.reference.items[one.item];
    TaughtItem next;
    next.title = item_title(story, item);
    next.likeness = one.likeness;
    next.says = comparison_words(story, one);
    next.panel = panel_words(story, item);
    next.how = how_words(story, item);
    next.weight = one.weight;
    next.credit = one.credit;
    next.comparison = static_cast<std::size_t>(&one - story.mark.comparisons.data());
    const bool is_second_side =
        !taught.empty() && item.side == Side::right && last_trait == item.trait;
    if (is_second_side && taught.back().likeness == next.likeness &&
        taught.back().says == next.says && taught.back().panel == next.panel) {
      taught.back().title =
          fmt::format("{} (both sides)", trait_of(story, item).ask.in(story.languages));
      taught.back().weight += next.weight;
    } else {
      taught.push_back(std::move(next));
    }
    last_trait = item.trait;
  }
  std::stable_sort(taught.begin(), taught.end(), [](const TaughtItem& a, const TaughtItem& b) {
    return a.weight * (1 - a.credit) > b.weight * (1 - b.credit);
  });
  return taught;
}

std::string share_words(const MarkStory& story) {
  const Attribution& found = story.mark.attribution;
  if (found.shares.empty()) {
    return "";
  }
  return fmt::format(
      "Your score differs by {} points. Each share is what your answers {} in place of the "
      "reference's add, averaged over every order in which they can be exchanged (Shapley value). "
      "The shares add up to the difference{}.",
      signed_points(found.record_points - found.reference_points),
      found.by_section ? "in a section" : "to one question",
      found.by_section
          ? fmt::format("; more than {} questions differ, so that those of a section go together",
                        most_players)
          : "");
}

std::string count_words(const Mark& mark) {
  constexpr std::array<Likeness, 6> all{Likeness::right,  Likeness::within,   Likeness::off,
                                        Likeness::missed, Likeness::invented, Likeness::not_held};
  std::string words;
  for (const Likeness likeness : all) {
    if (const std::size_t count = mark.count(likeness); count > 0) {
      words += fmt::format("{}{} {}", words.empty() ? "" : ", ", count, in_words(likeness));
    }
  }
  return words.empty() ? "nothing to compare" : words;
}

std::vector<std::string> mark_cautions(const MarkStory& story) {
  std::vector<std::string> said{
      "This marks an inspection. It is no judgement on the client, and no diagnosis; clinical "
      "questions are for a licensed practitioner."};
  const auto usual = usual_cautions(story.program.rules, story.languages);
  said.insert(said.end(), usual.begin(), usual.end());
  return said;
}

std::string reference_words(const Reference& reference) {
  const std::string& by = reference.inspection.observer;
  const std::string_view link = by.empty() ? "" : reference.panel == 1 ? " by " : ": ";
  return reference.panel == 1 ? fmt::format("reference{}{}", link, by)
                              : fmt::format("panel of {}{}{}", reference.panel, link, by);
}

}  // namespace heelrule
