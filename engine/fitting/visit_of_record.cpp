#include "engine/fitting/visit_of_record.hpp"

#include <fmt/format.h>

#include <array>
#include <utility>

#include "engine/quantity/calendar_date.hpp"

namespace heelrule {
namespace {

using MeasureOfFoot = std::optional<Measured> FootMeasures::*;

struct LengthTrait {
  std::string_view name;
  MeasureOfFoot measure;
};

constexpr std::string_view standing_length = "foot_length";
constexpr std::string_view age = "child_age";

constexpr std::array<LengthTrait, 7> length_traits{{
    {standing_length, &FootMeasures::length},
    {"foot_length_seated", &FootMeasures::seated_length},
    {"foot_width", &FootMeasures::width},
    {"foot_width_seated", &FootMeasures::seated_width},
    {"ball_girth", &FootMeasures::girth},
    {"sock_foot_length", &FootMeasures::length_in_sock},
    {"insole_length", &FootMeasures::inside_length},
}};

bool measures(const Trait& trait, Unit unit) {
  const auto* measure = std::get_if<MeasureKind>(&trait.kind);
  return measure != nullptr && facts(measure->unit).dimension == facts(unit).dimension;
}

class RecordReader {
 public:
  RecordReader(const RuleSet& rules, const Inspection& inspection)
      : rules_(rules), inspection_(inspection) {}

  Parsed<Visit> read() {
    if (!rules_.find_trait(standing_length)) {
      return Problem{fmt::format("`{}` asks for no `{}`, by which sizes are found", rules_.name,
                                 standing_length),
                     "use a rule set that builds on `feet`"};
    }
    visit_.date = find_date(inspection_.date);
    for (const LengthTrait& one : length_traits) {
      read_lengths(one);
    }
    read_age();
    read_socks();
    if (problem_.message.empty() && !visit_.left.length && !visit_.right.length) {
      problem_ = {"no foot was measured standing",
                  fmt::format("record `{}`: shoes are bought by it", standing_length)};
    }
    return problem_.message.empty() ? Parsed<Visit>(std::move(visit_)) : problem_;
  }

 private:
  // The trait of this name; a problem if it is not as `sound` wants it.
  template <class Check>
  const Trait* find(std::string_view name, Check sound, std::string_view wanted) {
    const auto index = rules_.find_trait(name);
    if (!index) {
      return nullptr;
    }
    const Trait& trait = rules_.traits[*index];
    if (!sound(trait)) {
      problem_ = {fmt::format("`{}` of `{}` is no {}", name, rules_.name, wanted),
                  "give the trait another name, for `size` knows this one"};
      return nullptr;
    }
    return &trait;
  }

  template <class T>
  const T* seen(const Trait& trait, Side side) const {
    const auto index = static_cast<std::size_t>(&trait - rules_.traits.data());
    const Observation* found = inspection_.find(index, side);
    return found == nullptr ? nullptr : std::get_if<T>(&found->value);
  }

  void read_lengths(const LengthTrait& one) {
    const auto sound = [](const Trait& trait) {
      return measures(trait, Unit::millimetre) && has_sides(trait.per);
    };
    const Trait* trait = find(one.name, sound, "length of each foot or shoe");
    if (trait == nullptr) {
      return;
    }
    for (const Side side : both_sides) {
      if (const auto* readings = seen<Readings>(*trait, side)) {
        FootMeasures& foot = side == Side::left ? visit_.left : visit_.right;
        foot.*one.measure = measured(*readings, std::get<MeasureKind>(trait->kind));
      }
    }
  }

  void read_age() {
    const auto sound = [](const Trait& trait) {
      return measures(trait, Unit::year) && !has_sides(trait.per);
    };
    if (const Trait* trait = find(age, sound, "time without sides")) {
      if (const auto* readings = seen<Readings>(*trait, Side::none)) {
        visit_.age = in_unit(mean(*readings), Unit::year);
      }
    }
  }

  void read_socks() {
    const auto marked = [](const Trait& trait) {
      return std::holds_alternative<SockRangeKind>(trait.kind) && !has_sides(trait.per);
    };
    if (const Trait* trait = find("sock_marked", marked, "sock range without sides")) {
      if (const auto* range = seen<SockRange>(*trait, Side::none)) {
        visit_.socks.push_back(*range);
      }
    }
    const auto fibres = [](const Trait& trait) {
      return std::holds_alternative<FibresKind>(trait.kind) && !has_sides(trait.per);
    };
    if (const Trait* trait = find("sock_fibres", fibres, "fibre content without sides")) {
      if (const auto* content = seen<FibreContent>(*trait, Side::none)) {
        visit_.fibres = *content;
      }
    }
    const auto scale = [](const Trait& trait) {
      return std::holds_alternative<ScaleKind>(trait.kind) && has_sides(trait.per);
    };
    if (const Trait* trait = find("cuff_mark", scale, "scale for each foot")) {
      visit_.left.cuff_grooves = grooves(*trait, Side::left);
      visit_.right.cuff_grooves = grooves(*trait, Side::right);
    }
  }

  bool grooves(const Trait& trait, Side side) const {
    const auto* level = seen<LevelSeen>(trait, side);
    return level != nullptr && levels_of(trait.kind)[level->level].name.value == "groove";
  }

  const RuleSet& rules_;
  const Inspection& inspection_;
  Visit visit_;
  Problem problem_;
};

}  // namespace

Parsed<Visit> visit_of_record(const RuleSet& rules, const Inspection& inspection) {
  return RecordReader(rules, inspection).read();
}

bool is_for_children(const RuleSet& rules) { return rules.find_trait(age).has_value(); }

}  // namespace heelrule
