#include "engine/recording/dialogue.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "engine/quantity/nearest.hpp"
#include "engine/quantity/trimmed.hpp"
#include "engine/reading/make_node.hpp"
#include "engine/reading/read_inspection.hpp"
#include "engine/reading/written_value.hpp"
#include "engine/recording/question.hpp"
#include "engine/recording/typed_answer.hpp"
#include "engine/recording/typed_command.hpp"
#include "engine/report/fallback_order.hpp"
#include "engine/report/text_page.hpp"
#include "engine/report/wrap.hpp"
#include "engine/source/characters.hpp"

namespace heelrule {
namespace {

constexpr std::string_view first_heading = "The inspection";

Turn refusal(Problem problem) { return {{}, {}, std::move(problem), false}; }

// The line by which a journal repeats that something was not seen.
std::string skip_line(const std::string& reason) {
  return reason.empty() ? std::string("skip") : "skip " + reason;
}

// How an answer was understood, where that differs from what was typed.
std::string understood(std::string_view typed, const Node& answer) {
  const std::string words = written_words(answer);
  return words == trimmed(typed) ? std::string{} : wrapped(words, 2, "  ");
}

bool begins(std::string_view text, std::string_view start) {
  const auto lower = [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c; };
  return text.size() >= start.size() &&
         std::equal(start.begin(), start.end(), text.begin(),
                    [&](char a, char b) { return lower(a) == lower(b); });
}

}  // namespace

Dialogue::Dialogue(const Program& program, Draft& draft, std::span<const std::string> languages,
                   std::string today)
    : program_(program),
      draft_(draft),
      languages_(fallback_order(languages, program.rules)),
      today_(std::move(today)) {}

std::size_t Dialogue::section_number(const Field& field) const {
  return field.kind == Field::Kind::head ? 0 : field.section + 1;
}

std::string_view Dialogue::ask(const Field& field) const {
  return field.kind == Field::Kind::head ? question_of(field.item)
                                         : program_.rules.traits[field.trait].ask.in(languages_);
}

std::string Dialogue::heading_words() const {
  const std::size_t number = section_number(field());
  const std::string_view words =
      number == 0 ? first_heading
                  : heading(draft_.sections()[field().section], program_.rules, languages_);
  return fmt::format("{} ({} of {})", words, number + 1, draft_.sections().size() + 1);
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
  const bool same_section =
      before && *before < all.size() && section_number(all[*before]) == section_number(field());
  std::string text;
  if (!same_section) {
    TextPage page(false);
    page.heading(heading_words());
    text += page.take();
  }
  if (!same_question) {
    text += '\n' + wrapped(ask(field()), 0, "");
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
    Turn operator()(const Finish&) const { return {{}, {}, std::nullopt, true}; }
    Turn operator()(const AnswerBoth& both) const { return dialogue.answer_both(both.words); }
    Turn operator()(const AnswerOne& one) const { return dialogue.keep(one.words); }
  };
  // A level may be called as a command is.
  if (!is_at_end() && field().kind == Field::Kind::trait) {
    for (const Level& level : levels_of(program_.rules.traits[field().trait].kind)) {
      if (level.name.value == trimmed(line)) {
        return keep(line);
      }
    }
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
  const bool is_skip = entry.typed == "skip" || entry.typed.starts_with("skip ");
  const Turn turn =
      field().kind == Field::Kind::trait && is_skip ? take(entry.typed) : keep(entry.typed);
  return turn.refused.value_or(Problem{});
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
  ++at_;
  return {understood(words, *answer), {std::move(kept)}, std::nullopt, false};
}

Turn Dialogue::answer_both(const std::string& words) {
  if (is_at_end() || field().side == Side::none) {
    return refusal({"this has no sides", "write one value"});
  }
  const auto answer = read(words);
  if (!answer) {
    return refusal(answer.problem());
  }
  const std::size_t left = field().side == Side::left ? at_ : at_ - 1;
  draft_.fill_both(left, *answer);
  JournalEntry kept{program_.rules.traits[field().trait].name, std::string(trimmed(words))};
  at_ = left + 2;
  return {understood(words, *answer), {std::move(kept)}, std::nullopt, false};
}

Turn Dialogue::skip(const std::string& reason) {
  if (is_at_end() || field().kind == Field::Kind::head) {
    return refusal({"there is nothing here to skip", "Enter alone goes on"});
  }
  const auto answer = not_seen_answer(reason);
  if (!answer) {
    return refusal(answer.problem());
  }
  Turn turn;
  turn.to_keep.push_back({key_of(field(), program_.rules), skip_line(reason)});
  draft_.fill(at_, *answer);
  ++at_;
  return turn;
}

Turn Dialogue::go_on() {
  if (is_at_end()) {
    return {};
  }
  // Of the head, Enter alone is an answer: today, or nothing to say.
  if (field().kind == Field::Kind::head && draft_.answer(at_) == nullptr) {
    return keep(field().item == HeadItem::date ? today_ : "");
  }
  ++at_;
  return {};
}

std::optional<std::size_t> Dialogue::place_of(std::string_view words) const {
  const auto& all = draft_.fields();
  std::optional<std::size_t> by_title;
  for (std::size_t i = 0; i < all.size(); ++i) {
    const Field& one = all[i];
    const std::string key = key_of(one, program_.rules);
    const bool first_of_section = i == 0 || section_number(all[i - 1]) != section_number(one);
    if (key == words ||
        (one.kind == Field::Kind::trait && program_.rules.traits[one.trait].name == words)) {
      return i;
    }
    if (first_of_section) {
      const bool head = one.kind == Field::Kind::head;
      const std::string_view name =
          head ? std::string_view("inspection")
               : short_name(draft_.sections()[one.section], program_.rules);
      const std::string_view title =
          head ? first_heading
               : heading(draft_.sections()[one.section], program_.rules, languages_);
      if (name == words || fmt::format("{}", section_number(one) + 1) == words) {
        return i;
      }
      by_title = by_title || !begins(title, words) ? by_title : std::optional(i);
    }
    by_title = by_title || !begins(ask(one), words) ? by_title : std::optional(i);
  }
  return by_title;
}

Turn Dialogue::go_to(const std::string& place) {
  if (const auto found = place.empty() ? std::nullopt : place_of(place)) {
    at_ = *found;
    asked_.reset();
    return {};
  }
  Nearest nearest(place);
  std::vector<std::string> sections{"inspection"};
  for (const BenchSection& section : draft_.sections()) {
    sections.emplace_back(short_name(section, program_.rules));
    nearest.offer(sections.back());
    for (const std::size_t trait : section.traits) {
      nearest.offer(program_.rules.traits[trait].name);
    }
  }
  return refusal({fmt::format("there is no `{}` to go to", shown_safely(place)),
                  nearest.found() && !place.empty()
                      ? nearest.question()
                      : fmt::format("the sections are `{}`", fmt::join(sections, "`, `"))});
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
    open += draft_.fields()[i].kind == Field::Kind::trait && draft_.answer(i) == nullptr ? 1 : 0;
  }
  return open;
}

Turn Dialogue::review() const {
  const auto& all = draft_.fields();
  TextPage page(false);
  std::vector<std::pair<std::string, std::string>> rows;
  for (std::size_t i = 0; i < all.size(); ++i) {
    const Node* answer = draft_.answer(i);
    const std::string words = answer == nullptr || written_words(*answer).empty()
                                  ? std::string("open")
                                  : written_words(*answer);
    const std::string_view side = all[i].side == Side::none   ? ""
                                  : draft_.is_for_both(i)     ? "both "
                                  : all[i].side == Side::left ? "left "
                                                              : "right ";
    if (all[i].side == Side::right && draft_.is_for_both(i)) {
      // The left one has told it.
    } else if (all[i].side == Side::right) {
      rows.back().second += fmt::format(", {}{}", side, words);
    } else {
      rows.emplace_back(std::string(ask(all[i])), fmt::format("{}{}", side, words));
    }
    if (i + 1 == all.size() || section_number(all[i + 1]) != section_number(all[i])) {
      page.heading(section_number(all[i]) == 0
                       ? first_heading
                       : heading(draft_.sections()[all[i].section], program_.rules, languages_));
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
  words +=
      " `finish` writes the record; `review` shows it; `go PLACE` and `back` lead to a "
      "question.";
  return '\n' + wrapped(words, 0, "");
}

}  // namespace heelrule
