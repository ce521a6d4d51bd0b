// What a client takes home, in plain words.
#pragma once

#include "engine/report/page_data.hpp"
#include "engine/report/report_subject.hpp"

namespace heelrule {

/// Adds `good`, the weightiest that passed in full, each of another section, with its reason;
/// `change`, the advice that gains most; what to ask for in a shop; when to come back; and `signs`,
/// the safety questions, any of which is a reason to see a practitioner. What to buy is held back,
/// as advice is, where a practitioner comes first.
void add_client_words(const ReportSubject& subject, PageData& data);

}  // namespace heelrule
