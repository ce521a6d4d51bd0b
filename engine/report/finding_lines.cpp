#include "engine/report/finding_lines.hpp"

#include <algorithm>

#include "engine/model/inspection_row.hpp"
#include "engine/quantity/decimal.hpp"
#include "engine/report/account.hpp"
#include "engine/report/json_parts.hpp"
#include "engine/report/json_writer.hpp"
#include "engine/report/value_words.hpp"

namespace heelrule {
namespace {

JsonWriter compact() { return JsonWriter(JsonWriter::Layout::compact); }

// What stands for a credit in the key of a head: a rule that does not apply has a head of its own.
double head_key(const Finding& finding) {
  switch (finding.status) {
    case Status::does_not_apply:
      return -2;
    case Status::not_seen:
      return -1;
    default:
      return finding.credit;
  }
}

const Phrase& words_of(const SpokenWords& words, SpokenKind kind) {
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

FindingLines::FindingLines(const Program& program, std::span<const std::string> languages)
    : program_(program), languages_(languages), kept_(program.contributions.size()) {
  for (std::size_t i = 0; i < kept_.size(); ++i) {
    Finding finding;
    finding.rule = program.contributions[i].rule;
    for (std::string& must : kept_[i].musts) {
      JsonWriter json = compact();
      json.begin_object();
      write_finding_must(json, program, finding);
      must = json.take().replace(0, 1, ",") + R"(,"readings":[)";
      finding.cap = static_cast<std::size_t>(std::max(program.contributions[i].cap, 0));
    }
    const Rule& rule = program.rules.rules[finding.rule];
    JsonWriter json = compact();
    json.begin_object();
    write_finding_reasons(json, rule.because.in(languages), rule.source.in(languages));
    kept_[i].reasons = json.take().replace(0, 1, ",") + R"(,"notes":[)";
  }
  for (std::size_t trait = 0; trait < program.traits.size(); ++trait) {
    for (const Side side : {Side::none, Side::left, Side::right}) {
      JsonWriter json = compact();
      write_missing(json, program, {trait, side});
      missing_.push_back(json.take());
    }
  }
}

void FindingLines::begin(const Inspection& inspection) {
  inspection_ = &inspection;
  has_notes_ = std::any_of(inspection.observations.begin(), inspection.observations.end(),
                           [](const Observation& seen) { return !seen.note.empty(); });
  has_reasons_ = std::any_of(
      inspection.observations.begin(), inspection.observations.end(),
      [](const Observation& seen) { return std::holds_alternative<NotSeen>(seen.value); });
}

void FindingLines::append(std::size_t index, const Finding& finding, std::string& line) {
  Kept& kept = kept_[index];
  line += kept.heads.get(head_key(finding), [&] {
    JsonWriter json = compact();
    json.begin_object();
    write_finding_head(json, program_, finding, finding_title(program_, finding, languages_));
    return json.take() + R"(,"gain":)";
  });
  if (is_judged(finding.status)) {
    line += gains_.get(finding.gain, [&] { return shortest(finding.gain); });
  } else {
    line += "null";
  }
  line += kept.musts[finding.cap ? 1 : 0];
  append_readings(kept, finding, line);
  line += R"(],"missing":[)";
  append_missing(finding, line);
  line += R"(],"sentence":)";
  append_sentence(kept, finding, line);
  line += kept.reasons;
  if (has_notes_) {
    std::string_view comma;
    for (const std::string& note : finding_notes(program_, *inspection_, finding)) {
      line += comma;
      comma = ",";
      append_json_text(line, note);
    }
  }
  line += "]}";
}

void FindingLines::append_readings(Kept& kept, const Finding& finding, std::string& line) {
  for (std::size_t i = 0; i < finding.readings.size(); ++i) {
    const SideReading& reading = finding.readings[i];
    if (i > 0) {
      line += ',';
    }
    line += kept.readings[static_cast<std::size_t>(reading.side)].get(reading.value, [&] {
      JsonWriter json = compact();
      write_reading(json, program_, finding, reading);
      return json.take();
    });
  }
}

void FindingLines::append_missing(const Finding& finding, std::string& line) const {
  for (std::size_t i = 0; i < finding.missing.size(); ++i) {
    if (i > 0) {
      line += ',';
    }
    line += missing_[number_place(finding.missing[i].trait, finding.missing[i].side)];
  }
}

void FindingLines::append_sentence(Kept& kept, const Finding& finding, std::string& line) {
  const auto make = [&] {
    return json_text(finding_sentence(program_, *inspection_, finding, languages_));
  };
  if (!is_judged(finding.status)) {
    if (has_reasons_) {
      line += make();
      return;
    }
    auto known = std::find_if(kept.unseen.begin(), kept.unseen.end(), [&](const Unseen& unseen) {
      return unseen.status == finding.status &&
             unseen.whether_it_applies_is_open == finding.whether_it_applies_is_open &&
             unseen.missing == finding.missing;
    });
    if (known == kept.unseen.end()) {
      if (kept.unseen.size() == most_unseen) {
        kept.unseen.clear();
      }
      kept.unseen.push_back(
          {finding.status, finding.missing, finding.whether_it_applies_is_open, make()});
      known = std::prev(kept.unseen.end());
    }
    line += known->sentence;
    return;
  }
  const SideReading& reading = finding.readings[finding.decisive];
  line += kept.sentences[speaker(finding, reading)].get(reading.value, make);
}

void FindingLines::append_said(const Spoken& spoken, const Finding& finding, SpokenKind kind,
                               std::string& line) {
  const SideReading& reading = finding.readings[spoken.reading.value_or(finding.decisive)];
  auto& kept = kept_[spoken.finding].said[static_cast<std::size_t>(kind)][spoken.reading ? 1 : 0];
  line += kept[speaker(finding, reading)].get(reading.value, [&] {
    const RuleProgram& rule = program_.rule_programs[finding.rule];
    const SpokenWords& words = spoken.reading ? rule.band_words[reading.band] : rule.words;
    JsonWriter json = compact();
    json.begin_object();
    write_said(json, program_, finding, finding_title(program_, finding, languages_),
               fill(words_of(words, kind), languages_, program_, finding, reading));
    return json.take() + R"(,"gain":)";
  });
  line += gains_.get(finding.gain, [&] { return shortest(finding.gain); });
  line += '}';
}

}  // namespace heelrule
