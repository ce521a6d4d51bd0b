// Findings as JSON without white space, from words that are made once and kept.
#pragma once

#include <array>
#include <cstdint>
#include <span>
#include <string>
#include <vector>

#include "engine/model/inspection.hpp"
#include "engine/model/verdict.hpp"
#include "engine/report/memo.hpp"
#include "engine/scoring/program.hpp"

namespace heelrule {

/// Which words of a rule or band.
enum class SpokenKind : std::uint8_t { referral, caution, advice };

/// Writes findings of one program, as `json_report` does.
class FindingLines {
 public:
  /// `languages` is what `fallback_order` gives. Both must outlive this object.
  FindingLines(const Program& program, std::span<const std::string> languages);

  /// Turns to the findings of another inspection.
  void begin(const Inspection& inspection);

  /// Appends a finding. `index` is its place in the verdict, which is that of its contribution.
  void append(std::size_t index, const Finding& finding, std::string& line);

  /// Appends words that were spoken about it.
  void append_said(const Spoken& spoken, const Finding& finding, SpokenKind kind,
                   std::string& line);

 private:
  // Of whom a sentence speaks: of a value without sides, of one side, or of both alike.
  static constexpr std::size_t speakers = 4;
  static constexpr std::size_t speaker(const Finding& finding, const SideReading& reading) {
    return finding.sides_alike ? 3 : static_cast<std::size_t>(reading.side);
  }

  // What a finding lacks, and the sentence that says so.
  struct Unseen {
    Status status = Status::not_seen;
    std::vector<Missing> missing;
    bool whether_it_applies_is_open = false;
    std::string sentence;
  };
  static constexpr std::size_t most_unseen = 16;  // of one contribution

  // What is kept of one contribution.
  struct Kept {
    Memo heads;                            // by credit
    std::array<std::string, 2> musts;      // without and with a cap, to the readings
    std::array<Memo, 3> readings;          // by side and value
    std::array<Memo, speakers> sentences;  // by speaker and value
    std::array<std::array<std::array<Memo, speakers>, 2>, 3> said;  // by kind, whose words, …
    std::string reasons;         // from the end of the sentence to the notes
    std::vector<Unseen> unseen;  // sentences about what was not seen
  };

  void append_readings(Kept& kept, const Finding& finding, std::string& line);
  void append_missing(const Finding& finding, std::string& line) const;
  void append_sentence(Kept& kept, const Finding& finding, std::string& line);

  const Program& program_;
  std::span<const std::string> languages_;
  std::vector<Kept> kept_;
  std::vector<std::string> missing_;  // of each trait and side
  Memo gains_;
  const Inspection* inspection_ = nullptr;
  bool has_notes_ = false;
  bool has_reasons_ = false;
};

}  // namespace heelrule
