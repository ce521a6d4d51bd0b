// Question and answer, one at a time.
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "engine/recording/draft.hpp"
#include "engine/recording/journal_line.hpp"
#include "engine/recording/place_names.hpp"

namespace heelrule {

/// What came of a line.
struct Turn {
  std::string words;                  ///< to be shown; may be empty
  std::vector<JournalEntry> to_keep;  ///< to be on disk before `words` are shown
  std::optional<Problem> refused;     ///< the line was no answer; the question stands
  bool finished = false;              ///< the record is to be written
};

/// Asks for the places of a draft in order, and takes what is typed. Pure: no clock, no file.
class Dialogue {
 public:
  /// Begins at the first place. `today` is offered as the date. `program` and `draft` must outlive
  /// this object.
  Dialogue(const Program& program, Draft& draft, std::span<const std::string> languages,
           std::string today);

  /// Begins at the end, where a person says what to look at again, and comes back there after each
  /// answer.
  void begin_at_end();

  /// What is to be shown before the next line is read: a heading where a section begins, the
  /// question, what may be written, and what stands there now. Empty for the second side of a
  /// question that was just asked.
  std::string question();

  /// What stands before the line that is typed: `left> `.
  std::string prompt() const;

  /// Takes a line.
  Turn take(std::string_view line);

  /// Takes an answer from a journal, and goes on behind it. The problem is empty if it still is
  /// one.
  Problem replay(const JournalEntry& entry);

 private:
  // Everything in order; once the end was reached, what is open alone; or what was gone to alone.
  enum class Manner { in_order, open_alone, singly };

  bool is_at_end() const { return at_ == draft_.fields().size(); }
  bool is_open(std::size_t place) const;
  bool is_second_side(std::size_t place) const;
  void go_behind(std::size_t place);
  const Field& field() const { return draft_.fields()[at_]; }
  Parsed<Node> read(std::string_view words) const;

  // The reason of a skip; none where the words are an answer, as those of a level called so.
  std::optional<std::string> skipped(std::string_view words) const;
  Turn keep(std::string_view words);
  Turn skip(const std::string& reason);
  Turn answer_both(std::string_view words);
  Turn finish();
  Turn go_on();
  Turn go_to(const std::string& place);
  Turn tell_how() const;
  std::string said(std::size_t place) const;
  Turn review() const;
  std::string end_words() const;
  std::string referral(const Field& field, const Node& answer) const;
  std::string heading_words() const;
  std::size_t open_count() const;

  const Program& program_;
  Draft& draft_;
  std::vector<std::string> languages_;
  PlaceNames names_;
  std::string today_;
  Manner manner_ = Manner::in_order;
  std::size_t at_ = 0;
  std::size_t in_order_until_ = 0;    // of a section that was gone to, whatever the manner
  std::optional<std::size_t> asked_;  // the place whose question was shown last
};

}  // namespace heelrule
