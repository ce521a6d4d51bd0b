#include "engine/scoring/lower.hpp"

#include <algorithm>
#include <bit>
#include <map>
#include <tuple>

#include "engine/model/inspection_row.hpp"
#include "engine/scoring/check_rules.hpp"

namespace heelrule {
namespace {

constexpr std::array<Side, 2> both_sides{Side::left, Side::right};

std::size_t index_of(Side side) { return static_cast<std::size_t>(side); }

bool warns(const SpokenWords& words) { return !words.caution.empty() || !words.referral.empty(); }
bool advises(const SpokenWords& words) { return !words.advice.empty(); }

Voice voice_of(const RuleProgram& rule) {
  const auto any_band = [&](auto says) {
    return std::any_of(rule.band_words.begin(), rule.band_words.end(), says);
  };
  Voice voice;
  voice.warns = any_band(warns) || warns(rule.words);
  voice.advises = any_band(advises) || advises(rule.words);
  return voice;
}

class Lowering {
 public:
  Lowering(const TraitTypes& traits, const std::vector<std::optional<Expression>>& applies,
           Program& program)
      : traits_(traits), applies_(applies), program_(program) {}

  void run() {
    // Inputs take the first registers, so every one of them is found before the first instruction.
    collect_inputs();
    part_inputs();
    program_.register_count = static_cast<Register>(program_.inputs.size());
    needs_.resize(program_.inputs.size());
    for (Register i = 0; i < program_.register_count; ++i) {
      needs_[i] = {i};
    }
    describe_traits();
    for (const std::size_t derived : traits_.order) {
      lower_trait(derived);
    }
    for (std::uint32_t rule = 0; rule < program_.rule_programs.size(); ++rule) {
      lower_rule(rule);
    }
    for (std::size_t change = 0; change < program_.rules.changes.size(); ++change) {
      lower_change(applies_[program_.rules.rules.size() + change]);
    }
  }

 private:
  using StepKey = std::tuple<Operation, Register, Register, Register>;

  void collect_inputs() {
    for (std::uint32_t i = 0; i < traits_.types.size(); ++i) {
      const TraitType& type = *traits_.types[i];
      const bool is_number = type.type.kind == Type::Kind::number ||
                             type.type.kind == Type::Kind::yes_no ||
                             type.type.kind == Type::Kind::level;
      if (!traits_.expressions[i] && is_number) {
        add_inputs({i, Facet::value, {}}, type.has_sides);
      }
    }
    for (const auto& expression : traits_.expressions) {
      collect_inputs(expression);
    }
    for (const auto& expression : applies_) {
      collect_inputs(expression);
    }
    std::sort(program_.inputs.begin(), program_.inputs.end());
    program_.inputs.erase(std::unique(program_.inputs.begin(), program_.inputs.end()),
                          program_.inputs.end());
  }

  void part_inputs() {
    for (Register i = 0; i < program_.inputs.size(); ++i) {
      const auto& [input, side] = program_.inputs[i];
      if (input.facet == Facet::value) {
        const std::size_t place = number_place(input.trait, side);
        program_.plain_inputs.push_back({i, static_cast<std::uint32_t>(place)});
      } else {
        program_.other_inputs.push_back(i);
      }
    }
  }

  void collect_inputs(const std::optional<Expression>& expression) {
    if (!expression) {
      return;
    }
    for (const Step& step : expression->steps) {
      if (step.operation == Operation::input && step.input.facet != Facet::value) {
        add_inputs(step.input, traits_.types[step.input.trait]->has_sides);
      }
    }
  }

  void add_inputs(const Input& input, bool sides) {
    if (!sides) {
      program_.inputs.push_back({input, Side::none});
      return;
    }
    for (const Side side : both_sides) {
      program_.inputs.push_back({input, side});
    }
  }

  Register input_register(const Input& input, Side side) const {
    const RowInput wanted{input, side};
    const auto at = std::lower_bound(program_.inputs.begin(), program_.inputs.end(), wanted);
    return static_cast<Register>(at - program_.inputs.begin());
  }

  void describe_traits() {
    program_.traits.resize(traits_.types.size());
    for (std::uint32_t i = 0; i < traits_.types.size(); ++i) {
      TraitProgram& trait = program_.traits[i];
      trait.type = traits_.types[i]->type;
      trait.has_sides = traits_.types[i]->has_sides;
      trait.unit = printed_unit(program_.rules.traits[i], trait.type);
    }
    for (Register i = 0; i < program_.inputs.size(); ++i) {
      const RowInput& input = program_.inputs[i];
      TraitProgram& trait = program_.traits[input.input.trait];
      if (input.input.facet == Facet::value) {
        trait.values[index_of(input.side)] = i;
      }
      trait.needs[index_of(input.side)].push_back(i);
    }
  }

  void lower_trait(std::size_t index) {
    const Expression& expression = *traits_.expressions[index];
    TraitProgram& trait = program_.traits[index];
    const auto lower_side = [&](Side side) {
      Register value = lower_expression(expression, side);
      if (trait.type.kind == Type::Kind::number) {
        value = instruction(Operation::settle, value, no_register, no_register);
      }
      trait.values[index_of(side)] = value;
      trait.needs[index_of(side)] = needs_[value];
    };
    begin(expression);
    if (!trait.has_sides) {
      lower_side(Side::none);
      return;
    }
    for (const Side side : both_sides) {
      lower_side(side);
    }
  }

