#include "engine/model/same_finding.hpp"

#include <algorithm>

namespace heelrule {

const Finding* same_finding(const Verdict& other, const Finding& finding) {
  const auto found = std::find_if(
      other.findings.begin(), other.findings.end(),
      [&](const Finding& one) { return one.rule == finding.rule && one.side == finding.side; });
  return found == other.findings.end() ? nullptr : &*found;
}

}  // namespace heelrule
