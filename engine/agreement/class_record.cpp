#include "engine/agreement/class_record.hpp"

#include "engine/scoring/block.hpp"
#include "engine/scoring/decide.hpp"
#include "engine/scoring/fill_row.hpp"

namespace heelrule {
namespace {

std::string shoe_name(const Inspection& inspection) {
  if (inspection.client.empty() || inspection.shoe_label.empty()) {
    return inspection.client + inspection.shoe_label;
  }
  return inspection.client + ", " + inspection.shoe_label;
}

double points(const Score& score) { return score.points().value_or(unknown); }

// What was recorded, or else worked out.
double value_of(const Program& program, const InspectionRow& row, const Block& block,
                std::size_t trait, Side side) {
  const double recorded = row.numbers[number_place(trait, side)];
  const Register at = program.traits[trait].values[static_cast<std::size_t>(side)];
  const bool derived = std::holds_alternative<DerivedKind>(program.rules.traits[trait].kind);
  return derived && at != no_register ? block.column(at)[0] : recorded;
}

bool is_marked(const Value& value) {
  return std::holds_alternative<ShoeSize>(value) || std::holds_alternative<SockRange>(value);
}

}  // namespace

ClassRecord class_record(const Program& program, const InspectionRow& row) {
  Block block(program);
  fill_row(program, row, block, 0);
  evaluate(program, block);
  const Verdict verdict = decide(program, block, 0);
  ClassRecord record;
  record.observer = row.inspection.observer;
  record.shoe = shoe_name(row.inspection);
  record.values.assign(program.traits.size() * all_sides.size(), unknown);
  for (std::size_t trait = 0; trait < program.traits.size(); ++trait) {
    for (const Side side : all_sides) {
      const double value = value_of(program, row, block, trait, side);
      const bool is_number = program.traits[trait].type.kind == Type::Kind::number;
      record.values[number_place(trait, side)] =
          is_number ? in_unit(value, program.traits[trait].unit) : value;
    }
  }
  for (const Observation& seen : row.inspection.observations) {
    if (is_marked(seen.value)) {
      record.values[number_place(seen.trait, seen.side)] =
          number_of(seen.value, {static_cast<std::uint32_t>(seen.trait), Facet::longest_foot, {}});
    }
  }
  for (const Score& section : verdict.sections) {
    record.sections.push_back(points(section));
  }
  record.score = points(verdict.score);
  if (verdict.grade) {
    record.grade = static_cast<double>(program.rules.grades.size() - 1 - *verdict.grade);
  }
  return record;
}

}  // namespace heelrule
