#include "engine/report/finding_ruler.hpp"

#include <fmt/format.h>

#include <utility>

#include "engine/report/value_words.hpp"

namespace heelrule {
namespace {

BandFill fill_of(const Credit& earns) {
  if (earns.is_ramp()) {
    return BandFill::sparse;
  }
  return earns.from == full_credit ? BandFill::open
         : earns.from == 0         ? BandFill::dense
                                   : BandFill::sparse;
}

class RulerMaker {
 public:
  RulerMaker(const Program& program, std::size_t rule)
      : program_(program),
        rule_(rule),
        prepared_(program.rule_programs[rule]),
        unit_(program.traits[prepared_.trait].unit) {}

  std::vector<RulerBand> bands() const {
    const std::vector<Band>& written = program_.rules.rules[rule_].bands;
    std::vector<RulerBand> bands;
    for (std::size_t i = 0; i < written.size(); ++i) {
      RulerBand band;
      band.name = in_words(written[i].name.value);
      band.fill = fill_of(written[i].earns.value);
      if (i < prepared_.cuts.size()) {
        band.cut = in_unit(prepared_.cuts[i], unit_);
        band.cut_words = show(prepared_.cuts[i], unit_, 9);
      }
      band.words = band_words(program_, rule_, i);
      bands.push_back(std::move(band));
    }
    return bands;
  }

  void add_notches(const DoubtedFinding& read, bool is_earlier,
                   std::vector<RulerNotch>& notches) const {
    const Finding& finding = read.finding;
    for (std::size_t i = 0; i < finding.readings.size(); ++i) {
      const SideReading& reading = finding.readings[i];
      const std::string_view side = side_words(finding, reading);
      RulerNotch notch;
      notch.value = in_unit(reading.value, unit_);
      notch.doubt =
          read.doubt == nullptr ? 0 : in_unit(2 * read.doubt->sides[i].uncertainty, unit_);
      notch.words =
          fmt::format("{}{}{}", side, side.empty() ? "" : " ",
                      value_words(program_, prepared_.trait, reading.value, prepared_.cuts));
      notch.earlier = is_earlier;
      notches.push_back(std::move(notch));
      if (finding.sides_alike) {
        break;
      }
    }
  }

 private:
  const Program& program_;
  std::size_t rule_;
  const RuleProgram& prepared_;
  Unit unit_;
};

}  // namespace

std::optional<Ruler> finding_ruler(const Program& program, std::string id, std::string title,
                                   const DoubtedFinding& now,
                                   const std::optional<DoubtedFinding>& earlier) {
  const Finding& finding = now.finding;
  const bool was_read =
      !finding.readings.empty() || (earlier && !earlier->finding.readings.empty());
  if (program.rules.rules[finding.rule].bands.empty() || !was_read) {
    return std::nullopt;
  }
  const RulerMaker maker(program, finding.rule);
  Ruler ruler{std::move(id), std::move(title), maker.bands(), {}};
  maker.add_notches(now, false, ruler.notches);
  if (earlier) {
    maker.add_notches(*earlier, true, ruler.notches);
  }
  return ruler;
}

std::string ruler_id(std::size_t finding) { return fmt::format("ruler-{}", finding + 1); }

}  // namespace heelrule
