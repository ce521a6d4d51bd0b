// How often a level of a scale is taken for the next one.
#pragma once

#include "engine/agreement/level_counts.hpp"

namespace heelrule {

/// The most that is ever said: beyond, a level says hardly anything.
constexpr double most_confusion = 0.5;

/// The chance c that one observer gives the next level up or down in place of the true one, half of
/// it up and half down, where at an end of the scale the half that leads nowhere stays. It is the c
/// for which two observers, each erring so, agree as often as these do:
///
///     in the middle of the scale (1 − c)² + c² / 2, at an end (1 − c / 2)² + (c / 2)²,
///
/// each level as common as it was given. Misses by more than one level count as much as any. The
/// interval is that of the agreement, brought through the same. Unknown where nothing is paired.
Estimate level_confusion(const LevelCounts& counts);

}  // namespace heelrule
