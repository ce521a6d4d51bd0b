#include "engine/recording/typed_answer.hpp"

#include <fmt/format.h>

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "engine/quantity/trimmed.hpp"
#include "engine/reading/make_node.hpp"
#include "engine/reading/read_value.hpp"
#include "engine/reading/written_value.hpp"
#include "engine/source/characters.hpp"

namespace heelrule {
namespace {

constexpr std::size_t longest_line = 4096;

// A line taken apart: `value ± doubt ! # note`.
struct Pieces {
  std::string_view value;
  std::optional<std::string_view> doubt;
  bool confirmed = false;
  std::string_view note;
};

Problem unfit(std::string_view line) {
  if (line.size() > longest_line) {
    return {
        fmt::format("an answer has {} bytes at most, and this has {}", longest_line, line.size()),
        "write the rest into the file afterwards"};
  }
  if (const auto offence = first_offence(line)) {
    return {fmt::format("this holds {}", offence->what), "type it again without"};
  }
  if (line.find('\t') != std::string_view::npos) {
    return {"this holds a tab", "type blanks instead"};
  }
  return {};
}

Pieces taken_apart(std::string_view line) {
  Pieces pieces;
  if (const std::size_t note = line.find(" #"); note != std::string_view::npos) {
    pieces.note = trimmed(line.substr(note + 2));
    line = trimmed(line.substr(0, note));
  }
  if (line.ends_with('!')) {
    pieces.confirmed = true;
    line = trimmed(line.substr(0, line.size() - 1));
  }
  for (const std::string_view sign : {"±", "+-"}) {
    if (const std::size_t at = line.find(sign); at != std::string_view::npos) {
      pieces.doubt = trimmed(line.substr(at + sign.size()));
      line = trimmed(line.substr(0, at));
    }
  }
  pieces.value = line;
  return pieces;
}

// The word that `typed` begins, where it begins one alone; else as typed.
std::string_view completed(std::string_view typed, const Trait& trait) {
  std::vector<std::string_view> words;
  if (std::holds_alternative<AnswerKind>(trait.kind)) {
    words = {"yes", "no"};
  }
  for (const Level& level : levels_of(trait.kind)) {
    words.push_back(level.name.value);
  }
  std::string_view found;
  std::size_t count = 0;
  for (const std::string_view word : words) {
    if (word == typed) {
      return word;
    }
    if (!typed.empty() && word.starts_with(typed)) {
      found = word;
      ++count;
    }
  }
  return count == 1 ? found : typed;
}

Node tree_of(const Trait& trait, const Pieces& pieces) {
  const std::string_view separator = pieces.value.find(';') == std::string_view::npos ? ", " : ";";
  Node value = written_value(trait, completed(pieces.value, trait), separator, {});
  if (!pieces.doubt && !pieces.confirmed && pieces.note.empty()) {
    return value;
  }
  Node map = map_node();
  add_entry(map, "value", std::move(value));
  if (pieces.doubt) {
    add_entry(map, "doubt", text_node(std::string(*pieces.doubt)));
  }
  if (pieces.confirmed) {
    add_entry(map, "confirmed", text_node("yes"));
  }
  if (!pieces.note.empty()) {
    add_entry(map, "note", text_node(std::string(pieces.note)));
  }
  return map;
}

Problem first_fault(const Trait& trait, const Node& tree) {
  Diagnostics diagnostics;
  read_value(trait, tree, {}, diagnostics);
  return diagnostics.first_error();
}

}  // namespace

Parsed<Node> typed_answer(const Trait& trait, std::string_view line) {
  if (Problem problem = unfit(line); !problem.message.empty()) {
    return problem;
  }
  Pieces pieces = taken_apart(trimmed(line));
  const bool is_measure = std::holds_alternative<MeasureKind>(trait.kind);
  if (!is_measure && (pieces.confirmed || pieces.doubt)) {
    return Problem{fmt::format("`{}` belongs to a measure", pieces.confirmed ? "!" : "±"),
                   "leave it out; a note stands behind `#`"};
  }
  Node tree = tree_of(trait, pieces);
  Problem fault = first_fault(trait, tree);
  if (fault.message.empty()) {
    return tree;
  }
  // What confirming alone would mend is out of the plausible range.
  if (is_measure && !pieces.confirmed) {
    pieces.confirmed = true;
    if (first_fault(trait, tree_of(trait, pieces)).message.empty()) {
      fault.hint =
          fmt::format("check the value and its unit; if it is true, write `{} !`", pieces.value);
    }
  }
  return fault;
}

Parsed<Node> not_seen_answer(std::string_view reason) {
  const Parsed<Node> words = typed_words(reason);
  if (!words || words->text.empty()) {
    return words ? Parsed<Node>(text_node("not seen")) : words;
  }
  Node map = map_node();
  add_entry(map, "not seen", *words);
  return map;
}

Parsed<Node> typed_words(std::string_view line) {
  if (Problem problem = unfit(line); !problem.message.empty()) {
    return problem;
  }
  return text_node(std::string(trimmed(line)));
}

}  // namespace heelrule
