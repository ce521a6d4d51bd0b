#include "engine/report/named_measure.hpp"

#include "engine/report/value_words.hpp"

namespace heelrule {
namespace {

bool is_length_or_angle(const Program& program, std::size_t trait) {
  const std::string_view kind = facts(program.traits[trait].unit).kind;
  return program.traits[trait].type.kind == Type::Kind::number &&
         (kind == facts(Unit::millimetre).kind || kind == facts(Unit::degree).kind);
}

std::optional<NamedMeasure> read_by_a_rule(const ReportSubject& subject, std::size_t trait,
                                           Side side) {
  for (const Finding& finding : subject.record.verdict.findings) {
    const RuleProgram& rule = subject.program.rule_programs[finding.rule];
    for (const SideReading& reading : finding.readings) {
      if (rule.trait == trait && reading.side == side) {
        return NamedMeasure{reading.value,
                            value_words(subject.program, trait, reading.value, rule.cuts)};
      }
    }
  }
  return std::nullopt;
}

}  // namespace

std::optional<NamedMeasure> named_measure(const ReportSubject& subject, std::string_view trait,
                                          Side side) {
  const auto found = subject.program.rules.find_trait(trait);
  if (!found || !is_length_or_angle(subject.program, *found)) {
    return std::nullopt;
  }
  if (const auto read = read_by_a_rule(subject, *found, side)) {
    return read;
  }
  const Observation* seen = subject.record.inspection.find(*found, side);
  const auto* readings = seen == nullptr ? nullptr : std::get_if<Readings>(&seen->value);
  if (readings == nullptr) {
    return std::nullopt;
  }
  return NamedMeasure{mean(*readings), value_words(subject.program, *found, mean(*readings), {})};
}

}  // namespace heelrule
