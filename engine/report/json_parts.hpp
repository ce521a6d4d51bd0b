// The parts of a verdict as JSON, each by itself, so that every report that is JSON says the same.
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <string>

#include "engine/model/verdict.hpp"
#include "engine/report/account.hpp"
#include "engine/report/json_writer.hpp"
#include "engine/scoring/program.hpp"

namespace heelrule {

/// The version of the layout. It rises when a key changes its meaning or goes; new keys may come at
/// any time.
constexpr int json_report_version = 1;

/// The keys before all others: what this is, and by which rules. `title` is the rule set's.
void write_format(JsonWriter& json, const Program& program, std::string_view title);

/// A safety question with its answer, as an object.
void write_safety(JsonWriter& json, const Program& program, const SafetyAccount& told,
                  const SafetyAnswer& answer);

/// The grade and how certain it is, as an object.
void write_grade(JsonWriter& json, const Program& program, const Account& account,
                 const Verdict& verdict);

/// The same without its sentences.
void write_grade_names(JsonWriter& json, const Program& program, const Verdict& verdict);

/// A finding's keys from its rule to its credit. What it would gain comes after them.
void write_finding_head(JsonWriter& json, const Program& program, const Finding& finding,
                        std::string_view title);

/// What a short line has of them: the rule, and the side where each counts by itself.
void write_rule(JsonWriter& json, const Program& program, std::size_t rule, Side side);

/// A finding's keys about its must.
void write_finding_must(JsonWriter& json, const Program& program, const Finding& finding);

/// The name of a band, or of a level.
std::string band_name(const Program& program, std::size_t rule, std::size_t band);

/// What was read on one side, as an object.
void write_reading(JsonWriter& json, const Program& program, const Finding& finding,
                   const SideReading& reading);

/// What was not seen, as an object.
void write_missing(JsonWriter& json, const Program& program, const Missing& missing);

/// A finding's keys about its reasons.
void write_finding_reasons(JsonWriter& json, std::string_view because, std::string_view source);

/// Words of a rule or band: their keys but for what following them would gain.
void write_said(JsonWriter& json, const Program& program, const Finding& finding,
                std::string_view title, std::string_view words);

}  // namespace heelrule
