#include "engine/report/said_lines.hpp"

#include "engine/report/account.hpp"
#include "engine/report/json_parts.hpp"
#include "engine/report/json_writer.hpp"
#include "engine/report/value_words.hpp"
#include "engine/scoring/spoken.hpp"

namespace heelrule {
namespace {

const Phrase& phrase_of(const SpokenWords& words, SpokenKind kind) {
  switch (kind) {
    case SpokenKind::referral:
      return words.referral;
    case SpokenKind::caution:
      return words.caution;
    case SpokenKind::advice:
      break;
  }
  return words.advice;
}

}  // namespace

SaidLines::SaidLines(const Program& program, std::span<const std::string> languages)
    : program_(program), languages_(languages), kept_(program.contributions.size()) {
  for (std::size_t i = 0; i < kept_.size(); ++i) {
    Finding finding;
    finding.rule = program.contributions[i].rule;
    finding.side = program.contributions[i].side;
    const SpokenWords& words = program.rule_programs[finding.rule].words;
    for (const SpokenKind kind : {SpokenKind::referral, SpokenKind::caution, SpokenKind::advice}) {
      const Phrase& phrase = phrase_of(words, kind);
      if (!phrase.empty() && phrase.is_fixed()) {
        kept_[i][static_cast<std::size_t>(kind)].of_rule = PaddedText(entry(finding, phrase, {}));
      }
    }
  }
}

void SaidLines::append(const Verdict& verdict, const std::vector<Spoken>& all, SpokenKind kind,
                       GrowingText& line) {
  for (const Spoken& spoken : all) {
    const Finding& finding = verdict.findings[spoken.finding];
    line.put(kept_entry(spoken, finding, kind));
    line.put(gains_.of(finding.gain));
    line.put("},");
  }
  if (!all.empty()) {
    line.drop_last();  // the comma behind the last one
  }
}

const PaddedText& SaidLines::kept_entry(const Spoken& spoken, const Finding& finding,
                                        SpokenKind kind) {
  Kept& kept = kept_[spoken.finding][static_cast<std::size_t>(kind)];
  if (!spoken.reading && !kept.of_rule.text().empty()) {
    return kept.of_rule;
  }
  const SideReading& reading = reading_of(spoken, finding);
  return kept.by_value[spoken.reading ? 1 : 0][speaker(finding, reading)].get(reading.value, [&] {
    return entry(finding, phrase_of(words_of(spoken, finding, program_), kind), reading);
  });
}

std::string SaidLines::entry(const Finding& finding, const Phrase& phrase,
                             const SideReading& reading) const {
  const std::string words = fill(phrase, languages_, program_, finding, reading);
  JsonWriter json(JsonWriter::Layout::compact);
  json.begin_object();
  write_said(json, program_, finding, finding_title(program_, finding, languages_), words);
  return json.take() + R"(,"gain":)";
}

}  // namespace heelrule
