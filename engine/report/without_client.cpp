#include "engine/report/without_client.hpp"

#include <algorithm>

namespace heelrule {

Inspection without_client(Inspection inspection) {
  inspection.client.clear();
  inspection.note.clear();
  for (Observation& seen : inspection.observations) {
    seen.note.clear();
  }
  // What stood there before may be what is left out now, or have a note of its own.
  std::erase_if(inspection.amendments, [](const Amendment& one) {
    return one.answer == "inspection.client" || one.answer == "inspection.note";
  });
  for (Amendment& one : inspection.amendments) {
    one.was.resize(std::min(one.was.find(" ("), one.was.size()));
    one.because.clear();
  }
  return inspection;
}

}  // namespace heelrule
