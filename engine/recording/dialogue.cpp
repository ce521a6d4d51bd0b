#include "engine/recording/dialogue.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "engine/quantity/trimmed.hpp"
#include "engine/reading/make_node.hpp"
#include "engine/reading/read_inspection.hpp"
#include "engine/reading/written_value.hpp"
#include "engine/recording/question.hpp"
#include "engine/recording/typed_answer.hpp"
#include "engine/recording/typed_command.hpp"
#include "engine/report/fallback_order.hpp"
#include "engine/report/place_words.hpp"
#include "engine/report/text_page.hpp"
#include "engine/report/value_words.hpp"
#include "engine/report/wrap.hpp"
#include "engine/source/characters.hpp"

namespace heelrule {
namespace {

Turn refusal(Problem problem) { return {{}, {}, std::move(problem), false}; }

// The reason of `skip REASON`; none if that is not what the words are.
std::optional<std::string> skip_reason(std::string_view words) {
  const TypedCommand command = typed_command(words);
  const auto* skip = std::get_if<Skip>(&command);
  return skip == nullptr ? std::nullopt : std::optional(skip->reason);
}

// How an answer was understood, where that differs from what was typed.
std::string understood(std::string_view typed, const Node& answer) {
  const std::string words = written_words(answer);
  return words == trimmed(typed) ? std::string{} : wrapped(words, 2, "  ");
}

bool is_level(const Trait& trait, std::string_view words) {
  const std::vector<Level>& levels = levels_of(trait.kind);
  return std::any_of(levels.begin(), levels.end(),
                     [&](const Level& level) { return level.name.value == words; });
}

}  // namespace

Dialogue::Dialogue(const Program& program, Draft& draft, std::span<const std::string> languages,
                   std::string today)
    : program_(program),
      draft_(draft),
      languages_(fallback_order(languages, program.rules)),
      names_(program.rules, draft, languages_),
      today_(std::move(today)) {}

void Dialogue::begin_at_end() {
  at_ = draft_.fields().size();
  manner_ = Manner::singly;
}

bool Dialogue::is_open(std::size_t place) const {
  return draft_.fields()[place].kind == Field::Kind::trait && draft_.answer(place) == nullptr;
}

bool Dialogue::is_second_side(std::size_t place) const {
  return place < draft_.fields().size() && draft_.fields()[place].side == Side::right;
}

// Where the next question is, once `place` is done with.
void Dialogue::go_behind(std::size_t place) {
  at_ = place + 1;
  if (is_at_end() && manner_ == Manner::in_order) {
    manner_ = Manner::open_alone;
  }
  if (at_ < in_order_until_ || is_second_side(at_)) {
    return;
  }
  switch (manner_) {
    case Manner::in_order:
      return;
    case Manner::open_alone:
      while (!is_at_end() && !is_open(at_)) {
        ++at_;
      }
      return;
    case Manner::singly:
      at_ = draft_.fields().size();
      return;
  }
}

std::string Dialogue::heading_words() const {
  return fmt::format("{} ({} of {})", names_.section_title(at_), names_.section_number(at_) + 1,
                     names_.section_count());
}

std::string Dialogue::question() {
  const auto& all = draft_.fields();
  const std::optional<std::size_t> before = std::exchange(asked_, at_);
  if (is_at_end()) {
    return end_words();
  }
  const bool same_question =
      before && *before < all.size() && all[*before].kind == Field::Kind::trait &&
      field().kind == Field::Kind::trait && all[*before].trait == field().trait;
  const bool same_section = before && *before < all.size() &&
                            names_.section_number(*before) == names_.section_number(at_);
  std::string text;
  if (!same_section) {
    TextPage page(false);
    page.heading(heading_words());
    text += page.take();
  }
  if (!same_question) {
    text += '\n' + wrapped(names_.question(at_), 0, "");
    if (field().kind == Field::Kind::trait) {
      text += wrapped(form_words(heelrule::question(program_.rules, field().trait)), 2, "  ");
    } else if (field().item == HeadItem::date) {
      text += wrapped("year, month and day; Enter alone is " + today_, 2, "  ");
    }
  }
  if (const Node* now = draft_.answer(at_)) {
    text += wrapped(fmt::format("now {}; Enter alone keeps it", written_words(*now)), 2, "  ");
  }
  return text;
}

std::string Dialogue::prompt() const {
  if (is_at_end()) {
    return "what next> ";
  }
  switch (field().side) {
    case Side::none:
      break;
    case Side::left:
      return "left> ";
    case Side::right:
      return "right> ";
  }
  return "> ";
}

Turn Dialogue::take(std::string_view line) {
  struct Taker {
    Dialogue& dialogue;
    Turn operator()(const GoOn&) const { return dialogue.go_on(); }
    Turn operator()(const TellHow&) const { return dialogue.tell_how(); }
    Turn operator()(const GoBack&) const {
      dialogue.at_ -= dialogue.at_ == 0 ? 0 : 1;
      dialogue.asked_.reset();
      return {};
    }
    Turn operator()(const Skip& skip) const { return dialogue.skip(skip.reason); }
    Turn operator()(const GoTo& go) const { return dialogue.go_to(go.place); }
    Turn operator()(const Review&) const { return dialogue.review(); }
    Turn operator()(const Finish&) const { return dialogue.finish(); }
    Turn operator()(const AnswerBoth& both) const { return dialogue.answer_both(both.words); }
    Turn operator()(const AnswerOne& one) const { return dialogue.keep(one.words); }
  };
  // A level may be called as a command is.
  if (!is_at_end() && field().kind == Field::Kind::trait &&
      is_level(program_.rules.traits[field().trait], trimmed(line))) {
    return keep(line);
  }
  return std::visit(Taker{*this}, typed_command(line));
}

Problem Dialogue::replay(const JournalEntry& entry) {
  if (const auto left = draft_.find(entry.key + ".left")) {
    at_ = *left;
    return answer_both(entry.typed).refused.value_or(Problem{});
  }
  const auto found = draft_.find(entry.key);
  if (!found) {
    return {fmt::format("there is no `{}` in these rules", entry.key), ""};
  }
  at_ = *found;
  const auto reason = skipped(entry.typed);
  return (reason ? skip(*reason) : keep(entry.typed)).refused.value_or(Problem{});
}

std::optional<std::string> Dialogue::skipped(std::string_view words) const {
  if (field().kind == Field::Kind::trait &&
      !is_level(program_.rules.traits[field().trait], words)) {
    return skip_reason(words);
  }
  return std::nullopt;
}

Parsed<Node> Dialogue::read(std::string_view words) const {
  if (field().kind == Field::Kind::trait) {
    return typed_answer(program_.rules.traits[field().trait], words);
  }
  auto text = typed_words(words);
  if (text && field().item == HeadItem::date && !is_date(text->text)) {
    return Problem{fmt::format("`{}` is no date", text->text),
                   "write year, month and day: `2026-10-03`"};
  }
  return text;
}

Turn Dialogue::keep(std::string_view words) {
  if (is_at_end()) {
    return refusal({fmt::format("`{}` is none of the things to do here", shown_safely(words)),
                    "write `finish`, `review`, `back` or `go PLACE`"});
  }
  const auto answer = read(words);
  if (!answer) {
    return refusal(answer.problem());
  }
  draft_.fill(at_, *answer);
  JournalEntry kept{key_of(field(), program_.rules), std::string(trimmed(words))};
  std::string said = understood(words, *answer) + referral(field(), *answer);
  go_behind(at_);
  return {std::move(said), {std::move(kept)}, std::nullopt, false};
}

// What a yes to a safety question calls for is said at once, and not in the report alone.
std::string Dialogue::referral(const Field& field, const Node& answer) const {
  const auto& safety = program_.rules.safety;
  const Node* value = answer.find("value");
  const std::string& said = value == nullptr ? answer.text : value->text;
  if (field.kind == Field::Kind::head || field.trait >= safety.size() || said != "yes") {
    return {};
  }
  return wrapped(fmt::format("See a licensed practitioner first: {}",
                             safety[field.trait].referral.in(languages_)),
                 2, "  ");
}

Turn Dialogue::answer_both(std::string_view words) {
  if (is_at_end() || field().side == Side::none) {
    return refusal({"this has no sides", "write one value"});
  }
  if (words.empty()) {
    return refusal({"`both` has no value", "write it behind: `both VALUE`"});
  }
  const auto reason = skipped(words);
  const auto answer = reason ? not_seen_answer(*reason) : read(words);
  if (!answer) {
    return refusal(answer.problem());
  }
  const std::size_t left = field().side == Side::left ? at_ : at_ - 1;
  draft_.fill_both(left, *answer);
  JournalEntry kept{program_.rules.traits[field().trait].name, std::string(trimmed(words))};
  std::string said = understood(words, *answer) + referral(field(), *answer);
  go_behind(left + 1);
  return {std::move(said), {std::move(kept)}, std::nullopt, false};
}

Turn Dialogue::skip(const std::string& reason) {
  if (is_at_end() || field().kind == Field::Kind::head) {
    return refusal({"there is nothing here to skip", "Enter alone goes on"});
  }
  const auto answer = not_seen_answer(reason);
  if (!answer) {
    return refusal(answer.problem());
  }
  draft_.fill(at_, *answer);
  JournalEntry kept{key_of(field(), program_.rules),
                    std::string(trimmed(fmt::format("skip {}", reason)))};
  go_behind(at_);
  return {{}, {std::move(kept)}, std::nullopt, false};
}

// Whoever breaks off early sees first what is open.
Turn Dialogue::finish() {
  const bool is_early = !is_at_end() && open_count() > 0;
  if (is_early) {
    at_ = draft_.fields().size();
    manner_ = manner_ == Manner::in_order ? Manner::open_alone : manner_;
  }
  return {{}, {}, std::nullopt, !is_early};
}

Turn Dialogue::go_on() {
  if (is_at_end()) {
    std::size_t place = 0;
    while (place < at_ && !is_open(place)) {
      ++place;
    }
    at_ = place;
    return {};
  }
  // Of the head, Enter alone is an answer: today, or nothing to say.
  if (field().kind == Field::Kind::head && draft_.answer(at_) == nullptr) {
    return keep(field().item == HeadItem::date ? today_ : "");
  }
  go_behind(at_);
  return {};
}

Turn Dialogue::go_to(const std::string& place) {
  if (place == "end") {
    at_ = draft_.fields().size();
    return {};
  }
  const auto found = names_.find(place);
  if (!found) {
    return refusal(found.problem());
  }
  at_ = found->begin;
  in_order_until_ = found->end;
  asked_.reset();
  return {};
}

Turn Dialogue::tell_how() const {
  std::string text;
  if (!is_at_end() && field().kind == Field::Kind::trait) {
    const Question asked = heelrule::question(program_.rules, field().trait);
    if (!asked.how.empty()) {
      text += wrapped(asked.how.in(languages_), 2, "  ");
    }
    for (const Level& level : asked.levels) {
      if (!level.meaning.empty()) {
        text += wrapped(fmt::format("{}: {}", level.name.value, level.meaning.in(languages_)), 4,
                        "  - ");
      }
    }
    if (asked.form == AnswerForm::fibres) {
      text += "  such as: cotton 80 %, polyamide 17 %, elastane 3 %\n";
    }
    text += '\n';
  }
  return {text + std::string(command_help()), {}, std::nullopt, false};
}

std::size_t Dialogue::open_count() const {
  std::size_t open = 0;
  for (std::size_t i = 0; i < draft_.fields().size(); ++i) {
    open += is_open(i) ? 1 : 0;
  }
  return open;
}

// The answer of a place with its side, as `left 243 mm`; the left side tells of both.
std::string Dialogue::said(std::size_t place) const {
  const Node* answer = draft_.answer(place);
  std::string words = answer == nullptr ? "open" : written_words(*answer);
  words = words.empty() ? "none" : words;
  const Side side = draft_.fields()[place].side;
  return side == Side::none
             ? words
             : fmt::format("{} {}", draft_.is_for_both(place) ? "both" : in_words(side), words);
}

Turn Dialogue::review() const {
  const auto& all = draft_.fields();
  TextPage page(false);
  std::vector<std::pair<std::string, std::string>> rows;
  for (std::size_t i = 0; i < all.size(); ++i) {
    if (all[i].side != Side::right) {
      rows.emplace_back(all[i].kind == Field::Kind::head
                            ? head_title(key_of(all[i], program_.rules))
                            : names_.question(i),
                        said(i));
    } else if (!draft_.is_for_both(i)) {
      rows.back().second += ", " + said(i);
    }
    if (names_.ends_section(i)) {
      page.heading(names_.section_title(i));
      page.table(std::exchange(rows, {}));
    }
  }
  return {page.take(), {}, std::nullopt, false};
}

std::string Dialogue::end_words() const {
  const std::size_t open = open_count();
  std::string words = open == 0   ? std::string("Everything is answered.")
                      : open == 1 ? std::string("One answer is open.")
                                  : fmt::format("{} answers are open.", open);
  words += open == 0 ? "" : " Enter alone leads to the first that is open.";
  words +=
      " `finish` writes the record; `review` shows it; `go PLACE` and `back` lead to a "
      "question.";
  return '\n' + wrapped(words, 0, "");
}

}  // namespace heelrule
