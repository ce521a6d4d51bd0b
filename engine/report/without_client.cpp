#include "engine/report/without_client.hpp"

namespace heelrule {

Inspection without_client(Inspection inspection) {
  inspection.client.clear();
  inspection.note.clear();
  for (Observation& seen : inspection.observations) {
    seen.note.clear();
  }
  return inspection;
}

}  // namespace heelrule
