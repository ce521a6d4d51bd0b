#include "engine/marking/reference.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>

#include "engine/marking/robust_mean.hpp"
#include "engine/marking/trait_worth.hpp"
#include "engine/model/standard_uncertainty.hpp"
#include "engine/quantity/settle.hpp"
#include "engine/scoring/grade.hpp"

namespace heelrule {
namespace {

constexpr double of_robust_mean = 1.25;  // its standard error, in deviations/√p

// How far from the mean a panel's reading of a measure may lie and still agree with it.
double agreeing_distance(const MeasureKind& measure, const std::optional<double>& stated) {
  if (stated) {
    return *stated;
  }
  const double of_one = standard_uncertainty(measure);
  return of_one > 0 ? coverage_factor * std::sqrt(2.0) * of_one
                    : std::numeric_limits<double>::infinity();
}

std::string joined(const std::vector<Inspection>& all, std::string Inspection::* part) {
  std::vector<std::string> parts;
  for (const Inspection& one : all) {
    if (!(one.*part).empty() && std::find(parts.begin(), parts.end(), one.*part) == parts.end()) {
      parts.push_back(one.*part);
    }
  }
  return fmt::format("{}", fmt::join(parts, ", "));
}

// What a panel says of one trait on one side.
class Panel {
 public:
  Panel(const Trait& trait, const std::optional<double>& tolerance,
        std::vector<const Observation*> said)
      : trait_(trait), tolerance_(tolerance), said_(std::move(said)) {
    for (const Observation* one : said_) {
      if (!std::holds_alternative<NotSeen>(one->value)) {
        seen_.push_back(one);
      }
    }
  }

  ReferenceItem agree() {
    ReferenceItem item;
    item.asked = said_.size();
    if (said_.empty()) {
      return item;
    }
    const std::size_t unseen = said_.size() - seen_.size();
    if (seen_.size() < unseen) {
      item.state = ReferenceState::not_seen;
      item.agreed = unseen;
      return item;
    }
    agree_on_value(item);
    const bool most = 2 * item.agreed > seen_.size() && seen_.size() > unseen;
    item.state = most ? ReferenceState::seen : ReferenceState::split;
    return item;
  }

 private:
  void agree_on_value(ReferenceItem& item) const {
    const auto* measure = std::get_if<MeasureKind>(&trait_.kind);
    if (measure == nullptr) {
      agree_on_most_frequent(item);
    } else if (seen_.size() == 1) {
      item.value = seen_.front()->value;
      item.agreed = 1;
      item.uncertainty = standard_uncertainty(std::get<Readings>(*item.value), *measure);
    } else {
      agree_on_mean(item, *measure);
    }
  }

  void agree_on_mean(ReferenceItem& item, const MeasureKind& measure) const {
    std::vector<double> readings;
    readings.reserve(seen_.size());
    for (const Observation* one : seen_) {
      readings.push_back(plain_number(one->value));
    }
    const RobustMean found = robust_mean(readings);
    const double centre = settled(found.mean);
    const double of_mean =
        of_robust_mean * found.deviation / std::sqrt(static_cast<double>(readings.size()));
    item.value = Readings{{centre}, measure.unit, std::nullopt, true};
    item.deviation = found.deviation;
    item.uncertainty = std::hypot(standard_uncertainty(measure), of_mean);
    const double limit = settled(agreeing_distance(measure, tolerance_));
    item.agreed = static_cast<std::size_t>(std::count_if(
        readings.begin(), readings.end(),
        [&](double reading) { return settled(std::fabs(reading - centre)) <= limit; }));
  }

  void agree_on_most_frequent(ReferenceItem& item) const {
    for (const Observation* one : seen_) {
      const auto count = static_cast<std::size_t>(
          std::count_if(seen_.begin(), seen_.end(),
                        [&](const Observation* other) { return other->value == one->value; }));
      if (count > item.agreed) {
        item.agreed = count;
        item.value = one->value;
      }
    }
  }

  const Trait& trait_;
  const std::optional<double>& tolerance_;
  std::vector<const Observation*> said_;
  std::vector<const Observation*> seen_;
};

class Consensus {
 public:
  Consensus(const Program& program, const MarkingRules& marking,
            const std::vector<Inspection>& references)
      : program_(program), marking_(marking), references_(references) {}

  Reference find() {
    reference_.panel = references_.size();
    for (std::size_t trait = 0; trait < program_.rules.traits.size(); ++trait) {
      if (!std::holds_alternative<DerivedKind>(program_.rules.traits[trait].kind)) {
        for (const Side side : sides_of(program_.traits[trait].has_sides)) {
          add(trait, side);
        }
      }
    }
    reference_.inspection = references_.size() == 1 ? references_.front() : joined_inspection();
    reference_.verdict = grade(program_, reference_.inspection);
    reference_.worths = trait_worths(program_, reference_.inspection, reference_.verdict);
    return std::move(reference_);
  }

 private:
  void add(std::size_t trait, Side side) {
    std::vector<const Observation*> said;
    for (const Inspection& one : references_) {
      if (const Observation* found = one.find(trait, side)) {
        said.push_back(found);
      }
    }
    ReferenceItem item =
        Panel(program_.rules.traits[trait], marking_.tolerances[trait], std::move(said)).agree();
    item.trait = trait;
    item.side = side;
    reference_.items.push_back(std::move(item));
  }

  Inspection joined_inspection() const {
    Inspection joint;
    const Inspection& first = references_.front();
    joint.rules = first.rules;
    joint.client = first.client;
    joint.shoe_label = first.shoe_label;
    joint.shoe_marked = first.shoe_marked;
    joint.observer = joined(references_, &Inspection::observer);
    joint.date = joined(references_, &Inspection::date);
    for (const ReferenceItem& item : reference_.items) {
      if (item.value || item.state == ReferenceState::not_seen) {
        joint.observations.push_back(
            {item.trait, item.side, item.value.value_or(NotSeen{}), {}, {}});
      }
    }
    return joint;
  }

  const Program& program_;
  const MarkingRules& marking_;
  const std::vector<Inspection>& references_;
  Reference reference_;
};

}  // namespace

Reference make_reference(const Program& program, const MarkingRules& marking,
                         const std::vector<Inspection>& references) {
  return Consensus(program, marking, references).find();
}

}  // namespace heelrule
