// Sentences about findings as JSON text, made once and kept.
#pragma once

#include <array>
#include <span>
#include <string>
#include <vector>

#include "engine/model/inspection.hpp"
#include "engine/model/verdict.hpp"
#include "engine/report/growing_text.hpp"
#include "engine/report/memo.hpp"
#include "engine/scoring/program.hpp"

namespace heelrule {

/// Of whom words speak: of a value without sides, of one side, or of both alike.
constexpr std::size_t speakers = 4;
constexpr std::size_t speaker(const Finding& finding, const SideReading& reading) {
  return finding.sides_alike ? 3 : static_cast<std::size_t>(reading.side);
}

/// Whether a record says of anything why it was not seen: then the words about what is missing are
/// its own.
bool gives_reasons(const Inspection& inspection);

/// Writes what `finding_sentence` says about the findings of one program. It depends on the reading
/// that decides alone, or on what is missing.
class KeptSentences {
 public:
  /// `languages` is what `fallback_order` gives. Both must outlive this object.
  KeptSentences(const Program& program, std::span<const std::string> languages)
      : program_(program), languages_(languages), kept_(program.contributions.size()) {}

  /// Turns to the findings of another inspection.
  void begin(const Inspection& inspection);

  /// Appends the sentence. `index` is the finding's place in the verdict.
  void append(std::size_t index, const Finding& finding, GrowingText& line);

 private:
  // What a finding lacks, and the sentence that says so.
  struct Unseen {
    Status status = Status::not_seen;
    std::vector<Missing> missing;
    bool whether_it_applies_is_open = false;
    PaddedText sentence;
  };
  static constexpr std::size_t most_unseen = 16;  // of one contribution

  struct Kept {
    std::array<Memo, speakers> judged;  // by value
    std::vector<Unseen> unseen;
  };

  std::string sentence(const Finding& finding) const;
  void append_unseen(std::vector<Unseen>& kept, const Finding& finding, GrowingText& line);

  const Program& program_;
  std::span<const std::string> languages_;
  std::vector<Kept> kept_;
  const Inspection* inspection_ = nullptr;
  bool has_reasons_ = false;
};

}  // namespace heelrule
