#include "tests/laws/random_formula.hpp"

#include <fmt/format.h>

#include "engine/formula/syntax.hpp"

namespace heelrule {
namespace {

class FormulaWriter {
 public:
  FormulaWriter(const RuleSet& rules, Dice& dice) : rules_(rules), dice_(dice) {}

  std::string write(Wanted wanted, Sides sides, std::size_t depth) {
    switch (wanted) {
      case Wanted::length:
        return length(sides, depth);
      case Wanted::number:
        return number(sides, depth);
      case Wanted::yes_no:
        return yes_no(sides, depth);
    }
    return {};
  }

 private:
  // A trait whose name begins so; nothing where there is none that fits.
  std::string trait(std::string_view kind, Sides sides) {
    std::vector<std::string> fitting;
    for (const Trait& known : rules_.traits) {
      const bool two = has_sides(known);
      if (!known.name.starts_with(kind)) {
        continue;
      }
      if (!two) {
        fitting.push_back(known.name);
      } else if (sides == Sides::allowed) {
        fitting.push_back(known.name);
      } else {
        fitting.push_back(fmt::format("{}({})", dice_.one_in(2) ? "left" : "right", known.name));
      }
    }
    return fitting.empty() ? std::string() : dice_.pick(fitting);
  }

  // As random_rules names them: a trait of two sides says so.
  static bool has_sides(const Trait& trait) { return trait.name.ends_with("_each"); }

  std::string length_trait_of_sides() {
    std::vector<std::string> fitting;
    for (const Trait& known : rules_.traits) {
      if (known.name.starts_with("length_") && has_sides(known)) {
        fitting.push_back(known.name);
      }
    }
    return fitting.empty() ? std::string() : dice_.pick(fitting);
  }

  std::string length(Sides sides, std::size_t depth) {
    if (depth == 0) {
      const std::string read = trait("length_", sides);
      return read.empty() || dice_.one_in(5) ? fmt::format("{} mm", grid()) : read;
    }
    const auto inner = [&] { return length(sides, depth - 1); };
    switch (dice_.below(10)) {
      case 0:
      case 1:
        return fmt::format("{} + {}", inner(), inner());
      case 2:
      case 3:
        return fmt::format("{} - ({})", inner(), inner());
      case 4:
        return fmt::format("({}) * ({})", inner(), number(sides, depth - 1));
      case 5:
        return fmt::format("({}) / ({})", inner(), number(sides, depth - 1));
      case 6:
        return fmt::format("{}({}, {})", any({"min", "max", "mean"}), inner(), inner());
      case 7:
        return fmt::format("abs({})", inner());
      case 8:
        return fmt::format("if {} then {} else {}", yes_no(sides, depth - 1), inner(), inner());
      default: {
        const std::string both = length_trait_of_sides();
        const std::string function = any({"larger", "smaller", "mean_of_sides", "difference"});
        return both.empty() ? fmt::format("-({})", inner()) : fmt::format("{}({})", function, both);
      }
    }
  }

  std::string number(Sides sides, std::size_t depth) {
    if (depth == 0) {
      return any({"0.5", "2", "3", "0.1", "150 %", "1"});
    }
    switch (dice_.below(4)) {
      case 0:
        return fmt::format("({}) / ({})", length(sides, depth - 1), length(sides, depth - 1));
      case 1:
        return rules_.find_trait("fibres") ? any({"share(fibres, cotton)", "moisture(fibres)"})
                                           : number(sides, depth - 1);
      default:
        return number(sides, depth - 1);
    }
  }

  std::string yes_no(Sides sides, std::size_t depth) {
    if (depth == 0) {
      const std::string read = trait("answer_", sides);
      return read.empty() || dice_.one_in(8) ? any({"yes", "no"}) : read;
    }
    const auto inner = [&] { return yes_no(sides, depth - 1); };
    switch (dice_.below(8)) {
      case 0:
        return fmt::format("({} and {})", inner(), inner());
      case 1:
        return fmt::format("({} or {})", inner(), inner());
      case 2:
        return fmt::format("(not {})", inner());
      case 3:
        return fmt::format("({} {} {})", scale(sides), sign(), any({"soft", "medium", "firm"}));
      case 4:
        return fmt::format("({} {} \"hook and loop\")", choice(sides), any({"is", "is not"}));
      default:
        return fmt::format("({} {} {})", length(sides, depth - 1), sign(),
                           length(sides, depth - 1));
    }
  }

  std::string scale(Sides sides) { return trait("scale_", sides); }
  std::string choice(Sides sides) { return trait("choice_", sides); }

  std::string sign() { return any({"<", "<=", ">", ">=", "is", "is not"}); }

  std::string any(const std::vector<std::string>& words) { return dice_.pick(words); }

  std::string grid() { return fmt::format("{}", static_cast<double>(dice_.below(25)) / 2); }

  const RuleSet& rules_;
  Dice& dice_;
};

}  // namespace

std::string random_formula(const RuleSet& rules, Wanted wanted, Sides sides, std::size_t depth,
                           Dice& dice) {
  return FormulaWriter(rules, dice).write(wanted, sides, depth);
}

}  // namespace heelrule
