#include "engine/report/agreement_json.hpp"

#include "engine/report/agreement_names.hpp"
#include "engine/report/agreement_words.hpp"

namespace heelrule {
namespace {

void write_estimate_keys(JsonWriter& json, const Estimate& estimate) {
  write_number(json, "value", estimate.value);
  write_number(json, "standard_error", estimate.standard_error);
  write_number(json, "low", estimate.interval.low);
  write_number(json, "high", estimate.interval.high);
  json.text("interval_by", key_of(estimate.by));
}

template <class Choice>
void text_or_null(JsonWriter& json, std::string_view name, const std::optional<Choice>& choice) {
  json.key(name);
  if (choice) {
    json.text(key_of(*choice));
  } else {
    json.null();
  }
}

}  // namespace

void write_number(JsonWriter& json, std::string_view name, double value) {
  json.number_or_null(name, value, std::isfinite(value));
}

void write_estimate(JsonWriter& json, std::string_view name, const Estimate& estimate) {
  json.key(name).begin_object();
  write_estimate_keys(json, estimate);
  json.end_object();
}

void write_coefficient(JsonWriter& json, const Coefficient& coefficient) {
  json.begin_object();
  json.text("name", key_of(coefficient.name));
  text_or_null(json, "weights", coefficient.weighting);
  text_or_null(json, "metric", coefficient.metric);
  write_estimate_keys(json, coefficient.estimate);
  write_number(json, "observed", coefficient.observed);
  write_number(json, "expected", coefficient.expected);
  write_number(json, "null_error", coefficient.null_error);
  write_number(json, "z", coefficient.z);
  json.text("means", meaning_words(coefficient));
  json.end_object();
}

void write_limits(JsonWriter& json, const LimitsOfAgreement& limits) {
  json.begin_object();
  json.number("subjects", limits.subjects);
  write_estimate(json, "bias", limits.bias);
  write_number(json, "deviation", limits.deviation);
  write_estimate(json, "low", limits.low);
  write_estimate(json, "high", limits.high);
  write_number(json, "correlation", limits.correlation);
  json.end_object();
}

void write_error(JsonWriter& json, const MeasurementError& error) {
  json.begin_object();
  json.number("readings", error.readings);
  write_estimate(json, "technical_error", error.technical);
  write_number(json, "relative_percent", 100 * error.relative);
  write_number(json, "reliability", error.reliability);
  write_number(json, "repeatability", error.repeatability);
  write_estimate(json, "sem_agreement", error.agreement_error);
  write_estimate(json, "sem_consistency", error.consistency_error);
  write_estimate(json, "sdc_agreement", error.agreement_change);
  write_estimate(json, "sdc_consistency", error.consistency_change);
  json.end_object();
}

}  // namespace heelrule
