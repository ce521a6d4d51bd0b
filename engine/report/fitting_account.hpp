// A fitting in words: what `size` says, before it is laid out.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <utility>
#include <vector>

#include "engine/fitting/fitting.hpp"
#include "engine/model/inspection.hpp"
#include "engine/model/verdict.hpp"
#include "engine/scoring/program.hpp"

namespace heelrule {

/// Lines under a heading, and perhaps a table.
struct FittingSection {
  std::string title;
  bool urgent = false;
  std::vector<std::string> lines;
  std::vector<std::pair<std::string, std::string>> table;
};

/// In the order in which it is read: referrals and open safety questions first, then the feet, what
/// to ask for, socks, growth, and the usual cautions last. Where a practitioner comes first, what
/// to buy and which socks to take is held back, as in a graded report.
std::vector<FittingSection> fitting_account(const Program& program, const Inspection& inspection,
                                            const Verdict& verdict, const Fitting& fitting,
                                            std::span<const std::string> languages);

}  // namespace heelrule
