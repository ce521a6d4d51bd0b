// The conversion tables of ISO/TS 19407, as far as they can be trusted.
#pragma once

#include <span>

namespace heelrule {

/// One row of the table for adults. The numbers are in halves: EU 33.5 is 67.
struct AdultSizeRow {
  int foot_length;  ///< mm
  int european;
  int british;
};

/// One row of the table for children.
struct ChildSizeRow {
  int foot_length;  ///< mm
  int european;
};

/// 210 .. 320 mm by 5 mm. ISO/TS 19407:2015, table 2, from a secondary source (two rows seen in a
/// second one). The American columns are not kept: in every row men's is British + 1, women's
/// British + 2.
std::span<const AdultSizeRow> adult_size_table();

/// 120 .. 225 mm by 5 mm. Same source. Its British and American columns are left out: they lie up
/// to three quarters of a size above the formula that goes with them, and nothing confirms them.
std::span<const ChildSizeRow> child_size_table();

}  // namespace heelrule
