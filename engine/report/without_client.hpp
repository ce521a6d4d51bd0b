// A record that no longer says whom it is about.
#pragma once

#include "engine/model/inspection.hpp"

namespace heelrule {

/// The record without the client's code, and without notes, for people write there whom they mean.
/// Reasons why something was not seen stay: a report needs them.
Inspection without_client(Inspection inspection);

}  // namespace heelrule
