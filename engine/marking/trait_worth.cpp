#include "engine/marking/trait_worth.hpp"

#include <algorithm>
#include <cmath>

#include "engine/formula/operation.hpp"
#include "engine/scoring/block.hpp"
#include "engine/scoring/fill_row.hpp"
#include "engine/scoring/rule_needs.hpp"

namespace heelrule {
namespace {

double points_of(const Score& score) { return score.points().value_or(0); }

// By trait: the score if it were not seen.
std::vector<double> points_unseen(const Program& program, const Inspection& inspection) {
  std::vector<double> points(program.traits.size());
  Block block(program);
  for (std::size_t first = 0; first < points.size(); first += block_rows) {
    const std::size_t rows = std::min(block_rows, points.size() - first);
    for (std::size_t row = 0; row < rows; ++row) {
      fill_row(program, inspection, block, row);
    }
    for (Register i = 0; i < program.inputs.size(); ++i) {
      const std::size_t trait = program.inputs[i].input.trait;
      if (trait >= first && trait < first + rows) {
        block.column(i)[trait - first] = operation::not_seen;
      }
    }
    evaluate(program, block);
    for (std::size_t row = 0; row < rows; ++row) {
      const Outcome outcome = block.outcome(row);
      points[first + row] = points_of({outcome.earned, outcome.weight, outcome.open_weight});
    }
  }
  return points;
}

// By trait: the score if what needs it came out with no credit, or with all of it.
struct Extremes {
  std::vector<Score> failing;
  std::vector<Score> passing;
};

Extremes extremes(const Program& program, const Verdict& verdict) {
  Extremes all{std::vector<Score>(program.traits.size(), verdict.score),
               std::vector<Score>(program.traits.size(), verdict.score)};
  std::vector<std::vector<std::size_t>> needs(program.rule_programs.size());
  for (std::size_t rule = 0; rule < needs.size(); ++rule) {
    needs[rule] = traits_needed(program, rule);
  }
  for (const Finding& finding : verdict.findings) {
    const double earned = is_judged(finding.status) ? finding.weight * finding.credit : 0;
    const double added = is_judged(finding.status) ? 0 : finding.weight;
    for (const std::size_t trait : needs[finding.rule]) {
      all.failing[trait].earned -= earned;
      all.failing[trait].weight += added;
      all.passing[trait].earned += finding.weight * full_credit - earned;
      all.passing[trait].weight += added;
    }
  }
  return all;
}

}  // namespace

std::vector<double> trait_worths(const Program& program, const Inspection& inspection,
                                 const Verdict& verdict) {
  const double points = points_of(verdict.score);
  const std::vector<double> unseen = points_unseen(program, inspection);
  const Extremes all = extremes(program, verdict);
  std::vector<double> worths(program.traits.size());
  for (std::size_t trait = 0; trait < worths.size(); ++trait) {
    worths[trait] = std::max({std::fabs(unseen[trait] - points),
                              std::fabs(points_of(all.failing[trait]) - points),
                              std::fabs(points_of(all.passing[trait]) - points)});
  }
  return worths;
}

}  // namespace heelrule
