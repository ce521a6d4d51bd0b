// What is wrong with a file, where, and what to do about it.
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "engine/quantity/parsed.hpp"
#include "engine/source/span.hpp"

namespace heelrule {

enum class Severity : std::uint8_t {
  error,    ///< the file cannot be used
  warning,  ///< the file can be used, and probably does not say what was meant
};

/// A second place that belongs to a diagnostic: the first use of a name, the other parent.
struct Note {
  Span where;
  std::string message;

  bool operator==(const Note&) const = default;
};

struct Diagnostic {
  Severity severity = Severity::error;
  Span where;
  std::string message;  ///< what is wrong; no full stop
  std::string hint;     ///< what to do; may be empty
  std::vector<Note> notes;

  bool operator==(const Diagnostic&) const = default;
};

/// The diagnostics of one run, in the order in which they were found.
class Diagnostics {
 public:
  void error(Span where, std::string message, std::string hint = {}, std::vector<Note> notes = {});
  void warning(Span where, std::string message, std::string hint = {},
               std::vector<Note> notes = {});

  /// Reports why a text could not be read.
  void error(Span where, const Problem& problem) { error(where, problem.message, problem.hint); }

  bool has_errors() const { return errors_ > 0; }
  std::size_t error_count() const { return errors_; }
  std::size_t warning_count() const { return found_.size() - errors_; }
  bool empty() const { return found_.empty(); }

  /// All of them by place: source, then offset; what has the same place stays in the order found,
  /// and what was said twice in the same words at the same place comes once.
  std::vector<Diagnostic> by_place() const;

  /// Message and hint of the first error by place; empty if there is none.
  Problem first_error() const;

 private:
  std::vector<Diagnostic> found_;
  std::size_t errors_ = 0;
};

}  // namespace heelrule
