// What a page shows beside the questions while they are answered.
#pragma once

#include <span>
#include <string>

#include "engine/model/verdict.hpp"
#include "engine/page/sound_answers.hpp"
#include "engine/scoring/program.hpp"

namespace heelrule {

/// One line of JSON:
///
///     {"faults":[{"name":"foot_length","side":"left","message":…,"hint":…,"unusual":true}],
///      "derived":[{"name":"toe_allowance","ask":…,"side":"right","value":"9.4 mm"}],
///      "settle":[{"name":"heel_counter","words":…}],
///      "sizes":[{"title":…,"lines":[…],"table":[["EU 39",…]]}],
///      "refers":false}
///
/// `settle` is what would settle the grade, weightiest first. `sizes` is what `heelrule size` says
/// of this visit; empty where no foot was measured standing, or the rule set does not say how much
/// space toes need. `refers` is whether a practitioner comes first. `verdict` is that on the sound
/// answers.
std::string answers_json(const Program& program, const SoundAnswers& answers,
                         const Verdict& verdict, std::span<const std::string> languages);

}  // namespace heelrule
