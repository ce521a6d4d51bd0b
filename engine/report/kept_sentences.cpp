#include "engine/report/kept_sentences.hpp"

#include <algorithm>

#include "engine/report/account.hpp"
#include "engine/report/json_writer.hpp"

namespace heelrule {

bool gives_reasons(const Inspection& inspection) {
  return std::any_of(
      inspection.observations.begin(), inspection.observations.end(),
      [](const Observation& seen) { return std::holds_alternative<NotSeen>(seen.value); });
}

void KeptSentences::begin(const Inspection& inspection) {
  inspection_ = &inspection;
  has_reasons_ = gives_reasons(inspection);
}

void KeptSentences::append(std::size_t index, const Finding& finding, GrowingText& line) {
  if (is_judged(finding.status)) {
    const SideReading& reading = finding.readings[finding.decisive];
    line.put(kept_[index].judged[speaker(finding, reading)].get(reading.value,
                                                                [&] { return sentence(finding); }));
  } else if (has_reasons_) {
    line.put(sentence(finding));
  } else {
    append_unseen(kept_[index].unseen, finding, line);
  }
}

void KeptSentences::append_unseen(std::vector<Unseen>& kept, const Finding& finding,
                                  GrowingText& line) {
  auto known = std::find_if(kept.begin(), kept.end(), [&](const Unseen& unseen) {
    return unseen.status == finding.status &&
           unseen.whether_it_applies_is_open == finding.whether_it_applies_is_open &&
           unseen.missing == finding.missing;
  });
  if (known == kept.end()) {
    if (kept.size() == most_unseen) {
      kept.clear();
    }
    kept.push_back({finding.status, finding.missing, finding.whether_it_applies_is_open,
                    PaddedText(sentence(finding))});
    known = std::prev(kept.end());
  }
  line.put(known->sentence);
}

std::string KeptSentences::sentence(const Finding& finding) const {
  return json_text(finding_sentence(program_, *inspection_, finding, languages_));
}

}  // namespace heelrule
