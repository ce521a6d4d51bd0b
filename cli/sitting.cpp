#include "cli/sitting.hpp"

#include <fmt/format.h>

#include <utility>
#include <vector>

#include "cli/clock.hpp"
#include "cli/files.hpp"
#include "cli/load_program.hpp"
#include "cli/output.hpp"
#include "engine/page/tree_json.hpp"
#include "engine/quantity/trimmed.hpp"
#include "engine/reading/read_document.hpp"
#include "engine/reading/read_inspection.hpp"
#include "engine/recording/journal_keys.hpp"
#include "engine/recording/record_yaml.hpp"
#include "engine/recording/typed_answer.hpp"
#include "engine/report/json_writer.hpp"
#include "engine/report/wrap.hpp"
#include "engine/source/show_diagnostic.hpp"

namespace heelrule {
namespace {

JournalEntry entry(std::string_view key, std::string_view typed) {
  return {std::string(key), std::string(typed)};
}

std::optional<ExitStatus> refuse(const Problem& problem, ExitStatus status) {
  if (problem.message.empty()) {
    return std::nullopt;
  }
  write_problem(problem);
  return status;
}

std::string in_words(const Problem& problem) {
  return wrapped(problem.message, 2, "  ") +
         (problem.hint.empty() ? std::string{} : wrapped(problem.hint, 2, "  "));
}

std::string record_json(const Node& record) {
  JsonWriter json;
  write_tree(json, record);
  return json.take() + "\n";
}

// The checksum of a file as it is now; empty where there is none.
std::string checksum_of_file(const std::string& path) {
  if (!is_regular_file(path)) {
    return {};
  }
  const auto text = read_file(path);
  return text ? checksum(*text) : std::string{};
}

}  // namespace

Sitting::Sitting(const RecordCommand& command, const Program& program,
                 std::optional<FoundRecord> found)
    : command_(command),
      program_(program),
      found_(std::move(found)),
      draft_(program),
      journal_(command.file),
      dialogue_(program, draft_, command.languages, today()) {}

ExitStatus Sitting::run() {
  const ExitStatus status = sit();
  // By now the terminal is as it was before.
  if (is_interrupted_) {
    Interruption::pass_on();
  }
  return status;
}

ExitStatus Sitting::sit() {
  if (const Refused refused = begin()) {
    return *refused;
  }
  PromptedLines lines;
  if (!is_done_) {
    greet(lines.at_terminal());
  }
  if (found_ && amender_.by.empty()) {
    if (const Refused refused = ask_who(lines)) {
      return *refused;
    }
  }
  while (!is_done_) {
    if (const Refused refused = ask_one(lines)) {
      return *refused;
    }
  }
  return finish();
}

// What a journal says was finished is written without another question.
Sitting::Refused Sitting::begin() {
  if (const Refused refused =
          refuse(journal_.problem(),
                 journal_.is_damaged() ? ExitStatus::bad_data : ExitStatus::cannot_write)) {
    return refused;
  }
  if (found_) {
    draft_.take_over(found_->tree);
  }
  may_replace_ = command_.replace;
  if (journal_.entries().empty()) {
    return begin_anew();
  }
  const JournalEntry& last = journal_.entries().back();
  if (last.key == journal_keys::finished && last.typed == checksum_of_file(command_.file)) {
    return put_away(fmt::format("`{}` was written already.", command_.file));
  }
  return go_on();
}

Sitting::Refused Sitting::begin_anew() {
  if (const Refused refused =
          refuse(refuse_target(command_.file, existing()), ExitStatus::cannot_write)) {
    journal_.remove();
    return refused;
  }
  std::vector<JournalEntry> head{entry(journal_keys::kind, journal_keys::this_kind),
                                 entry(journal_keys::rules, rules_words())};
  if (command_.replace) {
    head.push_back(entry(journal_keys::replace, "yes"));
  }
  if (found_) {
    amender_.when = now();
    head.push_back(entry(journal_keys::before, checksum(found_->text)));
    head.push_back(entry(journal_keys::when, amender_.when));
    dialogue_.begin_at_end();
  }
  return keep(head);
}

Sitting::Refused Sitting::go_on() {
  for (const JournalEntry& kept : journal_.entries()) {
    if (const Refused refused = refuse(replay(kept), ExitStatus::bad_data)) {
      return refused;
    }
  }
  is_resumed_ = true;
  if (found_) {
    dialogue_.begin_at_end();
  }
  if (!found_ || !amender_.when.empty()) {
    return std::nullopt;
  }
  // The power failed before the head of the journal was whole.
  amender_.when = now();
  const std::vector<JournalEntry> head{entry(journal_keys::when, amender_.when)};
  return keep(head);
}

Problem Sitting::replay(const JournalEntry& kept) {
  if (kept.key == journal_keys::kind && kept.typed != journal_keys::this_kind) {
    return {fmt::format("`{}` is no journal of this version", journal_.name()),
            "move it away, and begin anew"};
  }
  if (kept.key == journal_keys::rules && kept.typed != rules_words()) {
    return {fmt::format("`{}` was begun with the rules `{}`, and these are `{}`", journal_.name(),
                        kept.typed, rules_words()),
            "go on with those, or move it away and begin anew"};
  }
  if (kept.key == journal_keys::before && (!found_ || kept.typed != checksum(found_->text))) {
    return {
        fmt::format("`{}` is not as it was when `{}` was begun", command_.file, journal_.name()),
        "move the journal away, and begin anew"};
  }
  if (kept.key.starts_with("journal.")) {
    take_note(kept);
    return {};
  }
  if (const Problem problem = dialogue_.replay(kept); !problem.message.empty()) {
    write_error(wrapped(fmt::format("`{}` is no answer to `{}` any more, so it is asked again: {}",
                                    kept.typed, kept.key, problem.message),
                        0, ""));
  }
  return {};
}

void Sitting::take_note(const JournalEntry& kept) {
  may_replace_ = may_replace_ || kept.key == journal_keys::replace;
  is_done_ = is_done_ || kept.key == journal_keys::finished;
  if (kept.key == journal_keys::when) {
    amender_.when = kept.typed;
  } else if (kept.key == journal_keys::by) {
    amender_.by = kept.typed;
  } else if (kept.key == journal_keys::because) {
    amender_.because = kept.typed;
  }
}

Sitting::Refused Sitting::keep(std::span<const JournalEntry> entries) {
  return entries.empty() ? std::nullopt
                         : refuse(journal_.append(entries), ExitStatus::cannot_write);
}

// Nobody answers what could not be asked.
Sitting::Refused Sitting::say(std::string_view words) {
  return write_output(words) == ExitStatus::done ? std::nullopt : Refused(ExitStatus::io_error);
}

Sitting::Refused Sitting::ask_who(PromptedLines& lines) {
  struct Asked {
    std::string_view question;
    std::string_view key;
    std::string Amender::* answer;
  };
  for (const Asked& asked :
       {Asked{"Who amends the record? Your code, such as A-02", journal_keys::by, &Amender::by},
        Asked{"Why? Enter alone gives no reason", journal_keys::because, &Amender::because}}) {
    do {
      if (const Refused unsaid = say('\n' + wrapped(asked.question, 0, ""))) {
        return unsaid;
      }
      const PromptedLine line = lines.next("> ");
      ++lines_read_;
      if (line.kind != PromptedLine::Kind::typed) {
        return break_off(line.kind);
      }
      const auto words = typed_words(line.text);
      if (!words && !lines.at_terminal()) {
        return refuse(words.problem(), ExitStatus::bad_data);
      }
      if (!words) {
        write_output(in_words(words.problem()));
        continue;
      }
      amender_.*asked.answer = words->text;
    } while (amender_.by.empty());
    const std::vector<JournalEntry> said{entry(asked.key, amender_.*asked.answer)};
    if (const Refused failed = keep(said)) {
      return failed;
    }
  }
  return std::nullopt;
}

Sitting::Refused Sitting::ask_one(PromptedLines& lines) {
  if (const Refused unsaid = say(dialogue_.question())) {
    return unsaid;
  }
  const PromptedLine line = lines.next(dialogue_.prompt());
  ++lines_read_;
  if (line.kind != PromptedLine::Kind::typed) {
    return break_off(line.kind);
  }
  const Turn turn = dialogue_.take(line.text);
  // Whoever cannot see the refusal would answer the next question to this one.
  if (turn.refused && !lines.at_terminal()) {
    return refuse({fmt::format("line {} of the answers: {}", lines_read_, turn.refused->message),
                   turn.refused->hint},
                  ExitStatus::bad_data);
  }
  if (const Refused failed = keep(turn.to_keep)) {
    return failed;
  }
  is_done_ = turn.finished;
  return say(turn.refused ? in_words(*turn.refused) : turn.words);
}

void Sitting::greet(bool at_terminal) const {
  if (is_resumed_) {
    write_output(wrapped(fmt::format("Going on with what `{}` kept.", journal_.name()), 0, ""));
  }
  if (at_terminal) {
    write_output(
        wrapped("Type each answer with its unit; Enter alone goes on. `?` tells how to "
                "measure, and what else may be typed.",
                0, ""));
  }
}

ExitStatus Sitting::break_off(PromptedLine::Kind kind) {
  write_output('\n' + wrapped(fmt::format("What was answered is kept in `{}`, and the same command "
                                          "goes on from there.",
                                          journal_.name()),
                              0, ""));
  is_interrupted_ = kind == PromptedLine::Kind::interrupted;
  return ExitStatus::answer_is_no;
}

ExitStatus Sitting::finish() {
  if (found_ && !draft_.is_changed()) {
    return put_away("Nothing was changed.");
  }
  const auto text = record_text();
  if (!text) {
    return ExitStatus::own_fault;
  }
  const std::vector<JournalEntry> last{entry(journal_keys::finished, checksum(*text))};
  if (const Refused failed = keep(last)) {
    return *failed;
  }
  return write(*text);
}

// What is written is read once more, so that no record leaves here that cannot be graded.
std::optional<std::string> Sitting::record_text() const {
  const Node record = draft_.record(found_ ? std::optional<Amender>(amender_) : std::nullopt);
  std::string text =
      found_ && looks_like_json(found_->text) ? record_json(record) : record_yaml(record);
  Sources sources;
  const auto inspection =
      load_inspection(sources, sources.add(command_.file, text), program_.rules);
  write_error(show(inspection.diagnostics(), sources));
  return inspection ? std::optional(std::move(text)) : std::nullopt;
}

ExitStatus Sitting::write(const std::string& text) {
  Problem problem = write_file(command_.file, text, existing());
  if (!problem.message.empty()) {
    problem.hint =
        fmt::format("nothing is lost: `{}` has all answers, and the same command goes on{}",
                    journal_.name(), problem.hint.empty() ? "" : "; or " + problem.hint);
  }
  if (const Refused refused = refuse(problem, ExitStatus::cannot_write)) {
    return *refused;
  }
  return put_away(fmt::format("Written to `{0}`. `heelrule grade {1} {0}` grades it.",
                              command_.file, program_.rules.name));
}

ExitStatus Sitting::put_away(const std::string& words) {
  if (const Refused refused = refuse(journal_.remove(), ExitStatus::cannot_write)) {
    return *refused;
  }
  return write_output('\n' + wrapped(words, 0, ""));
}

std::string Sitting::rules_words() const {
  return fmt::format("{} {}", program_.rules.short_name(), program_.rules.edition);
}

Existing Sitting::existing() const {
  return command_.amend || may_replace_ ? Existing::replace : Existing::keep;
}

}  // namespace heelrule
