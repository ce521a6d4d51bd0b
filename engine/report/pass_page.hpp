// Pass marks as a page.
#pragma once

#include <string>

#include "engine/report/pass_report.hpp"

namespace heelrule {

/// The whole HTML document, with a picture for each method that has one.
std::string pass_page(const PassSheet& sheet, const PassMarks& marks);

}  // namespace heelrule
