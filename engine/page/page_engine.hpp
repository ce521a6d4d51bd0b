// The engine as a recording page calls it: texts in, texts out.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "engine/model/verdict.hpp"
#include "engine/page/sound_answers.hpp"
#include "engine/quantity/parsed.hpp"
#include "engine/scoring/program.hpp"

namespace heelrule {

/// A rule set, ready to be asked about a record. A record comes as JSON, as rules/README.md
/// describes it; a text that is none is taken for an empty record.
class PageEngine {
 public:
  /// From what `page_rules` wrote. The problem says what is wrong with it.
  static Parsed<PageEngine> open(std::string_view rules);

  /// Sets the reader's languages, first choice first: `["es","en"]`.
  void speak(std::string_view languages);

  /// What to ask, in the reader's language: see `questions_json`.
  std::string questions() const;

  /// What is wrong with the record so far, and what is worked out from the rest: see
  /// `answers_json`.
  std::string answers(std::string_view record) const;

  /// The verdict on what is sound of the record, byte for byte as `heelrule grade --as json
  /// --exactly` prints it of a file with these answers.
  std::string verdict(std::string_view record) const;

  /// The record as a file to keep: JSON, indented.
  std::string file(std::string_view record) const;

  /// A file as fields: see `opened_json`.
  std::string opened(std::string_view text) const;

 private:
  // A page asks for the answers and then for the verdict of the same record.
  struct Judged {
    std::string record;
    SoundAnswers answers;
    Verdict verdict;
  };

  explicit PageEngine(Program program) : program_(std::move(program)) {}

  const Judged& judge(std::string_view record) const;

  Program program_;
  std::vector<std::string> languages_;
  mutable std::optional<Judged> judged_;
};

}  // namespace heelrule
