#include "engine/formula/function.hpp"

#include <array>

namespace heelrule {
namespace {

// A formula has fewer parts than this.
constexpr std::size_t any_number = 1000;

constexpr std::array<Function, 17> functions{{
    {"min", Call::minimum, 2, any_number},
    {"max", Call::maximum, 2, any_number},
    {"mean", Call::mean, 2, any_number},
    {"abs", Call::absolute, 1, 1},
    {"tan", Call::tangent, 1, 1},
    {"atan", Call::arctangent, 1, 1},
    {"left", Call::left, 1, 1},
    {"right", Call::right, 1, 1},
    {"larger", Call::larger, 1, 1},
    {"smaller", Call::smaller, 1, 1},
    {"mean_of_sides", Call::mean_of_sides, 1, 1},
    {"difference", Call::difference, 1, 1},
    {"share", Call::share, 2, 2},
    {"moisture", Call::moisture, 1, 1},
    {"shortest_foot", Call::shortest_foot, 1, 1},
    {"longest_foot", Call::longest_foot, 1, 1},
    {"monthly_growth", Call::monthly_growth, 1, 1},
}};

}  // namespace

std::span<const Function> known_functions() { return functions; }

}  // namespace heelrule
