// A batch of rows while a program runs over it, column by column.
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

#include "engine/scoring/program.hpp"

namespace heelrule {

/// How many rows are worked on at a time: enough to keep vector units busy, few enough that all
/// columns of a large rule set stay in the second-level cache.
constexpr std::size_t block_rows = 64;

using Column = std::array<double, block_rows>;

/// What one row came to. Sums are exact whole numbers (or halves and quarters of them): thousandths
/// of weight times millionths of credit.
struct Outcome {
  double earned = 0;       ///< Σ weight·credit over the rules that apply and were seen
  double weight = 0;       ///< Σ weight over them
  double open_weight = 0;  ///< Σ weight of what may apply and is not decided
  double cap = 0;          ///< the grade that failed musts leave; 0: no cap
  double lowest_cap = 0;   ///< … if every open must fails
  double open_musts = 0;   ///< how many musts are open

  bool operator==(const Outcome&) const = default;
};

/// The outcomes of all rows of a block, column by column.
struct OutcomeColumns {
  Column earned, weight, open_weight, cap, lowest_cap, open_musts;
};

/// Columns for one program. Fill the input columns, `evaluate`, and read registers and outcomes.
class Block {
 public:
  explicit Block(const Program& program);

  /// The column of a register. Inputs are registers 0 to `program.inputs.size()` − 1; not-a-number
  /// is *not seen*.
  Column& column(Register at) { return columns_[at]; }
  const Column& column(Register at) const { return columns_[at]; }

  /// Sets every input of every row to *not seen*.
  void clear();

  Outcome outcome(std::size_t row) const {
    const OutcomeColumns& all = outcomes_;
    return {all.earned[row], all.weight[row],     all.open_weight[row],
            all.cap[row],    all.lowest_cap[row], all.open_musts[row]};
  }

 private:
  friend void evaluate(const Program& program, Block& block);

  std::vector<Column> columns_;
  std::size_t input_count_;
  OutcomeColumns outcomes_{};
};

/// Runs a program over all rows of a block. The same inputs give the same outcome to the last bit,
/// on any row, in any company and on every machine with IEEE arithmetic, the tangent excepted.
void evaluate(const Program& program, Block& block);

}  // namespace heelrule
