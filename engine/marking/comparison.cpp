#include "engine/marking/comparison.hpp"

#include <algorithm>
#include <cmath>
#include <variant>

#include "engine/model/standard_uncertainty.hpp"
#include "engine/quantity/settle.hpp"

namespace heelrule {
namespace {

constexpr double satisfactory = 2;      // z score, in deviations
constexpr std::size_t least_panel = 3;  // whose scatter says something

// Of two values that are both there.
class ValueComparison {
 public:
  ValueComparison(const Trait& trait, const std::optional<double>& stated, double level_off,
                  const ReferenceItem& item, std::size_t panel, Comparison& result)
      : trait_(trait),
        stated_(stated),
        level_off_(level_off),
        item_(item),
        panel_(panel),
        result_(result) {}

  void compare(const Value& recorded) {
    if (stated_) {
      result_.tolerance = *stated_;
      result_.source = ToleranceSource::trainer;
    }
    if (const auto* measure = std::get_if<MeasureKind>(&trait_.kind)) {
      compare_measures(*measure, std::get<Readings>(recorded));
    } else if (std::holds_alternative<ScaleKind>(trait_.kind)) {
      compare_levels(plain_number(recorded) - plain_number(*item_.value));
    } else if (const auto* fibres = std::get_if<FibreContent>(&recorded)) {
      judge(largest_difference(*fibres, std::get<FibreContent>(*item_.value)));
    } else {
      const bool same = recorded == *item_.value;
      result_.likeness = same ? Likeness::right : Likeness::off;
      result_.credit = same ? 1 : 0;
    }
  }

 private:
  void judge(double difference) {
    result_.difference = settled(difference);
    const bool within = std::fabs(*result_.difference) <= settled(result_.tolerance);
    result_.likeness = *result_.difference == 0 ? Likeness::right
                       : within                 ? Likeness::within
                                                : Likeness::off;
    result_.credit = within ? 1 : 0;
  }

  void compare_measures(const MeasureKind& measure, const Readings& readings) {
    const double difference = mean(readings) - plain_number(*item_.value);
    const double by_rules = standard_uncertainty(measure);
    const double own = by_rules > 0 ? by_rules : standard_uncertainty(readings, measure);
    const bool both = own > 0 && item_.uncertainty > 0;
    const double expanded = coverage_factor * std::hypot(own, item_.uncertainty);
    if (both) {
      result_.normalised_error = std::fabs(settled(difference)) / expanded;
    }
    if (!stated_ && both) {
      result_.tolerance = expanded;
      result_.source = ToleranceSource::uncertainty;
    } else if (!stated_ && panel_ >= least_panel && item_.deviation > 0) {
      result_.tolerance = satisfactory * item_.deviation;
      result_.source = ToleranceSource::panel;
    }
    judge(difference);
  }

  void compare_levels(double difference) {
    judge(difference);
    if (result_.likeness == Likeness::off) {
      result_.credit = std::max(0.0, 1 - level_off_ * std::fabs(difference));
    }
  }

  static double largest_difference(const FibreContent& recorded, const FibreContent& reference) {
    double largest = 0;
    const auto look = [&](const FibreContent& content) {
      for (const FibreShare& part : content.shares()) {
        const double difference = recorded.share(part.fibre) - reference.share(part.fibre);
        largest = std::fabs(difference) > std::fabs(largest) ? difference : largest;
      }
    };
    look(recorded);
    look(reference);
    return largest;
  }

  const Trait& trait_;
  const std::optional<double>& stated_;
  double level_off_;
  const ReferenceItem& item_;
  std::size_t panel_;
  Comparison& result_;
};

const Value* seen_value(const Inspection& record, const ReferenceItem& item) {
  const Observation* found = record.find(item.trait, item.side);
  return found == nullptr || std::holds_alternative<NotSeen>(found->value) ? nullptr
                                                                           : &found->value;
}

class Marker {
 public:
  Marker(const Program& program, const MarkingRules& marking, const Reference& reference,
         const Inspection& record)
      : program_(program), marking_(marking), reference_(reference), record_(record) {}

  std::vector<Comparison> compare() {
    for (std::size_t i = 0; i < reference_.items.size(); ++i) {
      const ReferenceItem& item = reference_.items[i];
      const Value* recorded = seen_value(record_, item);
      if (recorded != nullptr || item.value) {
        Comparison result;
        result.item = i;
        compare(item, recorded, result);
        all_.push_back(result);
      }
    }
    weigh();
    return std::move(all_);
  }

 private:
  void compare(const ReferenceItem& item, const Value* recorded, Comparison& result) const {
    switch (item.state) {
      case ReferenceState::silent:
      case ReferenceState::split:
        result.likeness = Likeness::not_held;
        return;
      case ReferenceState::not_seen:
        result.likeness = Likeness::invented;
        return;
      case ReferenceState::seen:
        if (recorded == nullptr) {
          result.likeness = Likeness::missed;
          return;
        }
        ValueComparison(program_.rules.traits[item.trait], marking_.tolerances[item.trait],
                        marking_.level_off, item, reference_.panel, result)
            .compare(*recorded);
        return;
    }
  }

  std::size_t trait_of(const Comparison& one) const { return reference_.items[one.item].trait; }

  void weigh() {
    std::vector<double> held(program_.traits.size(), 0);
    for (const Comparison& one : all_) {
      held[trait_of(one)] += one.likeness == Likeness::not_held ? 0 : 1;
    }
    for (Comparison& one : all_) {
      if (one.likeness != Likeness::not_held) {
        const std::size_t trait = trait_of(one);
        one.weight = marking_.weights[trait].value_or(reference_.worths[trait]) / held[trait];
      }
    }
  }

  const Program& program_;
  const MarkingRules& marking_;
  const Reference& reference_;
  const Inspection& record_;
  std::vector<Comparison> all_;
};

}  // namespace

std::vector<Comparison> compare(const Program& program, const MarkingRules& marking,
                                const Reference& reference, const Inspection& record) {
  return Marker(program, marking, reference, record).compare();
}

}  // namespace heelrule
