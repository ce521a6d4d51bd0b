// The parts of agreement as JSON, which a table of ratings and a class have in common.
#pragma once

#include <string_view>

#include "engine/agreement/coefficient.hpp"
#include "engine/agreement/limits_of_agreement.hpp"
#include "engine/agreement/measurement_error.hpp"
#include "engine/report/json_writer.hpp"

namespace heelrule {

/// A number, or null where it is unknown or infinite.
void write_number(JsonWriter& json, std::string_view name, double value);

/// A key with the value, its standard error, its interval, and how that was made.
void write_estimate(JsonWriter& json, std::string_view name, const Estimate& estimate);

/// A coefficient as an object: its name, its estimate, what it rests on, and what it means.
void write_coefficient(JsonWriter& json, const Coefficient& coefficient);

/// Limits of agreement, and errors of measurement, as objects.
void write_limits(JsonWriter& json, const LimitsOfAgreement& limits);
void write_error(JsonWriter& json, const MeasurementError& error);

}  // namespace heelrule