  void begin(const Expression& expression) {
    lowered_.assign(expression.steps.size(), {no_register, no_register, no_register});
  }

  Register lower_expression(const Expression& expression, Side side) {
    return lower_step(expression, static_cast<std::uint32_t>(expression.steps.size() - 1), side);
  }

  // Each step is lowered once a side: a formula such as larger(a + larger(a + …)) would double at
  // every level.
  Register lower_step(const Expression& expression, std::uint32_t index, Side side) {
    Register& result = lowered_[index][index_of(side)];
    if (result == no_register) {
      result = lower_new_step(expression, expression.steps[index], side);
    }
    return result;
  }

  Register lower_new_step(const Expression& expression, const Step& step, Side side) {
    switch (step.operation) {
      case Operation::constant:
        return constant(step.constant);
      case Operation::input:
        return read(step.input, side);
      case Operation::left:
        return lower_step(expression, step.operands[0], Side::left);
      case Operation::right:
        return lower_step(expression, step.operands[0], Side::right);
      default:
        break;
    }
    std::array<Register, 3> operands{no_register, no_register, no_register};
    for (std::size_t i = 0; i < step.operands.size(); ++i) {
      operands[i] = lower_step(expression, step.operands[i], side);
    }
    return instruction(step.operation, operands[0], operands[1], operands[2]);
  }

  Register read(const Input& input, Side side) {
    const TraitProgram& trait = program_.traits[input.trait];
    const Side own = trait.has_sides ? side : Side::none;
    if (input.facet == Facet::value) {
      return trait.values[index_of(own)];
    }
    return input_register(input, own);
  }

  Register fresh(std::vector<Register> needs) {
    needs_.push_back(std::move(needs));
    return program_.register_count++;
  }

  Register constant(double value) {
    const auto key = std::bit_cast<std::uint64_t>(value);
    const auto known = constants_.find(key);
    if (known != constants_.end()) {
      return known->second;
    }
    const Register result = fresh({});
    program_.constants.push_back({result, value});
    constants_.emplace(key, result);
    return result;
  }

  Register instruction(Operation operation, Register a, Register b, Register c) {
    const StepKey key{operation, a, b, c};
    const auto known = steps_.find(key);
    if (known != steps_.end()) {
      return known->second;
    }
    std::vector<Register> needs;
    for (const Register operand : {a, b, c}) {
      if (operand != no_register) {
        needs.insert(needs.end(), needs_[operand].begin(), needs_[operand].end());
      }
    }
    std::sort(needs.begin(), needs.end());
    needs.erase(std::unique(needs.begin(), needs.end()), needs.end());
    const Register result = fresh(std::move(needs));
    program_.instructions.push_back({operation, result, {a, b, c}});
    steps_.emplace(key, result);
    return result;
  }

  void lower_rule(std::uint32_t index) {
    const Rule& rule = program_.rules.rules[index];
    RuleProgram& prepared = program_.rule_programs[index];
    const TraitProgram& trait = program_.traits[prepared.trait];
    Contribution contribution;
    contribution.rule = index;
    contribution.weight = rule.weight.value;
    if (rule.caps) {
      contribution.cap = static_cast<std::int32_t>(*program_.rules.find_grade(rule.caps->value));
    }
    contribution.voice = voice_of(prepared);
    if (const auto& applies = applies_[index]) {
      begin(*applies);
      contribution.applies = lower_expression(*applies, Side::none);
      prepared.applies_needs = needs_[contribution.applies];
    }
    if (!trait.has_sides) {
      contribution.values[0] = trait.values[index_of(Side::none)];
      contribution.credits[0] = judge(index, contribution.values[0]);
      program_.contributions.push_back(contribution);
      return;
    }
    contribution.values = {trait.values[index_of(Side::left)], trait.values[index_of(Side::right)]};
    contribution.credits = {judge(index, contribution.values[0]),
                            judge(index, contribution.values[1])};
    if (rule.sides == SideRule::each) {
      add_each_side(contribution);
      return;
    }
    contribution.joining = rule.sides == SideRule::mean ? Joining::mean : Joining::worse;
    program_.contributions.push_back(contribution);
  }

  void lower_change(const std::optional<Expression>& applies) {
    if (applies) {
      begin(*applies);
    }
    program_.change_applies.push_back(applies ? lower_expression(*applies, Side::none)
                                              : no_register);
  }

  void add_each_side(const Contribution& both) {
    for (std::size_t i = 0; i < both_sides.size(); ++i) {
      Contribution one = both;
      one.side = both_sides[i];
      one.values = {both.values[i], no_register};
      one.credits = {both.credits[i], no_register};
      one.weight = both.weight / 2;
      program_.contributions.push_back(one);
    }
  }

  Register judge(std::uint32_t rule, Register value) {
    const Register credit = fresh(needs_[value]);
    program_.judgements.push_back({value, credit, rule});
    return credit;
  }

  const TraitTypes& traits_;
  const std::vector<std::optional<Expression>>& applies_;
  Program& program_;
  std::vector<std::vector<Register>> needs_;  // of each register: the row inputs behind it
  std::vector<SideRegisters> lowered_;        // of each step of the expression at hand
  std::map<std::uint64_t, Register> constants_;
  std::map<StepKey, Register> steps_;
};

}  // namespace

void lower(const TraitTypes& traits, const std::vector<std::optional<Expression>>& applies,
           Program& program) {
  Lowering(traits, applies, program).run();
}

}  // namespace heelrule
