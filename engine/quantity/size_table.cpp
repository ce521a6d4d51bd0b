#include "engine/quantity/size_table.hpp"

#include <array>

namespace heelrule {
namespace {

constexpr std::array<AdultSizeRow, 23> adults{{
    {210, 67, 3},  {215, 68, 5},  {220, 70, 6},  {225, 71, 7},  {230, 73, 8},   {235, 74, 9},
    {240, 76, 11}, {245, 77, 12}, {250, 79, 13}, {255, 80, 14}, {260, 82, 15},  {265, 83, 17},
    {270, 85, 18}, {275, 86, 19}, {280, 88, 20}, {285, 89, 21}, {290, 91, 22},  {295, 92, 24},
    {300, 94, 25}, {305, 95, 26}, {310, 97, 27}, {315, 98, 28}, {320, 100, 30},
}};

constexpr std::array<ChildSizeRow, 22> children{{
    {120, 39}, {125, 40}, {130, 42}, {135, 44}, {140, 45}, {145, 47}, {150, 49}, {155, 50},
    {160, 52}, {165, 54}, {170, 55}, {175, 57}, {180, 58}, {185, 60}, {190, 62}, {195, 63},
    {200, 65}, {205, 66}, {210, 68}, {215, 69}, {220, 71}, {225, 72},
}};

}  // namespace

std::span<const AdultSizeRow> adult_size_table() { return adults; }

std::span<const ChildSizeRow> child_size_table() { return children; }

}  // namespace heelrule
