// What a graded page is about: one record, its verdict, and perhaps the record before it.
#pragma once

#include <optional>

#include "engine/doubt/doubt.hpp"
#include "engine/model/inspection.hpp"
#include "engine/model/verdict.hpp"
#include "engine/report/account.hpp"
#include "engine/report/doubt_account.hpp"
#include "engine/scoring/program.hpp"

namespace heelrule {

/// A record and what it came to.
struct GradedRecord {
  Inspection inspection;
  Verdict verdict;
  std::optional<Doubt> doubt{};  ///< nothing where readings are to be taken as they stand

  /// The doubt as reports take it: none may be there.
  const Doubt* known_doubt() const { return doubt ? &*doubt : nullptr; }
};

/// Everything that parts of a page are made from. All of it outlives the page.
struct ReportSubject {
  const Program& program;
  const GradedRecord& record;
  const GradedRecord*
      earlier;                ///< of the same client or pair, graded by the same rules; may be null
  const Account& account;     ///< of `record`
  const DoubtAccount* doubt;  ///< of `record`; null where its doubt is not known
  std::span<const std::string> languages;  ///< as `fallback_order` gives them
};

}  // namespace heelrule
