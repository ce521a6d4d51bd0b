#include "engine/scoring/fill_row.hpp"

#include "engine/formula/operation.hpp"
#include "engine/quantity/size_conversion.hpp"

namespace heelrule {
namespace {

double millimetres(const std::optional<Millimetres>& length) {
  return length ? length->value() : operation::not_seen;
}

struct NumberOf {
  Input input;

  double operator()(const FibreContent& content) const {
    return input.facet == Facet::moisture ? content.moisture() : content.share(input.fibres);
  }
  double operator()(const ShoeSize& size) const { return foot(size); }
  double operator()(const SockRange& range) const { return foot(range); }
  template <class Other>
  double operator()(const Other&) const {
    return operation::not_seen;
  }

  template <class Marked>
  double foot(const Marked& marked) const {
    return millimetres(input.facet == Facet::shortest_foot ? shortest_foot(marked)
                                                           : longest_foot(marked));
  }
};

double number_in(const Inspection& inspection, const RowInput& wanted) {
  const Observation* seen = inspection.find(wanted.input.trait, wanted.side);
  return seen == nullptr ? operation::not_seen : number_of(seen->value, wanted.input);
}

}  // namespace

double number_of(const Value& value, const Input& input) {
  return input.facet == Facet::value ? plain_number(value) : std::visit(NumberOf{input}, value);
}

void fill_row(const Program& program, const Inspection& inspection, Block& block, std::size_t row) {
  for (Register i = 0; i < program.inputs.size(); ++i) {
    block.column(i)[row] = number_in(inspection, program.inputs[i]);
  }
}

void fill_row(const Program& program, const InspectionRow& values, Block& block, std::size_t row) {
  for (const PlainInput& input : program.plain_inputs) {
    block.column(input.result)[row] = values.numbers[input.place];
  }
  for (const Register i : program.other_inputs) {
    block.column(i)[row] = number_in(values.inspection, program.inputs[i]);
  }
}

}  // namespace heelrule
