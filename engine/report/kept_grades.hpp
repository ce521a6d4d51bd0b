// Grades as JSON without white space, made once and kept.
#pragma once

#include <array>
#include <cstddef>
#include <span>
#include <string>
#include <vector>

#include "engine/model/inspection.hpp"
#include "engine/model/verdict.hpp"
#include "engine/report/detail.hpp"
#include "engine/report/growing_text.hpp"
#include "engine/report/padded_text.hpp"
#include "engine/scoring/program.hpp"

namespace heelrule {

/// Writes the grade of verdicts of one program: in full as `json_report` does, else without the
/// sentences. A school meets a few dozen cases of it.
class KeptGrades {
 public:
  /// `languages` is what `fallback_order` gives. Both must outlive this object.
  KeptGrades(const Program& program, std::span<const std::string> languages, Detail detail)
      : program_(program), languages_(languages), in_full_(detail == Detail::full) {}

  /// Appends the grade as an object.
  void append(const Inspection& inspection, const Verdict& verdict, GrowingText& line);

 private:
  static constexpr unsigned place_bits = 10;

  // What the words depend on.
  struct Case {
    std::array<std::size_t, 4> grades{};  // grade and uncapped, 0 for none; lowest, highest
    bool stands = false;
    bool is_open = false;           // … in full
    std::vector<std::size_t> caps;  // findings that cap it, in full

    bool operator==(const Case&) const = default;
  };

  struct Kept {
    Case of;
    PaddedText words;
  };

  void know(const Verdict& verdict);
  std::string words(const Inspection& inspection, const Verdict& verdict) const;

  const Program& program_;
  std::span<const std::string> languages_;
  bool in_full_;
  std::vector<Kept> kept_ = std::vector<Kept>(std::size_t{1} << place_bits);
  Case case_;
};

}  // namespace heelrule
