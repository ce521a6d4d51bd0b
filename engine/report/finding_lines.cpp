#include "engine/report/finding_lines.hpp"

#include <algorithm>

#include "engine/model/inspection_row.hpp"
#include "engine/report/account.hpp"
#include "engine/report/json_parts.hpp"
#include "engine/report/json_writer.hpp"

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

}  // namespace

FindingLines::FindingLines(const Program& program, std::span<const std::string> languages)
    : program_(program),
      languages_(languages),
      kept_(program.contributions.size()),
      sentences_(program, languages) {
  for (std::size_t i = 0; i < kept_.size(); ++i) {
    Finding finding;
    finding.rule = program.contributions[i].rule;
    for (PaddedText& must : kept_[i].musts) {
      JsonWriter json = compact();
      json.begin_object();
      write_finding_must(json, program, finding);
      must = PaddedText(json.take().replace(0, 1, ",") + R"(,"readings":[)");
      finding.cap = static_cast<std::size_t>(std::max(program.contributions[i].cap, 0));
    }
    const Rule& rule = program.rules.rules[finding.rule];
    JsonWriter json = compact();
    json.begin_object();
    write_finding_reasons(json, rule.because.in(languages), rule.source.in(languages));
    kept_[i].reasons = PaddedText(json.take().replace(0, 1, ",") + R"(,"notes":[)");
  }
  for (std::size_t trait = 0; trait < program.traits.size(); ++trait) {
    for (const Side side : {Side::none, Side::left, Side::right}) {
      JsonWriter json = compact();
      write_missing(json, program, {trait, side});
      missing_.emplace_back(json.take());
    }
  }
}

void FindingLines::append(const Inspection& inspection, const Verdict& verdict, GrowingText& line) {
  sentences_.begin(inspection);
  const bool has_notes = std::any_of(inspection.observations.begin(), inspection.observations.end(),
                                     [](const Observation& seen) { return !seen.note.empty(); });
  std::string_view comma;
  for (std::size_t i = 0; i < verdict.findings.size(); ++i) {
    line.put(comma);
    comma = ",";
    append(i, verdict.findings[i], line);
    if (has_notes) {
      append_notes(inspection, verdict.findings[i], line);
    }
    line.put("]}");
  }
}

void FindingLines::append(std::size_t index, const Finding& finding, GrowingText& line) {
  Kept& kept = kept_[index];
  line.put(kept.heads.get(head_key(finding), [&] {
    JsonWriter json = compact();
    json.begin_object();
    write_finding_head(json, program_, finding, finding_title(program_, finding, languages_));
    return json.take() + R"(,"gain":)";
  }));
  if (is_judged(finding.status)) {
    line.put(gains_.of(finding.gain));
  } else {
    line.put("null");
  }
  line.put(kept.musts[finding.cap ? 1 : 0]);
  append_readings(kept, finding, line);
  line.put(R"(],"missing":[)");
  append_missing(finding, line);
  line.put(R"(],"sentence":)");
  sentences_.append(index, finding, line);
  line.put(kept.reasons);
}

void FindingLines::append_readings(Kept& kept, const Finding& finding, GrowingText& line) {
  for (std::size_t i = 0; i < finding.readings.size(); ++i) {
    const SideReading& reading = finding.readings[i];
    if (i > 0) {
      line.put(",");
    }
    line.put(kept.readings[static_cast<std::size_t>(reading.side)].get(reading.value, [&] {
      JsonWriter json = compact();
      write_reading(json, program_, finding, reading);
      return json.take();
    }));
  }
}

void FindingLines::append_missing(const Finding& finding, GrowingText& line) const {
  for (std::size_t i = 0; i < finding.missing.size(); ++i) {
    if (i > 0) {
      line.put(",");
    }
    line.put(missing_[number_place(finding.missing[i].trait, finding.missing[i].side)]);
  }
}

void FindingLines::append_notes(const Inspection& inspection, const Finding& finding,
                                GrowingText& line) const {
  std::string_view comma;
  for (const std::string& note : finding_notes(program_, inspection, finding)) {
    line.put(comma);
    comma = ",";
    line.put_json(note);
  }
}

}  // namespace heelrule
