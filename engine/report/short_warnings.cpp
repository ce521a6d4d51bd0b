#include "engine/report/short_warnings.hpp"

#include <algorithm>

#include "engine/report/json_parts.hpp"
#include "engine/report/json_writer.hpp"
#include "engine/report/value_words.hpp"
#include "engine/scoring/find.hpp"
#include "engine/scoring/rows.hpp"
#include "engine/scoring/spoken.hpp"

namespace heelrule {

ShortWarnings::ShortWarnings(const Program& program, std::span<const std::string> languages,
                             Phrase SpokenWords::* which)
    : program_(program), languages_(languages), which_(which), kept_(program.contributions.size()) {
  for (std::size_t i = 0; i < program.contributions.size(); ++i) {
    const RuleProgram& rule = program.rule_programs[program.contributions[i].rule];
    const Phrase& of_rule = rule.words.*which_;
    const bool by_band =
        std::any_of(rule.band_words.begin(), rule.band_words.end(),
                    [&](const SpokenWords& words) { return !(words.*which_).empty(); });
    if (by_band || !of_rule.empty()) {
      warners_.push_back({i, by_band, !by_band && of_rule.is_fixed()});
    }
  }
}

void ShortWarnings::turn_to(const Block& block, std::size_t count) {
  kept_.begin();
  for (const Warner& warner : warners_) {
    const Contribution& contribution = program_.contributions[warner.contribution];
    const Rows rows =
        warner.by_band ? rows_that_apply(contribution, block) : rows_with_lack(contribution, block);
    const auto case_of = [&, values = ValueBits(contribution, block)](std::size_t row) {
      return warner.alike ? WordCase{} : values.of(row, 0);
    };
    const auto make = [&](std::size_t row) { return words(warner.contribution, block, row); };
    kept_.tell(warner.contribution, rows & first_rows(count), case_of, make);
  }
}

std::string ShortWarnings::words(std::size_t contribution, const Block& block, std::size_t row) {
  find(program_, block, row, contribution, finding_);
  std::vector<Spoken> warnings;
  warn(program_, contribution, finding_, which_, warnings);
  std::string text;
  for (const Spoken& spoken : warnings) {
    const Phrase& phrase = words_of(spoken, finding_, program_).*which_;
    JsonWriter json(JsonWriter::Layout::compact);
    json.begin_object();
    write_rule(json, program_, finding_.rule, finding_.side);
    json.text("words", fill(phrase, languages_, program_, finding_, reading_of(spoken, finding_)));
    json.end_object();
    text += json.take() + ",";
  }
  return text;
}

}  // namespace heelrule
